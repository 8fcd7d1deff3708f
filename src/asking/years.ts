// Sums of years: how old spirit is that was filled in one and bottled in another, and when a cask comes of age.
import { formatNumber } from '../core/format.ts';
import type { Reckoner } from './reckoned.ts';

const AGES = { at: 'law/#age-years-and-words', place: 'Age, years and words' };
const FROM = 1800; // the first year that is read as one
const UNTIL = 2200;
const MOST = 100; // years in wood

/** Ages put together: the youngest is the one on the label. */
export const youngest: Reckoner = ({ text, quantities }) => {
  if (!/vat|mix|blend|marr(?:y|ied)|together|\bparts?\b|\bdrop\b|add/i.test(text) || !/\bage|label|how old|\bcall\b|\bsay\b/i.test(text)) return undefined;
  const ages = quantities.filter(({ unit, number }) => unit === 'years' && number > 0 && number <= MOST).map(({ number }) => number);
  if (ages.length < 2) return undefined;
  const least = Math.min(...ages);
  return {
    says: `${formatNumber(least, 0)} years: an age on the label is that of the youngest spirit in the bottle, however little of it there is. ${least < 3 ? 'Under three years it is not whisky by most laws. ' : ''}Read the law in force.`,
    sum: `The least of ${ages.map((age) => formatNumber(age, 0)).join(', ')}`,
    ...AGES,
    paths: [],
  };
}; // prettier-ignore

/** Ages and years of bottling from years of the calendar. */
export const calendar: Reckoner = ({ text, quantities }) => {
  const isYear = ({ number, unit }: (typeof quantities)[number]) =>
    unit === undefined && number % 1 === 0 && number >= FROM && number <= UNTIL;
  if (!/fill|bottl|distil|cask|barrel|laid|made|age|old|wood|matur|whisk/i.test(text)) return undefined;
  const years = quantities.filter(isYear).map(({ number }) => number);
  const spans = quantities.filter((each) => !isYear(each) && (each.unit === 'years' || each.unit === undefined));
  if (years.length === 2 && quantities.length === 2) {
    const [first, last] = [Math.min(...years), Math.max(...years)];
    const full = last - first;
    if (full === 0 || full > MOST) return undefined;
    return {
      says: `From ${first} to ${last} is ${full} years, or ${full - 1} full ones if the day of filling had not come round; a British label counts full years in wood only.`,
      sum: `${last} − ${first} = ${full}`,
      ...AGES,
      paths: [],
    };
  }
  const [span] = spans;
  const isWhisky = spans.length === 0 && /\bwhisk(?:e)?y\b/i.test(text) && /\bwhen\b/i.test(text);
  const length = span?.number ?? (isWhisky ? 3 : undefined);
  if (years.length !== 1 || length === undefined || quantities.length > 2 || !/\bwhen\b|what year|which year|what age|how old/i.test(text)) return undefined;
  if (!(length > 0) || length > MOST) return undefined;
  const [from] = years as [number];
  return {
    says: `Filled in ${from}, it is ${formatNumber(length, length % 1 === 0 ? 0 : 1)} years in wood in ${Math.floor(from + length)}, from the day of filling on.`,
    sum: `${from} + ${formatNumber(length, length % 1 === 0 ? 0 : 1)}`,
    ...AGES,
    paths: [],
  };
}; // prettier-ignore
