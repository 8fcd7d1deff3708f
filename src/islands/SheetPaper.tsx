// One version of a sheet as it is printed: the questions, the answers with working, or the marking key.
import { For, Show } from 'solid-js';
import { formatCount } from '../core/format.ts';
import type { Question } from '../exercises/question.ts';
import { bookStamp } from '../house/book.ts';
import { topicTitles } from '../exercises/topics.ts';
import { ROUNDED_BY } from '../exercises/bounds.ts';
import { allowedBy, answerInWords } from '../exercises/wording.ts';
import { PaperQuestion, printedPartNames, type PrintedPart } from './PaperQuestion.tsx';

export function SheetPaper(props: {
  readonly part: PrintedPart;
  readonly questions: readonly Question[];
  /** What has become of the sheet since its link was made. */
  readonly news: readonly string[];
  readonly version: number;
  readonly mark: string;
  /** The sheet's name, as its trainer gave it. */
  readonly name: string;
}) {
  return (
    <article class="sheet-paper" data-part={props.part} data-version={props.version}>
      <header>
        <h3>
          {printedPartNames[props.part]}, version {props.version}
        </h3>
        <p>
          Sheet “{props.name}” ({props.mark}): {formatCount(props.questions.length, 'question')}, one point
          each.
        </p>
        <Show when={props.part === 'questions'}>
          <p class="who">
            <span>Name</span> <span>Date</span> <span>Time</span> <span>Points</span>
          </p>
        </Show>
      </header>
      <For each={props.news}>{(each) => <p class="remark">{each}</p>}</For>
      <Show when={props.part === 'key'} fallback={<Questions {...props} />}>
        <>
          <p class="meaning">
            Half marks: a right number whose unit is not the one it was given in, or one rounded too far, by
            at most {100 * ROUNDED_BY} %.
          </p>
          <Key {...props} />
        </>
      </Show>
      <p class="small">
        End of version {props.version}. By book {bookStamp}; Harrowmere and other houses named are invented.
      </p>
    </article>
  );
}

function Questions(props: { readonly part: PrintedPart; readonly questions: readonly Question[] }) {
  return (
    <ol class="questions">
      <For each={props.questions}>
        {(question) => (
          <li>
            <p class="about">
              {topicTitles[question.topic]}, level {question.level}
            </p>
            <PaperQuestion question={question} part={props.part} />
          </li>
        )}
      </For>
    </ol>
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
