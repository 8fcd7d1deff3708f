// Reads what a guide says, a whole talk or a few figures: the verdict first, what is not sure asked, the text marked. A worker reads; what it found is shown a part at a time.
import { createEffect, createMemo, createSignal, For, on, onMount, Show, untrack } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatNumber } from '../core/format.ts';
import type { Reconciliation } from '../core/cross-check/reconcile.ts';
import { isRefusal } from '../core/refusal.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { seenName } from '../house/name.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { AgainstHouse, asAtHouse } from './AgainstHouse.tsx';
import { heldAgainst } from '../talk/own-house.ts';
import { useAnnouncement } from './announce.ts';
import { useHowKnown } from './how-known.ts';
import { inTurns } from './in-turns.ts';
import { ScriptAsk } from './ScriptAsk.tsx';
import { ScriptCard } from './ScriptCard.tsx';
import { Follows } from './ScriptFollows.tsx';
import { ScriptMarked } from './ScriptMarked.tsx';
import { ScriptTalks } from './ScriptTalks.tsx';
import { ScriptTwice } from './ScriptTwice.tsx';
import { ScriptVerdict } from './ScriptVerdict.tsx';
import { correctionAt, placesOf, type PutRight } from './script-corrections.ts';
import { FIRST_NAME, keepTalk, keptTalk, LONGEST, type Talk } from './script-kept.ts';
import { talkReader } from './script-reading.ts';
import type { TalkRead } from './script-reading.worker.ts';
import { QuotedActions } from './ScriptQuoted.tsx';
import { keepQuoted, keptQuoted } from './script-quoted.ts';

const QUIET = 500; // ms without typing before the talk is read anew
const QUIET_SHORT = 250; // and before a few figures are
const AFTER_PASTE = 30; // ms, so that what was pasted is shown first
const PASTED = 60; // characters more at once than anybody types
const NOTHING: TalkRead = {
  text: '',
  corrections: [],
  asksAll: false,
  script: { quantities: [], left: 0 },
  open: [],
  taken: {},
  because: {},
  unsure: [],
  twice: [],
  quoted: {},
  answer: undefined,
  verdict: undefined,
};
const FAILED =
  'The part of this page that reads a talk did not come, so nothing was read. What you typed is untouched; load the page again.';
const NOT_KEPT = {
  talk: 'This browser does not let the handbook keep your talk; it lasts until the page is closed.',
  figures:
    'This browser does not let the handbook keep what you type here; it lasts until the page is closed.',
};

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

/** How many quantities were found, and how many figures among them that can be checked. */
function counted({ script, quoted }: TalkRead): string {
  const [found, checked] = [script.quantities.length, Object.keys(quoted).length];
  return `${found === 1 ? 'One quantity' : `${found} quantities`} found; ${checked === 1 ? 'one figure' : `${checked} figures`} that can be checked.`;
}

export default function ScriptReader(props: {
  /** A whole talk, with talks kept by name; or a few figures typed as one says them. */
  readonly of: 'talk' | 'figures';
  readonly questions: readonly VisitorQuestion[];
}) {
  const isTalk = () => props.of === 'talk';
  const [talk, setTalk] = createSignal<Talk>({ name: FIRST_NAME, text: '', corrections: [] });
  const [length, setLength] = createSignal(0);
  const [hasFailed, setFailed] = createSignal(false);
  const [isKept, setKept] = createSignal(true);
  const [isFolded, setFolded] = createSignal(false);
  let section: HTMLElement | undefined;
  let box: HTMLTextAreaElement | undefined;
  let fold: HTMLElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let folds = false; // once what was pasted is read

  /** What was read last, as each part of the page shows it: one part after another. */
  const [atVerdict, setAtVerdict] = createSignal(NOTHING);
  const [atAsked, setAtAsked] = createSignal(NOTHING);
  const [atMarks, setAtMarks] = createSignal(NOTHING);
  const [atHouse, setAtHouse] = createSignal(NOTHING);
  const [atFollows, setAtFollows] = createSignal(NOTHING);
  const [atCard, setAtCard] = createSignal(NOTHING);
  const [atQuestions, setAtQuestions] = createSignal(NOTHING);
  const turns = inTurns();
  const show = (read: TalkRead) => {
    setFailed(false);
    turns([
      () => void setAtVerdict(read),
      () => {
        if (folds && read.script.quantities.length > 0) foldAway();
        folds = false;
      },
      ...[setAtAsked, setAtHouse, setAtMarks, setAtFollows, setAtCard, setAtQuestions].map(
        (set) => () => void set(read),
      ),
    ]);
  };
  /** Folds the box away and brings the verdict into sight. */
  const foldAway = () => {
    const hadFocus = document.activeElement === box;
    setFolded(true);
    if (hadFocus) fold?.focus({ preventScroll: true });
    if (section!.getBoundingClientRect().top < 0) section!.scrollIntoView();
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
  const ask = () => {
    const { text, corrections } = talk();
    reader.ask({ text, corrections, asksAll: !isTalk(), plant: untrack(plant) });
  };
  /** Keeps the talk, and has it read; false when the browser does not keep it. */
  const take = (next: Talk): boolean => {
    const { text, corrections } = next;
    const isOther = text !== talk().text || corrections !== talk().corrections;
    setTalk(next);
    setKept(isTalk() ? keepTalk(next) : keepQuoted(next));
    if (text.trim() === '') {
      reader.forget();
      show(NOTHING);
    } else if (isOther) ask();
    return isKept();
  };
  /** Takes a talk that did not come through the box. */
  const open = (next: Talk): boolean => {
    if (next.text !== talk().text) {
      clearTimeout(timer);
      timer = undefined;
      box!.value = next.text;
      setLength(next.text.length);
      folds = isTalk();
      if (next.text.trim() === '') setFolded(false);
    }
    return take(next);
  };
  const readNow = () => {
    clearTimeout(timer);
    timer = undefined;
    setLength(box!.value.length);
    const text = box!.value.slice(0, LONGEST);
    if (text !== talk().text) take({ ...talk(), text });
  };
  const readSoon = () => {
    clearTimeout(timer);
    if (box!.value.length - talk().text.length > PASTED) {
      folds = isTalk();
      timer = setTimeout(readNow, AFTER_PASTE);
    } else timer = setTimeout(readNow, isTalk() ? QUIET : QUIET_SHORT);
  };
  const now = () => {
    if (timer !== undefined) readNow();
    return talk();
  };
  onMount(() => {
    addEventListener('pagehide', now); // what was typed last is kept, too
    const before = isTalk() ? keptTalk() : keptQuoted();
    const early = box!.value; // typed before the script came
    if (before && before.text !== '') {
      box!.value = early === '' ? before.text : `${before.text}\n\n${early}`;
      setFolded(isTalk() && early === '');
    }
    if (before) setTalk({ ...before, text: '' });
    if (box!.value !== '') readNow();
  });

  const isRead = () => atVerdict().text !== '';
  /** What of a long talk was left unread. */
  const unread = () => {
    const { quantities, left } = atVerdict().script;
    return [
      length() > LONGEST
        ? `The talk has ${formatNumber(length(), 0)} characters; the first ${formatNumber(LONGEST, 0)} are read.`
        : '',
      left > 0
        ? `It has ${formatNumber(quantities.length + left, 0)} quantities; the first ${formatNumber(quantities.length, 0)} are read. Paste the rest separately.`
        : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' ');
  };
  const verdict = () => atVerdict().verdict;
  const trouble = () => {
    const { answer } = atVerdict();
    return answer && isRefusal(answer) ? answer.refused : undefined;
  };
  const unsure = () => atAsked().unsure;
  const firstSentence = () => {
    const found = verdict();
    if (found) return found.first;
    if (!isRead()) return '';
    return atVerdict().script.quantities.length === 0 ? 'No figure was found.' : 'No figure that can be checked is sure yet.'; // prettier-ignore
  };
  const { house, name: houseName, line } = useHouse();
  const [wantsHeld, setHeld] = createSignal<boolean>();
  /** A talk is held against the reader's own house as soon as there is one. */
  const held = () => wantsHeld() ?? (house() !== builtInHouse || houseName() !== builtInName);
  /** The stills of the reader’s own house, while a talk is held against it and it distils three times. */
  const plant = createMemo(() => (held() && line().round.between ? unwrap(liveParts()).plant : undefined));
  const isThrice = () => plant() !== undefined;
  createEffect(
    on(
      () => JSON.stringify(plant()),
      () => talk().text !== '' && ask(),
      { defer: true },
    ),
  );
  const known = useHowKnown(held);
  const against = createMemo(() =>
    held() ? Object.values(atHouse().taken).flatMap((each) => heldAgainst(each, line(), known) ?? []) : [],
  );
  const heldSentence = () => (against().length > 0 ? asAtHouse(against(), houseName()) : '');

  useAnnouncement('together', atVerdict, () =>
    [firstSentence(), heldSentence(), unread(), unsure().length > 0 ? `${unsure().length} to ask.` : '']
      .join(' ')
      .trim(),
  );
  /** Puts right what stands at a place of a text that was read; the talk may have gone on meanwhile. */
  const settle = (read: TalkRead, start: number, end: number, figure: PutRight) => {
    const places = placesOf(talk().corrections, read.text, read.script.quantities);
    const others = talk().corrections.filter((_, i) => places[i] !== start);
    take({ ...talk(), corrections: [...others, correctionAt(read.text, start, end, figure)] });
  };

  const field = () => (
    <div class="field">
      <label for={isTalk() ? 'script-text' : 'quoted-text'}>
        {isTalk() ? 'What you say' : 'Your figures, as you say them'}
      </label>
      <textarea
        id={isTalk() ? 'script-text' : 'quoted-text'}
        ref={box}
        rows={isTalk() ? 8 : 4}
        autocomplete="off"
        spellcheck={false}
        placeholder={isTalk() ? undefined : 'wash 8 %, low wines 22, we cut at 72 and 62'}
        onFocus={() => reader.wake()}
        onInput={readSoon}
      />
    </div>
  );
  const note = () => (
    <p class="note">
      {isKept() ? 'It is read and kept in this browser, and goes nowhere else.' : NOT_KEPT[props.of]}
    </p>
  );
  return (
    <section
      class={`calculator script-reader ${isTalk() ? 'of-talk' : 'cross-check'}`}
      aria-labelledby="script-title"
      ref={section}
    >
      <Show
        when={isTalk()}
        fallback={
          <>
            <h2 id="script-title">The figures you quote</h2>
            <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
              {field()}
            </form>
            <QuotedActions
              text={() => box!.value}
              told={() => atVerdict().quoted}
              line={line}
              put={(text) => open({ ...talk(), text, ...(text === '' ? { corrections: [] } : {}) })}
              box={() => box}
            />
            {note()}
          </>
        }
      >
        <details
          class="talk-box"
          open={!isFolded()}
          onToggle={(event) => setFolded(!event.currentTarget.open)}
        >
          <summary ref={fold}>
            <h2 id="script-title">{isRead() ? seenName(talk().name) : 'Your talk'}</h2>
            <span class="change">{isFolded() ? 'Change' : ''}</span>
          </summary>
          <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
            {field()}
            <ScriptTalks talk={talk()} now={now} take={open} />
          </form>
          {note()}
        </details>
      </Show>
      <div role="status">
        <Show when={!isKept()}>
          <p class="problem">{NOT_KEPT[props.of]}</p>
        </Show>
      </div>
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
      <div class="together" tabindex="-1">
        <Show when={verdict()} fallback={<p>{firstSentence()}</p>}>
          {(result) => <ScriptVerdict of={result()} held={heldSentence()} />}
        </Show>
      </div>
      <Show when={isRead() && isThrice()}>
        <p class="note as-distilled">
          Checked as a house with a third distillation, like {houseName()}. Is it about another house? Take
          the tick from “Compare with {houseName()}”.
        </p>
      </Show>
      <ScriptAsk
        text={atAsked().text}
        unsure={unsure()}
        settle={({ start, end }, figure) => settle(atAsked(), start, end, figure)}
        after={() => section!.querySelector<HTMLElement>('.together')}
      />
      <ScriptTwice read={atAsked()} />
      <Show when={unread() !== ''}>
        <p class="problem">{unread()}</p>
      </Show>
      <Show when={atMarks().script.quantities.length > 0}>
        <p class="note on-screen">Touch a mark to see what it was taken for, and to put it right.</p>
        <ScriptMarked read={atMarks()} held={held()} settle={settle} />
        <p class="note legend">
          Underlined once: agrees. Twice: doubtful. Boxed: disagrees, or cannot be. Dotted: nothing checks it.
          Dashed: not sure, and not used. <span class="on-screen">{counted(atMarks())}</span>
        </p>
      </Show>
      <Show when={atHouse().script.quantities.length > 0}>
        <AgainstHouse
          id={isTalk() ? 'script-against-house' : 'quoted-against-house'}
          found={against()}
          held={held()}
          hold={setHeld}
        />
      </Show>
      <div class="together">
        <Show when={foundIn(atFollows())}>{(result) => <Follows of={result()} />}</Show>
        <Show when={isTalk() && foundIn(atCard())}>
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
      <Show when={atQuestions().open.length > 0}>
        <details class="working">
          <summary>
            Questions that visitors will ask and the talk does not answer ({atQuestions().open.length})
          </summary>
          <ul>
            <For each={atQuestions().open}>
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
