// The pieces that may be added: none speaks to children of drinking, every number that is typed is reckoned by published values, every figure of the house is live.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { sources } from '../../src/core/sources.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { line as lineOf, type Line } from '../../src/core/line/line.ts';
import { comings } from '../../src/walk/audience-kinds.ts';
import { pieceOfSuggestion, suggestedFor, type Suggestion } from '../../src/walk/audience-pieces.ts';
import { firstWalk } from '../../src/walk/walk.ts';

const root = join(import.meta.dirname, '..', '..');
const all = Object.entries(parse(readFileSync(join(root, 'content', 'walk-pieces.yaml'), 'utf8')) as Record<string, Omit<Suggestion, 'id'>>).map(([id, each]): Suggestion => ({ id, ...each })); // prettier-ignore
const reference = (name: string) => JSON.parse(readFileSync(join(root, 'src', 'published', 'reference', `${name}.json`), 'utf8')); // prettier-ignore
const says = (id: string) => all.find((each) => each.id === id)!.says;

test('there is one for each kind of visitor and each stage, with what it rests on', () => {
  for (const coming of comings)
    for (const stage of stages)
      expect(all.filter((each) => each.coming === coming && each.stage === stage).length, `${coming}, ${stage}`).toBeGreaterThan(0); // prettier-ignore
  for (const { id, rests } of all)
    expect(rests in sources || ['common practice', 'memory', 'derived'].includes(rests), id).toBe(true);
});

const DRINKING =
  /\b(?:drink|drank|drunk|tast|sip|swallow|alcohol|whisk|spirit|dram|wine|beer|ale|liquor|booze|tips|bottle|proof|strength|sample)/i;
test('children are told nothing of drinking, and of hot and dangerous things only from behind the line', () => {
  const theirs = all.filter(({ coming }) => coming === 'children');
  expect(theirs.length).toBeGreaterThan(7);
  for (const suggestion of theirs) expect(pieceOfSuggestion(suggestion, builtInLine()).text, suggestion.id).not.toMatch(DRINKING); // prettier-ignore
  expect(DRINKING.test(says('us-proof'))).toBe(true); // the test can fail
  for (const id of ['children-porridge', 'children-copper']) expect(says(id)).toMatch(/behind the line/);
  expect(says('children-gas')).toMatch(/nobody leans over/);
});

test('maltose makes as much ethanol and carbon dioxide as its atoms allow', () => {
  const weight = Object.fromEntries((reference('atomic-weights').rows as { element: string; weight: number }[]).map(({ element, weight }) => [element, weight])) as Record<'C' | 'H' | 'O', number>; // prettier-ignore
  const of = (c: number, h: number, o: number) => c * weight.C + h * weight.H + o * weight.O;
  const share = (mass: number) => ((100 * 4 * mass) / of(12, 22, 11)).toFixed(1); // C12H22O11 + H2O = 4 C2H5OH + 4 CO2
  expect(says('chemist-balance')).toContain(
    `at most ${share(of(2, 6, 1))} grams of ethanol and ${share(of(1, 0, 2))} of carbon dioxide`,
  );
});

test('the relative volatility is that of two rows of Carey and Lewis', () => {
  const { data } = reference('vle-ethanol-water-101325') as { data: { x: number; y: number }[] };
  const { x, y } = data.find((row) => row.x === 0.0966)!;
  expect(says('chemist-volatility')).toContain(`of ${x} the vapour has ${y}`);
  expect(says('chemist-volatility').replace(/\s+/g, ' ')).toContain(`a relative volatility of ${(y / (1 - y) / (x / (1 - x))).toFixed(1)}`); // prettier-ignore
  const alike = data.find((row) => row.x === row.y)!;
  expect(says('chemist-volatility')).toContain(`at ${alike.x.toFixed(3)} it is 1`);
});

test('pounds and gallons are those of the handbooks, and grains are counted by their weight', () => {
  const units = reference('customary-units');
  expect(says('us-tonne')).toContain(`about ${Math.round(1000 / units.pound_kg).toLocaleString('en-GB')} pounds`); // prettier-ignore
  expect(says('us-tonne')).toContain(`a short ton is ${units.short_ton_lb.toLocaleString('en-GB')}`);
  expect(says('us-gallon').replace(/\s+/g, ' ')).toContain(`A US gallon is ${units.us_gallon_L.toFixed(3)} litres; an imperial one is ${units.imperial_gallon_L.toFixed(3)}`); // prettier-ignore
  expect(says('children-barley')).toContain('twenty to twenty-five thousand'); // 1,000 g of 50 or of 40 g a thousand
});

test('their figures follow the house, and are kept where they stand', () => {
  const other = lineOf({ ...builtInHouse, heartEnd: 60, maltPerMash: 3000 } as typeof builtInHouse) as Line;
  const yieldPiece = all.find(({ id }) => id === 'trade-yield')!;
  expect(pieceOfSuggestion(yieldPiece, builtInLine()).text).toContain('go off it at 62\u202f%\u00a0vol'); // content/houses/harrowmere.json
  expect(pieceOfSuggestion(yieldPiece, other).text).toContain('go off it at 60\u202f%\u00a0vol');
  expect(
    pieceOfSuggestion(
      all.find(({ id }) => id === 'us-grist')!,
      other,
    ).text,
  ).toBe('The malt of one mash weighs 3,000\u00a0kg, which is 6,614\u00a0lb.'); // 6,613.9
  for (const suggestion of all) {
    const { text, figures, whom } = pieceOfSuggestion(suggestion, other);
    expect(text, suggestion.id).not.toMatch(/[{}]|NaN|undefined/);
    expect(whom).toBe(suggestion.coming);
    for (const { at, words } of figures) expect(text.slice(at, at + words.length)).toBe(words);
  }
});

test('only those for who comes are offered, in a room of their stage, until they are said there; never a figure that is not known', () => {
  const walk = { ...firstWalk('Saturday'), coming: 'trade' as const };
  const offered = suggestedFor(walk, all, builtInLine(), []);
  expect(offered.map(({ suggestion }) => suggestion.coming)).toEqual(offered.map(() => 'trade'));
  for (const { suggestion, room } of offered) expect(walk.rooms[room]!.stages).toContain(suggestion.stage);
  const { room, piece } = offered[0]!;
  const said = { ...walk, rooms: walk.rooms.map((each, i) => (i === room ? { ...each, pieces: [piece] } : each)) }; // prettier-ignore
  expect(suggestedFor(said, all, builtInLine(), [])).toHaveLength(offered.length - 1);
  expect(suggestedFor(walk, all, builtInLine(), ['millRate']).map(({ suggestion }) => suggestion.id)).not.toContain('trade-mill'); // prettier-ignore
  expect(suggestedFor(firstWalk('Sunday'), all, builtInLine(), [])).toEqual([]);
});
