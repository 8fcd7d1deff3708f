// Another yield of the malt, so much malt at a yield, and a share more or less of what the house mashes.
import { formatNumber } from '../core/format.ts';
import { figureText } from '../house/prose.ts';
import { resultInWords, type Reckoner } from './reckoned.ts';

const YIELDS = { at: 'distilling/check/#figures-to-know', place: 'Distilling: figures to know' };
const A_YEAR = { at: 'maturing/check/#figures-to-know', place: 'Maturing: figures to know' };
const LIKELY = [100, 500] as const; // litres of pure alcohol from a tonne that a malt can be said to give
const SUPPOSES =
  /\bif\b|suppose|instead|\bwere\b|drop|fell|fall|only g[eo]t|imagine|went (?:up|down)|what about|\bwould\b/i;

const howMuch = (ratio: number) =>
  `${formatNumber(Math.abs(100 * (ratio - 1)), Math.abs(ratio - 1) < 0.1 ? 1 : 0)} % ${ratio < 1 ? 'less' : 'more'}`;

/** Litres of pure alcohol from a tonne, as a question tells them. */
function yieldIn({ text, quantities }: Parameters<Reckoner>[0]): number | undefined {
  const isYield = /yield|(?:a|per|each|every|the|from a|to the|of a) tonn?e?\b|\/\s?t\b|\blpas?\b/i.test(
    text,
  );
  const found = quantities.find(({ number, unit, dimension }) =>
    (dimension === 'yield' || ((unit === undefined || dimension === 'volume' || dimension === 'alcohol') && isYield)) &&
    number >= LIKELY[0] && number <= LIKELY[1]); // prettier-ignore
  return found?.number;
}

/** The house at another yield; or so much malt at a yield. */
export const atYield: Reckoner = (asked) => {
  const { text, quantities, line } = asked;
  const each = yieldIn(asked);
  if (each === undefined || quantities.length > 3) return undefined;
  if (quantities.some(({ dimension, number }) => dimension === 'mass' && number !== 1)) return undefined; // chain.ts
  if (!SUPPOSES.test(text)) return undefined;
  const ours = line.heart.alcohol / line.pace.tonnesPerMash;
  const ratio = each / ours;
  const { bottlesPerYear } = line.bottling;
  return {
    says: `At ${formatNumber(each, 0)} L a tonne it would be ${howMuch(ratio)} than our ${formatNumber(ours, 0)}: about ${resultInWords(line.heart.alcohol * line.pace.mashesPerYear * ratio, 'alcohol')} a year and ${formatNumber(bottlesPerYear * ratio, 0)} bottles in place of ${formatNumber(bottlesPerYear, 0)}.`,
    sum: `${formatNumber(each, 0)} ÷ ${formatNumber(ours, 0)} = ${formatNumber(ratio, 3)}`,
    ...YIELDS,
    paths: ['heart.alcohol', 'bottling.bottlesPerYear'],
  };
};

/** Shares in words, and how many times as much they are. */
const shares: readonly (readonly [RegExp, number])[] = [
  [
    /\b(?:half as much|only half|just half|half (?:of )?(?:the|your|our|as many)|halved?|cut in half)\b/i,
    0.5,
  ],
  [/\b(?:twice|double[d]?)\b/i, 2],
  [/\b(?:three times|triple[d]?|treble)\b/i, 3],
  [/\b(?:four times|quadruple)\b/i, 4],
  [/\b(?:a|one) third (?:of|less)\b/i, 2 / 3],
  [/\b(?:a|one) quarter (?:of|less)\b/i, 0.75],
  [/\ba quarter more\b/i, 1.25],
  [/\ba third more\b/i, 4 / 3],
  [/\bhalf as much again\b|\bhalf more\b/i, 1.5],
];

/** Half the malt, twice the mashes, ten per cent less barley: as much alcohol in proportion. */
export const shareMoved: Reckoner = ({ text, quantities, line }) => {
  if (!/\bmalt\b|\bbarley\b|\bgrain\b|\bmash(?:es)?\b|\bharvest\b|\bcrop\b/i.test(text)) return undefined;
  if (!/\bif\b|suppose|\bwhat\b|would|how (?:many|much)|imagine/i.test(text) || /yeast|water|\bbottle\b|strong|\bcosts?\b|\bprices?\b|dear\b|expensive|cheap/i.test(text)) return undefined; // prettier-ignore
  const [first] = quantities;
  const by = quantities.length === 1 && first!.dimension === 'percent' ? first!.number / 100 : undefined;
  const isLess = /\bless\b|fewer|lower|down|drop|fell|worse|lost|short/i.test(text);
  const isMore = /\bmore\b|extra|higher|\bup\b|rise|better|increase|bigger/i.test(text);
  const ratio =
    by !== undefined
      ? isLess === isMore && !(isMore && /how many more|how much more/i.test(text)) ? undefined : isLess && !isMore ? 1 - by : 1 + by
      : quantities.length === 0 ? shares.find(([says]) => says.test(text))?.[1] : undefined;
  if (ratio === undefined || !(ratio > 0) || ratio > 10) return undefined;
  const { bottlesPerYear } = line.bottling;
  return {
    says: `In proportion: about ${resultInWords(line.heart.alcohol * line.pace.mashesPerYear * ratio, 'alcohol')} a year in place of ${figureText(line, 'heart.alcohol', 'year')}, and in the end ${formatNumber(bottlesPerYear * ratio, 0)} bottles in place of ${formatNumber(bottlesPerYear, 0)}; these come only after the years in wood.`,
    sum: `${figureText(line, 'malt.mass', 'year')} of malt a year × ${formatNumber(ratio, 2)}${by === undefined ? '' : `, ${formatNumber(100 * by, 0)} % ${ratio < 1 ? 'less' : 'more'}`}`,
    ...A_YEAR,
    paths: ['heart.alcohol', 'bottling.bottlesPerYear'],
  };
}; // prettier-ignore
