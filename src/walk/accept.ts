// Stale sentences accepted: the new talk, and where its quantities and the other stale sentences then stand.
import { quantitiesIn } from '../talk/quantities.ts';
import { withWordsChanged, placeAfter, type TextChange } from './changes.ts';
import { withoutHedge } from './hedges.ts';
import type { HouseNow, KeptQuantity, StaleSentence } from './stale.ts';

export interface Applied {
  readonly text: string;
  readonly kept: readonly KeptQuantity[];
}

/** A kept quantity after changes: moved, or with its new words and what they stand for. */
function keptAfter(each: KeptQuantity, changes: readonly TextChange[], house: HouseNow): KeptQuantity {
  const end = each.at + each.words.length;
  const own = changes.find(({ at, stood }) => at <= each.at && at + stood.length >= end);
  if (!own) return { ...each, at: placeAfter(each.at, changes) };
  const at = placeAfter(own.at, changes);
  const [read] = quantitiesIn(own.anew);
  const { before, bare } = withoutHedge(own.anew);
  const to = before.length + bare.length;
  const from = read?.end === to ? read.start : before.length;
  return {
    ...each,
    at: at + from,
    words: own.anew.slice(from, to),
    value: house(each.figure)?.value ?? each.value,
  };
}

/** The talk with some stale sentences accepted, and where its quantities then stand; every other character is kept. */
export function acceptStale(
  text: string,
  kept: readonly KeptQuantity[],
  accepted: readonly { readonly changes: readonly TextChange[] }[],
  house: HouseNow,
): Applied {
  const changes = accepted.flatMap((each) => each.changes);
  return { text: withWordsChanged(text, changes), kept: kept.map((each) => keptAfter(each, changes, house)) };
}

/** Stale sentences that were not accepted yet, in the talk as it is once others were. */
export function stillStale(waiting: readonly StaleSentence[], accepted: readonly StaleSentence[]): StaleSentence[] {
  const changes = accepted.flatMap((each) => each.changes);
  return waiting.filter((each) => !accepted.includes(each)).map((each) => ({
    ...each,
    at: placeAfter(each.at, changes),
    end: placeAfter(each.end, changes),
    changes: each.changes.map((change) => ({ ...change, at: placeAfter(change.at, changes) })),
  }));
} // prettier-ignore
