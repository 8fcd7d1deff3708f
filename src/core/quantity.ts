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

/** Brands a number with a kind that is known only as a name. */
export function quantity<K extends KindName>(_kind: K, n: number) {
  return n as Quantity<K>;
}

export function strength(n: number) {
  return n as Quantity<'strength'>;
}
export function massPercent(n: number) {
  return n as Quantity<'massPercent'>;
}
export function moleFraction(n: number) {
  return n as Quantity<'moleFraction'>;
}
export function share(n: number) {
  return n as Quantity<'share'>;
}
export function percent(n: number) {
  return n as Quantity<'percent'>;
}
export function litres(n: number) {
  return n as Quantity<'volume'>;
}
export function litres20(n: number) {
  return n as Quantity<'volume20'>;
}
export function litresOfAlcohol(n: number) {
  return n as Quantity<'alcohol'>;
}
export function alcoholPerTonne(n: number) {
  return n as Quantity<'yield'>;
}
export function kilograms(n: number) {
  return n as Quantity<'mass'>;
}
export function density(n: number) {
  return n as Quantity<'density'>;
}
export function celsius(n: number) {
  return n as Quantity<'temperature'>;
}
export function kelvins(n: number) {
  return n as Quantity<'temperatureDifference'>;
}
export function kilopascals(n: number) {
  return n as Quantity<'pressure'>;
}
export function hours(n: number) {
  return n as Quantity<'hours'>;
}
export function years(n: number) {
  return n as Quantity<'years'>;
}
export function gravity(n: number) {
  return n as Quantity<'gravity'>;
}
export function plato(n: number) {
  return n as Quantity<'plato'>;
}
export function litresPerKilogram(n: number) {
  return n as Quantity<'liquorRatio'>;
}
export function count(n: number) {
  return n as Quantity<'count'>;
}
export function degreesProof(n: number) {
  return n as Quantity<'degreesProof'>;
}
