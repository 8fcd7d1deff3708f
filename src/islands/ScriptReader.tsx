// Reads a guide's own script: finds its figures, checks them against each other, and marks the text.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatNumber } from '../core/format.ts';
import type { Quoted, QuotableName, Said } from '../core/line/quoted.ts';
import { reconcile, type Finding } from '../core/line/reconcile.ts';
import { sentences } from '../core/line/verdict.ts';
import { isRefusal } from '../core/refusal.ts';
import { keepText, keptText, keyOf } from '../house/browser-store.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { useHouse } from '../house/store.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { figureIds, type FigureId } from '../talk/figures.ts';
import { numberOf, quotableOf } from '../talk/labels.ts';
import { heldAgainst, type Held, type SaidFigure } from '../talk/own-house.ts';
import { readScript, type ReadQuantity, type ReadScript } from '../talk/script.ts';
import { moveSettled, NOT_OURS, type Settled } from '../talk/settled.ts';
import { unanswered } from '../talk/unanswered.ts';
import { AgainstHouse } from './AgainstHouse.tsx';
import { useAnnouncement } from './announce.ts';
import { Follows, Verdict } from './CrossCheckAnswer.tsx';
import { textOfFile } from './open-file.ts';
import { ScriptCard } from './ScriptCard.tsx';
import { ScriptMarked } from './ScriptMarked.tsx';

const LONGEST = 100_000; // characters of a script that are read; a tour has some 15,000
const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened
const QUIET = 250; // ms without typing before the script is read anew
const KEY = keyOf('script');
const NOTHING: ReadScript = { quantities: [], left: 0 };
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

/** A quantity as it is quoted: its value in the figure's own unit. */
function saidOf({ inFigure, value, range, approximate }: ReadQuantity): Said | undefined {
  const [low, high] = inFigure ?? range ?? (value === undefined ? [] : [value]);
  if (low === undefined) return undefined;
  if (high !== undefined && high !== low)
    return { as: 'range', low: Math.min(low, high), high: Math.max(low, high) };
  return approximate ? { as: 'about', value: low } : { as: 'rounded', value: low };
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

export default function ScriptReader(props: { readonly questions: readonly VisitorQuestion[] }) {
  const [text, setText] = createSignal('');
  const [settled, setSettled] = createSignal<Settled>({});
  const [length, setLength] = createSignal(0);
  const [fileProblem, setFileProblem] = createSignal<string>();
  let box: HTMLTextAreaElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const read = (next: string, after = 0) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      setLength(next.length);
      const now = next.slice(0, LONGEST);
      setSettled(moveSettled(settled(), text(), now));
      setText(now);
      keep();
    }, after);
  };
  const [isKept, setKept] = createSignal(true);
  const keep = () => setKept(keepText(KEY, JSON.stringify({ text: text(), settled: settled() })));
  onMount(() => {
    const before = kept();
    if (!before || before.text === '') return;
    box!.value = before.text;
    setLength(before.text.length);
    setText(before.text);
    setSettled(before.settled);
  });
  const isEmpty = () => text().trim() === '';
  const script = createMemo(() => (isEmpty() ? NOTHING : readScript(text())));
  const quantities = () => script().quantities;
  /** What of a long script was left unread. */
  const unread = () =>
    [
      length() > LONGEST
        ? `The script has ${formatNumber(length(), 0)} characters; the first ${formatNumber(LONGEST, 0)} are read.`
        : '',
      script().left > 0
        ? `It has ${formatNumber(quantities().length + script().left, 0)} quantities; the first ${formatNumber(quantities().length, 0)} are read. Paste the rest separately.`
        : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' ');
  const load = async (file: File | undefined) => {
    if (!file) return;
    const opened = await textOfFile(file, BIGGEST_FILE, 'a script’s file');
    setFileProblem('problem' in opened ? opened.problem : undefined);
    if ('problem' in opened) return;
    box!.value = opened.text;
    read(opened.text);
  };
  const figureOf = (quantity: ReadQuantity): FigureId | undefined => {
    const own = settled()[quantity.start];
    return own === NOT_OURS ? undefined : (own ?? quantity.figure);
  };
  const quoted = createMemo<Quoted>(() => {
    const found: Partial<Record<QuotableName, Said>> = {};
    for (const quantity of quantities()) {
      const figure = figureOf(quantity);
      const name = figure && quotableOf(figure);
      const said = saidOf(quantity);
      if (name && said && !(name in found)) found[name] = said;
    }
    return found;
  });
  const answer = createMemo(() => (Object.keys(quoted()).length === 0 ? undefined : reconcile(quoted())));
  const found = () => {
    const result = answer();
    return result && !isRefusal(result) ? result : undefined;
  };
  useAnnouncement('together', answer, () => (found() ? sentences(found()!).join(' ') : ''));
  const trouble = () => {
    const result = answer();
    return result && isRefusal(result) ? result.refused : undefined;
  };
  const { line, house, name: houseName } = useHouse();
  const [wantsHeld, setHeld] = createSignal<boolean>();
  /** A talk is held against the reader's own house as soon as there is one. */
  const held = () => wantsHeld() ?? (house() !== builtInHouse || houseName() !== builtInName);
  const saidFigures = createMemo<readonly SaidFigure[]>(() =>
    quantities().flatMap((quantity) => {
      const [figure, said] = [figureOf(quantity), saidOf(quantity)];
      return figure && said ? [{ figure, said }] : [];
    }),
  );
  const ownOf = (quantity: ReadQuantity): Held | undefined => {
    const [figure, said] = [figureOf(quantity), saidOf(quantity)];
    return held() && figure && said ? heldAgainst({ figure, said }, line()) : undefined;
  };
  /** What the house says of a quantity goes before what the other figures say of it. */
  const findingOf = (quantity: ReadQuantity): Finding => {
    const own = ownOf(quantity);
    if (own) return own.agrees ? 'agrees' : 'disagrees';
    const figure = figureOf(quantity);
    const name = figure && quotableOf(figure);
    return found()?.figures.find((each) => each.figure === name)?.finding ?? 'not checkable';
  };
  const tellOf = (quantity: ReadQuantity): string => {
    const own = ownOf(quantity);
    return own && !own.agrees ? `${houseName()} has ${numberOf(own.figure, own.house)}` : findingOf(quantity);
  };
  const open = createMemo(() =>
    isEmpty()
      ? []
      : unanswered(
          text(),
          unwrap(props.questions).map((asked) => ({ ...asked, words: wordsOf(asked.question) })),
        ),
  );

  return (
    <section class="calculator script-reader" aria-labelledby="script-title">
      <h2 id="script-title">Your talk</h2>
      <details class="talk-box" open={isEmpty()}>
        <summary>{isEmpty() ? 'Paste it here, or open a file' : 'Change the talk'}</summary>
        <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          <div class="field">
            <label for="script-text">What you say</label>
            <textarea
              id="script-text"
              ref={box}
              rows="8"
              autocomplete="off"
              spellcheck={false}
              onInput={(event) => read(event.currentTarget.value, QUIET)}
            />
          </div>
          <div class="field">
            <label for="script-file">Or a text file</label>
            <input
              id="script-file"
              type="file"
              accept=".txt,.md,text/plain"
              onChange={(event) => {
                void load(event.currentTarget.files?.[0]);
                event.currentTarget.value = '';
              }}
            />
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
      <Show when={trouble()}>
        <p class="problem" role="alert">
          {trouble()}
        </p>
      </Show>
      <div class="together">
        <Show when={found()}>{(result) => <Verdict of={result()} />}</Show>
      </div>
      <p class="on-screen" role="status">
        <Show when={!isEmpty()} fallback="Nothing is read yet.">
          {`${quantities().length} quantities found; ${Object.keys(quoted()).length} figures that can be checked. ${unread()}`}
        </Show>
      </p>
      <Show when={quantities().length > 0}>
        <AgainstHouse id="script-against-house" said={saidFigures()} held={held()} hold={setHeld} />
        <h3 class="on-screen">The talk, marked</h3>
        <p class="note">
          Touch a mark to see what it was taken for, and to put it right. Underlined once: agrees. Twice:
          doubtful. Boxed: disagrees, or cannot be. Dotted: nothing checks it.
        </p>
        <ScriptMarked
          text={text()}
          quantities={quantities()}
          figureOf={figureOf}
          findingOf={findingOf}
          tellOf={tellOf}
          settle={(quantity, figure) => {
            setSettled({ ...settled(), [quantity.start]: figure });
            keep();
          }}
        />
      </Show>
      <Show when={found()}>
        {(result) => (
          <div class="together">
            <Follows of={result()} />
            <ScriptCard of={result()} held={held()} />
            <p class="actions">
              <button type="button" onClick={() => print()}>
                Print this page
              </button>
            </p>
          </div>
        )}
      </Show>
      <Show when={open().length > 0}>
        <details class="working">
          <summary>Questions that visitors will ask and the script does not answer ({open().length})</summary>
          <ul>
            <For each={open()}>
              {({ question }) => (
                <li>
                  {question.question} (see <a href={`../${question.chapter}/`}>{question.title}</a>)
                </li>
              )}
            </For>
          </ul>
        </details>
      </Show>
    </section>
  );
}
