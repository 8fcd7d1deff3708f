// A question with the way to answer it: a field for a number, letters to choose or to put in order.
import { For, Match, Show, Switch } from 'solid-js';
import { keepTogether } from '../core/keep-together.ts';
import { letterOfPlace } from '../exercises/letters.ts';
import {
  isChoiceQuestion,
  isNumberQuestion,
  isOrderQuestion,
  type ChoiceQuestion,
  type NumberQuestion,
  type OrderQuestion,
  type Question,
} from '../exercises/question.ts';
import { askFor } from '../exercises/wording.ts';
import { Chart } from './Chart.tsx';
import { fetchMarker } from './fetched-marker.ts';

export interface QuestionViewProps<Q extends Question = Question> {
  readonly question: Q;
  readonly id: string;
  /** The answer as text: a number, a letter, letters in order. */
  readonly answer: string;
  readonly onAnswer: (text: string) => void;
  /** Marked already: it can be read and no longer changed. */
  readonly done: boolean;
  /** The id of what is said of an answer that cannot be marked. */
  readonly problem?: string | undefined;
}

export function QuestionView(props: QuestionViewProps) {
  return (
    <div class="question" onFocusIn={() => void fetchMarker()}>
      <p class="prompt" id={`${props.id}-prompt`}>
        {keepTogether(props.question.prompt)}
      </p>
      <Switch>
        <Match when={isNumberQuestion(props.question) && props.question}>
          {(question) => <NumberAnswer {...props} question={question()} />}
        </Match>
        <Match when={isChoiceQuestion(props.question) && props.question}>
          {(question) => <ChoiceAnswer {...props} question={question()} />}
        </Match>
        <Match when={isOrderQuestion(props.question) && props.question}>
          {(question) => <OrderAnswer {...props} question={question()} />}
        </Match>
      </Switch>
    </div>
  );
}

function NumberAnswer(props: QuestionViewProps<NumberQuestion>) {
  return (
    <>
      <Show when={props.question.curve}>{(curve) => <Chart of={curve()} opened={curve()} />}</Show>
      <div class="field answer">
        <label for={props.id}>{askFor(props.question)}</label>
        <input
          id={props.id}
          class="words"
          type="text"
          autocomplete="off"
          maxlength="200"
          aria-invalid={props.problem ? 'true' : 'false'}
          aria-describedby={`${props.id}-prompt ${props.problem ?? ''}`.trim()}
          readOnly={props.done}
          value={props.answer}
          onInput={(event) => props.onAnswer(event.currentTarget.value)}
        />
      </div>
    </>
  );
}

function ChoiceAnswer(props: QuestionViewProps<ChoiceQuestion>) {
  return (
    <fieldset class="options" aria-describedby={`${props.id}-prompt ${props.problem ?? ''}`.trim()}>
      <legend>{askFor(props.question)}</legend>
      <For each={props.question.options}>
        {(option, i) => (
          <label class="tick">
            <input
              type="radio"
              name={props.id}
              id={i() === 0 ? props.id : undefined}
              autocomplete="off"
              disabled={props.done}
              checked={props.answer === letterOfPlace(i())}
              onChange={() => props.onAnswer(letterOfPlace(i()))}
            />
            <span>
              <b>{letterOfPlace(i())}</b> {keepTogether(option.text)}
            </span>
          </label>
        )}
      </For>
    </fieldset>
  );
}

function OrderAnswer(props: QuestionViewProps<OrderQuestion>) {
  const place = (i: number) => props.answer.indexOf(letterOfPlace(i));
  const take = (i: number) =>
    props.onAnswer(
      place(i) < 0 ? props.answer + letterOfPlace(i) : props.answer.replace(letterOfPlace(i), ''),
    );
  return (
    <fieldset class="options" aria-describedby={`${props.id}-prompt ${props.problem ?? ''}`.trim()}>
      <legend>Press the steps in order; press one again to take it back.</legend>
      <For each={props.question.items}>
        {(item, i) => (
          <button
            type="button"
            class="step"
            id={i() === 0 ? props.id : undefined}
            disabled={props.done}
            aria-pressed={place(i()) >= 0}
            onClick={() => take(i())}
          >
            <b>{letterOfPlace(i())}</b> <span>{item}</span>
            <span class="place">{place(i()) < 0 ? '' : place(i()) + 1}</span>
          </button>
        )}
      </For>
      <p role="status" class="so-far">
        {props.answer === '' ? 'No step chosen yet.' : `So far: ${[...props.answer].join(' ')}`}
      </p>
    </fieldset>
  );
}
