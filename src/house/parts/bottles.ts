// The part “bottles”: what a house bottles beside its own bottle, with sizes, strengths and shares.
import { closedRecord, type Reader } from '../../core/reading/given.ts';
import type { KindName } from '../../core/kinds.ts';
import type { Bottle } from '../../core/line/bottles.ts';
import { wasGiven } from '../../core/quoted-given.ts';
import { numberFigures } from '../figures.ts';
import type { HousePart } from './part.ts';
import { ofColumns, soundRows } from './rows.ts';

export const MOST_BOTTLES = 8;

/** What is said of a bottle, and what it can be: size and strength within the limits of the house’s own. */
export const bottleColumns = {
  size: { ...numberFigures.bottleSize, label: 'Bottle' },
  strength: { ...numberFigures.bottlingStrength, label: 'Strength' },
  share: { kind: 'percent', label: 'Share of the spirit', range: [0, 100], step: 5 },
} as const satisfies Readonly<
  Record<keyof Bottle, { kind: KindName; label: string; range: readonly [number, number]; step: number }>
>;
const bottle = closedRecord(ofColumns(bottleColumns), {}) as Reader<Bottle>;

/** A bottle of what the ones before it leave of the spirit. */
function bottleOfTheRest(): Reader<Bottle> {
  let left = 100; // % of the spirit
  return (given, what, tell) => {
    const read = bottle(given, what, tell);
    if (read === undefined) return undefined;
    if (read.share > left) return void tell('all shares together would be more than 100 %.');
    left -= read.share;
    return read;
  };
}

export const bottlesPart: HousePart<readonly Bottle[]> = {
  id: 'bottles',
  title: 'Bottles',
  empty: [],
  read(data) {
    if (!Array.isArray(data))
      return { value: [], problems: [wasGiven('Bottles', data, 'they must be a list.')] };
    const problems: string[] = [];
    if (data.length > MOST_BOTTLES)
      problems.push(`There are ${data.length} bottles; the first ${MOST_BOTTLES} are kept.`);
    const value = soundRows(data.slice(0, MOST_BOTTLES), 'bottle', bottleOfTheRest(), (_, i) => `Bottle ${i + 1}`, (problem) => problems.push(problem)); // prettier-ignore
    return { value, problems };
  },
};
