// What hangs on what: held against the definitions of the figures, and against the formulas that the book prints.
import { describe, expect, test } from 'vitest';
import { computedIds } from '../../src/core/figures/standing.ts';
import type { FigureId, NumberName } from '../../src/core/figures/index.ts';
import { computedFrom, usualMove } from '../../src/core/line/hangs-on.ts';
import { builtInHouse, numberFigures } from '../../src/house/figures.ts';

const all = Object.keys(numberFigures) as NumberName[];
const whole = computedFrom(builtInHouse, all);
const on = (id: FigureId) => [...(whole.get(id) ?? [])].sort();

/** By definition: a product hangs on its factors, and on nothing else. Sources: SI units; NBS Circular C440 for the wort; Balling for the wash. */
const definitions: readonly (readonly [FigureId, readonly NumberName[]])[] = [
  ['mashesPerYear', ['mashesPerWeek', 'weeksPerYear']],
  ['maltPerWeek', ['maltPerMash', 'mashesPerWeek']],
  ['maltPerYear', ['maltPerMash', 'mashesPerWeek', 'weeksPerYear']],
  ['firstWater', ['liquorRatio', 'maltPerMash']],
  ['millingTime', ['maltPerMash', 'millRate']],
  ['grits', ['flour', 'husk']],
  ['wortPlato', ['originalGravity']],
  ['wortExtract', ['originalGravity', 'wortVolume']],
  ['washStrength', ['finalGravity', 'originalGravity']],
  ['caskSize', ['barrels', 'hogsheads']],
  ['barley', ['barleyMoisture', 'maltMoisture', 'maltPerMash', 'maltingLoss']],
];
test.each(definitions)('%s hangs on what it is made of', (id, made) => {
  expect(on(id)).toEqual([...made].sort());
});

describe('what is known to bear on a figure does, and what cannot does not', () => {
  test.each<readonly [FigureId, readonly NumberName[], readonly NumberName[]]>([
    ['casksInStore', ['mashesPerWeek', 'weeksPerYear', 'yearsInWood', 'fillingStrength', 'barrels'], ['bottleSize', 'husk', 'yeast', 'bottlingStrength']],
    ['lowWinesStrength', ['originalGravity', 'finalGravity', 'washReflux', 'washEnd'], ['maltPerMash', 'wortVolume', 'heartEnd', 'spiritReflux']],
    ['heartStrength', ['heartEnd', 'spiritReflux'], ['wortVolume', 'mashesPerWeek', 'yearsInWood']],
    ['bottlesPerCask', ['bottleSize', 'bottlingStrength', 'yearsInWood', 'alcoholLoss'], ['wortVolume', 'mashesPerWeek', 'weeksPerYear']],
    ['maturedStrength', ['fillingStrength', 'storeHumidity', 'yearsInWood'], ['bottlingStrength', 'barrels', 'wortVolume']],
    ['firstWaterTemperature', ['mashTemperature', 'gristTemperature'], ['maltPerMash', 'lastWater']],
  ])('%s', (id, bears, cannot) => {
    expect(on(id)).toEqual(expect.arrayContaining([...bears]));
    for (const each of cannot) expect(on(id)).not.toContain(each);
  });
}); // prettier-ignore

test('only what is asked for is told, and nothing hangs on nothing', () => {
  expect(computedFrom(builtInHouse, [])).toEqual(new Map());
  expect([...computedFrom(builtInHouse, ['millRate']).entries()]).toEqual([['millingTime', ['millRate']]]);
  expect(computedFrom(builtInHouse, ['yeast'])).toEqual(new Map()); // it moves the pace of the fermentation, which the line does not hold
  for (const id of whole.keys()) expect(computedIds).toContain(id);
});

test('a figure that counts in one house only hangs nothing on it in another', () => {
  expect([...computedFrom(builtInHouse, ['foreshotsStrength']).keys()]).toEqual([]);
  const byStrength = { ...builtInHouse, foreshotsBy: 'strength' } as typeof builtInHouse;
  expect([...computedFrom(byStrength, ['foreshotsStrength']).keys()]).toContain('foreshotsTaken');
});

test('a house that does not run has nothing that hangs', () => {
  const broken = { ...builtInHouse, finalGravity: 1.09 } as typeof builtInHouse;
  expect(computedFrom(broken, all)).toEqual(new Map());
});

test.each(all)('%s is moved within its limits, to both sides of where it stands', (figure) => {
  const { range } = numberFigures[figure];
  for (const at of [range[0], builtInHouse[figure], range[1]]) {
    const [low, high] = usualMove(figure, at);
    expect(low).toBeGreaterThanOrEqual(range[0]);
    expect(high).toBeLessThanOrEqual(range[1]);
    expect(low).toBeLessThanOrEqual(at);
    expect(high).toBeGreaterThanOrEqual(at);
    expect(high).toBeGreaterThan(low);
  }
});
