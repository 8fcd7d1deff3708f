// What all the casks of the store give to the air in a year, a day or an hour: “how many bottles evaporate every day?”
// In a store that is full at today's rate, as much leaves in a year as one year's casks lose in all their years. Tested in tests/asking/reckoned.test.ts.
import { formatNumber } from '../core/format.ts';
import { figureText } from '../house/prose.ts';
import { resultInWords, unitOfName, type Reckoner } from './reckoned.ts';

/** What goes to the air is never a flow of what is made. */
export const GOES_TO_AIR = /\bangels?\b|evaporat|\bvanish|\bdisappear|(?:to|into) (?:the |thin )?air\b/i;
const ASKS = /\bhow (?:many|much)\b|\bwhat(?:['’]?s| is| are)?\b.{0,30}\b(?:loss|lose|share|amount)\b/i;
const ONE_CASK =
  /\b(?:an?|one|per|each|every|this|that|my|single|from the|in the)\s+(?:\w+ )?(?:casks?|barrels?|hogsheads?|butts?|mash)\b/i;
const WHOLE =
  /\b(?:whole|all (?:the|your|of)|altogether|in total|total|everything|warehouses?|stores?|place|you|here)\b/i;
const AS_SHARE = /per ?cent|percentage|\bshare\b|%|\bproportion\b/i;
const DRAM = 0.025; // L; a small British bar measure, Weights and Measures (Intoxicating Liquor) Order 1988
const PACES: readonly (readonly [RegExp, string, number])[] = [
  [/\b(?:seconds?)\b/i, 'second', 31_557_600],
  [/\b(?:minutes?)\b/i, 'minute', 525_960],
  [/\b(?:hours?|hourly)\b/i, 'hour', 8766],
  [/\b(?:days?|daily|night)\b/i, 'day', 365.25],
  [/\b(?:weeks?|weekly)\b/i, 'week', 365.25 / 7],
  [/\b(?:months?|monthly)\b/i, 'month', 12],
  [/\b(?:years?|yearly|annual(?:ly)?|annum)\b/i, 'year', 1],
];

export const toTheAir: Reckoner = ({ text, quantities, line, wanted }) => {
  if (!GOES_TO_AIR.test(text) || !ASKS.test(text) || ONE_CASK.test(text) || AS_SHARE.test(text) || quantities.some(({ number }) => number !== 1)) return undefined;
  const [, pace, inYear] = PACES.find(([says]) => says.test(text)) ?? [];
  if (!pace || !inYear || (pace === 'year' && !WHOLE.test(text))) return undefined;
  const { bottling, casks, filling, house, matured } = line;
  const alcohol = (matured.alcoholLost * line.pace.mashesPerYear) / inYear;
  const inBottle = (house.bottleSize * bottling.strength) / 10_000;
  const counted: readonly (readonly [RegExp, string, number])[] = [
    [/\bbottles?\b/i, 'bottles’ worth', inBottle],
    [/\b(?:drams?|tots?|nips?|measures?|shots?)\b/i, 'drams’ worth', (DRAM * bottling.strength) / 100],
    [/\b(?:casks?|barrels?|hogsheads?)\b/i, 'full casks’ worth', filling.alcohol / casks.perMash],
  ];
  const [, called, each] = counted.find(([says]) => says.test(text)) ?? counted[0]!;
  const count = alcohol / each;
  const unit = wanted?.dimension === 'alcohol' ? unitOfName('alcohol', wanted.unit) : undefined;
  return {
    says: `Once the store is full at today’s rate, about ${resultInWords(alcohol, 'alcohol', unit)} a ${pace}: ${formatNumber(count, count < 10 ? 1 : 0)} ${called}, at ${figureText(line, 'house.alcoholLoss')} a year.`,
    sum: `${resultInWords(matured.alcoholLost, 'alcohol')} lost of each mash over ${figureText(line, 'house.yearsInWood')} × ${formatNumber(line.pace.mashesPerYear, 0)} mashes a year${inYear === 1 ? '' : ` ÷ ${formatNumber(inYear, inYear % 1 === 0 ? 0 : 2)}`}`,
    at: 'maturing/#what-the-air-takes',
    place: 'Maturing: what the air takes',
    paths: ['house.alcoholLoss'],
  };
}; // prettier-ignore
