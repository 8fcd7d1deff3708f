// What people write for a quantity, and what it is: one list for every door through which such text comes in.
import type { KindName } from '../../src/core/kinds.ts';

export interface Case {
  readonly text: string;
  readonly kind: KindName;
  /** In the unit of the kind; the ends of a range. By definition of the unit, but for the named sources. */
  readonly is: number | readonly [number, number];
  readonly as?: 'about' | 'exact' | 'range';
  readonly spread?: number;
  /** How far off it may be, where a source says the figure only so closely. */
  readonly near?: number;
  /** Doors where the text is something else, and why. */
  readonly not?: Readonly<Partial<Record<'field' | 'answer' | 'quoted' | 'script', string>>>;
}

const twoFigures = { answer: 'one number is asked for', field: 'one number is asked for' };

// prettier-ignore
export const cases: readonly Case[] = [
  // Millions and thousands, in figures and words.
  { text: 'about 2 million', kind: 'volume20', is: 2e6, as: 'about' },
  { text: 'about 2 million litres', kind: 'volume20', is: 2e6, as: 'about' },
  { text: '1.6 million', kind: 'volume20', is: 1.6e6 },
  { text: '1.6 million litres', kind: 'volume20', is: 1.6e6 },
  { text: '1.6m litres', kind: 'volume20', is: 1.6e6 },
  { text: '1.6m', kind: 'volume20', is: 1.6e6, not: { script: 'with nothing counted behind it, 1.6m in running text is metres' } },
  { text: '1.6m', kind: 'count', is: 1.6e6, not: { script: 'with nothing counted behind it, 1.6m in running text is metres' } },
  { text: '1.6m casks', kind: 'count', is: 1.6e6 },
  { text: '1.6m', kind: 'length', is: 1600 },
  { text: '1.6 m', kind: 'length', is: 1600 },
  { text: '2k', kind: 'volume20', is: 2000 },
  { text: '2k litres', kind: 'volume20', is: 2000 },
  { text: 'half a million', kind: 'count', is: 500_000 },
  { text: 'half a million litres', kind: 'volume20', is: 500_000 },
  { text: 'just under five and a half thousand litres', kind: 'volume20', is: 5500, as: 'about' },
  { text: 'six thousand two hundred and fifty', kind: 'volume20', is: 6250 },
  { text: 'twelve', kind: 'count', is: 12 },
  // Sizes of the litre by their short and whole names.
  { text: '0.802 kL', kind: 'volume', is: 802 },
  { text: '1.2 kilolitres', kind: 'volume20', is: 1200 },
  { text: '8.02 hL', kind: 'volume20', is: 802 },
  { text: '8020 dL', kind: 'volume20', is: 802 },
  { text: '802,000 mL', kind: 'volume20', is: 802 },
  { text: '2.1 kL of pure alcohol', kind: 'alcohol', is: 2100 },
  { text: '2.1 kLPA', kind: 'alcohol', is: 2100 },
  { text: '6.5 t', kind: 'mass', is: 6500 },
  { text: '400 g', kind: 'mass', is: 0.4 },
  // Commas, points, spaces and apostrophes.
  { text: '1,500 L', kind: 'volume20', is: 1500 },
  { text: '1,5 t', kind: 'mass', is: 1500 },
  { text: '1.250,5', kind: 'volume20', is: 1250.5 },
  { text: '1.250,5 litres', kind: 'volume20', is: 1250.5 },
  { text: '1,250.5 litres', kind: 'volume20', is: 1250.5 },
  { text: '1 250,5', kind: 'volume20', is: 1250.5 },
  { text: '1’250.5', kind: 'volume20', is: 1250.5 },
  { text: "1'250 L", kind: 'volume20', is: 1250 },
  { text: '1\u202f250 L', kind: 'volume20', is: 1250 },
  { text: '1.250 L', kind: 'volume20', is: 1.25 },
  { text: '1.000.000 L', kind: 'volume20', is: 1e6 },
  { text: '63,5 %', kind: 'strength', is: 63.5 },
  { text: '0,998', kind: 'gravity', is: 0.998 },
  { text: '1,058', kind: 'gravity', is: 1.058 },
  // Fractions.
  { text: '3/4 of a tonne', kind: 'mass', is: 750 },
  { text: 'three quarters of a tonne', kind: 'mass', is: 750 },
  { text: 'half a tonne', kind: 'mass', is: 500 },
  { text: '2 1/2 tonnes', kind: 'mass', is: 2500 },
  { text: '2½ tonnes', kind: 'mass', is: 2500 },
  { text: 'a tonne and a half', kind: 'mass', is: 1500 },
  { text: 'six tonnes and a half', kind: 'mass', is: 6500 },
  // Units of mass and volume.
  { text: '6.5 tonnes', kind: 'mass', is: 6500 },
  { text: '6.5 t', kind: 'mass', is: 6500 },
  { text: '6.5t', kind: 'mass', is: 6500 },
  { text: 'about 6.5 tonnes', kind: 'mass', is: 6500, as: 'about' },
  { text: '100 lb', kind: 'mass', is: 45.359_237 },
  { text: '100 pounds', kind: 'mass', is: 45.359_237 },
  { text: '2 t 500 kg', kind: 'mass', is: 2500 },
  { text: '750 mils', kind: 'volume20', is: 0.75 },
  { text: '750 mils', kind: 'bottle', is: 75 },
  { text: '0.7 L', kind: 'bottle', is: 70 },
  { text: '70 cl', kind: 'bottle', is: 70 },
  { text: '10 US gal', kind: 'volume20', is: 37.854_117_84 },
  { text: '10 American gallons', kind: 'volume20', is: 37.854_117_84 },
  { text: '10 UK gal', kind: 'volume20', is: 45.4609 },
  { text: '10 imperial gallons', kind: 'volume20', is: 45.4609 },
  { text: '32 hL', kind: 'volume20', is: 3200 },
  { text: '32 hectolitres', kind: 'volume20', is: 3200 },
  { text: '410 litres of pure alcohol per tonne', kind: 'yield', is: 410 },
  { text: '3,160 LPA', kind: 'alcohol', is: 3160 },
  // Strength, gravity, temperature.
  { text: '63.5 per cent', kind: 'strength', is: 63.5 },
  { text: '63.5% ABV', kind: 'strength', is: 63.5 },
  { text: '50 US proof', kind: 'strength', is: 25, near: 0.2 }, // twice the strength at 60 °F: 27 CFR 19.1
  { text: '100 UK proof', kind: 'strength', is: 57.15, near: 0.05 }, // secondary pages quote 57.15 % vol at 20 °C
  { text: 'eleven over proof', kind: 'strength', is: 63.4, near: 0.2 }, // 111 × 57.15 / 100
  { text: '58', kind: 'gravity', is: 1.058 },
  { text: '1058', kind: 'gravity', is: 1.058 },
  { text: '1.058', kind: 'gravity', is: 1.058 },
  { text: '998', kind: 'gravity', is: 0.998 },
  { text: 'ten fifty-eight', kind: 'gravity', is: 1.058 },
  { text: 'one point oh five eight', kind: 'gravity', is: 1.058 },
  { text: '10 °P', kind: 'gravity', is: 1.03998, near: 1e-4 }, // National Bureau of Standards sugar table, from memory
  { text: '10 degrees Plato', kind: 'gravity', is: 1.03998, near: 1e-4 },
  { text: '10 °Brix', kind: 'gravity', is: 1.03998, near: 1e-4 },
  { text: '10 Brix', kind: 'gravity', is: 1.03998, near: 1e-4 },
  { text: '212 °F', kind: 'temperature', is: 100 },
  { text: '212 degrees Fahrenheit', kind: 'temperature', is: 100 },
  { text: '64 degrees', kind: 'temperature', is: 64 },
  { text: '50 million/mL', kind: 'cells', is: 50, not: { script: 'yeast cells are no figure of a script' } },
  { text: '50 million', kind: 'cells', is: 50, not: { script: 'yeast cells are no figure of a script' } },
  { text: '3.9 litres per kilo', kind: 'liquorRatio', is: 3.9, not: { script: 'the ratio of liquor to grist is no figure of a script' } },
  // Time.
  { text: '7h36', kind: 'hours', is: 7.6 },
  { text: '7 h 36', kind: 'hours', is: 7.6 },
  { text: '7 h 36 min', kind: 'hours', is: 7.6 },
  { text: '7 hours and 36 minutes', kind: 'hours', is: 7.6 },
  { text: 'seven hours and thirty-six minutes', kind: 'hours', is: 7.6 },
  { text: '7:36', kind: 'hours', is: 7.6, not: { script: 'a time of day, unless hours stands behind it' } },
  { text: '7:36 hours', kind: 'hours', is: 7.6 },
  { text: '7h36', kind: 'minutes', is: 456 },
  { text: '90 minutes', kind: 'hours', is: 1.5 },
  { text: '3 days', kind: 'hours', is: 72 },
  { text: '2 weeks', kind: 'days', is: 14 },
  { text: 'an hour and a half', kind: 'hours', is: 1.5 },
  { text: '18 months', kind: 'years', is: 1.5 },
  // How surely it is said.
  { text: '42±2', kind: 'percent', is: 42, as: 'about', spread: 2 },
  { text: '42 ± 2 %', kind: 'percent', is: 42, as: 'about', spread: 2 },
  { text: '6 t ± 100 kg', kind: 'mass', is: 6000, as: 'about', spread: 100 },
  { text: '5,500 L plus or minus 50 L', kind: 'volume20', is: 5500, as: 'about', spread: 50 },
  { text: '70 hours or so', kind: 'hours', is: 70, as: 'about' },
  { text: 'exactly 63.5 %', kind: 'strength', is: 63.5, as: 'exact' },
  { text: '5,500 to 6,000 L', kind: 'volume20', is: [5500, 6000], as: 'range', not: twoFigures },
  { text: '5-6,000 litres', kind: 'volume20', is: [5000, 6000], as: 'range', not: twoFigures },
  { text: 'between 60 and 70 hours', kind: 'hours', is: [60, 70], as: 'range', not: twoFigures },
  { text: '5.5 to 6 t', kind: 'mass', is: [5500, 6000], as: 'range', not: twoFigures },
];

/** Texts that are no quantity of their kind, and what the refusal says beside what was given. */
export const refused: readonly (readonly [text: string, kind: KindName, why?: string])[] = [
  ['5 kg', 'strength', 'which is a mass'],
  ['6.5 tonnes', 'volume20', 'which is a mass'],
  ['40 L', 'mass', 'which is a volume'],
  ['64 °C', 'mass', 'which is a temperature'],
  ['5 %', 'mass', 'which is a percentage'],
  ['12 stone', 'mass'],
  ['3 buckets', 'volume20'],
  ['50 proof', 'strength', '50 ° US proof'],
  ['50 proof', 'strength', '50 ° former UK proof'],
  ['10 gallons', 'volume20', '10 US gal'],
];

/** Texts with no quantity in them. */
export const nonsense = ['', ' ', 'lots', 'a bucketful', 'half', 'about', 'litres', '-', '.', '1..2', '1,2,3', '6.2.1', '1,250,5', '5 6', '--1', '3/0', '0x10', '5 and 6', '±2', '42±', 'to 5,', '7:', '7:99', '12 kg 3 L', '<b>1</b>', 'NaN', 'Infinity', '1e999', '１２', '٦٢', '\u202e26', '62\u0000'] as const; // prettier-ignore
