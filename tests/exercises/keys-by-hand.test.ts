// Keys of the questions on ingredients, heat, running a house, visitors and the nose: from the numbers that the prompt prints, by sums that share no code with the kind, and some written out by hand.
import { expect, test } from 'vitest';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import {
  isChoiceQuestion,
  isNumberQuestion,
  type ChoiceQuestion,
  type NumberQuestion,
} from '../../src/exercises/question.ts';
import { randomHouse } from '../../src/exercises/random-house.ts';
import { numbersShown } from '../../src/exercises/sound-question.ts';
import { GENERATOR } from '../../src/exercises/draw.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const TOPICS = ['ingredients', 'heat', 'running', 'visitors', 'nose'] as const;
const kindOf = (id: string) => questionKinds.find((kind) => kind.id === id)!;
const houseAt = (seed: number) => (seed % 3 === 2 ? randomHouse(String(seed), GENERATOR) : builtInHouse);
const numbersDrawn = (id: string, draws: number): readonly NumberQuestion[] =>
  Array.from({ length: draws }, (_, seed) => drawQuestion(kindOf(id), `key/${seed}`, houseAt(seed))!).filter(
    isNumberQuestion,
  );
const choicesDrawn = (id: string, draws: number): readonly ChoiceQuestion[] =>
  Array.from({ length: draws }, (_, seed) => drawQuestion(kindOf(id), `key/${seed}`, houseAt(seed))!).filter(
    isChoiceQuestion,
  );

/** What is left after so many years, taken off year by year. */
function afterYears(filled: number, loss: number, years: number): number {
  let left = filled;
  for (let year = 0; year < years; year++) left -= (left * loss) / 100;
  return left;
}

/** The answer from the numbers of the prompt, in the order in which they stand. */
const byPrompt: Readonly<Record<string, (n: readonly number[]) => number>> = {
  'dry-grain-in-a-load': ([damp, dry, load]) => load! * (1 - dry! / 100) - load! * (1 - damp! / 100),
  'extract-by-protein': ([protein, grams, begins, off, on]) => begins! - off! * protein! + on! * grams!,
  'extract-for-nitrogen': ([low, high, factor, cost]) => cost! * (factor! * high! - factor! * low!),
  'yeast-to-a-tonne': ([malt, wort, dose]) => (wort! * dose!) / 1000 / (malt! / 1000),
  'malt-after-screenings': ([load, screenings, barley]) => (load! - (load! * screenings!) / 100) / barley!,
  'fresh-water-in-a-week': ([mashes, malt, ratio, back]) => mashes! * (malt! * ratio! - (malt! * ratio! * back!) / 100),
  'heat-for-mash-water': ([water, from, to, each]) => (water! * each! * to! - water! * each! * from!) / 1000,
  'steam-to-warm-the-wash': ([wash, from, to, each, steam]) => (wash! * (to! - from!)) / (steam! / each!),
  'cooling-water-in-summer': ([winter, cold, out, warm]) => (winter! * 4.19 * (out! - cold!)) / (4.19 * (out! - warm!)),
  // The mixed river's warmth above what it was, weighed by the two flows.
  'how-far-the-river-warms': ([river, drawn, rise]) => ((river! - drawn!) * 0 + drawn! * rise!) / river!,
  'heat-for-syrup': ([potAle, left, each]) => ((potAle! - (potAle! * left!) / 100) * each!) / 1000,
  'heat-saved-by-warm-water': ([hot, cold, warm]) => 100 - (100 * (hot! - warm!)) / (hot! - cold!),
  'left-in-the-receiver': ([held, a, came, b, went, c]) => (held! * a!) / 100 + (came! * b!) / 100 - (went! * c!) / 100,
  'missing-of-what-was-handled': ([opening, made, out, found]) => 100 - (100 * (out! + found!)) / (opening! + made!),
  'more-than-the-yearly-loss': ([filled, loss, years, found]) => afterYears(filled!, loss!, years!) - found!,
  'yield-by-final-gravity': ([original, final, usual, now]) => usual! - (usual! * (original! - now!)) / (original! - final!),
  'yield-of-damp-malt': ([dry, usual, damp]) => usual! - (usual! / (100 - dry!)) * (100 - damp!),
  'yield-gone-with-the-draff': ([draff, usual, now, each]) => each! * ((draff! * now!) / 100 - (draff! * usual!) / 100),
  'water-for-a-bottle': ([bottle, strength, each]) => (((bottle! * strength!) / 100) * each!) / 100,
  'bottles-gone-to-the-air': ([years, filled, loss, bottle, strength]) => ((filled! - afterYears(filled!, loss!, years!)) * 100) / (bottle! * strength!),
  'water-in-the-glass': ([water, taste, strength]) => strength! / (1 + water! / taste!),
  'water-for-nosing': ([sample, from, to, , fromDensity, toDensity, water]) => ((sample! * from! * toDensity!) / to! - sample! * fromDensity!) / water!,
  'sample-for-a-glass': ([glass, to, from]) => glass! / (from! / to!),
}; // prettier-ignore

const numberKinds = questionKinds.filter(
  ({ topic, form }) => (TOPICS as readonly string[]).includes(topic) && form === 'calculation',
);

test('every number on these topics is in the table', () => {
  expect(numberKinds.map(({ id }) => id).sort()).toEqual(Object.keys(byPrompt).sort());
});

test.each(Object.keys(byPrompt))('%s: the prompt holds all that the key needs', (id) => {
  const drawn = numbersDrawn(id, 30);
  expect(drawn.length).toBe(30);
  for (const { prompt, answer } of drawn) {
    const said = prompt.replace('a thousand of its dry grains', 'its grains').replaceAll('m³', 'm').replace('at 20 °C. How', 'How'); // prettier-ignore
    const numbers = numbersShown(id === 'water-for-nosing' ? prompt.replaceAll('m³', 'm') : said);
    expect(byPrompt[id]!(numbers), `${prompt}\n${numbers.join()}`).toBeCloseTo(answer, 6);
  }
});

/** Draws of a kind until one has these numbers in its prompt, in this order. */
function withNumbers(id: string, numbers: readonly number[]): NumberQuestion {
  for (let seed = 0; seed < 6000; seed++) {
    const question = drawQuestion(kindOf(id), `hand/${seed}`, builtInHouse);
    if (!question || !isNumberQuestion(question)) continue;
    const printed = numbersShown(question.prompt);
    if (numbers.every((number, i) => printed[i] === number)) return question;
  }
  throw new Error(`${id} never draws ${numbers.join()}`);
}

test.each([
  ['extract-for-nitrogen', [1.45, 1.65], 1.0625], // 0.2 × 6.25 = 1.25 of protein; × 0.85 = 1.0625
  ['yeast-to-a-tonne', [1500, 7500, 3.6], 18], // 3.6 × 7,500 = 27,000 g, 27 kg; ÷ 1.5 t = 18 kg
  ['malt-after-screenings', [24_000, 5, 1.2], 19_000], // 5 % of 24,000 is 1,200; 22,800 ÷ 1.2 = 19,000
  ['fresh-water-in-a-week', [6, 1500, 4, 30], 25_200], // 6,000 L a mash, 36,000 a week, 30 % of it back: 10,800
  ['heat-saved-by-warm-water', [72, 12, 48], 60], // 36 degrees of 60
  ['how-far-the-river-warms', [500, 20, 25], 1], // a twenty-fifth of the river, 25 degrees warmer
  ['cooling-water-in-summer', [30_000, 10, 50, 20], 40_000], // 40 degrees then, 30 now
  ['water-for-nosing', [10, 63.5, 21], 20.2], // the chapter’s table of a session: 20 mL
  ['water-for-nosing', [10, 70, 21], 23.6], // the same: 24 mL
  ['water-for-nosing', [10, 57, 21], 17.3], // the same: 17 mL
  ['water-for-nosing', [10, 46, 21], 12], // the same: 12 mL
  ['yield-by-final-gravity', [1.058, 0.998, 402, 1.004], 40.2], // six points of sixty
] as const)('%s with %j by hand', (id, numbers, hand) => {
  const { answer } = withNumbers(id, numbers);
  expect(Math.abs(answer - hand)).toBeLessThan(id === 'water-for-nosing' ? 0.35 : 1e-6); // the table gives whole millilitres
});

test('one line of a ledger disagrees with itself, and by its own figures', () => {
  for (const { options, answer } of choicesDrawn('ledger-line-that-cannot-be', 60)) {
    const off = options.map(({ text }) => {
      const [litres, , strength, alcohol] = numbersShown(text);
      return Math.abs((litres! * strength!) / 100 - alcohol!);
    });
    off.forEach((distance, place) => {
      if (place === answer) expect(distance).toBeGreaterThan(1);
      else expect(distance).toBeLessThanOrEqual(0.0501);
    });
  }
});

test('a yield was lost where the step gives least of what it gave', () => {
  const stages = ['In the malt.', 'In the mash tun.', 'In the washback.', 'In the stills.'];
  const places = new Set<string>();
  for (const { prompt, options, answer } of choicesDrawn('where-the-yield-was-lost', 120)) {
    const [spirit, spiritNow, malt, maltNow, wort, wortNow, wash, washNow] = numbersShown(prompt) as [number, number, number, number, number, number, number, number]; // prettier-ignore
    const kept = [maltNow / malt, wortNow / maltNow / (wort / malt), washNow / wortNow / (wash / wort), spiritNow / washNow / (spirit / wash)]; // prettier-ignore
    const least = kept.indexOf(Math.min(...kept));
    expect(options[answer]!.text, prompt).toBe(stages[least]);
    kept.forEach((each, i) => expect(each < 0.97, prompt).toBe(i === least));
    places.add(stages[least]!);
  }
  expect(places.size).toBe(4);
});

test('what is told to visitors is the house’s own, and no two options stand close', () => {
  for (const id of ['how-strong-is-it', 'how-much-of-it'])
    for (const { options } of choicesDrawn(id, 60)) {
      const told = options.map(({ text }) => numbersShown(text)[0]!).sort((a, b) => a - b);
      expect(told).toHaveLength(4);
      for (let i = 1; i < told.length; i++) expect(told[i]! / told[i - 1]!).toBeGreaterThan(1.04);
    }
  const strong = choicesDrawn('how-strong-is-it', 60).filter(({ prompt }) =>
    prompt.includes('in the bottle'),
  );
  expect(strong.length).toBeGreaterThan(2);
});

test('Harrowmere’s own figures, as the house has them', () => {
  const { fillingStrength, bottlingStrength } = builtInHouse;
  const says = (asks: string) =>
    new Set(
      Array.from({ length: 400 }, (_, seed) => drawQuestion(kindOf('how-strong-is-it'), `say/${seed}`, builtInHouse)!)
        .filter(isChoiceQuestion)
        .filter(({ prompt }) => prompt.includes(asks))
        .map(({ options, answer }) => numbersShown(options[answer]!.text)[0]),
    ); // prettier-ignore
  expect([...says('into the cask')]).toEqual([Math.round(fillingStrength)]);
  expect([...says('in the bottle')]).toEqual([bottlingStrength]);
});
