// Sums of years in wood with the asker’s own numbers: what a yearly loss leaves, two losses compared, strength lost a year.
import { formatNumber, formatWorking } from '../core/format.ts';
import { inCore, resultInWords, type Numbered, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const AIR = { at: 'maturing/#what-the-air-takes', place: 'What the air takes' };
const MOST_YEARS = 100;
const MOST_LOSS = 15; // % a year that a cask can be said to lose
const LEAST = 40; // % vol in the bottle; the chapter on law
const STRENGTHS = [30, 80] as const; // % vol that a cask can be at

const rateText = (rate: number) => formatNumber(rate, rate % 1 === 0 ? 0 : 1);

/** Litres put into the cask: told as a volume, or as “a two hundred cask”. */
function volumeIn({ text, quantities }: Numbered): number | undefined {
  const given = quantities.find(({ dimension }) => dimension === 'volume');
  if (given) return inCore(given, 'volume20');
  return quantities.find(({ unit, number, end }) => unit === undefined && number >= 20 && number <= 700 && /^\s*(?:cask|barrel)\b/i.test(text.slice(end)))?.number;
} // prettier-ignore

/** Yearly losses that are told: a per cent, and bare numbers beside it. */
const ratesIn = ({ text, quantities }: Numbered): readonly number[] =>
  quantities.flatMap(({ number, unit, dimension, start }) => {
    const isBeside = unit === undefined && /\b(?:not|of|than|against|versus|vs|or|and|for)\s*$/i.test(text.slice(0, start));
    return (dimension === 'percent' || isBeside) && number > 0 && number <= MOST_LOSS ? [number] : [];
  }); // prettier-ignore

/** What a yearly loss, or two of them, leaves of a stated volume. */
export const lossOver: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const volume = volumeIn(asked);
  const span = quantities.find(({ unit }) => unit === 'years')?.number;
  const rates = ratesIn(asked);
  const [rate, other] = rates;
  if (volume === undefined || !(volume > 0) || span === undefined || !(span > 0) || span > MOST_YEARS || rate === undefined || rates.length > 2) return undefined;
  if (!quantities.some(({ dimension }) => dimension === 'percent') || /how many bottles|cost|price|worth/i.test(text)) return undefined;
  if (!/left|remain|lose|lost|loss|differ|how (?:much|many)|less|gone/i.test(text)) return undefined;
  const [at] = spiritSaid(asked).strengths.filter((each) => each > MOST_LOSS);
  const left = (each: number) => volume * (1 - each / 100) ** span;
  if (other === undefined)
    return {
      says: `About ${resultInWords(left(rate), 'volume20')} would be left of ${resultInWords(volume, 'volume20')} after ${formatNumber(span, 0)} years, and ${resultInWords(volume - left(rate), 'volume20')} gone, if ${rateText(rate)} % of what is there goes each year.${at === undefined ? '' : ` Of pure alcohol ${resultInWords((left(rate) * at) / 100, 'alcohol')} would be left of ${resultInWords((volume * at) / 100, 'alcohol')}, from ${rateText(at)} % vol, if it is the alcohol of which ${rateText(rate)} % goes.`}`,
      sum: `${formatNumber(volume, 0)} × (1 − ${formatWorking(rate / 100)})^${formatNumber(span, 0)}; by ${rateText(rate)} % of the first filling each year it would be ${resultInWords(Math.max(0, volume * (1 - (rate * span) / 100)), 'volume20')}`,
      ...AIR,
      paths: [],
    };
  return {
    says: `About ${resultInWords(Math.abs(left(rate) - left(other)), 'volume20')}: ${resultInWords(left(rate), 'volume20')} left at ${rateText(rate)} % a year, ${resultInWords(left(other), 'volume20')} at ${rateText(other)} %, of ${resultInWords(volume, 'volume20')} after ${formatNumber(span, 0)} years. In a hot, dry store the strength may rise as well.`,
    sum: `${formatNumber(volume, 0)} × (1 − ${formatWorking(rate / 100)})^${formatNumber(span, 0)}, and × (1 − ${formatWorking(other / 100)})^${formatNumber(span, 0)}`,
    ...AIR,
    paths: [],
  };
}; // prettier-ignore

/** Strength lost a year between two strengths, and when it comes to 40 % by that rule. */
export const strengthAYear: Reckoner = ({ text, quantities }) => {
  if (!/\b(?:a|per|each|every) year|when|how (?:long|many years|fast)|rate/i.test(text) || !/cask|barrel|hogshead|butt|wood|fill|went in|store/i.test(text)) return undefined;
  const span = quantities.find(({ unit }) => unit === 'years')?.number;
  const told40 = /(?:under|below|beneath|reach(?:es)?|to)\s*$/i;
  const strengths = quantities.filter(({ number, unit, dimension }) => (unit === undefined || dimension === 'percent' || unit === '% vol') && number >= STRENGTHS[0] && number <= STRENGTHS[1]);
  const floor = strengths.slice(2).find(({ start }) => told40.test(text.slice(0, start)))?.number ?? LEAST;
  const [first, second] = strengths.map(({ number }) => number);
  if (span === undefined || !(span > 0) || span > MOST_YEARS || first === undefined || second === undefined || strengths.length > 3) return undefined;
  if (!(first > second) || second <= floor || quantities.some(({ dimension }) => dimension === 'volume')) return undefined;
  const each = (first - second) / span;
  const rest = (second - floor) / each;
  return {
    says: `${formatNumber(each, 2)} % vol a year; going on so, it is down to ${rateText(floor)} % vol about ${formatNumber(rest, 0)} years from then, ${formatNumber(span + rest, 0)} from filling.`,
    sum: `(${rateText(first)} − ${rateText(second)}) ÷ ${formatNumber(span, 0)}; (${rateText(second)} − ${rateText(floor)}) ÷ ${formatNumber(each, 3)}`,
    at: 'sums/below-forty/',
    place: 'How long a cask stays strong enough',
    paths: [],
  };
}; // prettier-ignore

/** How long until a cask is empty. */
export const emptyCask: Reckoner = (asked) => {
  const { text, quantities, house } = asked;
  if (!/cask|barrel|hogshead|\bbutt\b|evaporat|angel|loss/i.test(text) || !/\bempty\b|bone dry|\bdry\b|nothing (?:is )?left|\bhalf\b.{0,24}\b(?:gone|left|lost)|half[- ]life|all gone|run out/i.test(text) || !/how long|when|how many years/i.test(text)) return undefined;
  if (quantities.length > 1 || /\b(?:an|the|of|stand(?:s|ing)?|stay(?:s|ed)?|keep|kept|lie|left|leave) empty\b/i.test(text)) return undefined;
  const rate = quantities.length === 0 ? house.alcoholLoss : ratesIn(asked)[0];
  if (rate === undefined || !(rate > 0)) return undefined;
  const half = Math.LN2 / -Math.log1p(-rate / 100);
  return {
    says: `Never quite: at ${rateText(rate)} % of what is there each year half is gone after about ${formatNumber(half, 0)} years. Before it is dry it falls under ${LEAST} % vol, or the wood takes over.`,
    sum: `ln 2 ÷ −ln(1 − ${formatWorking(rate / 100)}); by ${rateText(rate)} % of the first filling each year it would be ${formatNumber(100 / rate, 0)} years`,
    ...AIR,
    paths: quantities.length === 0 ? ['house.alcoholLoss'] : [],
  };
}; // prettier-ignore

const MOVED = /\bnow\b|\blater\b|\blost\b|\blose\b|\bgone\b|\bwent\b|(?:comes?|came) out\b/i;

/** The alcohol that went between two readings of a cask. */
export const lostBetween: Reckoner = (asked) => {
  const { volumes, strengths } = spiritSaid(asked);
  if (!MOVED.test(asked.text) || /mix|blend|together|\bvat/i.test(asked.text) || volumes.length !== 2 || strengths.length !== 2) return undefined;
  const [first, last] = volumes.map(({ litres }, i) => (litres * strengths[i]!) / 100) as [number, number];
  if (!(first > last)) return undefined;
  const span = asked.quantities.find(({ unit }) => unit === 'years')?.number;
  const rate = span !== undefined && span > 0 && span <= MOST_YEARS ? ` Over ${formatNumber(span, span % 1 === 0 ? 0 : 1)} years that is ${formatNumber(100 * (1 - (last / first) ** (1 / span)), 2)} % a year, the first soaking into the wood included.` : '';
  return {
    says: `${resultInWords(first - last, 'alcohol')} went, ${formatNumber(100 * (1 - last / first), 1)} % of what was there.${rate}`,
    sum: volumes.map(({ litres }, i) => `${formatWorking(litres)} L × ${formatWorking(strengths[i]!)} %`).join(' − '),
    ...AIR,
    paths: [],
  };
}; // prettier-ignore

/** So many litres lost of so many in some years: what that is a year. */
export const lossRate: Reckoner = ({ text, quantities }) => {
  const span = quantities.find(({ unit }) => unit === 'years')?.number;
  const litres = quantities.filter(({ dimension, unit }) => dimension === 'volume' || unit === undefined);
  if (!/\blost\b|\bgone\b|evaporated|\bwent\b/i.test(text) || !/\b(?:a|per|each|every) year|rate|annual/i.test(text)) return undefined;
  if (span === undefined || !(span > 0) || span > MOST_YEARS || litres.length !== 2 || quantities.length !== 3 || !litres.some(({ dimension }) => dimension === 'volume')) return undefined;
  const [lost, whole] = [Math.min(...litres.map(({ number }) => number)), Math.max(...litres.map(({ number }) => number))];
  if (!(lost > 0) || !(lost < whole) || litres.some(({ unit }) => unit !== undefined && unit !== litres.find(({ unit: own }) => own)!.unit)) return undefined;
  const rate = 100 * (1 - (1 - lost / whole) ** (1 / span));
  return {
    says: `${formatNumber(rate, 2)} % of what was there went each year.`,
    sum: `1 − (1 − ${formatWorking(lost)} ÷ ${formatNumber(whole, 0)})^(1/${formatNumber(span, 0)}); of the first filling it is ${formatNumber((100 * lost) / whole / span, 2)} % a year`,
    at: 'sums/calibrate-loss/',
    place: 'Your store, from a regauge',
    paths: [],
  };
}; // prettier-ignore
