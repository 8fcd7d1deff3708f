// The reader's way along the path: answers, guesses and marks together, as the page was built until it is mounted.
import { createMemo } from 'solid-js';
import { useProgress } from '../browser/progress-store.ts';
import { nextOnPath, type PathDone } from '../path/next-on-path.ts';
import type { PathStage } from '../path/steps.ts';
import { keptGuesses } from './guesses-kept.ts';
import { keptLesson } from './lesson-kept.ts';
import { readAgain, ticks } from './path-kept.ts';
import { today } from './today.ts';

export function usePath(stages: readonly PathStage[]) {
  const whole = useProgress();
  const opened = () => {
    const lesson = keptLesson();
    return lesson ? { open: lesson.stage } : {};
  };
  const done = createMemo<PathDone>(() =>
    whole.mounted() && readAgain() >= 0
      ? {
          log: whole.progress().log,
          ticked: Object.keys(ticks()),
          guessed: Object.keys(keptGuesses()),
          ...opened(),
        }
      : { log: [], ticked: [], guessed: [] },
  );
  const day = () => (whole.mounted() ? today() : '1970-01-01'); // a built page has no day
  return { ...whole, done, day, next: () => nextOnPath(stages, done(), day()) };
}
