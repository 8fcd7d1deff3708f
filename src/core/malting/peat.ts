// Two malts mixed to a level of smoke.
import { kilograms, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';

export interface PeatBlend {
  readonly plain: Quantity<'mass'>;
  readonly peated: Quantity<'mass'>;
}

/**
 * Plain and peated malt, kg, that make a mass of malt with the phenols wanted. Phenols in ppm by mass, 0–1000.
 * Mixing keeps what there is. Refuses a level that does not lie between the two malts.
 * @example blendPeat(kilograms(1000), { plain: quantity('ppm', 0), peated: quantity('ppm', 40), wanted: quantity('ppm', 10) }) // { plain: 750, peated: 250 } (a quarter of 40)
 */
export function blendPeat(
  mass: Quantity<'mass'>,
  phenols: Readonly<Record<'plain' | 'peated' | 'wanted', Quantity<'ppm'>>>,
): PeatBlend | Refusal {
  within('The mass of malt, kg,', mass, 0, 1e9);
  for (const level of Object.values(phenols)) within('The phenols, ppm,', level, 0, 1000);
  const { plain, peated, wanted } = phenols;
  if (peated <= plain) {
    return refuse(
      `The peated malt has ${peated.toFixed(1)} ppm and the plain one ${plain.toFixed(1)}; the peated one must have more.`,
    );
  }
  if (wanted < plain || wanted > peated) {
    return refuse(
      `A mixture of malts with ${plain.toFixed(1)} and ${peated.toFixed(1)} ppm lies between them; ${wanted.toFixed(1)} ppm was asked for.`,
    );
  }
  const share = (wanted - plain) / (peated - plain);
  return { plain: kilograms(mass * (1 - share)), peated: kilograms(mass * share) };
}
