// Reads a talk off the main thread: its quantities, what they say together, and the questions that it leaves open.
import type { Quoted } from '../core/line/quoted.ts';
import { reconcile, type Reconciliation } from '../core/line/reconcile.ts';
import type { Refusal } from '../core/refusal.ts';
import { quotedIn } from '../talk/quoted-in.ts';
import { readScript, type ReadScript } from '../talk/script.ts';
import type { Settled } from '../talk/settled.ts';
import { unanswered, type Question } from '../talk/unanswered.ts';

export interface TalkAsked {
  readonly text: string;
  /** What the reader put right in it, by place. */
  readonly settled: Settled;
}
export interface TalkRead extends TalkAsked {
  readonly script: ReadScript;
  readonly open: readonly Question[];
  readonly quoted: Quoted;
  /** What the quoted figures say together; nothing where none can be checked. */
  readonly answer: Reconciliation | Refusal | undefined;
}

let questions: readonly Question[] = [];
let last: Pick<TalkRead, 'text' | 'script' | 'open'> | undefined; // a text that stays is not read twice

function read({ text, settled }: TalkAsked): TalkRead {
  if (last?.text !== text)
    last = {
      text,
      script: readScript(text),
      open: unanswered(text, questions).map(({ question }) => question),
    };
  const quoted = quotedIn(last.script.quantities, settled);
  const answer = Object.keys(quoted).length === 0 ? undefined : reconcile(quoted);
  return { ...last, settled, quoted, answer };
}

addEventListener(
  'message',
  ({ data }: MessageEvent<TalkAsked | { readonly questions: typeof questions }>) => {
    if ('questions' in data) questions = data.questions;
    else postMessage(read(data));
  },
);
