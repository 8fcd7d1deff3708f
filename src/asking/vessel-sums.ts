// Sums of washbacks and stills with the asker’s own numbers: a round tank, washbacks enough, gas, low wines, the heart’s share.
import { format, formatNumber } from '../core/format.ts';
import { gasVolume } from '../core/fermenting/gas.ts';
import { celsius } from '../core/quantity.ts';
import { ETHANOL_DENSITY } from '../core/spirit/density.ts';
import { CO2_PER_ETHANOL } from '../core/wort/attenuation.ts';
import { inCore, resultInWords, type Reckoner, unitOfName } from './reckoned.ts';
import { textBehind, numberText } from './sum-kit.ts';
import { GAS_CARE, GAS_SAFE } from './scale.ts';
import { spiritSaid } from './spirit-said.ts';

/** Litres in a round tank, by its width and how deep it stands. */
export const roundTank: Reckoner = ({ text, quantities, wanted }) => {
  const lengths = quantities.flatMap((each) => {
    if (each.dimension === 'length') return [each];
    const isMetres = each.unit === 'min' && /\dm$|\sm$/i.test(text.slice(each.start, each.end)); // “2 m wide”
    return isMetres ? [{ ...each, unit: 'm', dimension: 'length' as const }] : [];
  });
  const across = lengths.find((each) => /^\s*(?:across|wide|in diameter|diameter|in width|round)/i.test(textBehind(text, each))) ?? (/across|wide|diameter|width/i.test(text) ? lengths[0] : undefined);
  const deep = lengths.find((each) => each !== across);
  if (lengths.length !== 2 || !across || !deep || !/deep|depth|high|tall|height|stands/i.test(text)) return undefined;
  const [width, depth] = [across, deep].map((each) => inCore(each, 'length')! / 1000) as [number, number];
  if (!(width > 0 && width < 50 && depth > 0 && depth < 50)) return undefined;
  const litres = 1000 * (Math.PI / 4) * width ** 2 * depth;
  return {
    says: `A round tank that wide, filled that deep, holds about ${resultInWords(litres, 'volume20', wanted?.dimension === 'volume' ? unitOfName('volume20', wanted.unit) : undefined)}, if its floor is flat.`,
    sum: `3.1416 × (${formatNumber(width, 2)} m ÷ 2)² × ${formatNumber(depth, 2)} m × 1000`,
    at: 'fermenting/check/#figures-to-know',
    place: 'Fermenting: figures to know',
    paths: [],
  };
}; // prettier-ignore

/** Whether so many washbacks do, with a mash every so many hours. */
export const washbacksEnough: Reckoner = ({ text, quantities }) => {
  const tanks = quantities.find((each) => each.unit === undefined && /^\s*(?:tanks?|washbacks?|ferment[eo]rs?|tubs?|vessels?|backs)\b/i.test(textBehind(text, each)));
  const times = quantities.filter(({ dimension }) => dimension === 'time');
  const every = times.find(({ start }) => /\b(?:each|every)\s*$/i.test(text.slice(0, start)));
  const long = times.find((each) => each !== every);
  if (!every || !long || times.length !== 2 || (!tanks && !/tank|washback|ferment[eo]r|tub/i.test(text))) return undefined;
  const [gap, stay] = [inCore(every, 'hours')!, inCore(long, 'hours')!];
  if (!(gap > 0 && stay > gap && stay < 1000)) return undefined;
  const full = Math.ceil(stay / gap - 1e-9);
  const count = tanks?.number;
  const verdict = count === undefined ? '' : count < full ? `No: ${numberText(count)} give ${numberText(count * gap)} h at most. ` : count === full ? `Only just, with no time to fill, empty and clean. ` : 'Yes. ';
  return {
    says: `${verdict}${numberText(full)} are full at all times, and with filling, emptying and cleaning ${numberText(full + 1)} are wanted.`,
    sum: `${numberText(stay)} h ÷ ${numberText(gap)} h = ${formatNumber(stay / gap, 1)}`,
    at: 'sums/washbacks-needed/',
    place: 'How many washbacks',
    paths: [],
  };
}; // prettier-ignore

/** Carbon dioxide that goes with so much pure alcohol, as it is made. */
export const gasOfAlcohol: Reckoner = ({ text, quantities }) => {
  const given = quantities.find(({ dimension, number }) => dimension === 'alcohol' && number > 0);
  if (!given || quantities.length !== 1 || !/carbon dioxide|\bco2\b|\bgas\b/i.test(text) || /heat|boil|fuel|burn|footprint/i.test(text)) return undefined;
  const ethanol = (inCore(given, 'alcohol')! * ETHANOL_DENSITY) / 1000;
  return {
    says: `About ${resultInWords(ethanol * CO2_PER_ETHANOL, 'mass')} of carbon dioxide, some ${format(gasVolume(ethanol * CO2_PER_ETHANOL, celsius(20)), 'space')} of gas.${GAS_CARE}`,
    sum: `${formatNumber(inCore(given, 'alcohol')!, 0)} L of alcohol weigh ${resultInWords(ethanol, 'mass')}; × ${CO2_PER_ETHANOL}`,
    ...GAS_SAFE,
    paths: [],
  };
}; // prettier-ignore

/** Carbon dioxide from so much wash of a strength. */
export const gasOfWash: Reckoner = (asked) => {
  const { volumes, strengths, named } = spiritSaid(asked);
  const [at = named?.at] = strengths;
  if (!/carbon dioxide|\bco2\b|\bgas\b/i.test(asked.text) || volumes.length !== 1 || strengths.length > 1 || at === undefined || at > 20 || /heat|boil|fuel|burn/i.test(asked.text)) return undefined;
  const ethanol = (volumes[0]!.litres * at * ETHANOL_DENSITY) / 100_000;
  const gas = ethanol * CO2_PER_ETHANOL;
  return {
    says: `About ${resultInWords(gas, 'mass')} of carbon dioxide, some ${format(gasVolume(gas, celsius(20)), 'space')} of gas.${GAS_CARE}`,
    sum: `${formatNumber(volumes[0]!.litres, 0)} L × ${formatNumber(at, 1)} % = ${resultInWords(ethanol, 'mass')} of alcohol; × ${CO2_PER_ETHANOL}`,
    ...GAS_SAFE,
    paths: [],
  };
}; // prettier-ignore

/** Low wines from so much wash of a strength, at their own strength. */
export const lowWinesOf: Reckoner = (asked) => {
  const { volumes, strengths } = spiritSaid(asked);
  const [wash, lowWines] = strengths;
  if (!/low wines/i.test(asked.text) || volumes.length !== 1 || strengths.length !== 2 || !(wash! < lowWines!)) return undefined;
  const alcohol = (volumes[0]!.litres * wash!) / 100;
  const made = alcohol / (lowWines! / 100);
  return {
    says: `About ${resultInWords(made, 'volume20')} of low wines, ${formatNumber((100 * made) / volumes[0]!.litres, 0)} % of the charge, if all its alcohol comes over.`,
    sum: `${formatNumber(volumes[0]!.litres, 0)} L × ${numberText(wash!)} % = ${resultInWords(alcohol, 'alcohol')}; ÷ ${numberText(lowWines!)} %`,
    at: 'sums/wash-run/',
    place: 'One run of the wash still',
    paths: [],
  };
}; // prettier-ignore

/** The heart’s share of the alcohol of a charge. */
export const heartOfCharge: Reckoner = (asked) => {
  const { text } = asked;
  const { volumes, strengths } = spiritSaid(asked);
  if (!/heart/i.test(text) || !/charge|low wines|still/i.test(text) || volumes.length !== 2 || strengths.length !== 2) return undefined;
  const parts = volumes.map(({ litres }, i) => ({ litres, at: strengths[i]!, alcohol: (litres * strengths[i]!) / 100 }));
  const [charge, heart] = parts[0]!.litres > parts[1]!.litres ? [parts[0]!, parts[1]!] : [parts[1]!, parts[0]!];
  if (!(heart.alcohol < charge.alcohol) || !(heart.at > charge.at)) return undefined;
  return {
    says: `The heart holds ${formatNumber((100 * heart.alcohol) / charge.alcohol, 0)} % of the alcohol of the charge; the rest goes back with foreshots and feints, but for a trace in the lees.`,
    sum: `${[heart, charge].map(({ litres, at, alcohol }) => `${numberText(litres)} L × ${numberText(at)} % = ${resultInWords(alcohol, 'alcohol')}`).join('; ÷ ')}`,
    at: 'distilling/check/#figures-to-know',
    place: 'Distilling: figures to know',
    paths: [],
  };
}; // prettier-ignore
