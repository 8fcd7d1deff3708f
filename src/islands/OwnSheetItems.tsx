// The questions of a trainer's own sheet in his order: each as drawn for one version, with its marks and what can be done with it.
import { For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { hardnessOf } from '../exercises/hardness.ts';
import { OWN_SHEET_LIMITS, type Item, type OwnAsked } from '../exercises/own/own-sheet.ts';
import { isNumberQuestion, type QuestionKind } from '../exercises/question.ts';
import { answerInWords } from '../exercises/wording.ts';

const marks = Array.from({ length: OWN_SHEET_LIMITS.marks }, (_, i) => i + 1);

export function OwnSheetItems(props: {
  readonly items: readonly Item[];
  readonly kinds: ReadonlyMap<string, QuestionKind>;
  /** As drawn for the version that is shown; nothing while it is being drawn. */
  readonly asked: readonly OwnAsked[] | undefined;
  readonly swapping: number | undefined;
  readonly change: (place: number, part: Partial<Item>) => void;
  readonly move: (place: number, by: -1 | 1, event: Event) => void;
  readonly anew: (place: number) => void;
  readonly keep: (place: number) => void;
  readonly swap: (place: number | undefined) => void;
  readonly remove: (place: number, event: Event) => void;
}) {
  const drawn = (item: Item) => props.asked?.find((each) => each.item.key === item.key)?.question;
  return (
    <ol class="own-items">
      <For each={props.items}>
        {(item, i) => {
          const kind = () => props.kinds.get(item.kind);
          const name = () => `question ${i() + 1}, ${kind()?.title ?? item.kind}`;
          return (
            <li id={`own-item-${item.key}`} tabindex="-1">
              <p class="about">
                {kind()?.title ?? 'This kind of question is not in this edition of the book'}
              </p>
              <Show when={drawn(item)} fallback={<p class="prompt">…</p>}>
                {(question) => (
                  <>
                    <p class="prompt">{keepTogether(question().prompt)}</p>
                    <p class="about">
                      {answerInWords(question())}; hardness {hardnessOf(question()).points} points
                      {item.kept === undefined ? '' : '; every version has these numbers'}
                    </p>
                  </>
                )}
              </Show>
              <div class="own-doing">
                <label>
                  Marks{' '}
                  <select
                    aria-label={`Marks for ${name()}`}
                    autocomplete="off"
                    value={String(item.marks)}
                    onChange={(event) => props.change(i(), { marks: Number(event.currentTarget.value) })}
                  >
                    <For each={marks}>{(each) => <option value={String(each)}>{each}</option>}</For>
                  </select>
                </label>
                <button
                  type="button"
                  disabled={i() === 0}
                  aria-label={`Up: ${name()}`}
                  onClick={(event) => props.move(i(), -1, event)}
                >
                  Up
                </button>
                <button
                  type="button"
                  disabled={i() === props.items.length - 1}
                  aria-label={`Down: ${name()}`}
                  onClick={(event) => props.move(i(), 1, event)}
                >
                  Down
                </button>
                <Show when={drawn(item) && isNumberQuestion(drawn(item)!)}>
                  <button
                    type="button"
                    disabled={item.kept !== undefined}
                    aria-label={`Other numbers: ${name()}`}
                    onClick={() => props.anew(i())}
                  >
                    Other numbers
                  </button>
                </Show>
                <button
                  type="button"
                  aria-label={`${item.kept === undefined ? 'Keep this draw' : 'Let it be drawn anew'}: ${name()}`}
                  onClick={() => props.keep(i())}
                >
                  {item.kept === undefined ? 'Keep this draw' : 'Let it be drawn anew'}
                </button>
                <button
                  type="button"
                  aria-pressed={props.swapping === i()}
                  aria-label={`Swap: ${name()}`}
                  onClick={() => props.swap(props.swapping === i() ? undefined : i())}
                >
                  Swap
                </button>
                <button
                  type="button"
                  aria-label={`Take out: ${name()}`}
                  onClick={(event) => props.remove(i(), event)}
                >
                  Take out
                </button>
              </div>
            </li>
          );
        }}
      </For>
    </ol>
  );
}
