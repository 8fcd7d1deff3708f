// The lines of a round's log: what was done and what came of it, what happened and what was wrong, in the order of time.
import { formatNumber as n } from '../core/format.ts';
import type { Acted, Logged, Moment } from '../core/shift/course.ts';

/** What a kind of shift says of its log; a `Post` has it all. */
export interface LogWords<S extends Moment, A> {
  readonly wordsOf: (action: A) => string;
  readonly turned: readonly string[];
  readonly told: readonly string[];
  readonly happenings: Readonly<Record<S['happened'][number]['id'], string>>;
  readonly whys: Readonly<Record<S['wrong'][number]['id'], readonly [unknown, string]>>;
}

/** What the log adds to an action's own words: that it was refused; what it found, or why it changed nothing; else nothing. */
export function outcomeInLog<S>(before: S, { state, says, isRefused }: Acted<S>, isTold: boolean): string {
  if (isRefused) return ': refused.';
  return says && (isTold || state === before) ? `. ${says}` : '.';
}

/** The lines; `came` holds what came of each action of the log. Of what was turned several marks at one time only the last. */
export function logLines<S extends Moment, A extends { readonly do: string }>(
  words: LogWords<S, A>,
  log: readonly Logged<A>[],
  came: readonly string[],
  { happened, wrong, readings }: S,
): readonly { readonly step: number; readonly text: string }[] {
  let reading = 0;
  const done = log.flatMap(({ step, action }, i) => {
    const next = log[i + 1];
    if (words.turned.includes(action.do) && next?.step === step && next.action.do === action.do) return [];
    const made = action.do === 'read' ? readings[reading] : undefined;
    if (made?.step === step) reading++;
    const at = made ? `, sample at ${n(made.temperature, 1)} °C` : '';
    return [{ step, text: `${words.wordsOf(action)}${at}${came[i] ?? '.'}` }];
  });
  // At one time what happened comes first: what was done came upon it.
  return [
    ...happened.map(({ step, id }) => ({ step, text: words.happenings[id as keyof typeof words.happenings] })),
    ...done,
    ...wrong.map(({ step, id }) => ({ step, text: words.whys[id as keyof typeof words.whys][1] })),
  ].toSorted((a, b) => a.step - b.step);
} // prettier-ignore
