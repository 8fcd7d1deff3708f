// Reads a talk off the main thread: its quantities, what they are taken for and say together, and the questions that it leaves open.
import { distilledIn } from '../core/cross-check/distilled.ts';
import type { Quoted } from '../core/cross-check/quoted.ts';
import { reconcile, type Reconciliation } from '../core/cross-check/reconcile.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { readPart } from '../house/parts/part.ts';
import { plantPart } from '../house/parts/plant.ts';
import type { ReadScript } from '../talk/script.ts';
import { unanswered, type UnansweredQuestion } from '../talk/unanswered.ts';
import { mentionsIn, type Mention } from '../talk/words.ts';
import { cutIntoRooms, type Cut, type RoomOf } from '../walk/cut.ts';
import { wordsFor } from './script-because.ts';
import { settledBy, type Correction } from './script-corrections.ts';
import { quotedOf, readLines, takenIn, tellingsIn, type TakenFor, type UnsureMark } from './script-taken.ts';
import { toldTwice, type ToldTwice } from './script-twice.ts';
import { verdictOf, type TalkVerdict } from './script-verdict.ts';

export interface TalkAsked {
  readonly text: string;
  /** What the reader put right in it. */
  readonly corrections: readonly Correction[];
  /** True where every number is meant as a figure, so that all that are not sure are asked. */
  readonly asksAll: boolean;
  /** The part “plant” of the house that it is about, where that distils otherwise than twice in stills that are alike. */
  readonly plant?: unknown;
  /** The rooms of a walk, in order, into which it is to be cut. */
  readonly rooms?: readonly RoomOf[];
}
export interface TalkRead extends TalkAsked {
  readonly script: ReadScript;
  readonly open: readonly UnansweredQuestion[];
  readonly taken: TakenFor;
  /** The places that the reader has put right. */
  readonly putRight: readonly number[];
  /** The words by which each of these is known, by its place. */
  readonly because: Readonly<Record<number, readonly string[]>>;
  readonly unsure: readonly UnsureMark[];
  readonly twice: readonly ToldTwice[];
  readonly quoted: Quoted;
  /** What the quoted figures say together; nothing where none can be checked. */
  readonly answer: Reconciliation | Refusal | undefined;
  readonly verdict: TalkVerdict | undefined;
  readonly cuts?: readonly Cut[];
}

let questions: readonly UnansweredQuestion[] = [];
let last: (Pick<TalkRead, 'text' | 'script' | 'open'> & { mentions: readonly Mention[] }) | undefined; // a text that stays is not read twice

function read(asked: TalkAsked): TalkRead {
  const { text, corrections, asksAll } = asked;
  if (last?.text !== text)
    last = {
      text,
      script: readLines(text, asksAll),
      open: questions.length === 0 ? [] : unanswered(text, questions).map(({ question }) => question),
      mentions: mentionsIn(text),
    };
  const { script, open, mentions } = last;
  const settled = settledBy(corrections, text, script.quantities);
  const { taken, unsure } = takenIn(text, script.quantities, settled, asksAll);
  const because = Object.fromEntries(
    script.quantities.flatMap((quantity) => {
      const found = taken[quantity.start];
      return found?.by === 'reader'
        ? [[quantity.start, wordsFor(text, mentions, quantity, found.figure)]]
        : [];
    }),
  );
  const quoted = quotedOf(taken);
  const answer =
    Object.keys(quoted).length === 0
      ? undefined
      : reconcile(quoted, distilledIn(readPart(plantPart, asked.plant).value));
  const verdict = answer && !isRefusal(answer) ? verdictOf(answer) : undefined;
  const twice = toldTwice(taken, tellingsIn(text, script.quantities, settled, taken));
  const placed = script.quantities.map(({ start, end }) => ({ start, end, ...taken[start] }));
  const cuts = asked.rooms && { cuts: cutIntoRooms(text, placed, asked.rooms) };
  const putRight = Object.keys(settled).map(Number);
  return {
    ...asked,
    script,
    open,
    taken,
    putRight,
    because,
    unsure,
    twice,
    quoted,
    answer,
    verdict,
    ...cuts,
  };
}

addEventListener(
  'message',
  ({ data }: MessageEvent<TalkAsked | { readonly questions: typeof questions }>) => {
    if ('questions' in data) questions = data.questions;
    else postMessage(read(data));
  },
);
