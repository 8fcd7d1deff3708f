// The part “periods”: how the house works through its week, and the periods of its stillhouse. Read strictly; what cannot be used is told of.
import { isData, ownValue } from '../../core/reading/data.ts';
import { formatNumber } from '../../core/format.ts';
import { gravity, kilograms, litres20, strength, type Spirit } from '../../core/quantity.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import { weekFigures, type WeekFigure, type WeekSettings } from '../../core/week/settings.ts';
import { liquids, type StandingLiquid, type Period, type StandingSpirit } from '../../core/week/period.ts';
import type { HousePart, PartReading } from './part.ts';

export const MOST_PERIODS = 60; // five years of months
export const LONGEST_PERIOD_NAME = 40; // characters
export const MOST_LITRES = 10_000_000; // more than any stillhouse puts through in a period
export const MOST_MALT = 20_000_000; // kg; the same

export interface PeriodsPart {
  /** What the reader has given of it. */
  readonly week: Partial<WeekSettings>;
  readonly periods: readonly Period[];
}
const nothing: Spirit = { volume: litres20(0), strength: strength(0) };
const nothingStands: StandingSpirit = { wash: nothing, lowWines: nothing, spirit: nothing };

/** A period in which nothing is put down yet, with a house's gravities. */
export const freshPeriod = (
  name: string,
  gravities: Pick<Period, 'originalGravity' | 'finalGravity'>,
): Period => ({
  name,
  opening: nothingStands,
  closing: nothingStands,
  malt: kilograms(0),
  wort: litres20(0),
  originalGravity: gravities.originalGravity,
  finalGravity: gravities.finalGravity,
  washCharged: nothing,
  lowWinesMade: nothing,
  spiritMade: nothing,
  spiritSent: nothing,
});

export const periodNumbers = {
  malt: ['the malt', 0, MOST_MALT, 'kg'],
  wort: ['the wort', 0, MOST_LITRES, 'L'],
  originalGravity: ['the original gravity', 1.02, 1.12, ''],
  finalGravity: ['the final gravity', 0.985, 1.04, ''],
} as const;
export const periodSpirits = {
  washCharged: 'wash charged',
  lowWinesMade: 'low wines made',
  spiritMade: 'spirit made',
  spiritSent: 'spirit sent on',
} as const;

/** What was given of the week; what was not stands at its usual value and is not kept. */
function readWeek(data: unknown, tell: (problem: string) => void): Partial<WeekSettings> {
  if (data === undefined) return {};
  if (!isData(data)) return (tell(`The working week: “${quotedGiven(data)}” is no week.`), {});
  const names = Object.keys(weekFigures).filter((name) => Object.hasOwn(data, name)) as WeekFigure[];
  const sound = names.filter((name) => {
    const { label, limits, kind } = weekFigures[name];
    const [low, high] = limits;
    const given = data[name];
    const isWhole = kind !== 'count' || Number.isInteger(given);
    if (typeof given === 'number' && given >= low && given <= high && isWhole) return true;
    tell(
      `${label}: “${quotedGiven(given)}” was given; it can be ${isWhole ? '' : 'a whole number '}from ${low} to ${high}.`,
    );
    return false;
  });
  for (const key of Object.keys(data)
    .filter((each) => !Object.hasOwn(weekFigures, each))
    .slice(0, 10))
    tell(`The working week: “${quotedGiven(key)}” is nothing that is known of a week.`);
  return Object.fromEntries(sound.map((name) => [name, data[name] === 0 ? 0 : data[name]])); // −0 is 0, as a text writes it
}

/** One period, or what is wrong with it: the first thing, in a sentence that names the period. */
function readPeriod(data: unknown, i: number): Period | string {
  if (!isData(data)) return `Period ${i + 1}: “${quotedGiven(data)}” is no period.`;
  const name = ownValue(data, 'name');
  if (typeof name !== 'string' || name.trim() === '' || name.length > LONGEST_PERIOD_NAME)
    return `Period ${i + 1}: a name of 1 to ${LONGEST_PERIOD_NAME} characters is wanted.`;
  const called = `Period “${quotedGiven(name)}”`;
  let problem: string | undefined;
  const number = (what: string, value: unknown, low: number, high: number, unit: string): number => {
    if (typeof value === 'number' && value >= low && value <= high) return value === 0 ? 0 : value;
    problem ??= `${called}: ${what}: “${quotedGiven(value)}” was given; it can be from ${low} to ${formatNumber(high, high % 1 === 0 ? 0 : 2)}${unit && ` ${unit}`}.`;
    return low;
  };
  const spirit = (what: string, value: unknown): Spirit => {
    if (!isData(value)) {
      problem ??= `${called}: ${what}: litres and strength are missing.`;
      return nothing;
    }
    return {
      volume: litres20(number(`${what}, litres`, ownValue(value, 'volume'), 0, MOST_LITRES, 'L')),
      strength: strength(number(`${what}, strength`, ownValue(value, 'strength'), 0, 100, '% vol')),
    };
  };
  const standing = (when: 'opening' | 'closing'): StandingSpirit => {
    const given = ownValue(data, when);
    return Object.fromEntries(
      (Object.keys(liquids) as StandingLiquid[]).map((liquid) => [
        liquid,
        spirit(`${liquids[liquid]} at the ${when}`, isData(given) ? ownValue(given, liquid) : undefined),
      ]),
    ) as Record<StandingLiquid, Spirit>;
  };
  const figure = (key: keyof typeof periodNumbers) => {
    const [what, low, high, unit] = periodNumbers[key];
    return number(what, ownValue(data, key), low, high, unit);
  };
  const period: Period = {
    name,
    opening: standing('opening'),
    closing: standing('closing'),
    malt: kilograms(figure('malt')),
    wort: litres20(figure('wort')),
    originalGravity: gravity(figure('originalGravity')),
    finalGravity: gravity(figure('finalGravity')),
    washCharged: spirit(periodSpirits.washCharged, ownValue(data, 'washCharged')),
    lowWinesMade: spirit(periodSpirits.lowWinesMade, ownValue(data, 'lowWinesMade')),
    spiritMade: spirit(periodSpirits.spiritMade, ownValue(data, 'spiritMade')),
    spiritSent: spirit(periodSpirits.spiritSent, ownValue(data, 'spiritSent')),
  };
  const strange = Object.keys(data).find((key) => !Object.hasOwn(period, key));
  if (strange !== undefined)
    problem ??= `${called}: “${quotedGiven(strange)}” is nothing that is known of a period.`;
  return problem ?? period;
}

function read(data: unknown): PartReading<PeriodsPart> {
  const problems: string[] = [];
  const tell = (problem: string) => void problems.push(problem);
  if (!isData(data))
    return { value: empty, problems: [`Week and periods: “${quotedGiven(data)}” is neither.`] };
  for (const key of Object.keys(data)
    .filter((each) => !Object.hasOwn(empty, each))
    .slice(0, 10))
    tell(`Week and periods: “${quotedGiven(key)}” is nothing that is known of them.`);
  const week = readWeek(ownValue(data, 'week'), tell);
  const given = ownValue(data, 'periods') ?? [];
  if (!Array.isArray(given)) {
    tell(`Periods: “${quotedGiven(given)}” is no list of periods.`);
    return { value: { week, periods: [] }, problems };
  }
  if (given.length > MOST_PERIODS)
    tell(`${given.length} periods are given, and ${MOST_PERIODS} are kept; the rest is left out.`);
  const periods: Period[] = [];
  for (const [i, each] of (given.slice(0, MOST_PERIODS) as unknown[]).entries()) {
    const period = readPeriod(each, i);
    if (typeof period === 'string') tell(period);
    else periods.push(period);
  }
  return { value: { week, periods }, problems };
}

const empty: PeriodsPart = { week: {}, periods: [] };

export const periodsPart: HousePart<PeriodsPart> = { id: 'periods', title: 'Week and periods', empty, read }; // prettier-ignore
