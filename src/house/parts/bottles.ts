// The part “bottles”: what a house bottles beside its own bottle, with sizes, strengths and shares.
import { isData, ownValue } from '../../core/reading/data.ts';
import { allowedInWords } from '../../core/format.ts';
import type { KindName } from '../../core/kinds.ts';
import type { Bottle } from '../../core/line/bottles.ts';
import { quotedGiven, wasGiven } from '../../core/quoted-given.ts';
import { numberFigures } from '../figures.ts';
import type { HousePart } from './part.ts';

export const MOST_BOTTLES = 8;

/** What is said of a bottle, and what it can be: size and strength within the limits of the house’s own. */
export const bottleColumns = {
  size: { ...numberFigures.bottleSize, label: 'Bottle' },
  strength: { ...numberFigures.bottlingStrength, label: 'Strength' },
  share: { kind: 'percent', label: 'Share of the spirit', range: [0, 100], step: 5 },
} as const satisfies Readonly<
  Record<keyof Bottle, { kind: KindName; label: string; range: readonly [number, number]; step: number }>
>;
const columns = Object.entries(bottleColumns);

/** A bottle, or the sentence that says what is wrong with it. */
function readBottle(row: unknown): Bottle | string {
  if (!isData(row)) return 'this is no bottle.';
  const strange = Object.keys(row).find((key) => !Object.hasOwn(bottleColumns, key));
  if (strange !== undefined) return `“${quotedGiven(strange)}” is nothing that is known of a bottle.`;
  for (const [name, { label, kind, range }] of columns) {
    const value = ownValue(row, name);
    if (!(typeof value === 'number' && value >= range[0] && value <= range[1]))
      return wasGiven(label, value, allowedInWords(kind, range));
  }
  return Object.fromEntries(columns.map(([name]) => [name, ownValue(row, name)])) as unknown as Bottle;
} // prettier-ignore

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
    const value: Bottle[] = [];
    let left = 100; // % of the spirit
    for (const [i, row] of data.slice(0, MOST_BOTTLES).entries()) {
      const bottle = readBottle(row);
      if (typeof bottle === 'string') problems.push(`Bottle ${i + 1}: ${bottle}`);
      else if (bottle.share > left)
        problems.push(`Bottle ${i + 1}: all shares together would be more than 100 %.`);
      else {
        value.push(bottle);
        left -= bottle.share;
      }
    }
    return { value, problems };
  },
};
