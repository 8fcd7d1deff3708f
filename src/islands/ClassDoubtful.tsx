// Whose a result is, asked where the list of who gets which version names somebody else than the result does.
import { Show } from 'solid-js';
import type { ClassBook } from '../exercises/class/book.ts';
import { putResults, takenWords } from '../exercises/class/put-results.ts';
import { whoseWords, type Doubtful } from '../exercises/class/whose.ts';
import { focusAfter } from './focus-after.ts';

/** One question at a time; what is left out can be pasted again. */
export function ClassDoubtful(props: {
  readonly doubtful: readonly Doubtful[];
  readonly book: () => ClassBook;
  /** Takes the rest of the questions, what came of this one, and the book where it changed. */
  readonly answer: (rest: readonly Doubtful[], says: string, book?: ClassBook) => void | Promise<void>;
}) {
  let group: HTMLDivElement | undefined;
  const settle = (event: Event, { found }: Doubtful, name?: string) => {
    const rest = props.doubtful.slice(1);
    if (name === undefined) void props.answer(rest, `The result with the name ${found.name} is left out.`);
    else {
      const { book, added, known } = putResults(props.book(), [{ ...found, name }]);
      void props.answer(rest, `${name}: ${takenWords(added, known)}`, book);
    }
    focusAfter(event, () => group?.querySelector<HTMLElement>('button') ?? undefined);
  };
  return (
    <div ref={group}>
      <Show when={props.doubtful[0]} keyed>
        {(now) => (
          <div role="group" aria-label={whoseWords(now)}>
            <p class="remark" role="alert">
              {whoseWords(now)}
              {props.doubtful.length > 1
                ? ` After this there are ${props.doubtful.length - 1} more to ask.`
                : ''}
            </p>
            <p class="actions">
              <button type="button" onClick={(event) => settle(event, now, now.listed)}>
                {now.listed}
              </button>
              <button type="button" onClick={(event) => settle(event, now, now.found.name)}>
                {now.found.name}
              </button>
              <button type="button" onClick={(event) => settle(event, now)}>
                Leave it out
              </button>
            </p>
          </div>
        )}
      </Show>
    </div>
  );
}
