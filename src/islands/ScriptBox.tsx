// The box in which a talk, or a few figures, are typed, with what helps in typing them.
import { createSignal, Show } from 'solid-js';
import type { Quoted } from '../core/cross-check/quoted.ts';
import type { Line } from '../core/line/line.ts';
import { visibleName } from '../house/name.ts';
import type { TalkBox } from './script-box.ts';
import { ScriptQuoted } from './ScriptQuoted.tsx';
import { focusAfter } from './focus-after.ts';
import { ScriptTalks, type SaidOfTalks } from './ScriptTalks.tsx';

export const NOT_KEPT = {
  talk: 'This browser does not let the handbook keep your talk; it lasts until the page is closed.',
  figures:
    'This browser does not let the handbook keep what you type here; it lasts until the page is closed.',
};

export function ScriptBox(props: {
  readonly of: keyof typeof NOT_KEPT;
  readonly box: TalkBox;
  readonly isRead: boolean;
  /** The figures that were found, and the line whose other figures can be filled in. */
  readonly told: () => Quoted;
  readonly line: () => Line;
  /** Something is about to be typed. */
  readonly wake: () => void;
}) {
  const isTalk = () => props.of === 'talk';
  const { talk, open, now, readSoon, isKept, isFolded, setFolded, box, setBox, setFold } = props.box;
  const [said, setSaid] = createSignal<SaidOfTalks>();
  let saying: HTMLParagraphElement | undefined;
  const toBox = () => {
    setFolded(false);
    queueMicrotask(() => {
      box()?.focus({ preventScroll: true });
      box()?.scrollIntoView({ block: 'center' });
    });
  };
  const field = () => (
    <div class="field">
      <label for={isTalk() ? 'script-text' : 'quoted-text'}>
        {isTalk() ? 'What you say' : 'Your figures, as you say them'}
      </label>
      <textarea
        id={isTalk() ? 'script-text' : 'quoted-text'}
        ref={setBox}
        rows={isTalk() ? 8 : 4}
        autocomplete="off"
        spellcheck={false}
        placeholder={isTalk() ? undefined : 'wash 8 %, low wines 22, we cut at 72 and 62'}
        onFocus={() => props.wake()}
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
    <Show
      when={isTalk()}
      fallback={
        <>
          <h2 id="script-title">The figures you quote</h2>
          <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
            {field()}
          </form>
          <ScriptQuoted
            text={() => box()!.value}
            told={props.told}
            line={props.line}
            put={(text) => open({ ...talk(), text, ...(text === '' ? { corrections: [] } : {}) })}
            box={box}
          />
          {note()}
        </>
      }
    >
      <details class="talk-box" open={!isFolded()} onToggle={(event) => setFolded(!event.currentTarget.open)}>
        <summary ref={setFold}>
          <h2 id="script-title">{props.isRead ? visibleName(talk().name) : 'Your talk'}</h2>
          <span class="change">{isFolded() ? 'Change' : ''}</span>
        </summary>
        <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
          {field()}
          <ScriptTalks
            talk={talk()}
            now={now}
            take={open}
            say={setSaid}
            saying={() => saying}
            toBox={toBox}
          />
        </form>
        {note()}
      </details>
      <div class="said-of-talks" classList={{ empty: !said() }}>
        <p role="status" tabindex="-1" ref={saying}>
          {said()?.says}
        </p>
        <Show when={said()?.undo}>
          {(undo) => (
            <button
              type="button"
              onClick={(event) => {
                undo()();
                focusAfter(event, () => saying);
              }}
            >
              Put it back
            </button>
          )}
        </Show>
      </div>
    </Show>
  );
}
