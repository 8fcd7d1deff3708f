// One version of a trainer's own sheet on paper: title, time and total at its head, marks at each question; answers, or a marking key.
import { For, Show } from 'solid-js';
import { marksIn, type OwnAsked, type OwnSheet } from '../exercises/own/own-sheet.ts';
import { ROUNDED_BY } from '../exercises/bounds.ts';
import { allowedBy, answerInWords } from '../exercises/wording.ts';
import { PaperQuestion, printedPartNames, type PrintedPart } from './PaperQuestion.tsx';
import { bookStamp } from '../house/book.ts';

const marksText = (marks: number) => `${marks} ${marks === 1 ? 'mark' : 'marks'}`;

export function OwnPaper(props: {
  readonly part: PrintedPart;
  readonly sheet: OwnSheet;
  readonly asked: readonly OwnAsked[];
  readonly news: readonly string[];
  readonly version: number;
  readonly mark: string;
}) {
  const total = () => marksIn({ items: props.asked.map(({ item }) => item) });
  const rules = () =>
    [
      `${marksText(total())} in all`,
      ...(props.sheet.minutes > 0 ? [`${props.sheet.minutes} minutes`] : []),
      ...(props.sheet.passMark > 0 ? [`${props.sheet.passMark}\u202f% to pass`] : []),
    ].join(', ');
  return (
    <article class="sheet-paper own-paper" data-part={props.part} data-version={props.version}>
      <header>
        <h3>{props.sheet.title || 'A sheet'}</h3>
        <p>
          {printedPartNames[props.part]}, version {props.version} of sheet {props.mark}. {rules()}.
        </p>
        <Show when={props.part === 'questions'}>
          <p class="who">
            <span>Name</span> <span>Date</span> <span>Marks</span>
          </p>
        </Show>
      </header>
      <For each={props.news}>{(each) => <p class="remark">{each}</p>}</For>
      <Show when={props.part === 'key'} fallback={<Asked {...props} />}>
        <>
          <p class="meaning">
            Half marks: a right number whose unit is not the one it was given in, or one rounded too far, by
            at most {100 * ROUNDED_BY} %.
          </p>
          <Key asked={props.asked} />
        </>
      </Show>
      <p class="small">
        End of version {props.version}. By book {bookStamp}; Harrowmere and other houses named are invented.
      </p>
    </article>
  );
}

function Asked(props: { readonly part: PrintedPart; readonly asked: readonly OwnAsked[] }) {
  return (
    <ol class="questions">
      <For each={props.asked}>
        {({ question, item }) => (
          <li>
            <p class="own-marks">{marksText(item.marks)}</p>
            <PaperQuestion question={question} part={props.part} />
          </li>
        )}
      </For>
    </ol>
  );
}

function Key(props: { readonly asked: readonly OwnAsked[] }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Question</th>
          <th scope="col">Answer</th>
          <th scope="col">Counts as right</th>
          <th scope="col">Marks</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.asked}>
          {({ question, item }, i) => (
            <tr>
              <td class="number">{i() + 1}</td>
              <th scope="row">{question.title}</th>
              <td>{answerInWords(question)}</td>
              <td>{allowedBy(question)}</td>
              <td class="number">{item.marks}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
