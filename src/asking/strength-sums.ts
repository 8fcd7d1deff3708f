// Sums of strength with the asker’s own numbers: pure alcohol in so much, strength by mass, strength from two gravities.
import { format, formatNumber, formatWorking } from '../core/format.ts';
import { gravity, strength } from '../core/quantity.ts';
import { ETHANOL_DENSITY } from '../core/spirit/density.ts';
import { massPercentFromStrength } from '../core/spirit/strength.ts';
import { strengthFromGravities } from '../core/wort/attenuation.ts';
import { resultInWords, unitOfName, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const PURE = { at: 'strength-and-volume/#the-litre-of-pure-alcohol', place: 'The litre of pure alcohol' };
const ALCOHOL = /alcohol|\blpas?\b|\blaas?\b|proof gal|ethanol|booze|\bpure\b|\bbulk to pure\b/i;

/** Litres of pure alcohol in so much at such a strength. */
export const pureAlcohol: Reckoner = (asked) => {
  const { text, wanted, line } = asked;
  const { volumes, strengths, named } = spiritSaid(asked);
  const [given] = volumes;
  const [at = named?.at] = strengths;
  if (!given || at === undefined || volumes.length !== 1 || strengths.length > 1) return undefined;
  if (strengths.length === 0 && asked.quantities.length > 1) return undefined;
  if (!(ALCOHOL.test(text) || wanted?.dimension === 'alcohol') || /how many bottles/i.test(text)) return undefined; // prettier-ignore
  if (asked.quantities.some(({ unit }) => unit === 'years')) return undefined;
  const alcohol = (given.litres * at) / 100;
  const unit = wanted?.dimension === 'alcohol' ? unitOfName('alcohol', wanted.unit) : undefined;
  const grams = wanted?.dimension === 'mass' ? `, which weigh ${resultInWords((alcohol * ETHANOL_DENSITY) / 1000, 'mass', unitOfName('mass', wanted.unit))}` : ''; // prettier-ignore
  const ours = /\b(?:your|our) (?:wash|beer)\b/i.test(text) && Math.abs(at - line.wash.strength) > 0.05 ? ` Ours is at ${format(line.wash.strength, 'strength')}.` : ''; // prettier-ignore
  return {
    says: `${given.said} at ${resultInWords(at, 'strength')} ${/s$/.test(given.said) || /^\d/.test(given.said) ? 'hold' : 'holds'} ${resultInWords(alcohol, 'alcohol', unit)}${grams}.${ours}`,
    sum: `${resultInWords(given.litres, 'volume20')} × ${formatWorking(at)} ÷ 100 = ${resultInWords(alcohol, 'alcohol')}`,
    ...PURE,
    paths: strengths.length === 0 ? [named!.path] : [],
  };
};

/** A strength by volume as one by mass. */
export const byMass: Reckoner = (asked) => {
  const { strengths, volumes } = spiritSaid(asked);
  if (strengths.length !== 1 || volumes.length > 0 || !/\bby (?:weight|mass)\b|\babw\b|\bw\/w\b/i.test(asked.text)) return undefined; // prettier-ignore
  const at = strength(strengths[0]!);
  return {
    says: `${resultInWords(at, 'strength')} is ${formatNumber(massPercentFromStrength(at), 1)} % by mass.`,
    sum: 'Alcohol is lighter than water, so by mass the figure is smaller.',
    at: 'strength-and-volume/#two-ways-to-say-how-strong',
    place: 'Two ways to say how strong',
    paths: [],
  };
};

/** Strength of a wash from the gravities before and after. */
export const fromGravities: Reckoner = ({ text, quantities, house, line }) => {
  const gravities = quantities.flatMap(({ number, unit }) => {
    if (unit !== undefined && unit !== '° gravity') return [];
    const value = number > 900 && number < 1200 ? number / 1000 : number;
    return value >= 0.98 && value <= 1.15 ? [value] : [];
  });
  if (gravities.length !== 2 || /plato|brix|mean by|difference/i.test(text)) return undefined;
  const [from, to] = [Math.max(...gravities), Math.min(...gravities)];
  if (from === to || from < 1.01) return undefined;
  const strong = strengthFromGravities({ original: gravity(from), final: gravity(to) });
  const off = Math.round(1000 * (to - house.finalGravity));
  const stopped = !/stick|stuck|stop|short|finish(?:ed)? (?:early|high)/i.test(text) ? '' : off > 1 ? ` It stopped ${off} points above our ${house.finalGravity.toFixed(3)}, so it may have stuck.` : ` It went about as far as ours, ${house.finalGravity.toFixed(3)}.`; // prettier-ignore
  const ours = /\byours?\b|\byou\b|compare/i.test(text) ? ` Ours is at ${format(line.wash.strength, 'strength')}, from ${house.originalGravity.toFixed(3)} to ${house.finalGravity.toFixed(3)}.` : ''; // prettier-ignore
  return {
    says: `A wash that falls from ${from.toFixed(3)} to ${to.toFixed(3)} is at about ${format(strong, 'strength')}.${stopped}${ours}`,
    sum: 'By Balling: 2.0665 g of extract make 1 g of alcohol, 0.9565 g of carbon dioxide and 0.11 g of yeast.',
    at: 'sums/strength-from-gravities/',
    place: 'Strength of the wash from its gravities',
    paths: [],
  };
};
