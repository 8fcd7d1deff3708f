// How many quantities a talk has, how many are taken for figures, and how many of those can be checked against the others: in words that mean what they mean in the verdict.
import { isRefusal } from '../core/refusal.ts';
import type { TalkRead } from './script-reading.worker.ts';

const NONE_CHECKED = 'None of these figures can be checked against the others.'; // as the verdict says it

/** What was found in a talk, in a sentence or two; each mark counts. */
export function countedInTalk({
  script,
  taken,
  answer,
}: Pick<TalkRead, 'script' | 'taken' | 'answer'>): string {
  const marks = Object.values(taken);
  const judged = answer && !isRefusal(answer) ? answer.figures : [];
  const checkable = new Set<string>(
    judged.flatMap(({ figure, finding }) => (finding === 'not checkable' ? [] : [figure])),
  );
  const checked = marks.filter(({ figure }) => checkable.has(figure)).length;
  const found = script.quantities.length === 1 ? 'One quantity' : `${script.quantities.length} quantities`;
  if (marks.length === 0) return `${found} found; none is taken for a figure of the house yet.`;
  if (marks.length === 1)
    return `${found} found; one is taken for a figure of the house, and ${checked === 1 ? 'can be checked' : 'nothing checks it'}.`;
  const which = checked === 0 ? 'none' : checked === marks.length ? 'all' : `${checked}`;
  return `${found} found; ${marks.length} are taken for figures of the house, of which ${which} can be checked against the others.`;
}

/** What a talk comes to in which nothing is sure that could be held against anything. */
export function withoutVerdict({ script, taken }: Pick<TalkRead, 'script' | 'taken'>): string {
  if (script.quantities.length === 0) return 'No figure was found.';
  return Object.keys(taken).length === 0 ? 'No figure is sure yet.' : NONE_CHECKED;
}
