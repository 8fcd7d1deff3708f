// The ten sums on paper: the questions with room to try, and the working of all behind them.
import { createMemo, For } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { guideQuestions } from '../exercises/guide-sums.ts';
import { answerInWords, askFor } from '../exercises/wording.ts';
import { useHouse } from '../browser/house-store.ts';

export function WorkedPart() {
  const { line } = useHouse();
  const sums = createMemo(() => guideQuestions(line()));
  return (
    <>
      <ol class="guide-sums">
        <For each={sums()}>
          {({ question }) => (
            <li>
              <b>{question.title}.</b> {keepTogether(question.prompt)} {askFor(question)}
              <span class="rule" />
            </li>
          )}
        </For>
      </ol>
      <h3 class="worked-title">The working</h3>
      <ol class="guide-worked">
        <For each={sums()}>
          {({ question }) => (
            <li>
              <b>{answerInWords(question)}.</b> {question.working.map(keepTogether).join(' ')}
            </li>
          )}
        </For>
      </ol>
    </>
  );
}
