// What stands on the house's portrait. Expected by hand from what each house gives; what is not its own is not there, or marked.
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import type { Line } from '../../src/core/line/line.ts';
import type { FigureId } from '../../src/core/figures/index.ts';
import type { FigureStanding } from '../../src/core/figures/standing.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { plantPart } from '../../src/house/parts/plant.ts';
import { stockPart } from '../../src/house/parts/stock.ts';
import { figuresOfRoom, ownWords, portraitRoomNames, type HowKnown } from '../../src/house/portrait.ts';
import { letterHeight, inRanks, inTiers, wrappedLines } from '../../src/house/portrait-layout.ts';
import { portraitFoot } from '../../src/house/portrait-says.ts';
import { caskMix, namesOfCasks, vesselsIn } from '../../src/house/portrait-vessels.ts';
import { plainPlant, stills } from '../core/plants.ts';

const spaced = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const nobody = new Set<string>();
const ways = (isBuiltIn: boolean, of: Partial<Record<FigureId, FigureStanding>>, rest: FigureStanding, counted: Partial<Record<FigureId, number>> = {}): HowKnown => ({
  isBuiltIn,
  standing: (id) => (id in counted ? 'counted' : (of[id] ?? rest)),
  counted: (id) => counted[id],
}); // prettier-ignore
const figures = (of: Line, known: HowKnown, left = nobody) =>
  portraitRoomNames.flatMap((room) => figuresOfRoom(room, of, known, left));
const texts = (...given: Parameters<typeof figures>) =>
  Object.fromEntries(figures(...given).map(({ id, text }) => [id, spaced(text)]));
const harrowmere = plantPart.read(builtInParts.plant).value;
const larger = line({ ...builtInHouse, maltPerMash: 6500 } as typeof builtInHouse) as Line;

test('the built-in house hangs whole, with what its file gives and what products of that come to', () => {
  const all = texts(builtInLine(), ways(true, {}, 'set'));
  expect(Object.keys(all)).toHaveLength(22);
  // As content/houses/harrowmere.json has them; 1.5 t of malt at 1.5 t/h take an hour, and 6 mashes of it in 46 weeks 414 t.
  expect(all).toMatchObject({ maltPerMash: '1,500 kg', millingTime: '1.0 h', maltPerYear: '414,000 kg', wortVolume: '7,500 L', originalGravity: '1.058', finalGravity: '0.998', heartEnd: '62 % vol', fillingStrength: '63.5 % vol', yearsInWood: '10 years' }); // prettier-ignore
  expect(vesselsIn('mash', harrowmere).says).toBe('1 mash tun');
  expect(vesselsIn('wash', harrowmere)).toMatchObject({ says: '4 washbacks of wood' });
  expect(vesselsIn('wash', harrowmere).drawn.map(({ shape }) => shape)).toEqual(Array(4).fill('washback'));
  expect(vesselsIn('stills', harrowmere).says).toBe(
    '1 wash still, 1 spirit still, shell-and-tube condensers',
  );
});

test('a house with 3 wash stills, 2 spirit stills and 12 washbacks has so many drawn, each as large as it is', () => {
  const plant = {
    ...plainPlant,
    washbacks: [
      { number: 8, full: 40_000, working: 34_000, material: 'wood' as const },
      { number: 4, full: 5000, working: 4000, material: 'steel' as const, usual: ['material'] },
    ],
    washStills: [{ ...stills(3, 16_000, 0.05), condenser: 'worm-tub' as const }],
    spiritStills: [{ ...stills(2, 2000, 0.1), usual: ['condenser'] }],
  };
  const tuns = vesselsIn('wash', plant);
  expect(tuns.says).toBe('8 washbacks of wood, 4 washbacks'); // nobody has said of what the four are made
  expect(tuns.drawn.map(({ shape }) => shape)).toEqual([
    ...Array(8).fill('washback'),
    ...Array(4).fill('tub'),
  ]);
  expect(tuns.drawn[11]!.size).toBeCloseTo(0.5, 12); // an eighth of the litres
  const pots = vesselsIn('stills', plant);
  expect(pots.says).toBe('3 wash stills, 2 spirit stills, worm tubs');
  expect(pots.drawn.map(({ condenser }) => condenser)).toEqual([
    ...Array(3).fill('worm-tub'),
    undefined,
    undefined,
  ]);
  expect(pots.drawn[4]!.size).toBeCloseTo(0.5, 12);
  expect(vesselsIn('stills', { ...plant, scheme: 'thrice' }).says).toBe('3 wash stills, 1 intermediate still, 2 spirit stills, distilled three times, worm tubs, shell-and-tube condensers'); // prettier-ignore
  for (const room of ['mash', 'wash', 'stills'] as const)
    expect(vesselsIn(room, plantPart.empty)).toMatchObject({ says: '', isSign: true });
});

test('what is not known is left out, an estimate that is the built-in house’s still as well, and any other is marked', () => {
  const known = ways(false, { maltPerMash: 'set', maltPerYear: 'estimate', originalGravity: 'unknown', lowWinesStrength: 'estimate', heartVolume: 'estimate' }, 'unknown'); // prettier-ignore
  const found = figures(larger, known);
  expect(found.map(({ id, standing }) => [id, standing])).toEqual([
    ['maltPerYear', 'estimate'],
    ['maltPerMash', 'set'],
  ]);
  expect(texts(larger, known)).toEqual({ maltPerYear: '1,794,000 kg', maltPerMash: '6,500 kg' }); // 6.5 t × 6 × 46
  expect(portraitFoot(found, larger, known, () => true, true)).toEqual([
    '2 figures: 1 set and 1 (○) our estimate.',
    'An estimate hangs on what the house has not given.',
    'Where the house has named no vessel, one stands as a sign.',
  ]);
  expect(figures(larger, ways(false, {}, 'unknown'))).toEqual([]);
  expect(figures(larger, known, new Set(['maltPerYear', 'maltPerMash']))).toEqual([]);
});

test('the foot says whether what was counted agrees, and by how much it does not', () => {
  // 6 mashes in 46 weeks are 276; a hydrometer tells a tenth of a degree.
  const strength = builtInLine().heart.strength;
  const foot = (counted: Partial<Record<FigureId, number>>, hangs = false) => {
    const known = ways(true, { maltPerMash: 'set' }, 'computed', counted);
    return portraitFoot(figures(builtInLine(), known), builtInLine(), known, () => hangs, false).slice(1);
  };
  expect(foot({})).toEqual(['What is computed follows from what is given; nothing was counted to hold against it.']); // prettier-ignore
  expect(foot({ heartStrength: strength + 0.05 })).toEqual(['What was counted agrees with the rest.']);
  expect(foot({ heartStrength: strength, maltPerYear: 414_000 })).toEqual([
    'All 2 that were counted agree with the rest.',
  ]);
  expect(foot({ heartStrength: strength, maltPerYear: 207_000 })).toEqual(['What was counted does not all agree: malt a year, computed 2.0 times as much.']); // prettier-ignore
  expect(foot({ maltPerYear: 207_000 }, true)).toEqual(['1 that was counted cannot be held against the rest, as not all of that is known.']); // prettier-ignore
  const impossible = line({ ...builtInHouse, originalGravity: 1.03, finalGravity: 0.985 } as typeof builtInHouse) as Line; // prettier-ignore
  const known = ways(true, {}, 'computed');
  expect(portraitFoot(figures(impossible, known), impossible, known, () => false, false)[1]).toBe('Those of the fermenting do not agree with each other.'); // prettier-ignore
});

test('casks are of the register, else of what is filled, else of no told size', () => {
  const { groups } = stockPart.read(builtInParts.stock).value;
  expect(namesOfCasks(caskMix(groups, builtInHouse))).toBe('barrels, hogsheads, quarter casks and butts');
  const filled = caskMix([], { barrels: 20, hogsheads: 50 });
  expect([...filled]).toEqual([[200, 20], [250, 50], [500, 30]]); // prettier-ignore
  expect(namesOfCasks(filled)).toBe('hogsheads, butts and barrels');
  expect(namesOfCasks(caskMix([{ casks: 3, size: 180 }], undefined))).toBe('casks of 180\u00a0L');
  expect(namesOfCasks(caskMix([], undefined))).toBe('');
});

test('vessels and casks stay between their walls, above the floor, and are all there', () => {
  const place = { left: 20, right: 120, floor: 90, height: 40 };
  for (const many of [1, 2, 5, 12, 48]) {
    const found = inRanks(Array<number>(many).fill(1), place, [100, 160]);
    expect(new Set(found.map(({ of }) => of)).size).toBe(many);
    for (const { x, y, scale } of found) {
      expect(x - 50 * scale).toBeGreaterThanOrEqual(place.left - 1e-9);
      expect(x + 50 * scale).toBeLessThanOrEqual(place.right + 1e-9);
      expect(y).toBeLessThanOrEqual(place.floor);
      expect(y - 160 * scale).toBeGreaterThanOrEqual(place.floor - place.height - 1e-9);
    }
  }
  const casks = inTiers(new Map([[200, 60], [500, 39.9], [50, 0.1]]), place); // prettier-ignore
  expect(new Set(casks.map(({ r }) => r)).size).toBe(3); // the rarest size is there too
  for (const { x, y, r } of casks)
    expect(x - r >= 20 && x + r <= 120 && y + r <= 90 + 1e-9 && y - r >= 50).toBe(true);
});

test('words are one bounded line, long names shrink, and a long foot is broken where there are spaces', () => {
  expect(ownWords('  Since\n1890 \u202e <b>x</b>\u0000 ')).toBe('Since 1890 <b>x</b>');
  expect([...ownWords('🥃'.repeat(300))]).toHaveLength(100);
  expect(Number(letterHeight('x'.repeat(80), 11, 230, 0.86))).toBeLessThanOrEqual(230 / (80 * 0.86));
  expect(wrappedLines('one two three four', 9)).toEqual(['one two', 'three', 'four']);
});
