// Kilocalories in so much spirit, by its alcohol alone: “how many calories in 50 ml of 40 %?”
import { formatNumber, formatWorking } from '../core/format.ts';
import { ETHANOL_DENSITY } from '../core/spirit/density.ts';
import { ENERGY_OF_ALCOHOL } from './made.ts';
import { resultInWords, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const MOST = 10; // L that one can mean to drink

/** Kilocalories in so much, at the strength of the house’s bottle where none is told. */
export const calories: Reckoner = (asked) => {
  const { text, line } = asked;
  const { volumes, strengths } = spiritSaid(asked);
  const [given] = volumes;
  if (!/calorie|\bkcals?\b|\bcals?\b/i.test(text) || !given || volumes.length > 1 || strengths.length > 1) return undefined;
  if (given.litres > MOST) return undefined;
  const at = strengths[0] ?? line.bottling.strength;
  const grams = (given.litres * at * ETHANOL_DENSITY) / 100;
  return {
    says: `About ${formatNumber(grams * ENERGY_OF_ALCOHOL, 0)} kilocalories in ${given.said} at ${resultInWords(at, 'strength')}, all of the alcohol, for there is no sugar in it; what is wise to drink is for medical advice.`,
    sum: `${formatNumber(grams, 1)} g of alcohol × ${formatWorking(ENERGY_OF_ALCOHOL)} kcal`,
    at: 'safety/visitors/',
    place: 'Safety: with visitors',
    paths: strengths.length === 0 ? ['bottling.strength'] : [],
  };
}; // prettier-ignore
