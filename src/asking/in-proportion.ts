// Small questions of “what if” that go in proportion: a weaker wash, more days in the week.
import { formatNumber } from '../core/format.ts';
import { figureText } from '../house/prose.ts';
import { isRelative } from './relative.ts';
import { resultInWords, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const IF = /\bif\b|suppose|imagine|\bwere\b|say (?:the|you|it)|had been/i;

/** A wash of another strength: as much alcohol more or less, for the same volume. */
export const otherWash: Reckoner = (asked) => {
  const { text, line } = asked;
  const { strengths, volumes } = spiritSaid(asked);
  const [at] = volumes.length === 0 ? strengths : [];
  if (
    at === undefined ||
    at > 20 ||
    !IF.test(text) ||
    !/\bwash\b|\bbeer\b|ferment/i.test(text) ||
    /temperature|degrees|hours/i.test(text)
  )
    return undefined;
  const ratio = at / line.wash.strength;
  const change = Math.abs(100 * (ratio - 1));
  return {
    says: `About ${formatNumber(change, 0)} % ${ratio < 1 ? 'less' : 'more'}: some ${resultInWords(line.heart.alcohol * ratio, 'alcohol')} from a mash in place of ${figureText(line, 'heart.alcohol')}, and ${formatNumber(line.bottling.bottlesPerYear * ratio, 0)} bottles a year in place of ${formatNumber(line.bottling.bottlesPerYear, 0)}.`,
    sum: `${formatNumber(at, 1)} ÷ ${figureText(line, 'wash.strength')} × ${figureText(line, 'heart.alcohol')}, for the same ${figureText(line, 'wash.volume')} of wash`, // prettier-ignore
    at: 'fermenting/check/#figures-to-know',
    place: 'Fermenting: figures to know',
    paths: ['wash.strength', 'heart.alcohol'],
  };
};

/** More days or mashes in a week, or weeks in a year: as many bottles more. */
export const moreWork: Reckoner = ({ text, quantities, house, line }) => {
  if (!IF.test(text) || !/\bdays?\b|\bmash(?:es|ed)?\b|\bweeks?\b|\bbatch(?:es)?\b/i.test(text)) return undefined;
  if (quantities.some((each) => isRelative(text, each))) return undefined;
  const counts = quantities.filter(({ unit }) => unit === undefined || unit === 'days' || unit === 'weeks');
  const [first, second] = counts;
  if (!first || counts.length !== quantities.length || first.number <= 0 || first.number > 60) return undefined;
  const isWeeks = first.unit === 'weeks' && /\byear\b|\bweeks\b/i.test(text);
  const now = second?.number ?? (isWeeks ? house.weeksPerYear : first.unit === 'days' ? undefined : house.mashesPerWeek);
  const what = isWeeks ? 'weeks' : first.unit === 'days' || /\bdays?\b/i.test(text) ? 'days' : 'mashes';
  if (now === undefined || now <= 0 || (what === 'days' && first.number > 7)) return undefined;
  const bottles = line.bottling.bottlesPerYear;
  return {
    says: `At ${first.number} ${what} in place of ${now}, in proportion: about ${formatNumber((bottles * first.number) / now, 0)} bottles a year, if tuns, washbacks and stills have the hours; now it is ${formatNumber(bottles, 0)}, from ${house.mashesPerWeek} mashes a week.`,
    sum: `${formatNumber(bottles, 0)} × ${first.number} ÷ ${now}`,
    at: 'maturing/check/#figures-to-know',
    place: 'Maturing: figures to know',
    paths: ['bottling.bottlesPerYear'],
  };
}; // prettier-ignore
