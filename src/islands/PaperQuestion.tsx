// A question on paper: what is asked, its curve, its options or steps behind their letters, and a line to answer on or the answer with its working.
import { For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { answerInKey, letterOfPlace } from '../exercises/letters.ts';
import { isChoiceQuestion, isNumberQuestion, isOrderQuestion, type Question } from '../exercises/question.ts';
import { answerInWords, askFor, unitAsked } from '../exercises/wording.ts';
import { Chart } from './Chart.tsx';
import { Working } from './Working.tsx';

export type PrintedPart = 'questions' | 'answers' | 'key';
export const printedPartNames: Readonly<Record<PrintedPart, string>> = {
  questions: 'Questions',
  answers: 'Answers with working',
  key: 'Marking key',
};

/** Options or steps of a question, each behind its letter. */
export function Lettered(props: { readonly of: readonly string[] }) {
  return (
    <ul class="lettered">
      <For each={props.of}>
        {(text, i) => (
          <li>
            <b>{letterOfPlace(i())}</b> {keepTogether(text)}
          </li>
        )}
      </For>
    </ul>
  );
}

export function PaperQuestion(props: { readonly question: Question; readonly part: PrintedPart }) {
  const { question } = props; // a sheet of other questions is other elements
  return (
    <>
      <p class="prompt">{keepTogether(question.prompt)}</p>
      <Show when={isNumberQuestion(question) && question.curve}>
        {(curve) => <Chart of={curve()} opened={curve()} />}
      </Show>
      <Show when={isChoiceQuestion(question) && question.options}>
        {(options) => <Lettered of={options().map(({ text }) => text)} />}
      </Show>
      <Show when={isOrderQuestion(question) && question.items}>{(items) => <Lettered of={items()} />}</Show>
      <Show
        when={props.part === 'answers'}
        fallback={
          <p class="answer-line">
            <span>{askFor(question)}</span> <span class="rule" />{' '}
            {isNumberQuestion(question) ? unitAsked(question.of) : ''}
          </p>
        }
      >
        <p>
          Answer:{' '}
          <b class="number">{isChoiceQuestion(question) ? answerInKey(question) : answerInWords(question)}</b>
        </p>
        <Working question={question} />
      </Show>
    </>
  );
}
