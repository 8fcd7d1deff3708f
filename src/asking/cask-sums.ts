// “If I leave a 200 litre cask for 12 years, how much is in it?”: a cask of the asker’s own, in the store of the house.
import { format, formatNumber, formatWorking } from '../core/format.ts';
import { CASK_SIZES } from '../core/maturing/filling.ts';
import { fallsBelow } from '../core/maturing/falls-below.ts';
import { throughWood } from '../core/maturing/to-bottle.ts';
import { litres, litres20, strength, years as yearsOf } from '../core/quantity.ts';
import { inCore, resultInWords, unitOfName, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const MOST_YEARS = 80; // that a cask is followed
const MOST_LOSS = 15; // %, of a year: a per cent up to here is a loss, above it a strength
const MOST_LITRES = 700; // the largest cask of the law; Regulation (EU) 2019/787
const place = { at: 'sums/cask-through-years/', place: 'A cask through the years' };

/** What a cask holds after so many years, or the bottles that it makes. */
export const leftInCask: Reckoner = (asked) => {
  const { text, quantities, house, line, wanted } = asked;
  const given = quantities.find(({ dimension }) => dimension === 'volume');
  const isBottles = /how many bottles|\bwhat (?:would|will|does|do)\b.{0,60}\bbottles\b/i.test(text);
  const isHouse = isBottles && given !== undefined && quantities.length === 1 && /\b(?:cask|barrel|hogshead|butt)/i.test(text); // prettier-ignore
  const span = quantities.find(({ unit }) => unit === 'years')?.number ?? (isHouse ? house.yearsInWood : undefined); // prettier-ignore
  if (span === undefined || span <= 0 || span > MOST_YEARS || !/\b(?:cask|barrel|hogshead|butt|in (?:the )?wood|keep|kept|leave|left|lit(?:re|er)s)/i.test(text)) return undefined; // prettier-ignore
  if (!(isBottles || /how (?:much|full|many lit|strong)|what(?:'s|’s| is| would be| will be)? left|what (?:strength|would be|will be)|how many (?:are )?left|\babv\b|\bstrength\b|what (?:do|will|would|have) (?:i|you|we)\b|what.{0,12}come out|what becomes|what will .{0,30}\bbe\b/i.test(text))) return undefined; // prettier-ignore
  if (/\bbottle\b/i.test(text) && !/\bcask|barrel|hogshead|butt\b/i.test(text)) return undefined;
  if (
    /\bwhy|worth|cost|value|price|tax/i.test(text) ||
    quantities.some(({ dimension }) => dimension === 'mass')
  )
    return undefined;
  const named = (['hogshead', 'butt', 'barrel'] as const).find((name) =>
    new RegExp(`\\b${name}`, 'i').test(text),
  );
  const size = given ? inCore(given, 'volume20')! : named ? CASK_SIZES[named] : line.casks.meanSize;
  if (!(size > 1) || size > MOST_LITRES) return undefined;
  // A share that is asked with a rate of its own is told as a share.
  const isShare =
    !given &&
    !named &&
    quantities.some(({ dimension, number }) => dimension === 'percent' && number <= MOST_LOSS);
  if (isShare && !isBottles) return undefined;
  const strengths = spiritSaid(asked).strengths.filter((each) => each > MOST_LOSS);
  const filledAt = strengths.length === 0 ? line.filling.strength : Math.max(...strengths);
  const bottledAt = strengths.length > 1 ? Math.min(...strengths) : house.bottlingStrength;
  const rate = quantities.find(({ dimension, number }) => dimension === 'percent' && number > 0 && number <= MOST_LOSS)?.number as typeof house.alcoholLoss | undefined; // prettier-ignore
  const { record, emptied } = throughWood({
    volume: litres20(size),
    strength: strength(filledAt),
    cask: { size: litres(size) },
    store: { ...house, alcoholLoss: rate ?? house.alcoholLoss, humidity: house.storeHumidity },
    years: yearsOf(span),
    indrink: house.indrink,
    caskResidue: house.caskResidue,
  });
  const held = record.at(-1)!;
  const unit = wanted?.dimension === 'volume' ? unitOfName('volume20', wanted.unit) : undefined;
  const cask = `A cask of ${resultInWords(size, 'volume20')} filled at ${resultInWords(filledAt, 'strength')}`;
  const after = `after ${formatNumber(span, span % 1 === 0 ? 0 : 1)} years in our store`;
  const bottles = Math.floor((emptied.alcohol * (1 - house.filterLoss / 100)) / ((house.bottleSize / 100) * (Math.min(bottledAt, held.strength) / 100))); // prettier-ignore
  const sum = `${resultInWords((size * filledAt) / 100, 'alcohol')} filled, ${resultInWords(held.alcohol, 'alcohol')} left; the air takes ${formatNumber(rate ?? house.alcoholLoss, 1)} % a year`; // prettier-ignore
  const says = isBottles
    ? `${cask} makes about ${formatNumber(bottles, 0)} bottles of ${formatNumber(house.bottleSize, 0)} cL at ${resultInWords(Math.min(bottledAt, held.strength), 'strength')} ${after}.`
    : `${cask} holds about ${resultInWords(held.volume, 'volume20', unit)} at ${format(held.strength, 'strength')} ${after}.`;
  return { says, sum, ...place, paths: ['house.alcoholLoss', 'house.storeHumidity', 'filling.strength'] };
};

/** How long a cask of the house takes to fall to a strength. */
export const yearsToFall: Reckoner = (asked) => {
  const { text, quantities, house, line } = asked;
  const [limit] = quantities.flatMap(({ dimension, unit, number }) => (dimension === 'percent' || dimension === 'strength' || unit === undefined) && number >= 35 && number <= 70 ? [number] : []);
  if (limit === undefined || quantities.length !== 1 || !/cask|barrel|hogshead|butt|wood|store/i.test(text) || !/\bfalls?\b|drops?\b|\bdown to\b|under|below|reach/i.test(text) || !/how (?:long|old|many years)|when/i.test(text)) return undefined;
  const { year } = fallsBelow({ volume: litres20(line.casks.meanSize), strength: line.filling.strength, cask: { size: line.casks.meanSize }, store: { ...house, humidity: house.storeHumidity } }, strength(limit));
  return {
    says: year === undefined ? `In a store like ours, not within a hundred years or never: at ${format(house.storeHumidity, 'percent')} humidity ${format(line.filling.strength, 'strength')} does not fall so far.` : `About ${formatNumber(year, 0)} years in our store to ${format(strength(limit), 'strength')}, from ${format(line.filling.strength, 'strength')}, at ${format(house.storeHumidity, 'percent')} humidity and ${formatNumber(house.alcoholLoss, 1)} % of the alcohol a year.`,
    at: 'sums/below-forty/',
    place: 'How long a cask stays strong enough',
    paths: ['filling.strength', 'house.alcoholLoss', 'house.storeHumidity'],
  };
}; // prettier-ignore

/** So many casks after so many years: what of their contents is left. */
export const casksKept: Reckoner = ({ text, quantities, house, line }) => {
  const casks = quantities.find(({ unit, end }) => unit === undefined && /^\s*(?:full |of (?:these|those|them) |such )?(?:casks|barrels|hogsheads|butts)\b/i.test(text.slice(end)));
  const span = quantities.find(({ unit }) => unit === 'years')?.number;
  if (!casks || casks.number < 2 || span === undefined || span <= 0 || span > MOST_YEARS) return undefined;
  if (!/left|worth|remain|how (?:many|much)|what (?:will|would)|lose|lost|evaporat|angels?/i.test(text) || /how many bottles|cost|price|money/i.test(text)) return undefined;
  const rate = quantities.find(({ dimension, number }) => dimension === 'percent' && number > 0 && number <= 30)?.number ?? house.alcoholLoss;
  const left = (1 - rate / 100) ** span;
  return {
    says: `At ${formatNumber(rate, rate % 1 === 0 ? 0 : 1)} % a year about ${formatNumber(casks.number * left, 0)} casks’ worth of the alcohol is left after ${formatNumber(span, 0)} years; the casks are as many as before, each with less in it. Our store, once full, holds about ${format(line.casks.inStore, 'count')}.`,
    sum: `${formatNumber(casks.number, 0)} × (1 − ${formatWorking(rate / 100)})^${formatNumber(span, 0)} = ${formatNumber(casks.number * left, 1)}`,
    at: 'maturing/#what-the-air-takes',
    place: 'What the air takes',
    paths: ['house.alcoholLoss'],
  };
}; // prettier-ignore

/** “What if the angels took 4 % in place of 2?”: what a yearly loss leaves. */
export const lossMoved: Reckoner = ({ text, quantities, house }) => {
  if (
    !/angels?|evaporat|\bloss\b|\bloses?\b|\blost\b|\bleft\b|remain/i.test(text) ||
    /\bhow many bottles\b/i.test(text)
  )
    return undefined;
  const named = quantities.filter(({ dimension, unit }) => dimension === 'percent' || unit === undefined);
  const rates = named.map(({ number }) => number).filter((rate) => rate > 0 && rate <= 30);
  const inYears = quantities.find(({ unit }) => unit === 'years')?.number;
  const byYear = quantities.find(({ unit, start }) => unit === undefined && /\byear\s*$/i.test(text.slice(0, start)))?.number; // prettier-ignore
  const given = inYears ?? byYear;
  if (
    given !== undefined &&
    given > 0 &&
    given <= MOST_YEARS &&
    quantities.length === 1 &&
    /per ?cent|%|share|fraction|proportion|how much/i.test(text)
  ) {
    const rest = 100 * (1 - house.alcoholLoss / 100) ** given;
    return {
      says: `At our ${formatNumber(house.alcoholLoss, 1)} % a year ${formatNumber(100 - rest, 0)} % of the alcohol is gone after ${formatNumber(given, 0)} years, and ${formatNumber(rest, 0)} % is left.`,
      sum: `(1 − ${formatWorking(house.alcoholLoss / 100)})^${formatNumber(given, 0)} = ${formatNumber(rest / 100, 3)}`,
      at: 'maturing/#what-the-air-takes',
      place: 'What the air takes',
      paths: ['house.alcoholLoss'],
    };
  }
  const span = inYears ?? house.yearsInWood;
  if (rates.length === 0 || !quantities.some(({ dimension }) => dimension === 'percent') || span <= 0 || span > MOST_YEARS) return undefined; // prettier-ignore
  const [rate] = rates as [number];
  const other = rates[1] ?? house.alcoholLoss;
  const left = (each: number) => 100 * (1 - each / 100) ** span;
  return {
    says: `At ${formatNumber(rate, rate % 1 === 0 ? 0 : 1)} % a year ${formatNumber(left(rate), 0)} % of the alcohol would be left after ${formatNumber(span, 0)} years, and ${formatNumber(100 - left(rate), 0)} % gone${other === rate ? '' : `; at ${formatNumber(other, other % 1 === 0 ? 0 : 1)} % ${formatNumber(left(other), 0)} % would be left`}.`,
    sum: [...new Set([rate, other])]
      .map((each) => `(1 − ${formatWorking(each / 100)})^${span} = ${formatNumber(left(each) / 100, 3)}`)
      .join('; '),
    at: 'maturing/#what-the-air-takes',
    place: 'What the air takes',
    paths: ['house.alcoholLoss'],
  };
};
