// The one table of the units that people say: what each measures and how large it is; `reading/unit-names.ts` has their names.
import { alcoholFromUsProofGallons } from './spirit/proof.ts';

/** What a unit measures. */
export type Dimension =
  | 'mass' | 'volume' | 'alcohol' | 'yield' | 'percent' | 'strength' | 'temperature' | 'temperatureDifference' | 'time' | 'smoke'
  | 'length' | 'area' | 'pressure' | 'energy' | 'money' | 'gravity'; // prettier-ignore

export interface Measure {
  /** As the handbook prints it. */
  readonly unit: string;
  readonly dimension: Dimension;
  /** In kg, L, L pure alcohol, h, mm, m², kPa or MJ; none where it is no mere multiple. */
  readonly size?: number;
  /** Names no one size until the country is known; its size is the British one. A field does not read it. */
  readonly local?: true;
  /** Read only where it is named: a bare number is never guessed to be in it. */
  readonly onlyNamed?: true;
}

const US_GALLON = 3.785411784; // litres; 231 cubic inches, NIST Handbook 44
const UK_GALLON = 4.54609; // litres; Weights and Measures Act 1985
const POUND = 0.45359237; // kg; international yard and pound agreement 1959
const INCH = 25.4; // mm; the same agreement
const POUND_ON_INCH = 6.894757293; // kPa; a pound-force on a square inch, NIST Special Publication 811, B.8
const ACRE = 4046.8564224; // m²; 4,840 square yards of the same agreement
const YEAR = 365.25 * 24; // h; the Julian year

// prettier-ignore
export const measures: readonly Measure[] = [
  { unit: 'L pure alcohol/t', dimension: 'yield', size: 1 },
  { unit: 'hL pure alcohol', dimension: 'alcohol', size: 100 },
  { unit: 'L pure alcohol', dimension: 'alcohol', size: 1 },
  { unit: 'kL pure alcohol', dimension: 'alcohol', size: 1000, onlyNamed: true },
  { unit: 'cL pure alcohol', dimension: 'alcohol', size: 0.01, onlyNamed: true },
  { unit: 'mL pure alcohol', dimension: 'alcohol', size: 0.001, onlyNamed: true },
  { unit: 'US proof gal', dimension: 'alcohol', size: alcoholFromUsProofGallons(1) },
  { unit: 'hL', dimension: 'volume', size: 100 },
  { unit: 'cL', dimension: 'volume', size: 0.01 },
  { unit: 'mL', dimension: 'volume', size: 0.001 },
  { unit: 'L', dimension: 'volume', size: 1 },
  { unit: 'US gal', dimension: 'volume', size: US_GALLON },
  { unit: 'UK gal', dimension: 'volume', size: UK_GALLON },
  { unit: 'gal', dimension: 'volume', size: UK_GALLON, local: true },
  { unit: 'fl oz', dimension: 'volume', size: UK_GALLON / 160, local: true }, // 160 to the imperial gallon
  { unit: 'pints', dimension: 'volume', size: UK_GALLON / 8, local: true },
  { unit: 'm³', dimension: 'volume', size: 1000 },
  { unit: 'kL', dimension: 'volume', size: 1000, onlyNamed: true },
  { unit: 'dL', dimension: 'volume', size: 0.1, onlyNamed: true },
  { unit: 'US tons', dimension: 'mass', size: 2000 * POUND },
  { unit: 'UK tons', dimension: 'mass', size: 2240 * POUND },
  { unit: 't', dimension: 'mass', size: 1000 },
  { unit: 'cwt', dimension: 'mass', size: 112 * POUND },
  { unit: 'kg', dimension: 'mass', size: 1 },
  { unit: 'g', dimension: 'mass', size: 0.001 },
  { unit: 'mg', dimension: 'mass', size: 1e-6 },
  { unit: 'lb', dimension: 'mass', size: POUND },
  { unit: 'ppm', dimension: 'smoke' },
  { unit: '% vol', dimension: 'strength' },
  { unit: '% mass', dimension: 'strength' },
  { unit: '%', dimension: 'percent' },
  { unit: '° US proof', dimension: 'strength' },
  { unit: '° former UK proof', dimension: 'strength' },
  { unit: '° over proof', dimension: 'strength' },
  { unit: '° under proof', dimension: 'strength' },
  { unit: '° proof', dimension: 'strength', local: true },
  { unit: '° gravity', dimension: 'gravity' },
  { unit: '°P', dimension: 'gravity' },
  { unit: '° Brix', dimension: 'gravity' },
  { unit: '°F', dimension: 'temperature' },
  { unit: '°C', dimension: 'temperature' },
  { unit: '°', dimension: 'temperature' },
  { unit: 'K', dimension: 'temperatureDifference' },
  { unit: 'points', dimension: 'percent' },
  { unit: 'min', dimension: 'time', size: 1 / 60 },
  { unit: 's', dimension: 'time', size: 1 / 3600 },
  { unit: 'h', dimension: 'time', size: 1 },
  { unit: 'days', dimension: 'time', size: 24 },
  { unit: 'weeks', dimension: 'time', size: 24 * 7 },
  { unit: 'months', dimension: 'time', size: YEAR / 12 },
  { unit: 'years', dimension: 'time', size: YEAR },
  { unit: 'mm', dimension: 'length', size: 1 },
  { unit: 'µm', dimension: 'length', size: 0.001 },
  { unit: 'cm', dimension: 'length', size: 10 },
  { unit: 'km', dimension: 'length', size: 1e6 },
  { unit: 'miles', dimension: 'length', size: 63_360 * INCH },
  { unit: 'feet', dimension: 'length', size: 12 * INCH },
  { unit: 'inches', dimension: 'length', size: INCH },
  { unit: 'yards', dimension: 'length', size: 36 * INCH },
  { unit: 'm²', dimension: 'area', size: 1 },
  { unit: 'm', dimension: 'length', size: 1000 },
  { unit: 'acres', dimension: 'area', size: ACRE },
  { unit: 'ha', dimension: 'area', size: 10_000 },
  { unit: 'bar', dimension: 'pressure', size: 100 },
  { unit: 'mbar', dimension: 'pressure', size: 0.1 },
  { unit: 'kPa', dimension: 'pressure', size: 1 },
  { unit: 'psi', dimension: 'pressure', size: POUND_ON_INCH },
  { unit: 'MJ', dimension: 'energy', size: 1 },
  { unit: 'kJ', dimension: 'energy', size: 0.001 },
  { unit: 'GJ', dimension: 'energy', size: 1000 },
  { unit: 'kWh', dimension: 'energy', size: 3.6 }, // by definition
  { unit: '£', dimension: 'money' },
  { unit: '€', dimension: 'money' },
  { unit: '$', dimension: 'money' },
];

/** Units that a bare number is never guessed to be in. */
export const onlyNamed: ReadonlySet<string> = new Set(measures.flatMap((each) => (each.onlyNamed ? [each.unit] : []))); // prettier-ignore
