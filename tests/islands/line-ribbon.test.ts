// The ribbon of the front page: its widths are litres of pure alcohol, so what it narrows by is what is lost.
// The balances are conservation of mass: alcohol that goes in comes out (Nicol 2003 on the round; no figure of the code is asserted).
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { line, type Line } from '../../src/core/line/line.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { flowsOfLine, roomFor, roomOf } from '../../src/islands/line-flows.ts';
import { lineHandles } from '../../src/islands/line-handles.ts';
import { levelsOf } from '../../src/islands/line-levels.ts';
import { ribbonOf, ribbonScale, type RibbonCourse } from '../../src/islands/line-ribbon.ts';

const course: RibbonCourse = { bounds: [0, 100, 200, 300, 400, 500, 600, 700], perAcross: 1, isDown: false };

/** The line of Harrowmere with some figures changed; nothing where the house would not run. */
function changed(figures: object): Line | undefined {
  const result = line({ ...builtInHouse, ...figures } as typeof builtInHouse);
  return 'refused' in result ? undefined : result;
}
const houses = fc
  .record({
    wortVolume: fc.double({ min: 2000, max: 7500, noNaN: true }),
    originalGravity: fc.double({ min: 1.03, max: 1.058, noNaN: true }),
    heartEnd: fc.double({ min: 55, max: 68, noNaN: true }),
    foreshotsShare: fc.double({ min: 0, max: 8, noNaN: true }),
    yearsInWood: fc.integer({ min: 1, max: 30 }),
    alcoholLoss: fc.double({ min: 0, max: 5, noNaN: true }),
    filterLoss: fc.double({ min: 0, max: 3, noNaN: true }),
    indrink: fc.double({ min: 0, max: 4, noNaN: true }),
  })
  .map(changed)
  .filter((each) => each !== undefined);

test('what narrows is what is lost, to 1e-9 of the width', () => {
  fc.assert(
    fc.property(houses, (line) => {
      const flows = flowsOfLine(line);
      const { widths, losses, scale } = ribbonOf(flows, roomOf(flows, flows), course);
      expect(widths).toHaveLength(losses.length + 1);
      losses.forEach((lost, i) =>
        expect(Math.abs(widths[i]! - widths[i + 1]! - lost)).toBeLessThan(1e-9 * widths[0]!),
      );
      expect(Math.abs(widths[0]! - flows.promise * scale)).toBeLessThan(1e-12 * widths[0]!);
      expect(Math.abs(widths.at(-1)! - line.bottling.alcohol * scale)).toBeLessThan(1e-9 * widths[0]!);
      const charge = flows.lowWines + flows.round;
      expect(Math.abs(charge - line.charge.alcohol)).toBeLessThan(1e-9 * charge);
    }),
    { numRuns: 60 },
  );
});

test('a malt that could give less than the wash has widens the ribbon, and nothing is lost there', () => {
  const flows = { ...flowsOfLine(changed({})!), promise: 500 };
  const lost = { ...flows.lost, left: 0 };
  const { widths, losses } = ribbonOf({ ...flows, lost }, { ribbon: 800, round: 600 }, course);
  expect(losses[0]).toBe(0);
  expect(widths[1]).toBeGreaterThan(widths[0]!);
});

test('the drawing has room for all of it, and the room stands still while a figure moves a little', () => {
  const before = flowsOfLine(changed({})!);
  const after = flowsOfLine(changed({ heartEnd: 65 })!);
  expect(after.round).toBeGreaterThan(before.round * 1.2);
  expect(roomOf(before, after)).toEqual(roomOf(before, before));
  expect(ribbonScale({ ribbon: 1600, round: 1200 })).toBeCloseTo(
    ribbonScale({ ribbon: 800, round: 600 }) / 2,
    12,
  );
  expect(roomFor(100, 1000)).toBeGreaterThanOrEqual(1000);
  const { round, spirit } = ribbonOf(after, roomOf(before, after), course);
  const across = [...`${round} ${spirit}`.matchAll(/-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y));
  expect(Math.min(...across)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...across)).toBeLessThanOrEqual(100);
});

test('a knob stands where its figure is, gives it back, and steps up its rail', () => {
  const now = changed({})!;
  for (const by of ['share', 'volume', 'minutes', 'strength'] as const) {
    const line = changed({ foreshotsBy: by })!;
    for (const handle of lineHandles(line, line, line)) {
      const value = line.house[handle.figure];
      expect(handle.part, handle.id).toBeGreaterThan(0);
      expect(handle.part, handle.id).toBeLessThan(1);
      expect(handle.valueAt(handle.part), handle.id).toBeCloseTo(value, 6);
      expect(handle.says, handle.id).toMatch(/\d/);
      const [up, down] = [handle.stepped(1) - value, handle.stepped(-1) - value];
      expect(up, handle.id).toBeCloseTo(-down, 9);
      expect(Math.sign(handle.valueAt(1) - value), handle.id).toBe(Math.sign(up));
    }
  }
  const malt = (figures: object) => {
    const moved = changed(figures)!;
    return lineHandles(moved, now, moved).find(({ id }) => id === 'malt')!;
  };
  expect(malt({ maltPerMash: 1900 }).part / malt({}).part).toBeCloseTo(1900 / 1500, 9); // one scale, from nothing
  expect(malt({ maltPerMash: 4000 }).part).toBeLessThanOrEqual(1);
});

test('vessels are as full as their volumes: twice the charge, twice as high; a cask by what is left in it', () => {
  const [one, more] = [changed({ wortVolume: 3000 })!, changed({ wortVolume: 6000 })!];
  const [was, is] = [levelsOf(one, one, more), levelsOf(more, one, more)];
  for (const name of ['mash-tun', 'washback', 'wash-still', 'spirit-still', 'bottle'] as const) {
    expect(is[name] / was[name], name).toBeCloseTo(2, 6);
    expect(is[name], name).toBeLessThanOrEqual(1);
  }
  const cask = (years: number) => levelsOf(changed({ yearsInWood: years })!, one, one).cask;
  expect(cask(1)).toBeLessThan(0.98); // the dry wood has drunk 2 % of it
  expect(cask(20)).toBeLessThan(cask(10));
});

test('what is heard of a handle has in it what is seen beside it', () => {
  const built = changed({})!;
  const handles = lineHandles(built, built, built);
  expect(handles).toHaveLength(6);
  for (const { label, short } of handles) expect(label.toLowerCase()).toContain(short.toLowerCase());
});
