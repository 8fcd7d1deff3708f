// A newer release put together with what a person gave: what only gave way is nobody's change, and is reckoned anew.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changesOf } from '../../src/handing/changed.ts';
import { mergedRelease, offerOf, type Three } from '../../src/handing/merge.ts';
import type { GaveWay } from '../../src/core/line/change.ts';
import type { House } from '../../src/core/line/house.ts';
import { type WholeHouse } from '../../src/house/codec.ts';
import { proposeFigure } from '../../src/house/propose.ts';
import { enterFigure } from '../../src/house/entering.ts';
import { builtInHouse, type NumberName } from '../../src/house/figures.ts';
import { wayWith } from '../../src/house/line-with.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { line } from '../../src/core/line/line.ts';
import type { LineWay } from '../../src/house/line-of.ts';
import { plainPlant } from '../core/plants.ts';
import { afterTyping, knownOf, knownPart } from '../../src/house/parts/known.ts';
import { withPart } from '../../src/house/parts/part.ts';
import sucrose from '../../src/published/reference/sucrose.json' with { type: 'json' };

const withKnown = (of: WholeHouse, house: House, name: NumberName, gave: readonly GaveWay[]): WholeHouse => {
  const next = afterTyping(knownOf(of), name, gave.map(({ figure }) => figure)); // prettier-ignore
  return { ...of, house, parts: withPart(of.parts, knownPart, next) };
};
/** A house after a figure was typed, as the page takes it: the first time by what is known, then by the usual way. */
function typed(of: WholeHouse, name: NumberName, value: number, way: LineWay = line): WholeHouse {
  const known = knownOf(of);
  const next = name in known.given ? proposeFigure(of.house, name, value, undefined, way) : enterFigure(of.house, name, value, known, way); // prettier-ignore
  if ('problem' in next) throw new Error(next.problem);
  return withKnown(of, next.house, name, next.gave);
}
const after = (of: WholeHouse, figures: Readonly<Partial<Record<NumberName, number>>>, way: LineWay = line): WholeHouse =>
  Object.entries(figures).reduce((house, [name, value]) => typed(house, name as NumberName, value, way), of); // prettier-ignore
const start: WholeHouse = { name: 'Sallowby', house: builtInHouse, parts: { known: { given: {}, counted: {} } } }; // prettier-ignore
const release1 = after(start, { maltPerMash: 1800, wortVolume: 9000, mashesPerWeek: 5 });
const whats = (all: readonly { readonly what: string }[]) => all.map(({ what }) => what);

/** Sugar in a wort, % by mass, between the rows of NBS Circular C440, Table 114 (from memory, as that file says). */
function sugarAt(sg: number): number {
  const above = sucrose.rows.findIndex((row) => row.SG2020_vac >= sg);
  const [low, high] = [sucrose.rows[above - 1]!, sucrose.rows[above]!];
  return low.P + ((high.P - low.P) * (sg - low.SG2020_vac)) / (high.SG2020_vac - low.SG2020_vac);
}
const WATER = 0.9982; // kg/L at 20 °C; IAPWS
const extractPerLitre = (sg: number) => (sg * WATER * sugarAt(sg)) / 100;

test('a colleague who typed the mashes and the wort is asked about the mashes, and his wort goes with the new malt', () => {
  const three: Three = {
    had: release1,
    yours: after(release1, { mashesPerWeek: 6, wortVolume: 9500 }),
    theirs: after(release1, { maltPerMash: 2000, mashesPerWeek: 7 }),
  };
  // What the book moved by itself: his gravities, and the owner's wort.
  expect(three.yours.house.originalGravity).not.toBe(release1.house.originalGravity);
  expect(three.theirs.house.wortVolume).toBeCloseTo(10_000, 6);
  const offer = offerOf(three);
  expect(whats(offer.clashes)).toEqual(['mashesPerWeek']);
  expect(offer.stays).toEqual([{ what: 'wortVolume', was: '9,000\u00a0L', is: '9,500\u00a0L' }]);
  expect(whats(offer.released).sort()).toEqual(['maltPerMash', 'mashesPerWeek']);

  const here = mergedRelease(three, ['mashesPerWeek']);
  if ('problem' in here) throw new Error(here.problem);
  expect(here.house).toMatchObject({ maltPerMash: 2000, wortVolume: 9500, mashesPerWeek: 6 });
  // By hand: 1,800 kg of malt with 77.5 % extract has 1,395 kg; 9,000 L at 1.058 hold 0.1509 kg/L, 1,358 kg: 97.3 %.
  const efficiency = (100 * extractPerLitre(1.058) * 9000) / (1800 * 0.775);
  expect(efficiency).toBeCloseTo(97.3, 0);
  // 97.3 % of the 1,550 kg in 2,000 kg of malt are 1,509 kg; in 9,500 L that is 0.1588 kg/L, a gravity of 1.0610.
  expect(here.house.originalGravity).toBeCloseTo(1.061, 4);
  expect((100 * extractPerLitre(here.house.originalGravity) * 9500) / (2000 * 0.775)).toBeCloseTo(efficiency, 1); // prettier-ignore
  // The yeast leaves the same part: −0.51 °P from 14.3 °P is −0.54 °P from 15.0 °P, by Balling a gravity of 0.9979.
  expect(here.house.finalGravity).toBeCloseTo(0.9979, 4);
  const theirs = mergedRelease(three, []);
  expect(theirs).toMatchObject({ house: { maltPerMash: 2000, wortVolume: 9500, mashesPerWeek: 7 } });
});

test('of two figures that were given before, the one that follows gave way', () => {
  const owned = after(release1, { originalGravity: 1.059 });
  const had = { ...owned, house: { ...owned.house, wortVolume: 9000 as never } };
  expect(changesOf(had, typed(had, 'originalGravity', 1.062)).figures).toEqual(['originalGravity']);
  expect(changesOf(had, typed(had, 'wortVolume', 9300)).figures).toEqual(['wortVolume']);
});

test('where the reader kept the gravity, the malt that gave way is not his change either', () => {
  const had = after(start, { maltPerMash: 1790, wortVolume: 9000 });
  const kept = proposeFigure(had.house, 'wortVolume', 9300, 'maltPerMash');
  if ('problem' in kept) throw new Error(kept.problem);
  expect(kept.house.originalGravity).toBe(had.house.originalGravity);
  const changes = changesOf(had, withKnown(had, kept.house, 'wortVolume', kept.gave));
  expect(changes).toEqual({ figures: ['wortVolume'], spared: ['originalGravity'] });
});

test('readings that move alone are each a change', () => {
  const had = { ...release1, house: { ...release1.house, holds: 'readings' as const } };
  const yours = after(had, { originalGravity: 1.05, wortVolume: 9400 });
  expect([...changesOf(had, yours).figures].sort()).toEqual(['originalGravity', 'wortVolume']);
});

test('more wort than the release’s malt can fill is said, in a sentence', () => {
  const yours = after(release1, { wortVolume: 9400, originalGravity: 1.056 });
  const theirs = after(release1, { maltPerMash: 1200 });
  const here = mergedRelease({ had: release1, yours, theirs }, []);
  expect(here).toMatchObject({ problem: expect.stringMatching(/extract/) });
});

test('whatever each typed, it is found, it holds, and the wort has the same part of the malt’s extract', () => {
  const one = fc.constantFrom<NumberName>('maltPerMash', 'wortVolume', 'originalGravity', 'yeast', 'fermentability'); // prettier-ignore
  const values = {
    maltPerMash: 1900,
    wortVolume: 9200,
    originalGravity: 1.06,
    yeast: 35,
    fermentability: 86,
  };
  const part = ({ house }: WholeHouse) =>
    (extractPerLitre(house.originalGravity) * house.wortVolume) / (house.maltPerMash * house.solubleExtract);
  const had = after(release1, { originalGravity: 1.058 });
  fc.assert(
    fc.property(one, one, (a, b) => {
      fc.pre(a !== b);
      const yours = typed(had, a, values[a as 'yeast']);
      const theirs = typed(had, b, values[b as 'yeast']);
      expect(whats(offerOf({ had, yours, theirs }).stays)).toEqual([a]);
      expect(whats(offerOf({ had, yours, theirs }).released)).toEqual([b]);
      const here = mergedRelease({ had, yours, theirs }, []);
      if ('problem' in here) throw new Error(here.problem);
      expect(here.house).toMatchObject({ [a]: values[a as 'yeast'], [b]: values[b as 'yeast'] });
      expect(part(here) / part(had)).toBeCloseTo(1, 2);
    }),
    { numRuns: 25 },
  );
});

test('a house of three distillations, with a cut that two cannot give, is put together by its own stills', () => {
  const parts = { ...start.parts, plant: { ...plainPlant, scheme: 'thrice' } };
  const way = wayWith(parts);
  const of = (figures: Readonly<Partial<Record<NumberName, number>>>, base: WholeHouse) => after(base, figures, way);
  const had = of({ heartEnd: 78, maltPerMash: 1800, wortVolume: 9000 }, { ...start, parts });
  expect(isRefusal(line(had.house))).toBe(true);
  const three: Three = { had, yours: of({ mashesPerWeek: 6 }, had), theirs: of({ maltPerMash: 2000, heartEnd: 79 }, had) };
  const offer = offerOf(three);
  // What was typed, and not the wort that went with the malt.
  expect(whats(offer.released).sort()).toEqual(['heartEnd', 'maltPerMash']);
  const here = mergedRelease(three, []);
  if ('problem' in here) throw new Error(here.problem);
  expect(here.house).toMatchObject({ heartEnd: 79, maltPerMash: 2000, mashesPerWeek: 6 });
  // By proportion: the same gravity from 2,000 kg where 1,800 kg filled 9,000 L.
  expect(here.house.wortVolume).toBeCloseTo(10_000, 6);

  // A release that first names such stills brings its cut with them, and the reader's mashes are put into it.
  const before: WholeHouse = { ...start, parts: { known: start.parts.known } };
  const first = mergedRelease({ had: before, yours: of({ mashesPerWeek: 6 }, before), theirs: of({ heartEnd: 78 }, { ...before, parts }) }, []);
  if ('problem' in first) throw new Error(first.problem);
  expect(first.house).toMatchObject({ heartEnd: 78, mashesPerWeek: 6 });
  expect(first.parts.plant).toEqual(parts.plant);
}); // prettier-ignore
