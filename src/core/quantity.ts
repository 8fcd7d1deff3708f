// A number branded with its kind, and one constructor a kind.
import type { KindName } from './kinds.ts';

declare const kind: unique symbol;

/** A number of one kind; its unit is the one that `kinds.ts` names. */
export type Quantity<K extends KindName> = number & { readonly [kind]: K };

/** An amount of spirit, wash or low wines: litres at 20 °C and their strength. */
export interface Spirit {
  readonly volume: Quantity<'volume20'>;
  readonly strength: Quantity<'strength'>;
}

/** An amount of spirit with the pure alcohol in it. */
export interface Portion extends Spirit {
  readonly alcohol: Quantity<'alcohol'>;
}

/**
 * Brands a number with a kind that is known only as a name.
 * @example quantity('mass', 3) // 3 (the number itself, with a kind)
 */
export function quantity<K extends KindName>(_kind: K, n: number) {
  return n as Quantity<K>;
}

/** @example strength(40) // 40 (the number itself, with its kind) */
export function strength(n: number) {
  return n as Quantity<'strength'>;
}
/** @example massPercent(33.4) // 33.4 (the number itself, with its kind) */
export function massPercent(n: number) {
  return n as Quantity<'massPercent'>;
}
/** @example moleFraction(0.5) // 0.5 (the number itself, with its kind) */
export function moleFraction(n: number) {
  return n as Quantity<'moleFraction'>;
}
/** @example share(0.1) // 0.1 (the number itself, with its kind) */
export function share(n: number) {
  return n as Quantity<'share'>;
}
/** @example percent(77.5) // 77.5 (the number itself, with its kind) */
export function percent(n: number) {
  return n as Quantity<'percent'>;
}
/** @example litres(200) // 200 (the number itself, with its kind) */
export function litres(n: number) {
  return n as Quantity<'volume'>;
}
/** @example litres20(200) // 200 (the number itself, with its kind) */
export function litres20(n: number) {
  return n as Quantity<'volume20'>;
}
/** @example litresOfAlcohol(127) // 127 (the number itself, with its kind) */
export function litresOfAlcohol(n: number) {
  return n as Quantity<'alcohol'>;
}
/** @example alcoholPerTonne(410) // 410 (the number itself, with its kind) */
export function alcoholPerTonne(n: number) {
  return n as Quantity<'yield'>;
}
/** @example kilograms(3) // 3 (the number itself, with its kind) */
export function kilograms(n: number) {
  return n as Quantity<'mass'>;
}
/** @example density(998.2) // 998.2 (the number itself, with its kind) */
export function density(n: number) {
  return n as Quantity<'density'>;
}
/** @example celsius(20) // 20 (the number itself, with its kind) */
export function celsius(n: number) {
  return n as Quantity<'temperature'>;
}
/** @example kelvins(5) // 5 (the number itself, with its kind) */
export function kelvins(n: number) {
  return n as Quantity<'temperatureDifference'>;
}
/** @example kilopascals(101.325) // 101.325 (the number itself, with its kind) */
export function kilopascals(n: number) {
  return n as Quantity<'pressure'>;
}
/** @example hours(60) // 60 (the number itself, with its kind) */
export function hours(n: number) {
  return n as Quantity<'hours'>;
}
/** @example years(10) // 10 (the number itself, with its kind) */
export function years(n: number) {
  return n as Quantity<'years'>;
}
/** @example gravity(1.058) // 1.058 (the number itself, with its kind) */
export function gravity(n: number) {
  return n as Quantity<'gravity'>;
}
/** @example plato(12) // 12 (the number itself, with its kind) */
export function plato(n: number) {
  return n as Quantity<'plato'>;
}
/** @example litresPerKilogram(4) // 4 (the number itself, with its kind) */
export function litresPerKilogram(n: number) {
  return n as Quantity<'liquorRatio'>;
}
/** @example count(6) // 6 (the number itself, with its kind) */
export function count(n: number) {
  return n as Quantity<'count'>;
}
/** @example degreesProof(100) // 100 (the number itself, with its kind) */
export function degreesProof(n: number) {
  return n as Quantity<'degreesProof'>;
}
