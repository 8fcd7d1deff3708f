// “Two more mashes a week”, “a tonne more in every mash”, “Sundays as well”: so much more or less work, and what it comes to, in proportion.
// Tested in tests/asking/reckoned.test.ts.
import { formatCount, formatNumber } from '../core/format.ts';
import { flowIn, flowsNamed, type AskedFlow } from './flows.ts';
import { isRelative } from './relative.ts';
import { asGiven, inCore, type Numbered, type Reckoner } from './reckoned.ts';
import { flowText, valueText } from './scale.ts';

const ASKS = /\bhow (?:many|much)\b|\bwhat (?:would|will|does|do|difference)\b/i;
const WORDS: Readonly<Record<string, number>> = { a: 1, an: 1, one: 1, another: 1, two: 2, three: 3, four: 4, five: 5, six: 6, ten: 10 }; // prettier-ignore
const COUNT = '(another|an?|one|two|three|four|five|six|ten|\\d+)';
const CHANGE = '(more|extra|additional|further|fewer|less)';
const WORK =
  '(mash(?:es|ings?)?|batch(?:es)?|brews?|(?:working )?days?|(?:working )?weeks?|sundays?|saturdays?)';
const BEFORE = new RegExp(`\\b${COUNT}\\s+(?:whole |full )?${CHANGE}\\s+${WORK}\\b`, 'i');
const BEHIND = new RegExp(`\\b${COUNT}\\s+${WORK}\\s+(?:a week |each week |every week )?${CHANGE}\\b`, 'i');
const ANOTHER = new RegExp(`\\b(another)\\s+(?:(two|three|four|five|six|ten|\\d+)\\s+)?${WORK}\\b`, 'i');
const AS_WELL =
  /\b(?:(?:on |at )?(sundays?|saturdays?|weekends?))\b(?=.{0,24}\b(?:as well|too|also|off)\b)|\b(?:work|mash|ran?|open)\w*\s+(?:on |at )?(sundays?|saturdays?|weekends?)\b/i;
const HOLIDAY = /\bonly\s+(a|one|two|three|four|\d+)\s+weeks?['’]?s?\s+(?:of )?(?:holiday|off|shut|break)/i;
const SHUT = /\b(?:shut|clos\w+|stop\w*|holiday|off|stood still|stand still)\b/i;
const OTHERWISE =
  /\bferment|washback|\btubs?\b|yeast|in (?:the )?(?:cask|wood|barrel)|older|evaporat|angels?/i;
const EACH_MASH =
  /\b(?:every|each|per|(?:in|into|to) (?:an?|the|every|each|your)|an?)\s+(?:single )?(?:mash|batch|brew)\b/i;
const PACE = /\b(?:a|per|each|every|in (?:a|every|each))\s+(week|year)\b/i;
const WEEKS_IN_YEAR = 52;
const DAYS = 7;

/** So many mashes more, a year or once; below nothing where they are fewer. */
interface Change {
  readonly mashes: number;
  readonly isYearly: boolean;
  readonly sum: string;
  readonly taken?: string;
}

/** Mashes, days or weeks more. */
function workMore({ text, house }: Numbered): Change | undefined {
  const holiday = HOLIDAY.exec(text)?.[1]?.toLowerCase();
  if (holiday) {
    const off = WORDS[holiday] ?? Number(holiday);
    const weeks = WEEKS_IN_YEAR - off - house.weeksPerYear;
    return {
      mashes: weeks * house.mashesPerWeek,
      isYearly: true,
      sum: `(${WEEKS_IN_YEAR} − ${off} − ${house.weeksPerYear}) weeks × ${house.mashesPerWeek} mashes`,
    };
  }
  const asWell = AS_WELL.exec(text);
  const counted = BEFORE.exec(text) ?? BEHIND.exec(text) ?? ANOTHER.exec(text);
  if (!counted && !asWell) return undefined;
  const says = (counted ?? asWell)!.slice(1).join(' ').toLowerCase();
  const number = counted ? (/\b(?:two|three|four|five|six|ten|\d+)\b/.exec(says)?.[0] ?? 'one') : /weekend/.test(says) ? 'two' : 'one'; // prettier-ignore
  const count = WORDS[number] ?? Number(number);
  const isLess = /fewer|less/.test(says) !== (/week/.test(says) && !/weekend/.test(says) && SHUT.test(text));
  const signed = isLess ? -count : count;
  const pace = PACE.exec(text.slice((counted ?? asWell)!.index))?.[1]?.toLowerCase();
  if (/mash|batch|brew/.test(says)) {
    if (pace === 'week') return { mashes: signed * house.weeksPerYear, isYearly: true, sum: `${formatCount(count, 'mash', 'mashes')} a week × ${house.weeksPerYear} weeks` }; // prettier-ignore
    return {
      mashes: signed,
      isYearly: pace === 'year',
      sum: formatCount(count, 'mash', 'mashes'),
    };
  }
  if (OTHERWISE.test(text)) return undefined;
  if (/weeks?\b/.test(says) && !/weekend/.test(says))
    return {
      mashes: signed * house.mashesPerWeek,
      isYearly: true,
      sum: `${formatCount(count, 'week')} × ${house.mashesPerWeek} mashes`,
    };
  const now = DAYS - count;
  if (!(now > 0)) return undefined;
  return {
    mashes: (signed * house.mashesPerWeek * house.weeksPerYear) / now,
    isYearly: true,
    sum: `${formatCount(count, 'day')} × ${house.mashesPerWeek} mashes ÷ ${now} days × ${house.weeksPerYear} weeks`,
    taken: ` That takes it that the ${house.mashesPerWeek} mashes of a week fall on ${now} days now.`,
  };
}

/** Malt more, in every mash, every week or once. */
function maltMore({ text, quantities, house, line }: Numbered): Change | undefined {
  const given = quantities.find((each) => each.dimension === 'mass' && isRelative(text, each));
  const mass = given && inCore(given, 'mass');
  if (!given || !(mass! > 0)) return undefined;
  const isLess = /^\s*(?:of )?(?:\w+ )?(?:fewer|less)\b/i.test(text.slice(given.end));
  const share = ((isLess ? -1 : 1) * mass!) / house.maltPerMash;
  const each = `${asGiven(given)} ÷ ${formatNumber(house.maltPerMash, 0)}\u00a0kg`;
  if (EACH_MASH.test(text))
    return {
      mashes: share * line.pace.mashesPerYear,
      isYearly: true,
      sum: `${each} × ${formatNumber(line.pace.mashesPerYear, 0)} mashes a year`,
    };
  if (/\b(?:a|per|each|every) week\b/i.test(text))
    return { mashes: share * house.weeksPerYear, isYearly: true, sum: `${each} × ${house.weeksPerYear} weeks` };
  return { mashes: share, isYearly: false, sum: each };
} // prettier-ignore

/** A yield that rises or falls by so many litres a tonne, as so many mashes' worth of what they make. */
function yieldMore({ text, quantities, line }: Numbered): Change | undefined {
  const given = quantities.find(({ dimension, unit }) => dimension === 'volume' || dimension === 'alcohol' || dimension === 'yield' || unit === undefined); // prettier-ignore
  if (!given || quantities.some(({ unit, number }) => unit !== undefined && unit !== given.unit && number !== 1)) return undefined;
  if (!/\byield\b|(?:a|per|each|every|the) tonne?\b/i.test(text) || !/\bby\s+(?:only |just |about )?$/i.test(text.slice(0, given.start)) && !isRelative(text, given)) return undefined;
  const isLess = /\b(?:fell|falls?|drop\w*|down|less|fewer|lower|worse)\b/i.test(text);
  const share = given.number / (line.heart.alcohol / line.pace.tonnesPerMash);
  return {
    mashes: (isLess ? -1 : 1) * share * line.pace.mashesPerYear,
    isYearly: true,
    sum: `${formatNumber(given.number, given.number % 1 === 0 ? 0 : 1)} L ÷ ${formatNumber(line.heart.alcohol / line.pace.tonnesPerMash, 0)} L a tonne × ${formatNumber(line.pace.mashesPerYear, 0)} mashes a year`,
  };
} // prettier-ignore

/** What is asked for: bottles, where nothing is named. */
const wantedOf = (text: string): AskedFlow => {
  const from = ASKS.exec(text)!.index;
  const named = flowIn(text, from)?.flow;
  return named && named.called !== 'mashes' && named.path !== 'malt.mass'
    ? named
    : flowsNamed.find(({ path }) => path === 'bottling.bottles')!;
};

/** More or less work, in proportion. */
export const moreOf: Reckoner = (asked) => {
  const { text, line } = asked;
  if (!ASKS.test(text)) return undefined;
  const yields = maltMore(asked) || workMore(asked) ? undefined : yieldMore(asked);
  const change = maltMore(asked) ?? workMore(asked) ?? yields;
  if (!change || change.mashes === 0 || !Number.isFinite(change.mashes)) return undefined;
  const flow = yields && !/\bbottles?\b|\bcasks?\b/i.test(text) ? flowsNamed.find(({ path }) => path === 'heart.alcohol')! : wantedOf(text);
  if (flow.isGas) return undefined;
  const amount = flow.perMash(line) * Math.abs(change.mashes);
  const year = valueText(flow.perMash(line) * line.pace.mashesPerYear, flow);
  const word = change.mashes > 0 ? 'more' : flow.kind === 'count' ? 'fewer' : 'less';
  return {
    says: `About ${flow.kind === 'count' ? `${valueText(amount, flow)} ${flow.called} ${word}` : `${valueText(amount, flow)} ${word} ${flow.called}`}${change.isYearly ? ' in a year' : ', once'}, in proportion${change.mashes > 0 && !yields ? ' and if tun, washbacks, stills and people have room for it' : ''}; a year now has ${year}.${change.taken ?? ''}`,
    sum: `${flowText(flow, asked)} in one mash × ${change.sum}`,
    at: 'house/',
    place: 'The figures of the house',
    ...(flow.rests && { rests: flow.rests }),
    paths: flow.path ? [flow.path] : [],
  };
}; // prettier-ignore
