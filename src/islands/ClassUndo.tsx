// What came of something that was done to the class book, with “Undo” beside it for as long as it can be undone.
import { Show } from 'solid-js';
import { withPutBack, lastTakenOut } from '../exercises/class/put-back.ts';
import type { ClassBook } from '../exercises/class/book.ts';

export interface UndoableStep {
  readonly says: string;
  /** The book without what was done; undefined where it can no longer be undone. Left out where there is nothing to undo. */
  readonly undone?: (book: ClassBook) => { readonly book: ClassBook; readonly says: string } | undefined;
}

/** What was done by taking out or joining: it can be undone until something else is taken out. */
export function takenOut(next: ClassBook, says: string): UndoableStep {
  const stamp = lastTakenOut(next);
  return { says, undone: (book) => (lastTakenOut(book) === stamp ? withPutBack(book) : undefined) };
}

export function ClassUndo(props: {
  readonly book: ClassBook;
  readonly done: UndoableStep;
  readonly change: (book: ClassBook) => void;
  readonly say: (done: UndoableStep) => void;
  readonly id?: string;
}) {
  let said: HTMLParagraphElement | undefined;
  const undone = () => props.done.undone?.(props.book);
  return (
    <div class="class-done">
      <p role="status" id={props.id} tabindex="-1" ref={said}>
        {props.done.says}
      </p>
      <Show when={undone() !== undefined}>
        <button
          type="button"
          onClick={() => {
            const { book, says } = undone()!;
            props.change(book);
            props.say({ says });
            said?.focus({ preventScroll: true });
          }}
        >
          Undo
        </button>
      </Show>
    </div>
  );
}
