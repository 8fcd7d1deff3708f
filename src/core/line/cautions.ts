// Figures that each stand alone but together cannot be true, or are far from common practice.
import type { Stage } from '../figures/index.ts';
import { formatNumber } from '../format.ts';
import { cutCautions } from './cut-cautions.ts';
import type { House } from './house.ts';
import type { Line } from './line.ts';

export interface Caution {
  readonly stage: Stage;
  /** "impossible" breaks a balance; "unusual" is only rare. */
  readonly weight: 'impossible' | 'unusual';
  /** The figure of the house to change, where it is one. */
  readonly figure?: keyof House;
  readonly says: string;
}

const litre = (n: number) => `${formatNumber(n, 0)} L`;
const MODEL_SPREAD = 1.02; // Balling and the yield factor 6.06 differ by up to about 2 % at full attenuation

/**
 * What a careful colleague would say of these figures; empty when they agree.
 * @example cautions({ ...line, mash: { ...line.mash, efficiency: 101 } })[0] // { stage: 'mashing', weight: 'impossible' } (more extract than the malt had)
 */
export function cautions(line: Line): readonly Caution[] {
  const { house, malt, mash, wash, charge, heart, matured, round } = line;
  const found: (Caution | false)[] = [
    mash.efficiency > 100 && {
      stage: 'mashing',
      weight: 'impossible',
      says: `The wort holds ${mash.efficiency.toFixed(1)} % of the extract the malt had. Its volume or its gravity is too high, or the malt is better than its analysis.`,
    },
    mash.efficiency < 85 && {
      stage: 'mashing',
      weight: 'unusual',
      says: `Only ${mash.efficiency.toFixed(1)} % of the malt's extract is in the wort; 97 to 99 % is what the trade expects (from memory).`,
    },
    wash.attenuation.realExtract < 0 && {
      stage: 'fermenting',
      weight: 'impossible',
      says: `The gravities leave ${wash.attenuation.realExtract.toFixed(1)} °P of extract in the wash, less than none. The final gravity is too low for such a wort.`,
    },
    wash.alcohol > malt.alcohol * MODEL_SPREAD && {
      stage: 'fermenting',
      weight: 'impossible',
      says: `The wash holds ${litre(wash.alcohol)} of pure alcohol; the malt could give ${litre(malt.alcohol)}. Check the gravities and the wort.`,
    },
    charge.strength > 30.0001 && {
      stage: 'distilling',
      weight: 'unusual',
      says: `The spirit charge is ${charge.strength.toFixed(1)} % vol. Common practice lets it down to 30 % vol or less.`,
    },
    round.dilution > 0.5 && {
      stage: 'distilling',
      weight: 'unusual',
      says: `The charge has to be let down with ${litre(round.dilution)} of water; without it every round would be stronger than the last.`,
    },
    heart.strength < house.fillingStrength && {
      stage: 'maturing',
      weight: 'unusual',
      says: `The heart is ${heart.strength.toFixed(1)} % vol as a whole, so it cannot be filled at ${house.fillingStrength} % vol; it is filled as it comes.`,
    },
    matured.strength < house.bottlingStrength && {
      stage: 'maturing',
      weight: 'unusual',
      says: `After ${house.yearsInWood} years the cask is at ${matured.strength.toFixed(1)} % vol, below the ${house.bottlingStrength} % vol wanted in bottle; it is bottled as it comes.`,
    },
    matured.strength < 40 && {
      stage: 'maturing',
      weight: 'unusual',
      says: `After ${house.yearsInWood} years the cask is at ${matured.strength.toFixed(1)} % vol, below the 40 % vol that most laws ask of whisky.`,
    },
  ];
  return [...found.filter((caution) => caution !== false), ...cutCautions(line)];
}
