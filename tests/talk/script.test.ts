// The reader of scripts: what it must find in those of the folder, and that no text at all can upset it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quotableFigures, quotableNames } from '../../src/core/cross-check/quoted.ts';
import { kinds } from '../../src/core/kinds.ts';
import { figureIds, talkFigures } from '../../src/talk/figures.ts';
import { readScript, type ReadScript } from '../../src/talk/script.ts';
import { judge, type Judgement } from './judge.ts';
import { scripts } from './scripts.ts';

const all = scripts();
const read = new Map<string, ReadScript>();
/** A talk as read, once for all tests. */
function asRead(text: string): ReadScript {
  if (!read.has(text)) read.set(text, readScript(text));
  return read.get(text)!;
}
const share = (some: readonly Judgement[], of: (each: Judgement) => number, whole: (each: Judgement) => number) =>
  some.reduce((sum, each) => sum + of(each), 0) / some.reduce((sum, each) => sum + whole(each), 0); // prettier-ignore

test('the keys say where each quantity stands, in order, with figures that exist', () => {
  expect(new Set(all.map(({ author }) => author)).size).toBeGreaterThanOrEqual(6);
  for (const { text, answers } of all) {
    for (const { at, text: said } of answers) expect(text.slice(at, at + said.length)).toBe(said);
    expect(answers.map(({ at }) => at)).toEqual(answers.map(({ at }) => at).sort((a, b) => a - b));
    expect(answers.filter(({ figure }) => figure && !figureIds.includes(figure as never))).toEqual([]);
  }
});

// Of talks that it has learnt from it must read nearly all; what strangers' talks come to is in measured.json, below.
test('talks that it has learnt from are found and matched, few falsely', () => {
  const judged = all.map((script) => judge(script, asRead));
  expect(share(judged, (j) => j.found, (j) => j.quantities)).toBeGreaterThan(0.96); // 96.2 %
  expect(share(judged, (j) => j.matched, (j) => j.figures)).toBeGreaterThan(0.85);
  expect(share(judged, (j) => j.wrong, (j) => j.proposed)).toBeLessThan(0.03);
}, 120_000); // prettier-ignore

test('the judging is awake: a reader of another script finds next to nothing', () => {
  const [one, other] = [all.find(({ name }) => name === 'crib')!, all.find(({ name }) => name === 'long')!];
  const { found, quantities, wrong, proposed } = judge({ ...one, text: other.text });
  expect(found / quantities).toBeLessThan(0.1);
  expect(wrong / proposed).toBeGreaterThan(0.9);
});

test('every figure that can be quoted can be read, and in the same unit', () => {
  expect(quotableNames.filter((name) => !Object.hasOwn(talkFigures, name))).toEqual([]);
  for (const name of quotableNames) {
    const { unit } = talkFigures[name];
    const own = kinds[quotableFigures[name].kind].unit;
    expect([own, own === '' ? { gravity: 'gravity', weeks: 'weeks' }[unit as 'weeks'] ?? '' : own]).toContain(unit); // prettier-ignore
  }
});

const figuresOf = (text: string) =>
  readScript(text).quantities.map(({ figure, inFigure }) => [figure, ...(inFigure ?? [])]);

test('a figure comes in its own unit', () => {
  expect(figuresOf('Each mash is five and a half tonnes of malt.')).toEqual([['maltPerMash', 5500]]);
  expect(figuresOf('The original gravity of the wort is ten fifty-eight.')).toEqual([
    ['originalGravity', 1.058],
  ]);
  expect(figuresOf('Fermentation lasts three days.')).toEqual([['fermentationHours', 72]]);
  expect(figuresOf('The wort is 5-6,000 litres.')).toEqual([['wortVolume', 5000, 6000]]);
  expect(figuresOf('Bottles of 0.7 litre.')).toEqual([['bottleSize', 70]]);
  expect(figuresOf('Heart from seventy-two down to sixty per cent.')).toEqual([['heartBegins', 72], ['heartEnds', 60]]); // prettier-ignore
  const [gallons] = readScript('We collect 1,000 gallons of wort.').quantities;
  expect(gallons!.inFigure![0]).toBeCloseTo(4546.09, 6); // Weights and Measures Act 1985: 4.54609 litres
  const [proof] = readScript('The casks are filled at 111 degrees proof.').quantities;
  expect(proof!.inFigure![0]).toBeGreaterThan(63.2); // 111 of the former British proof is about 63.4 % vol
  expect(proof!.inFigure![0]).toBeLessThan(63.7);
});

test('a quantity is never proposed as a figure of another unit or far beyond what the figure can be', () => {
  expect(figuresOf('The wort is 5 tonnes.')[0]![0]).not.toBe('wortVolume');
  expect(figuresOf('Our filling strength is 163 per cent.')).toEqual([[undefined]]);
  expect(figuresOf('The first water is at 900 degrees.')).toEqual([[undefined]]);
  for (const { text } of all)
    for (const { figure, inFigure } of asRead(text).quantities)
      if (figure) for (const value of inFigure!) {
        expect(value).toBeGreaterThanOrEqual(talkFigures[figure].range[0] / 2);
        expect(value).toBeLessThanOrEqual(talkFigures[figure].range[1] * 2);
      }
}, 120_000); // prettier-ignore

/** What the one quantity of a text is likeliest, proposed or asked. */
const likeliest = (text: string) => readScript(text).quantities[0]!.likely[0]!.figure;

test('what a guide says of the spirit as it comes off is its strength, and a cut is a cut', () => {
  for (const text of [
    'The heart comes off at 70 per cent.',
    'Spirit comes off at about 69 per cent.',
    'The spirit comes off the still at 69%.',
    'In the still house the new make comes off the second still at 69 per cent alcohol.',
  ])
    expect(likeliest(text), text).toBe('heartStrength');
  // Of one line alone it is not sure since it has learnt from twice as many authors, and asks; it takes the cut for nothing else.
  const [cut] = readScript('We come off the heart at 62 per cent and go over to feints.').quantities;
  expect(cut!.figure ?? 'heartEnds').toBe('heartEnds');
  expect(cut!.likely.slice(0, 2).map(({ figure }) => figure)).toContain('heartEnds');
});

test('two values of one figure are both told, so that the disagreement shows', () => {
  const twice = figuresOf('We fill the casks at 63.5%. The board says the casks are filled at 62.5%.');
  expect(twice).toEqual([['fillingStrength', 63.5], ['fillingStrength', 62.5]]); // prettier-ignore
});

test('"about" is kept', () => {
  const about = (text: string) => readScript(text).quantities.map(({ approximate }) => approximate);
  expect(about('About 7,000 litres of wort.')).toEqual([true]);
  expect(about('7,000 litres of wort or so.')).toEqual([false]); // "or so" must follow at once
  expect(about('70 hours or so')).toEqual([true]);
  expect(about('just over eight per cent')).toEqual([true]);
  expect(about('We take 7,000 litres of wort.')).toEqual([false]);
});

/** What must hold of any text. */
function sound(text: string): void {
  const { quantities } = readScript(text);
  let last = 0;
  for (const each of quantities) {
    expect(each.start).toBeGreaterThanOrEqual(last);
    expect(each.end).toBeGreaterThan(each.start);
    expect(text.slice(each.start, each.end)).toBe(each.text);
    last = each.end;
    const numbers = [...(each.range ?? [each.value!]), ...(each.inFigure ?? []), each.confidence];
    expect(numbers.every(Number.isFinite)).toBe(true);
    if (each.range) expect(each.range[0]).toBeLessThan(each.range[1]);
    expect(each.confidence >= 0 && each.confidence <= 1).toBe(true);
  }
}

const words = 'a and half the to of in per point six ten twenty seventy hundred thousand million third quarter tonnes litres % degrees proof °F hours week year wort wash low wines heart cask casks mash bottles gravity strength first second water 7 5.5 1,058 12.000 0,7 20/70/10 5-6,000 ½ £ - – , . ? \n \u202e \ud800 \udfff \u0000 😀 <b> &amp; NaN Infinity 1e9 one two'.split(' '); // prettier-ignore
test('any text is read without a fault, at places of the text as it is', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 400 }), sound), { numRuns: 300 });
  fc.assert(fc.property(fc.array(fc.constantFrom(...words), { maxLength: 60 }).map((some) => some.join(' ')), sound), { numRuns: 800 });
  fc.assert(fc.property(fc.array(fc.constantFrom(...words), { maxLength: 60 }).map((some) => some.join('')), sound), { numRuns: 300 });
  fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 300 }).map((codes) => String.fromCharCode(...codes)), sound), { numRuns: 300 });
}); // prettier-ignore

test('fifty thousand characters of anything are read soon', () => {
  const junk = ['9', '1 ', '1,', '½', 'a hundred ', '10% ', ' ', '\n', '\ud800', '\udc00x', '\u202e', 'malt 1 ', '20/70/10 ', 'a tonne and a half ', 'point ', '1 in 2 ', '/ ']; // prettier-ignore
  for (const piece of junk) {
    const text = piece.repeat(Math.ceil(50_000 / piece.length)).slice(0, 50_000);
    const before = process.cpuUsage();
    const { quantities } = readScript(text);
    const { user, system } = process.cpuUsage(before);
    expect(quantities.every(({ value, range }) => (range ?? [value!]).every(Number.isFinite))).toBe(true);
    expect((user + system) / 1000, JSON.stringify(piece)).toBeLessThan(5000); // far above what it takes; a square law would take minutes
  }
}, 120_000);

test('the same text is read the same, and lines may end either way', () => {
  const { text } = all.find(({ name }) => name === 'new-guides')!;
  expect(readScript(text)).toEqual(readScript(text));
  const figures = (some: string) => readScript(some).quantities.map(({ figure }) => figure);
  expect(figures(text.replaceAll('\n', '\r\n'))).toEqual(figures(text));
});

test('a figure that cannot be is asked, and taken for no other', () => {
  const asked = figuresOf(
    'Then the low wines, and they come off at about 38 per cent. The heart starts at 73 and drops to 62.',
  );
  expect(asked.filter(([, value]) => value === 38)).toEqual([]);
  expect(figuresOf('The wash comes to 8 per cent. The low wines are about 36 per cent.')).toEqual([
    ['washStrength', 8],
    [undefined],
  ]);
});

test('what is said together is one quantity', () => {
  const said = (text: string) => readScript(text).quantities.map(({ value, range, unit }) => [range ?? value, unit]);
  expect(said('We mash three times a day, six days a week.')).toEqual([[18, '']]);
  expect(said('Two mashes a day, Monday to Friday.')).toEqual([[10, '']]);
  expect(said('It is left for a full week, or 163 hours.')).toEqual([[1, 'weeks'], [163, 'h']]);
  expect(figuresOf('We mash twice a day, five days a week.')).toEqual([['mashesPerWeek', 10]]);
  expect(figuresOf('Fermentation lasts three and a half days.')).toEqual([['fermentationHours', 84]]);
  expect(figuresOf('Seven in ten are barrels of 200 litres, a quarter hogsheads.')).toEqual([['barrelsShare', 70], ['barrelSize', 200], ['hogsheadsShare', 25]]);
}); // prettier-ignore

test('a chance is told of all that a quantity may be, and they make one', () => {
  for (const { likely } of readScript(all[0]!.text).quantities) {
    const whole = likely.reduce((sum, { chance }) => sum + chance, 0);
    expect(whole).toBeGreaterThan(0.9);
    expect(whole).toBeLessThan(1 + 1e-9);
    expect(likely.map(({ chance }) => chance)).toEqual(
      likely.map(({ chance }) => chance).sort((a, b) => b - a),
    );
  }
});
