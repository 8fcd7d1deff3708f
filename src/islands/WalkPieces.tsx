// What is said in a room, piece by piece: each is changed, split, joined and moved by buttons, or by keys on its first words.
import { createSignal, Index, onCleanup, onMount, Show } from 'solid-js';
import { audienceMarks, type AudienceMark } from '../walk/audience-kinds.ts';
import type { Piece } from '../walk/walk.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { Tick } from './Tick.tsx';

const QUIET = 600; // ms without typing until a piece is taken as it stands

export interface PieceDoes {
  /** What is being typed in a piece and not yet taken, by its number: the desk takes it when another tab changes the walk. */
  readonly typing: { now?: { readonly piece: number; readonly text: string } };
  readonly write: (piece: number, text: string) => void;
  readonly move: (piece: number, by: -1 | 1) => void;
  /** Up or down in its room. */
  readonly shift: (piece: number, by: -1 | 1) => void;
  readonly split: (piece: number, place: number) => void;
  readonly join: (piece: number) => void;
  readonly long: (piece: number, long: boolean) => void;
  /** For whom a piece is; nothing for all. */
  readonly whom: (piece: number, mark: AudienceMark | undefined) => void;
}

/** The end of the sentence that is nearest to the middle of a text; the space nearest to it where there is none. */
export function middleOf(text: string): number {
  const places = (pattern: RegExp) =>
    [...text.matchAll(pattern)].map((found) => found.index + found[0].length);
  const ends = places(/[.!?…]["”’)]*\s+/g);
  const among = ends.length > 0 ? ends : places(/\s+/g);
  const away = (place: number) => Math.abs(place - text.length / 2);
  return among.reduce((best, place) => (away(place) < away(best) ? place : best), among[0] ?? 0);
}

export function WalkPieces(props: {
  readonly pieces: readonly Piece[];
  /** The rooms before and behind this one, where there are such. */
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly does: PieceDoes;
}) {
  const [open, setOpen] = createSignal<number>();
  let list: HTMLOListElement | undefined;
  /** As they stand on the page; a list that has lost its last piece stands there no more. */
  const buttons = () => (list?.isConnected ? [...list.querySelectorAll<HTMLButtonElement>('.piece')] : []);
  const focusOn = (piece: number) =>
    queueMicrotask(() => {
      const all = buttons();
      (all[Math.min(piece, all.length - 1)] ?? document.getElementById('walk-room-title'))?.focus();
    });
  const move = (piece: number, by: -1 | 1) => {
    setOpen(undefined);
    props.does.move(piece, by);
    focusOn(piece);
  };
  const shift = (piece: number, by: -1 | 1) => {
    const to = piece + by;
    if (to < 0 || to >= props.pieces.length) return;
    if (open() !== undefined) setOpen(to);
    props.does.shift(piece, by);
    focusOn(to);
  };
  const keys = (event: KeyboardEvent, piece: number) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const does: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => props.before !== undefined && move(piece, -1),
      ArrowRight: () => props.after !== undefined && move(piece, 1),
      ArrowUp: () => focusOn(Math.max(0, piece - 1)),
      ArrowDown: () => focusOn(piece + 1),
      u: () => shift(piece, -1),
      d: () => shift(piece, 1),
      s: () => props.does.split(piece, middleOf(props.pieces[piece]!.text)),
      j: () => props.does.join(piece),
      l: () => props.does.long(piece, !props.pieces[piece]!.long),
    };
    const act = does[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  return (
    <>
      <ol class="pieces" ref={list}>
        <Index each={props.pieces}>
          {(piece, i) => (
            <li data-long={piece().long ? '' : undefined} data-some={piece().whom ? '' : undefined}>
              <button
                type="button"
                class="piece"
                aria-expanded={open() === i}
                aria-describedby="walk-keys"
                onClick={() => setOpen(open() === i ? undefined : i)}
                onKeyDown={(event) => keys(event, i)}
              >
                <Show when={piece().long}>
                  <small>Only in long walks. </small>
                </Show>
                <Show when={piece().whom}>{(mark) => <small>{audienceMarks[mark()]}. </small>}</Show>
                <span>{piece().text}</span>
              </button>
              <Show when={open() === i}>
                <PieceTools
                  piece={piece()}
                  number={i}
                  isLast={i === props.pieces.length - 1}
                  before={props.before}
                  after={props.after}
                  does={{ ...props.does, move, shift }}
                />
              </Show>
            </li>
          )}
        </Index>
      </ol>
      <p class="meaning" id="walk-keys">
        Keys on a piece: <kbd>←</kbd> to the room before, <kbd>→</kbd> to the room after, <kbd>U</kbd> up,{' '}
        <kbd>D</kbd> down, <kbd>S</kbd> split, <kbd>J</kbd> join to the next, <kbd>L</kbd> only in long walks,{' '}
        <kbd>↑</kbd> <kbd>↓</kbd> from piece to piece.
      </p>
    </>
  );
}

function PieceTools(props: {
  readonly piece: Piece;
  readonly number: number;
  readonly isLast: boolean;
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly does: PieceDoes;
}) {
  let box: HTMLTextAreaElement | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const take = () => {
    clearTimeout(timer);
    timer = undefined;
    delete props.does.typing.now;
    if (box && box.value.trim() !== '' && box.value !== props.piece.text)
      props.does.write(props.number, box.value);
  };
  /** A field that is being typed in keeps what stands in it. */
  const shown = (text: string) => (props.does.typing.now ? box!.value : text);
  const flush = () => timer !== undefined && take();
  onMount(() => addEventListener('pagehide', flush));
  onCleanup(() => {
    clearTimeout(timer);
    delete props.does.typing.now;
    removeEventListener('pagehide', flush);
  });
  return (
    <div class="piece-tools">
      <div class="field wide">
        <label for="walk-piece">Your words</label>
        <textarea
          id="walk-piece"
          ref={box}
          rows={6}
          maxlength={20_000}
          autocomplete="off"
          spellcheck={false}
          value={shown(props.piece.text)}
          onInput={() => {
            props.does.typing.now = { piece: props.number, text: box!.value };
            clearTimeout(timer);
            timer = setTimeout(take, QUIET);
          }}
          onChange={take}
        />
      </div>
      <p class="actions">
        <Show when={props.before}>
          <button type="button" onClick={() => props.does.move(props.number, -1)}>
            ← {props.before}
          </button>
        </Show>
        <Show when={props.after}>
          <button type="button" onClick={() => props.does.move(props.number, 1)}>
            {props.after} →
          </button>
        </Show>
        <Show when={props.number > 0}>
          <button type="button" onClick={() => props.does.shift(props.number, -1)}>
            ↑ Up
          </button>
        </Show>
        <Show when={!props.isLast}>
          <button type="button" onClick={() => props.does.shift(props.number, 1)}>
            ↓ Down
          </button>
        </Show>
        <button
          type="button"
          onClick={() => {
            take();
            const at = box!.selectionStart;
            const { text } = props.piece;
            const isWithin = text.slice(0, at).trim() !== '' && text.slice(at).trim() !== '';
            props.does.split(props.number, isWithin ? at : middleOf(text));
          }}
        >
          Split at the cursor
        </button>
        <Show when={!props.isLast}>
          <button type="button" onClick={() => props.does.join(props.number)}>
            Join to the next
          </button>
        </Show>
      </p>
      <Tick checked={props.piece.long} take={(isTicked) => props.does.long(props.number, isTicked)}>
        Only in long walks
      </Tick>
      <ChoiceField
        id="walk-whom"
        label="Told to"
        options={{ '': 'all', ...audienceMarks }}
        value={props.piece.whom ?? ''}
        take={(value) => void props.does.whom(props.number, (value || undefined) as AudienceMark | undefined)}
      />
    </div>
  );
}
