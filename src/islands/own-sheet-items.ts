// What a trainer does to the questions of an own sheet: add or swap one, move it, keep its draw, take it out.
import { createSignal } from 'solid-js';
import { freshKey, noteOf, OWN_SHEET_LIMITS } from '../exercises/own/own-sheet.ts';
import type { QuestionKind } from '../exercises/question.ts';
import { focusAfter } from './focus-after.ts';
import type { useWayBack } from './use-way-back.tsx';
import type { DrawnOwnSheet } from './own-sheet-drawn.ts';

export function useOwnSheetItems(
  desk: DrawnOwnSheet,
  say: (sentence: string) => void,
  taken: Pick<ReturnType<typeof useWayBack>, 'say' | 'saying'>,
) {
  const { sheet, change, changeItem, shown, settled, isSettled } = desk;
  const [swapping, setSwapping] = createSignal<number>(); // the place of the question for which another is sought

  const add = (kind: QuestionKind) => {
    const place = swapping();
    const { items } = sheet();
    if (place !== undefined) {
      change({ items: items.map((item, i) => (i === place ? { kind: kind.id, key: freshKey(items), marks: item.marks } : item)) }); // prettier-ignore
      say(`“${kind.title}” stands in place of question ${place + 1}.`);
      return void setSwapping(undefined);
    }
    if (items.length === OWN_SHEET_LIMITS.items)
      return void say(`A sheet has at most ${OWN_SHEET_LIMITS.items} questions.`);
    change({ items: [...items, { kind: kind.id, key: freshKey(items), marks: 1 }] });
    say(`“${kind.title}” is question ${sheet().items.length}.`);
  };
  const move = (place: number, by: -1 | 1, event: Event) => {
    const items = [...sheet().items];
    const [item] = items.splice(place, 1);
    items.splice(place + by, 0, item!);
    change({ items });
    focusAfter(event, () => document.getElementById(`own-item-${item!.key}`));
  };
  /** Keeps the draw of the version shown for every version, or lets it go. */
  const keep = (place: number) => {
    const item = sheet().items[place]!;
    if (item.kept !== undefined) {
      const { kept: _, ...free } = item;
      return change({ items: sheet().items.map((each, i) => (i === place ? free : each)) });
    }
    const kept = isSettled() ? noteOf(settled()!.sheet, shown(), place) : undefined;
    if (kept !== undefined) changeItem(place, { kept });
  };
  const swap = (place: number | undefined) => {
    setSwapping(place);
    if (place !== undefined) document.getElementById('own-words')?.focus();
  };
  const remove = (place: number, event: Event) => {
    setSwapping(undefined);
    const gone = sheet().items[place]!;
    change({ items: sheet().items.filter((_, i) => i !== place) });
    taken.say(`Question ${place + 1} is taken out.`, () => {
      const { items } = sheet();
      if (items.length === OWN_SHEET_LIMITS.items)
        return `A sheet has at most ${OWN_SHEET_LIMITS.items} questions: take another out first.`;
      change({ items: items.toSpliced(place, 0, gone) });
      return `It is question ${Math.min(place, items.length) + 1} again.`;
    });
    focusAfter(event, taken.saying);
  };
  return { swapping, swapNone: () => setSwapping(undefined), add, move, keep, swap, remove };
}
