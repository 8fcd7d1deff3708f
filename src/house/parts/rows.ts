// Rows of a part of a house, read as far as they can be; and the columns that such rows have.
import { allowedInWords } from '../../core/format.ts';
import type { KindName } from '../../core/kinds.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import { isData } from '../../core/reading/data.ts';
import { called, number, type Reader, type Tell } from '../../core/reading/given.ts';

interface Column {
  readonly label: string;
  readonly kind: KindName;
  readonly range: readonly [number, number];
}

/** A number of a kind from one end to the other, told of in the unit of the kind. */
export const numberOfKind = ({ label, kind, range }: Column): Reader<number> =>
  called(label, number(...range, allowedInWords(kind, range)));

/** A reader for each column. */
export const ofColumns = <K extends string>(columns: Readonly<Record<K, Column>>) =>
  Object.fromEntries(
    Object.entries<Column>(columns).map(([name, column]) => [name, numberOfKind(column)]),
  ) as Readonly<Record<K, Reader<number>>>;

/** The rows that can be read; each other is told of by where it stands and the first thing that is wrong with it. */
export function soundRows<T>(
  rows: readonly unknown[],
  kind: string,
  read: Reader<T>,
  where: (row: unknown, i: number) => string,
  tell: Tell,
): readonly T[] {
  return rows.flatMap((row, i) => {
    let first = isData(row) ? undefined : `“${quotedGiven(row)}” is no ${kind}.`;
    const value = read(row, '', (problem) => void (first ??= problem));
    if (value === undefined) tell(`${where(row, i)}: ${first}`);
    return value === undefined ? [] : [value];
  });
}
