// What an answer was worth, what probably happened, the answer, and the full working.
import { Show } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { families } from '../exercises/families.ts';
import type { Mark, MarkVerdict } from '../exercises/verdict.ts';
import type { Question } from '../exercises/question.ts';
import { answerInWords } from '../exercises/wording.ts';
import { sources } from '../core/sources.ts';
import { Working } from './Working.tsx';

const verdictNames: Readonly<Record<MarkVerdict, string>> = {
  unanswered: 'Not answered',
  unreadable: 'Cannot be read',
  right: 'Right',
  rounded: 'Right, but for the rounding',
  unit: 'Right, but for the unit',
  wrong: 'Not right',
};

/** A mark; with the answer and its working once the question is done. */
export function MarkView(props: {
  readonly question: Question;
  readonly mark: Mark;
  readonly done: boolean;
}) {
  const familyName = () => {
    const { family } = props.mark;
    return family && family !== 'choice' && family !== 'order' ? lowerFirst(families[family]) : undefined;
  };
  return (
    <div class="mark-of" data-verdict={props.mark.verdict}>
      <p class="verdict">
        <b>{verdictNames[props.mark.verdict]}.</b>{' '}
        {keepTogether(props.mark.say.replace(/^(Right|Not answered|That is not it)\.\s*/, ''))}
      </p>
      <Show when={familyName()}>
        <p class="family">A common mistake: {familyName()}.</p>
      </Show>
      <Show when={props.done}>
        <p>
          The answer: <b class="number">{answerInWords(props.question)}</b>
        </p>
        <Working question={props.question} />
        <p class="sources">
          {props.question.sources.length === 0
            ? 'A question of your trainer’s own, which the book has not checked.'
            : `Source: ${props.question.sources.map((id) => sources[id].short).join('; ')}.`}
        </p>
      </Show>
    </div>
  );
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
