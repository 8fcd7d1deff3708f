// Alcohol from the fall of gravity: Balling's balance and the excise factor table.
import { massPercent, percent, plato, share, strength, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { within } from '../range.ts';
import { ETHANOL_DENSITY, WATER_DENSITY } from '../spirit/density.ts';
import { platoFromGravity } from './extract.ts';

const EXTRACT_PER_ETHANOL = 2.0665; // g extract for 1 g ethanol; Balling 1865, from memory
export const CO2_PER_ETHANOL = 0.9565; // g carbon dioxide with 1 g ethanol; the same
const YEAST_PER_ETHANOL = 0.11; // g yeast with 1 g ethanol; the same; the three make 2.0665
const LOST_PER_ETHANOL = CO2_PER_ETHANOL + YEAST_PER_ETHANOL; // g that leave the liquid with 1 g ethanol
const REAL_FROM_ORIGINAL = 0.1808; // weight of original extract in real extract; Balling, from memory
const REAL_FROM_APPARENT = 0.8192; // weight of apparent extract in real extract; the same

export interface Gravities {
  readonly original: Quantity<'gravity'>;
  readonly final: Quantity<'gravity'>;
}

/** What became of the extract, per kilogram of wort, and the wash it left. */
export interface Attenuation {
  readonly originalExtract: Quantity<'plato'>;
  readonly realExtract: Quantity<'plato'>;
  readonly alcoholByMass: Quantity<'massPercent'>;
  readonly strength: Quantity<'strength'>;
  /** kg of wash, ethanol, carbon dioxide and yeast from 1 kg of wort. */
  readonly wash: Quantity<'share'>;
  readonly ethanol: Quantity<'share'>;
  readonly carbonDioxide: Quantity<'share'>;
  readonly yeast: Quantity<'share'>;
  /** Part of the extract that the yeast used, by mass. */
  readonly extractUsed: Quantity<'percent'>;
}

/**
 * The whole Balling balance from original to final gravity: extract in = extract left + 2.0665 × ethanol,
 * and wort in = wash + carbon dioxide + yeast. Gravities 0.98–1.15; refuses (throws) a rise.
 * Source: Balling's relations, from memory; see `balling` in sources.ts.
 * @example attenuate({ original: gravity(1.058), final: gravity(1.058) }) // { alcoholByMass: 0, wash: 1, carbonDioxide: 0 } (nothing fell)
 */
export function attenuate({ original, final }: Gravities): Attenuation {
  within('The final gravity', final, 0.98, original);
  const before = platoFromGravity(original);
  const real = REAL_FROM_ORIGINAL * before + REAL_FROM_APPARENT * platoFromGravity(final);
  const byMass = (before - real) / (EXTRACT_PER_ETHANOL - (LOST_PER_ETHANOL * before) / 100);
  const wash = 100 / (100 + LOST_PER_ETHANOL * byMass);
  const ethanol = (wash * byMass) / 100;
  return {
    originalExtract: before,
    realExtract: plato(real),
    alcoholByMass: massPercent(byMass),
    strength: strength((byMass * final * WATER_DENSITY) / ETHANOL_DENSITY),
    wash: share(wash),
    ethanol: share(ethanol),
    carbonDioxide: share(CO2_PER_ETHANOL * ethanol),
    yeast: share(YEAST_PER_ETHANOL * ethanol),
    extractUsed: percent(before > 0 ? (1e4 * EXTRACT_PER_ETHANOL * ethanol) / before : 0),
  };
}

/**
 * Strength of the wash, % vol at 20 °C, from original and final gravity by Balling's relations.
 * @example strengthFromGravities({ original: gravity(1.04831), final: gravity(1) }) // 6.4 (Balling by hand, 12 °P down to 0)
 */
export function strengthFromGravities(gravities: Gravities): Quantity<'strength'> {
  return attenuate(gravities).strength;
}

const REAL_OF_APPARENT = 81.4; // per cent; Bringhurst et al. 1996, which measured 81.46

/**
 * How far the yeast got by the rule of the gravities, % of the extract: 81.4 × the fall ÷ what stood above water.
 * @example fermentabilityFromGravities({ original: gravity(1.058), final: gravity(1) }) // 81.4 (all that stood above water fell)
 */
export function fermentabilityFromGravities({ original, final }: Gravities): Quantity<'percent'> {
  within('The original gravity', original, 1.0001, 1.2);
  within('The final gravity', final, 0.9, original);
  return percent((REAL_OF_APPARENT * (original - final)) / (original - 1));
}

/** Upper end of each band of degrees fallen, and % vol per degree. HMRC Notice 226 section 30.3, by two traders’ copies. */
const EXCISE_BANDS = [
  [6.9, 0.125],
  [10.4, 0.126],
  [17.2, 0.127],
  [26.1, 0.128],
  [36.0, 0.129],
  [46.5, 0.13],
  [57.1, 0.131],
  [67.9, 0.132],
  [78.8, 0.133],
  [89.7, 0.134],
  [100.7, 0.135],
] as const;

/**
 * % vol for each degree of gravity fallen, for a fall of 0–100.7 degrees taken to one decimal, or a refusal.
 * @example exciseFactor(40) // 0.13 (HMRC Notice 226, section 30.3)
 * @example exciseFactor(120) // refuses: from 0 to 100.7 (the table ends there)
 */
export function exciseFactor(degreesFallen: number): number | Refusal {
  const fall = Math.round(degreesFallen * 10) / 10;
  const band = EXCISE_BANDS.find(([upTo]) => fall <= upTo);
  return band && fall >= 0
    ? band[1]
    : refuse(`The fall of gravity is ${fall} degrees; the excise table goes from 0 to 100.7.`);
}

/**
 * Strength of the wash, % vol, by the excise factor table: degrees fallen × factor of the band.
 * Refuses (throws) a rise of gravity and a fall of more than 100.7 degrees.
 * @example strengthByExciseFactor({ original: gravity(1.05), present: gravity(1.01) }) // 5.20 (40 degrees × 0.130)
 */
export function strengthByExciseFactor(gravities: {
  readonly original: Quantity<'gravity'>;
  readonly present: Quantity<'gravity'>;
}): Quantity<'strength'> {
  within('The present gravity', gravities.present, 0.98, gravities.original);
  const degrees = 1000 * (gravities.original - gravities.present);
  const factor = exciseFactor(degrees);
  if (typeof factor !== 'number') throw new RangeError(factor.refused);
  return strength(degrees * factor);
}
