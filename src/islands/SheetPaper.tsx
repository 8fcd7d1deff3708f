// One version of a sheet as it is printed: the questions, the answers with working, or the marking key.
import { For, Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { letter } from '../exercises/letters.ts';
import { isChoiceQuestion, isNumberQuestion, isOrderQuestion, type Question } from '../exercises/question.ts';
import { book } from '../house/book.ts';
import { topicTitles } from '../exercises/topics.ts';
import { allowedBy, answerInWords, askFor, unitAsked } from '../exercises/wording.ts';
import { Chart } from './Chart.tsx';
import { Working } from './Working.tsx';

export type Part = 'questions' | 'answers' | 'key';
const partNames: Readonly<Record<Part, string>> = {
  questions: 'Questions',
  answers: 'Answers with working',
  key: 'Marking key',
};

export function Paper(props: {
  readonly part: Part;
  readonly questions: readonly Question[];
  /** What has become of the sheet since its link was made. */
  readonly news: readonly string[];
  readonly version: number;
  readonly mark: string;
  /** The sheet's name, as its trainer gave it. */
  readonly name: string;
}) {
  return (
    <article class="sheet-paper" data-part={props.part}>
      <header>
        <h3>
          {partNames[props.part]}, version {props.version}
        </h3>
        <Show when={props.part === 'questions'}>
          <p class="who">
            <span>Name</span> <span>Date</span>
          </p>
        </Show>
      </header>
      <For each={props.news}>{(each) => <p class="remark">{each}</p>}</For>
      <Show when={props.part === 'key'} fallback={<Questions {...props} />}>
        <Key {...props} />
      </Show>
      <p class="small">
        Sheet “{props.name}” ({props.mark}), version {props.version}, by book {book}. Harrowmere and other
        houses named are invented.
      </p>
    </article>
  );
}

function Questions(props: { readonly part: Part; readonly questions: readonly Question[] }) {
  return (
    <ol class="questions">
      <For each={props.questions}>
        {(question) => (
          <li>
            <p class="about">
              {topicTitles[question.topic]}, level {question.level}
            </p>
            <p class="prompt">{keepTogether(question.prompt)}</p>
            <Show when={isNumberQuestion(question) && question.curve}>
              {(curve) => <Chart of={curve()} opened={curve()} />}
            </Show>
            <Show when={isChoiceQuestion(question) && question.options}>
              {(options) => <Lettered of={options().map(({ text }) => text)} />}
            </Show>
            <Show when={isOrderQuestion(question) && question.items}>
              {(items) => <Lettered of={items()} />}
            </Show>
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
                Answer: <b class="number">{answerInWords(question)}</b>
              </p>
              <Working question={question} />
            </Show>
          </li>
        )}
      </For>
    </ol>
  );
}

function Lettered(props: { readonly of: readonly string[] }) {
  return (
    <ul class="lettered">
      <For each={props.of}>
        {(text, i) => (
          <li>
            <b>{letter(i())}</b> {keepTogether(text)}
          </li>
        )}
      </For>
    </ul>
  );
}

function Key(props: { readonly questions: readonly Question[] }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Question</th>
          <th scope="col">Answer</th>
          <th scope="col">Counts as right</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.questions}>
          {(question, i) => (
            <tr>
              <td class="number">{i() + 1}</td>
              <th scope="row">{question.title}</th>
              <td>{answerInWords(question)}</td>
              <td>{allowedBy(question)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
