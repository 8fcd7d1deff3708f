// Sums of wort with the asker’s own numbers: attenuation, extract in a litre, the gravity that so much malt gives.
import { formatNumber, formatWorking } from '../core/format.ts';
import { gravity } from '../core/quantity.ts';
import { platoFromGravity } from '../core/wort/extract.ts';
import { inCore, resultInWords, type Numbered, type Reckoner } from './reckoned.ts';

const WATER = 0.9982; // kg/L at 20 °C, to which a gravity is told; IAPWS
const REAL = 0.814; // of the apparent attenuation is the real one, by Balling
const PURE = 3.86; // litre-degrees to a kilogram for each per cent of extract: sugar gives 386; brewing tables, from memory
const GRAVITIES = [0.98, 1.15] as const;

const gravitiesIn = ({ quantities }: Numbered): readonly number[] =>
  quantities.flatMap(({ number, unit }) => {
    if (unit !== undefined && unit !== '° gravity') return [];
    const value = number > 900 && number < 1200 ? number / 1000 : number;
    return value >= GRAVITIES[0] && value <= GRAVITIES[1] && value !== 1 ? [value] : [];
  });

/** How far a wash was fermented. */
export const attenuationOf: Reckoner = (asked) => {
  const gravities = gravitiesIn(asked);
  if (!/attenuat/i.test(asked.text) || gravities.length !== 2) return undefined;
  const [from, to] = [Math.max(...gravities), Math.min(...gravities)];
  if (!(from > 1.005) || from === to) return undefined;
  const apparent = (100 * (from - to)) / (from - 1);
  return {
    says: `${formatNumber(apparent, 1)} % apparent; alcohol lightens the wash, so of the extract about ${formatNumber(apparent * REAL, 0)} % was really used.`,
    sum: `(${from.toFixed(3)} − ${to.toFixed(3)}) ÷ (${from.toFixed(3)} − 1) × 100; × ${REAL}`,
    at: 'fermenting/#how-far-the-yeast-got',
    place: 'How far the yeast got',
    paths: [],
  };
}; // prettier-ignore

/** Extract in a litre, or in so many, of wort of a gravity. */
export const extractIn: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const [of] = gravitiesIn(asked);
  if (of === undefined || gravitiesIn(asked).length !== 1 || of <= 1 || !/\bsugar|extract|solids/i.test(text) || !/how (?:much|many)|what/i.test(text)) return undefined;
  const volume = quantities.find(({ dimension }) => dimension === 'volume');
  const litres = volume ? inCore(volume, 'volume20')! : 1;
  const plato = platoFromGravity(gravity(of));
  const kilos = (litres * of * WATER * plato) / 100;
  return {
    says: `About ${kilos < 1 ? `${formatNumber(1000 * kilos, 0)} g` : resultInWords(kilos, 'mass')} of extract, most of it sugar, in ${volume ? resultInWords(litres, 'volume20') : 'a litre'} of wort of ${of.toFixed(3)}, which is ${formatNumber(plato, 1)} °P.`,
    sum: `${formatWorking(litres)} L × ${formatNumber(of * WATER, 3)} kg × ${formatNumber(plato, 2)} ÷ 100`,
    at: 'mashing/#how-much-extract-the-wort-holds',
    place: 'How much extract the wort holds',
    paths: [],
  };
}; // prettier-ignore

/** The gravity of wort from so much malt in so many litres. */
export const gravityFromMalt: Reckoner = (asked) => {
  const { text, quantities, line } = asked;
  const malt = quantities.find(({ dimension, number }) => dimension === 'mass' && number > 0);
  const volume = quantities.find(({ dimension, number }) => dimension === 'volume' && number > 0);
  if (!malt || !volume || !/gravity|\bog\b|\bs\.?g\.?\b|plato/i.test(text) || gravitiesIn(asked).length > 0) return undefined;
  const shares = quantities.filter(({ dimension, number }) => dimension === 'percent' && number > 20 && number <= 100);
  if (shares.length > 2) return undefined;
  const named = (says: RegExp) => shares.find(({ start, end }) => says.test(text.slice(end, end + 14)) || says.test(text.slice(Math.max(0, start - 18), start)))?.number;
  const efficiency = named(/effic/i);
  const extract = named(/extract|yield/i) ?? (shares.length === 1 && efficiency === undefined ? shares[0]!.number : line.house.solubleExtract);
  const [kilos, litres] = [inCore(malt, 'mass')!, inCore(volume, 'volume20')!];
  const points = (kilos * extract * PURE * ((efficiency ?? 100) / 100)) / litres;
  if (!(points > 1) || points > 150) return undefined;
  return {
    says: `About ${(1 + points / 1000).toFixed(3)}, if ${efficiency === undefined ? 'all that extract' : 'so much of it'} gets into the wort.`,
    sum: `${formatNumber(kilos, 1)} kg × ${formatWorking(extract)} % × ${PURE}${efficiency === undefined ? '' : ` × ${formatWorking(efficiency)} %`} ÷ ${formatNumber(litres, 1)} L = ${formatNumber(points, 1)} points over 1000`,
    at: 'sums/extract-in-wort/',
    place: 'Extract in the wort',
    rests: 'memory',
    paths: [],
  };
}; // prettier-ignore
