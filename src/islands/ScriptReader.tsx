// Reads a guide's own script: finds its figures, checks them against each other, and marks the text.
import { createMemo, createSignal, For, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatNumber } from '../core/format.ts';
import type { Quoted, QuotableName, Said } from '../core/line/quoted.ts';
import { reconcile, type Finding } from '../core/line/reconcile.ts';
import { sentences } from '../core/line/verdict.ts';
import { isRefusal } from '../core/refusal.ts';
import { useHouse } from '../house/store.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { figureIds, talkFigures, type FigureId } from '../talk/figures.ts';
import { labelOf, numberOf, quotableOf } from '../talk/labels.ts';
import { heldAgainst, type Held, type SaidFigure } from '../talk/own-house.ts';
import { readScript, type ReadQuantity, type ReadScript } from '../talk/script.ts';
import { unanswered } from '../talk/unanswered.ts';
import { AgainstHouse } from './AgainstHouse.tsx';
import { useAnnouncement } from './announce.ts';
import { Answer } from './CrossCheckAnswer.tsx';
import { textOfFile } from './open-file.ts';
import { ScriptCard } from './ScriptCard.tsx';

const LONGEST = 100_000; // characters of a script that are read; a tour has some 15,000
const BIGGEST_FILE = 1_000_000; // bytes of a file that is still opened
const QUIET = 250; // ms without typing before the script is read anew
const NONE = 'none';
const NOTHING: ReadScript = { quantities: [], left: 0 };

/** What the reader settled a quantity to be, by its place in the text; the proposal stands where nothing was settled. */
type Settled = Readonly<Record<number, FigureId | typeof NONE>>;

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
      setText(next.slice(0, LONGEST));
      setSettled({});
    }, after);
  };
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
        ? `It has ${formatNumber(quantities().length + script().left, 0)} quantities; the first ${formatNumber(quantities().length, 0)} are read. Paste the rest by itself.`
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
    return own === NONE ? undefined : (own ?? quantity.figure);
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
  const { line, name: houseName } = useHouse();
  const [held, setHeld] = createSignal(false);
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
      <h2 id="script-title">Your own script</h2>
      <p class="purpose">
        Paste what you say on a tour, or open it from a file. It is read here, in this browser, and goes
        nowhere else.
      </p>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field">
          <label for="script-text">The script</label>
          <textarea
            id="script-text"
            ref={box}
            rows="10"
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
      <p class="on-screen" role="status">
        <Show when={!isEmpty()} fallback="Nothing is read yet.">
          {`${quantities().length} quantities found; ${Object.keys(quoted()).length} figures of the line that can be checked. ${unread()}`}
        </Show>
      </p>
      <Show when={trouble()}>
        <p class="problem" role="alert">
          {trouble()}
        </p>
      </Show>
      <Show when={quantities().length > 0}>
        <AgainstHouse id="script-against-house" said={saidFigures()} held={held()} hold={setHeld} />
        <h3 class="on-screen">The script, marked</h3>
        <p class="note">
          Underlined once: agrees. Twice: doubtful. Boxed: disagrees, or cannot be. Dotted: nothing checks it.
          Held against your house, a figure that the house gives is marked by the house.
        </p>
        <Marked text={text()} quantities={quantities()} findingOf={findingOf} tellOf={tellOf} />
        <h3 class="on-screen">What each number is</h3>
        <p class="note">Put right what was taken for the wrong figure.</p>
        <ul class="proposals">
          <For each={quantities()}>
            {(quantity) => (
              <li>
                <label for={`is-${quantity.start}`}>
                  {excerpt(text(), quantity)}
                  <span class="visually-hidden"> ({tellOf(quantity)})</span>
                </label>
                <select
                  id={`is-${quantity.start}`}
                  autocomplete="off"
                  onChange={(event) =>
                    setSettled({
                      ...settled(),
                      [quantity.start]: event.currentTarget.value as FigureId | typeof NONE,
                    })
                  }
                >
                  <option value={NONE} selected={figureOf(quantity) === undefined}>
                    no figure of the line
                  </option>
                  <For each={choices(quantity)}>
                    {(figure) => (
                      <option value={figure} selected={figureOf(quantity) === figure}>
                        {labelOf(figure)}
                      </option>
                    )}
                  </For>
                </select>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <div class="together">
        <Show when={found()}>
          {(result) => (
            <>
              <Answer of={result()} />
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

/** The proposal first, then those that ran it close, then every figure there is. */
function choices({ figure, runnersUp }: ReadQuantity): readonly FigureId[] {
  const near = [...(figure ? [figure] : []), ...runnersUp];
  return [...near, ...figureIds.filter((other) => !near.includes(other))].filter((id) =>
    Object.hasOwn(talkFigures, id),
  );
}

/** A quantity with a few words either side. */
function excerpt(text: string, { start, end }: ReadQuantity): string {
  const before = text.slice(Math.max(0, start - 40), start).replace(/^\S*\s/, '');
  const after = text.slice(end, end + 30).replace(/\s\S*$/, '');
  return `… ${before}${text.slice(start, end)}${after} …`.replace(/\s+/g, ' ');
}

function Marked(props: {
  readonly text: string;
  readonly quantities: readonly ReadQuantity[];
  readonly findingOf: (quantity: ReadQuantity) => Finding;
  readonly tellOf: (quantity: ReadQuantity) => string;
}) {
  const parts = () =>
    props.quantities.map((quantity, i) => ({
      before: props.text.slice(props.quantities[i - 1]?.end ?? 0, quantity.start),
      quantity,
    }));
  const last = () => props.text.slice(props.quantities.at(-1)?.end ?? 0);
  return (
    <div class="marked">
      <For each={parts()}>
        {({ before, quantity }) => (
          <>
            {before}
            <mark class={props.findingOf(quantity).replace(' ', '-')} title={props.tellOf(quantity)}>
              {props.text.slice(quantity.start, quantity.end)}
            </mark>
          </>
        )}
      </For>
      {last()}
    </div>
  );
}
