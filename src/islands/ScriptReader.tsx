// Reads what a guide says, a whole talk or a few figures: the verdict first, what is not sure asked, the text marked. A worker reads; what it found is shown a part at a time.
import { createEffect, createSignal, on, Show, untrack } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { formatNumber } from '../core/format.ts';
import type { Reconciliation } from '../core/cross-check/reconcile.ts';
import { isRefusal } from '../core/refusal.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { visibleName } from '../house/name.ts';
import { labelOf } from '../talk/labels.ts';
import { NOT_OURS } from '../talk/settled.ts';
import { AgainstHouse } from './AgainstHouse.tsx';
import { announce, useAnnouncement } from './announce.ts';
import { ScriptAsk, withSmallInitial } from './ScriptAsk.tsx';
import { NOT_KEPT, ScriptBox } from './ScriptBox.tsx';
import { ScriptCard } from './ScriptCard.tsx';
import { ScriptFollows } from './ScriptFollows.tsx';
import { ScriptMarked } from './ScriptMarked.tsx';
import { ScriptTwice } from './ScriptTwice.tsx';
import { ScriptUnanswered } from './ScriptUnanswered.tsx';
import { ScriptVerdict } from './ScriptVerdict.tsx';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { useTalkBox } from './script-box.ts';
import { countedInTalk, withoutVerdict } from './script-counts.ts';
import { correctionAt, placesOfCorrections, type PutRight } from './script-corrections.ts';
import { LONGEST_TALK } from './script-kept.ts';
import { useTalkBesideHouse } from './script-beside-house.ts';
import { NOTHING_READ, useReadParts } from './script-read-parts.ts';
import { talkReader } from './script-reading.ts';
import type { TalkRead } from './script-reading.worker.ts';

const FAILED =
  'The part of this page that reads a talk did not come, so nothing was read. What you typed is untouched; load the page again.';

const ScriptGive = fetchedWhenWanted(() => import('./ScriptGive.tsx').then((come) => come.ScriptGive));

/** The words of a question that its answer would use. */
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

export default function ScriptReader(props: {
  /** A whole talk, with talks kept by name; or a few figures typed as one says them. */
  readonly of: 'talk' | 'figures';
  readonly questions: readonly VisitorQuestion[];
}) {
  const isTalk = () => props.of === 'talk';
  const [hasFailed, setFailed] = createSignal(false);
  let section: HTMLElement | undefined;

  const readFor = useReadParts((read) => box.foldPasted(read));
  const show = (read: TalkRead) => {
    setFailed(false);
    readFor.show(read);
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
    const { text, corrections } = box.talk();
    reader.ask({ text, corrections, asksAll: !isTalk(), plant: untrack(besideHouse.plant) });
  };
  const box = useTalkBox({
    isTalk,
    read: ask,
    readNothing: () => {
      reader.forget();
      show(NOTHING_READ);
    },
    section: () => section!,
  });
  const besideHouse = useTalkBesideHouse(readFor.house, () => box.talk().held);
  createEffect(
    on(
      () => JSON.stringify(besideHouse.plant()),
      () => box.talk().text !== '' && ask(),
      { defer: true },
    ),
  );

  const isRead = () => readFor.verdict().text !== '';
  /** What of a long talk was left unread. */
  const unread = () => {
    const { quantities, left } = readFor.verdict().script;
    return [
      box.length() > LONGEST_TALK
        ? `The talk has ${formatNumber(box.length(), 0)} characters; the first ${formatNumber(LONGEST_TALK, 0)} are read.`
        : '',
      left > 0
        ? `It has ${formatNumber(quantities.length + left, 0)} quantities; the first ${formatNumber(quantities.length, 0)} are read. Paste the rest separately.`
        : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' ');
  };
  const verdict = () => readFor.verdict().verdict;
  const trouble = () => {
    const { answer } = readFor.verdict();
    return answer && isRefusal(answer) ? answer.refused : undefined;
  };
  const unsure = () => readFor.asked().unsure;
  const firstSentence = () => {
    const found = verdict();
    if (found) return found.first;
    return isRead() ? withoutVerdict(readFor.verdict()) : '';
  };

  useAnnouncement('together', readFor.verdict, () =>
    [
      firstSentence(),
      besideHouse.sentence(),
      unread(),
      unsure().length > 0 ? `${unsure().length} to ask.` : '',
    ]
      .join(' ')
      .trim(),
  );
  /** Puts right what stands at a place of a text that was read; the talk may have gone on meanwhile. */
  const settle = (read: TalkRead, start: number, end: number, figure: PutRight) => {
    const places = placesOfCorrections(box.talk().corrections, read.text, read.script.quantities);
    const others = box.talk().corrections.filter((_, i) => places[i] !== start);
    box.take({ ...box.talk(), corrections: [...others, correctionAt(read.text, start, end, figure)] });
    const words = read.text.slice(start, end);
    announce('put-right', () =>
      figure === NOT_OURS
        ? `“${words}” is no figure of the house, as you say.`
        : `“${words}” is ${withSmallInitial(labelOf(figure))}, as you say.`,
    );
  };

  return (
    <section
      class={`calculator script-reader ${isTalk() ? 'of-talk' : 'cross-check'}`}
      aria-labelledby="script-title"
      ref={section}
    >
      <ScriptBox
        of={props.of}
        box={box}
        isRead={isRead()}
        told={() => readFor.verdict().quoted}
        line={besideHouse.line}
        wake={reader.wake}
      />
      <div role="status">
        <Show when={!box.isKept()}>
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
      <Show when={isTalk() && isRead()}>
        <h2 class="talk-printed">{visibleName(box.talk().name)}</h2>
      </Show>
      <div class="together" tabindex="-1">
        <Show when={verdict()} fallback={<p>{firstSentence()}</p>}>
          {(result) => <ScriptVerdict of={result()} held={besideHouse.sentence()} />}
        </Show>
      </div>
      <Show when={isRead() && besideHouse.plant() !== undefined}>
        <p class="note as-distilled">
          Checked as a house with a third distillation, like {besideHouse.name()}. Is it about another house?
          Take the tick from “Compare with {besideHouse.name()}”.
        </p>
      </Show>
      <ScriptGive
        isWanted={isTalk() && readFor.house().script.quantities.length > 0}
        isOfHouse={box.talk().held !== false}
        read={readFor.house()}
      />
      <ScriptAsk
        text={readFor.asked().text}
        unsure={unsure()}
        settle={({ start, end }, figure) => settle(readFor.asked(), start, end, figure)}
        after={() => section!.querySelector<HTMLElement>('.together')}
      />
      <ScriptTwice read={readFor.asked()} />
      <Show when={unread() !== ''}>
        <p class="problem">{unread()}</p>
      </Show>
      <Show when={readFor.marks().script.quantities.length > 0}>
        <p class="note on-screen">Touch a mark to see what it was taken for, and to put it right.</p>
        <ScriptMarked read={readFor.marks()} held={besideHouse.held()} settle={settle} />
        <p class="note legend">
          Underlined once: agrees. Twice: doubtful. Boxed: disagrees, or cannot be. Dotted: nothing checks it.
          Between bars: no figure of the house. Dashed: not sure, and not used. Ticked: as you put it right.{' '}
          <span class="on-screen">{countedInTalk(readFor.marks())}</span>
        </p>
      </Show>
      <Show when={readFor.house().script.quantities.length > 0}>
        <AgainstHouse
          id={isTalk() ? 'script-against-house' : 'quoted-against-house'}
          found={besideHouse.against()}
          notKnown={besideHouse.notKnown()}
          giveAt={isTalk() ? '#script-give' : undefined}
          held={besideHouse.held()}
          hold={(held) => box.take({ ...box.talk(), held })}
        />
      </Show>
      <div class="together">
        <Show when={foundIn(readFor.follows())}>{(result) => <ScriptFollows of={result()} />}</Show>
        <Show when={isTalk() && foundIn(readFor.card())}>
          {(result) => (
            <>
              <ScriptCard of={result()} held={besideHouse.held()} />
              <p class="actions">
                <button type="button" onClick={() => print()}>
                  Print this page
                </button>
              </p>
            </>
          )}
        </Show>
      </div>
      <ScriptUnanswered questions={readFor.questions().open} />
    </section>
  );
}
