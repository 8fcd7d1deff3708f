// Said once nothing is left of what a lesson asks: behind the answer that was the last, or before what is asked all the same.
import { Show } from 'solid-js';
import { stepAfter } from '../path/open-lesson.ts';
import { keepLesson } from './lesson-kept.ts';
import type { PracticeLesson } from './practice-lesson.ts';

export function PracticeAllAsked(props: { readonly of: PracticeLesson }) {
  const { lesson, areAllRight, backAt, backSays } = props.of;
  return (
    <Show when={areAllRight()}>
      <p class="lesson-way" role="status">
        That is all your {lesson() ? 'lesson asks' : 'first weeks ask here today'}.{' '}
        <a href={`../${backAt()}`}>{backSays()}</a>
        <Show when={lesson() && stepAfter(lesson()!)}>
          {(step) => (
            <a href={`../${step().at}`} onClick={() => keepLesson({ ...lesson()!, now: step().id })}>
              Next: {step().says}
            </a>
          )}
        </Show>
      </p>
    </Show>
  );
}
