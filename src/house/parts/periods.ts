// The part “periods”: how the house works through its week, and the periods of its stillhouse. Read strictly; what cannot be used is told of.
import { isData, ownValue } from '../../core/reading/data.ts';
import { also, called, closedRecord, number, quietly, readAs, record, text, type Reader, type Tell } from '../../core/reading/given.ts'; // prettier-ignore
import { formatNumber } from '../../core/format.ts';
import { gravity, kilograms, litres20, strength, type Spirit } from '../../core/quantity.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import { weekFigures, type WeekFigure, type WeekSettings } from '../../core/week/settings.ts';
import { liquids, type StandingLiquid, type Period, type StandingSpirit } from '../../core/week/period.ts';
import type { HousePart, PartReading } from './part.ts';
import { soundRows } from './rows.ts';

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

/** What a figure of the week can be: counts are whole. */
const ofWeek = ({ label, limits: [low, high], kind }: (typeof weekFigures)[WeekFigure]): Reader<number> => {
  const within = number(low, high);
  return called(label, kind === 'count' ? also(within, Number.isInteger, `it can be a whole number from ${low} to ${high}.`) : within);
}; // prettier-ignore

/** What was given of the week; what was not stands at its usual value and is not kept. */
function readWeek(data: unknown, tell: Tell): Partial<WeekSettings> {
  if (data === undefined) return {};
  if (!isData(data)) return (tell(`The working week: “${quotedGiven(data)}” is no week.`), {});
  const names = Object.keys(weekFigures).filter((name) => Object.hasOwn(data, name)) as WeekFigure[];
  const read = names.map((name) => [name, ofWeek(weekFigures[name])(data[name], '', tell)] as const);
  for (const key of Object.keys(data)
    .filter((each) => !Object.hasOwn(weekFigures, each))
    .slice(0, 10))
    tell(`The working week: “${quotedGiven(key)}” is nothing that is known of a week.`);
  return Object.fromEntries(read.filter(([, value]) => value !== undefined));
}

const amount = (what: string, low: number, high: number, unit: string): Reader<number> =>
  called(what, number(low, high, `it can be from ${low} to ${formatNumber(high, high % 1 === 0 ? 0 : 2)}${unit && ` ${unit}`}.`)); // prettier-ignore

function spiritCalled(what: string): Reader<Spirit> {
  const spirit = record({
    volume: readAs(amount(`${what}, litres`, 0, MOST_LITRES, 'L'), litres20),
    strength: readAs(amount(`${what}, strength`, 0, 100, '% vol'), strength),
  });
  return (given, _, tell) =>
    isData(given) ? spirit(given, '', tell) : void tell(`${what}: litres and strength are missing.`);
}

function standingAt(when: 'opening' | 'closing'): Reader<StandingSpirit> {
  const at = (liquid: StandingLiquid) => spiritCalled(`${liquids[liquid]} at the ${when}`);
  const standing = record({ wash: at('wash'), lowWines: at('lowWines'), spirit: at('spirit') });
  return (given, what, tell) => standing(isData(given) ? given : {}, what, tell);
}

const name = text(
  LONGEST_PERIOD_NAME,
  (given) => given.trim() !== '',
  `a name of 1 to ${LONGEST_PERIOD_NAME} characters is wanted.`,
);
const period: Reader<Period> = closedRecord({
  name,
  opening: standingAt('opening'),
  closing: standingAt('closing'),
  malt: readAs(amount(...periodNumbers.malt), kilograms),
  wort: readAs(amount(...periodNumbers.wort), litres20),
  originalGravity: readAs(amount(...periodNumbers.originalGravity), gravity),
  finalGravity: readAs(amount(...periodNumbers.finalGravity), gravity),
  washCharged: spiritCalled(periodSpirits.washCharged),
  lowWinesMade: spiritCalled(periodSpirits.lowWinesMade),
  spiritMade: spiritCalled(periodSpirits.spiritMade),
  spiritSent: spiritCalled(periodSpirits.spiritSent),
});

/** A period is told of by its name, if it has one. */
function whereOf(row: unknown, i: number): string {
  const of = quietly(record({ name }), row);
  return of ? `Period “${quotedGiven(of.name)}”` : `Period ${i + 1}`;
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
  const periods = soundRows(given.slice(0, MOST_PERIODS), 'period', period, whereOf, tell);
  return { value: { week, periods }, problems };
}

const empty: PeriodsPart = { week: {}, periods: [] };

export const periodsPart: HousePart<PeriodsPart> = { id: 'periods', title: 'Week and periods', empty, read }; // prettier-ignore
