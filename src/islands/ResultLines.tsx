// A table of results, a line each: who, and what is told of each; the same on the screen and on paper.
import { For, type JSX } from 'solid-js';
import { missedIn, type SheetResult } from '../exercises/result.ts';
import { dateInWords } from './today.ts';

/** A column: its head, what it says of a result, and whether it is set as a number. */
export interface Column {
  readonly head: string;
  readonly says: (result: SheetResult) => JSX.Element;
  readonly isNumber?: boolean;
}

const day: Column = {
  head: 'Day and attempt',
  says: ({ day, attempt }) => (day === undefined ? 'not said' : `${dateInWords(day)}, attempt ${attempt}`),
};
const missed: Column = {
  head: 'Missed',
  says: (result) => missedIn(result).join(', '),
  isNumber: true,
};

export function ResultLines(props: {
  readonly results: readonly SheetResult[];
  readonly version?: (result: SheetResult) => JSX.Element;
  /** Points or marks, and what they are called. */
  readonly points: Column;
  /** What stands after the questions missed. */
  readonly more: readonly Column[];
}) {
  const columns = (): readonly Column[] => [
    { head: 'Version', says: props.version ?? (({ version }) => version), isNumber: true },
    day,
    { ...props.points, isNumber: true },
    missed,
    ...props.more,
  ];
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Name</th>
          <For each={columns()}>{({ head }) => <th scope="col">{head}</th>}</For>
        </tr>
      </thead>
      <tbody>
        <For each={props.results}>
          {(result) => (
            <tr>
              <th scope="row">{result.name || 'no name'}</th>
              <For each={columns()}>
                {({ says, isNumber }) => <td classList={{ number: isNumber === true }}>{says(result)}</td>}
              </For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
