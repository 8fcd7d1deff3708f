// When a sentence of some houses is told: at the edge of each condition, by its rule as the text states it.
import { expect, test } from 'vitest';
import type { Line } from '../../src/core/line/line.ts';
import { conditions, isCondition, type Condition } from '../../src/house/conditions.ts';
import type { NumberName } from '../../src/house/figures.ts';

const told = (is: Condition, line: object, unknown: readonly NumberName[] = []) =>
  conditions[is](line as Line, unknown);
/** The strength in the cask after its years, filled at 64 % vol. */
const aged = (strength: number) => ({ filling: { strength: 64 }, matured: { strength } });

test('strength in the wood falls, rises or is steady within a twentieth of one per cent', () => {
  const said = (strength: number) =>
    (['strength-falls', 'strength-steady', 'strength-rises'] as const).map((is) => told(is, aged(strength)));
  expect(said(63.94)).toEqual([true, false, false]);
  for (const steady of [63.96, 64, 64.04]) expect(said(steady)).toEqual([false, true, false]);
  expect(said(64.06)).toEqual([false, false, true]);
});

test('a store whose humidity nobody knows has no say of strength', () => {
  for (const is of ['strength-falls', 'strength-steady', 'strength-rises'] as const)
    for (const strength of [60, 64, 66]) expect(told(is, aged(strength), ['storeHumidity'])).toBe(false);
  expect(told('store-not-known', {}, ['storeHumidity'])).toBe(true);
  expect(told('store-not-known', {}, ['heartEnd'])).toBe(false);
});

test.each([
  // half a litre of water is none: a hose holds more
  ['charge-is-diluted', 'charge-is-not-diluted', (litres: number) => ({ round: { dilution: litres } }), 0.5, 0.6],
  ['reduced-for-filling', 'filled-as-it-comes', (litres: number) => ({ filling: { water: litres } }), 0.5, 0.6],
  ['reduced-for-bottling', 'bottled-as-it-comes', (litres: number) => ({ bottling: { water: litres } }), 0.5, 0.6],
  // 1.000 is the gravity of water, and no lighter
  ['wash-heavier-than-water', 'wash-lighter-than-water', (gravity: number) => ({ house: { finalGravity: gravity } }), 0.999, 1],
  // “44 hours are enough for the alcohol”
  ['long-enough-for-the-alcohol', 'emptied-before-that', (hours: number) => ({ house: { fermentationHours: hours } }), 43.9, 44],
] as const)('%s, and %s otherwise, with no house between', (is, otherwise, line, below, from) => {
  expect([told(is, line(below)), told(otherwise, line(below))]).toEqual([false, true]);
  expect([told(is, line(from)), told(otherwise, line(from))]).toEqual([true, false]);
}); // prettier-ignore

test.each([
  // whisky is bottled at 40 % vol or more: 40 is not below it
  ['below-forty', (strength: number) => ({ matured: { strength } }), 40, 39.9],
  // three years in wood make whisky: three are not too few
  ['young', (yearsInWood: number) => ({ house: { yearsInWood } }), 3, 2.9],
  // strong beer goes to ten per cent
  ['as-strong-as-strong-beer', (strength: number) => ({ wash: { strength } }), 10, 9.9],
  // all that the malt had is 100 %
  ['more-extract-than-the-malt-had', (efficiency: number) => ({ mash: { efficiency } }), 100, 100.1],
] as const)('%s', (is, line, not, so) => {
  expect([told(is, line(not)), told(is, line(so))]).toEqual([false, true]);
}); // prettier-ignore

test('three distillations: none without an intermediate still, a part where it leaves nothing weak', () => {
  const said = (round: object) => [
    told('distilled-thrice', { round }),
    told('part-distilled-thrice', { round }),
  ];
  expect(said({})).toEqual([false, false]);
  expect(said({ between: { weak: { volume: 0 } } })).toEqual([false, true]);
  expect(said({ between: { weak: { volume: 0.1 } } })).toEqual([true, false]);
});

test('one bottle is told of where sizes are not mixed', () => {
  expect([told('one-bottle', { bottling: { isMixed: false } }), told('one-bottle', { bottling: { isMixed: true } })]).toEqual([true, false]);
  expect([isCondition('young'), isCondition('toString'), isCondition(undefined)]).toEqual([true, false, false]);
}); // prettier-ignore
