// The kinds of question that an address asks practice for, as a lesson of the first weeks does: what is left of them, and the way back.
import { createSignal } from 'solid-js';
import type { Practised } from '../exercises/progress.ts';
import { topics } from '../exercises/topics.ts';
import { kindsLeft } from '../path/kinds-left.ts';
import { lineAt, stepNow, type OpenLesson } from '../path/open-lesson.ts';
import { keptLesson } from './lesson-kept.ts';
import { today } from './today.ts';

/** `kinds` are all there are, by their ids; `log` is what was practised. */
export function usePracticeLesson(
  kinds: readonly { readonly id: string }[],
  log: () => readonly Practised[],
) {
  const [named, setNamed] = createSignal<readonly string[]>([]);
  const [lesson, setLesson] = createSignal<OpenLesson>();
  const [stage, setStage] = createSignal('');
  /** Kinds that the lesson, or the day, still asks for. */
  const left = () => kindsLeft(named(), log(), lesson() ? undefined : today());
  const isNamed = () => named().length > 0;
  return {
    /** Kinds that the address names. */
    named,
    isNamed,
    /** Lets them go: something else is practised. */
    nameNone: () => setNamed([]),
    /** The lesson that sent the reader here, where these kinds are its own. */
    lesson,
    left,
    areAllRight: () => isNamed() && left().length === 0,
    /** Reads the address; the topic that it asks for. */
    readAddress(): string {
      const asks = new URLSearchParams(location.hash.slice(1));
      setNamed((asks.get('kinds') ?? '').split(',').filter((id) => kinds.some((kind) => kind.id === id)));
      const from = asks.get('stage') ?? '';
      setStage(/^[a-z]+$/.test(from) && topics.some((each) => each === from) ? from : '');
      const open = keptLesson();
      setLesson(open && stepNow(open).at === `practice/${location.hash}` ? open : undefined);
      return asks.get('topic') ?? 'all';
    },
    /** Where the reader came from, from the book's root, and how the way there is called. */
    backAt: () => (lesson() ? lineAt(lesson()!) : `first-weeks/${stage() && `${stage()}/`}`),
    backSays: () =>
      lesson()
        ? `Back to your lesson, “${lesson()!.title}”`
        : stage()
          ? `Back to your first weeks: ${stage()}`
          : 'Back to your first weeks',
  };
}
export type PracticeLesson = ReturnType<typeof usePracticeLesson>;
