// Reads a guide's own script: finds its figures, checks them against each other, and marks the text. A worker reads; what it found is shown a part at a time.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatNumber } from '../core/format.ts';
import type { Reconciliation } from '../core/line/reconcile.ts';
import { sentences } from '../core/line/verdict.ts';
import { isRefusal } from '../core/refusal.ts';
import { keepText, keptText, keyOf } from '../house/browser-store.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { useHouse } from '../house/store.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { figureIds, type FigureId } from '../talk/figures.ts';
import type { SaidFigure } from '../talk/own-house.ts';
import { figureIn, saidIn } from '../talk/quoted-in.ts';
import { moveSettled, NOT_OURS, type Settled } from '../talk/settled.ts';
import { FileField } from './FileField.tsx';
import { AgainstHouse } from './AgainstHouse.tsx';
import { useAnnouncement } from './announce.ts';
import { Follows, Verdict } from './CrossCheckAnswer.tsx';
import { inTurns } from './in-turns.ts';
import { textOfFile } from './open-file.ts';
import { ScriptCard } from './ScriptCard.tsx';
import { ScriptMarked } from './ScriptMarked.tsx';
import { talkReader } from './script-reading.ts';
import type { TalkRead } from './script-reading.worker.ts';

const LONGEST = 100_000; // characters of a script that are read; a tour has some 15,000
const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened
const QUIET = 500; // ms without typing before the script is read anew
const KEY = keyOf('script');
const NOTHING: TalkRead = {
  text: '',
  settled: {},
  script: { quantities: [], left: 0 },
  open: [],
  quoted: {},
  answer: undefined,
};
const FAILED =
  'The part of this page that reads a talk did not come, so nothing was read. What you typed is untouched; load the page again.';
const NOT_KEPT =
  'This browser does not let the handbook keep your script; it lasts until the page is closed.';

/** A script and what was put right in it, as it was kept; nothing when there is none or it cannot be read. */
function kept(): { readonly text: string; readonly settled: Settled } | undefined {
  try {
    const { text, settled } = JSON.parse(keptText(KEY) ?? '') as { text?: unknown; settled?: unknown };
    if (typeof text !== 'string' || text.length > LONGEST) return undefined;
    const sound = Object.entries(typeof settled === 'object' ? (settled ?? {}) : {}).filter(
      ([place, figure]) =>
        /^\d+$/.test(place) && (figure === NOT_OURS || figureIds.includes(figure as FigureId)),
    );
    return { text, settled: Object.fromEntries(sound) as Settled };
  } catch {
    return undefined;
  }
}

const wordsOf = (question: string) =>
  question
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter(
      (word) =>
        word.length > 3 &&
        !['what', 'does', 'this', 'that', 'with', 'your', 'have', 'into', 'from', 'here', 'when'].includes(
          word,
        ),
    );

/** What the worker found together, where it is no refusal. */
const foundIn = ({ answer }: TalkRead): Reconciliation | undefined =>
  answer && !isRefusal(answer) ? answer : undefined;

export default function ScriptReader(props: { readonly questions: readonly VisitorQuestion[] }) {
  const [text, setText] = createSignal('');
  const [settled, setSettled] = createSignal<Settled>({});
  const [length, setLength] = createSignal(0);
  const [fileProblem, setFileProblem] = createSignal<string>();
  const [hasFailed, setFailed] = createSignal(false);
  const [isKept, setKept] = createSignal(true);
  let box: HTMLTextAreaElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  /** What was read last, as each part of the page shows it: one part after another. */
  const [atVerdict, setAtVerdict] = createSignal(NOTHING);
  const [atHouse, setAtHouse] = createSignal(NOTHING);
  const [atMarks, setAtMarks] = createSignal(NOTHING);
  const [atFollows, setAtFollows] = createSignal(NOTHING);
  const [atCard, setAtCard] = createSignal(NOTHING);
  const [atQuestions, setAtQuestions] = createSignal(NOTHING);
  const turns = inTurns();
  const show = (read: TalkRead) => {
    setFailed(false);
    turns(
      [setAtVerdict, setAtHouse, setAtMarks, setAtFollows, setAtCard, setAtQuestions].map(
        (set) => () => void set(read),
      ),
    );
  };
  const reader = talkReader(
    () =>
      unwrap(props.questions).map(({ id, chapter, title, question }) => ({
        id,
        chapter,
        title,
        question,
        words: wordsOf(question),
      })),
    show,
    () => setFailed(true),
  );
  /** Keeps the text and what is settled in it, and has it read. */
  const take = (next: string, put: Settled) => {
    setText(next);
    setSettled(put);
    setKept(keepText(KEY, JSON.stringify({ text: next, settled: put })));
    if (next.trim() !== '') return reader.ask({ text: next, settled: put });
    reader.forget();
    show(NOTHING);
  };
  const readNow = () => {
    clearTimeout(timer);
    timer = undefined;
    const next = box!.value;
    setLength(next.length);
    const now = next.slice(0, LONGEST);
    take(now, moveSettled(settled(), text(), now));
  };
  const readSoon = () => {
    clearTimeout(timer);
    timer = setTimeout(readNow, QUIET);
  };
  onMount(() => {
    addEventListener('pagehide', () => timer !== undefined && readNow()); // what was typed last is kept, too
    const before = kept() ?? { text: '', settled: {} };
    const early = box!.value; // typed before the script came
    if (before.text !== '') box!.value = early === '' ? before.text : `${before.text}\n\n${early}`;
    setText(before.text);
    setSettled(before.settled);
    if (box!.value !== '') readNow();
  });
  const isRead = () => atVerdict().text !== '';
  /** What of a long script was left unread. */
  const unread = () => {
    const { quantities, left } = atVerdict().script;
    return [
      length() > LONGEST
        ? `The script has ${formatNumber(length(), 0)} characters; the first ${formatNumber(LONGEST, 0)} are read.`
        : '',
      left > 0
        ? `It has ${formatNumber(quantities.length + left, 0)} quantities; the first ${formatNumber(quantities.length, 0)} are read. Paste the rest separately.`
        : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' ');
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const opened = await textOfFile(file, BIGGEST_FILE, 'a script’s file');
    setFileProblem('problem' in opened ? opened.problem : undefined);
    if ('problem' in opened) return;
    box!.value = opened.text;
    readNow();
  };
  const verdict = createMemo(() => foundIn(atVerdict()));
  useAnnouncement('together', verdict, () => (verdict() ? sentences(verdict()!).join(' ') : ''));
  const trouble = () => {
    const { answer } = atVerdict();
    return answer && isRefusal(answer) ? answer.refused : undefined;
  };
  const { house, name: houseName } = useHouse();
  const [wantsHeld, setHeld] = createSignal<boolean>();
  /** A talk is held against the reader's own house as soon as there is one. */
  const held = () => wantsHeld() ?? (house() !== builtInHouse || houseName() !== builtInName);
  const saidFigures = createMemo<readonly SaidFigure[]>(() =>
    atHouse().script.quantities.flatMap((quantity) => {
      const [figure, said] = [figureIn(quantity, atHouse().settled), saidIn(quantity)];
      return figure && said ? [{ figure, said }] : [];
    }),
  );
  const open = () => atQuestions().open;

  return (
    <section class="calculator script-reader" aria-labelledby="script-title">
      <h2 id="script-title">Your talk</h2>
      <details class="talk-box" open={!isRead()}>
        <summary>{!isRead() ? 'Paste it here, or open a file' : 'Change the talk'}</summary>
        <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <div class="field">
            <label for="script-text">What you say</label>
            <textarea
              id="script-text"
              ref={box}
              rows="8"
              autocomplete="off"
              spellcheck={false}
              onFocus={() => reader.wake()}
              onInput={readSoon}
            />
          </div>
          <div class="field">
            <FileField id="script-file" label="Or a text file" accept=".txt,.md,text/plain" open={load} />
            <Show when={fileProblem()}>
              <p class="problem" role="alert">
                {fileProblem()}
              </p>
            </Show>
          </div>
        </form>
        <p class="note">
          {isKept() ? 'It is read and kept in this browser, and goes nowhere else.' : NOT_KEPT}
        </p>
      </details>
      <Show when={hasFailed()}>
        <p class="problem" role="alert">
          {FAILED}
        </p>
      </Show>
      <Show when={trouble()}>
        <p class="problem" role="alert">
          {trouble()}
        </p>
      </Show>
      <div class="together">
        <Show when={verdict()}>{(result) => <Verdict of={result()} />}</Show>
      </div>
      <p class="on-screen" role="status">
        <Show when={isRead()} fallback="Nothing is read yet.">
          {`${atVerdict().script.quantities.length} quantities found; ${Object.keys(atVerdict().quoted).length} figures that can be checked. ${unread()}`}
        </Show>
      </p>
      <Show when={atHouse().script.quantities.length > 0}>
        <AgainstHouse id="script-against-house" said={saidFigures()} held={held()} hold={setHeld} />
        <h3 class="on-screen">The talk, marked</h3>
        <p class="note">
          Touch a mark to see what it was taken for, and to put it right. Underlined once: agrees. Twice:
          doubtful. Boxed: disagrees, or cannot be. Dotted: nothing checks it.
        </p>
        <ScriptMarked
          read={atMarks()}
          held={held()}
          settle={(marked, place, figure) => {
            const put = moveSettled({ [place]: figure }, marked, text()); // the talk may have gone on meanwhile
            take(text(), { ...settled(), ...put });
          }}
        />
      </Show>
      <div class="together">
        <Show when={foundIn(atFollows())}>{(result) => <Follows of={result()} />}</Show>
        <Show when={foundIn(atCard())}>
          {(result) => (
            <>
              <ScriptCard of={result()} held={held()} />
              <p class="actions">
                <button type="button" onClick={() => print()}>
                  Print this page
                </button>
              </p>
            </>
          )}
        </Show>
      </div>
      <Show when={open().length > 0}>
        <details class="working">
          <summary>Questions that visitors will ask and the script does not answer ({open().length})</summary>
          <ul>
            <For each={open()}>
              {({ question, chapter, title }) => (
                <li>
                  {question} (see <a href={`../${chapter}/`}>{title}</a>)
                </li>
              )}
            </For>
          </ul>
        </details>
      </Show>
    </section>
  );
}
