// The talk of a walk: pasted, or taken from those that were checked, and cut into rooms; it folds away once it is cut.
import { createEffect, createSignal, on, onMount, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { visibleName } from '../house/name.ts';
import { keptTalk, LONGEST_TALK, type Talk } from './script-kept.ts';

const AFTER_PASTE = 30; // ms, so that what was pasted is shown first
const PASTED = 60; // characters more at once than anybody types

export function WalkTalk(props: {
  /** How many words are in the rooms. */
  readonly words: number;
  /** All that is said, to be changed and cut anew. */
  readonly text: () => string;
  readonly isCutting: boolean;
  readonly hasFailed: boolean;
  /** How often a talk was cut; until it is, its words stay in the field. */
  readonly cuts: number;
  readonly wake: () => void;
  readonly cut: (talk: Pick<Talk, 'text' | 'corrections'>) => void;
}) {
  const [kept, setKept] = createSignal<Talk>();
  const [isOpen, setOpen] = createSignal(true);
  const [says, setSays] = createSignal('');
  let box: HTMLTextAreaElement | undefined;
  let fold: HTMLElement | undefined;
  let before = 0;
  onMount(() => {
    const talk = keptTalk();
    if (talk && talk.text.trim() !== '') setKept(talk);
    if (props.words > 0 && box!.value === '') setOpen(false);
    before = box!.value.length;
    if (before > PASTED) cut(box!.value); // pasted before the script came
  });
  const cut = (text: string, corrections: Talk['corrections'] = []) => {
    if (text.trim() === '') return void setSays('Paste your talk first.');
    setSays(
      text.length > LONGEST_TALK
        ? `The talk has ${formatNumber(text.length, 0)} characters; the first ${formatNumber(LONGEST_TALK, 0)} are cut.`
        : '',
    );
    const hadFocus = document.activeElement === box;
    props.cut({ text: text.slice(0, LONGEST_TALK), corrections });
    setOpen(false);
    if (hadFocus) fold?.focus({ preventScroll: true });
  };
  createEffect(on(() => props.cuts, (cuts) => void (cuts > 0 && (box!.value = '')))); // prettier-ignore
  createEffect(() => props.hasFailed && setOpen(true));
  return (
    <section class="calculator walk-talk" aria-labelledby="walk-talk-title">
      <details
        class="talk-box"
        open={isOpen()}
        onToggle={(event) => {
          setOpen(event.currentTarget.open);
          if (!event.currentTarget.open || box!.value !== '') return;
          box!.value = props.text();
          before = box!.value.length;
        }}
      >
        <summary ref={fold}>
          <h2 id="walk-talk-title">Your talk</h2>
          <span class="change">{isOpen() ? '' : 'Change'}</span>
        </summary>
        <div class="field wide">
          <label for="walk-text">What you say</label>
          <textarea
            id="walk-text"
            ref={box}
            rows={8}
            autocomplete="off"
            spellcheck={false}
            onFocus={() => props.wake()}
            onInput={() => {
              const { length } = box!.value;
              if (length - before > PASTED) setTimeout(() => cut(box!.value), AFTER_PASTE);
              before = length;
            }}
          />
        </div>
        <p class="actions">
          <button type="button" id="walk-cut" onClick={() => cut(box!.value)}>
            Cut into rooms
          </button>
          <Show when={kept()}>
            {(talk) => (
              <button type="button" onClick={() => cut(talk().text, talk().corrections)}>
                Cut {visibleName(talk().name)}, from Check a talk
              </button>
            )}
          </Show>
        </p>
        <p class="note">It is read and kept in this browser, and goes nowhere else.</p>
      </details>
      <p class="note" role="status">
        {says()}
        {props.isCutting ? ' Cutting.' : ''}
      </p>
      <Show when={props.hasFailed}>
        <p class="problem" role="alert">
          The part of this page that reads a talk did not come, so nothing was cut. Your words are still in
          the field: copy them, load the page again and paste them once more.
        </p>
      </Show>
    </section>
  );
}
