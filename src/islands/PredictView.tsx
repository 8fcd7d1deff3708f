// A guess, then the move by the house’s own figures, then both beside each other and why.
import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import { readQuantity } from '../core/reading/quantity.ts';
import { sources } from '../core/sources.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { useHouse } from '../browser/house-store.ts';
import type { Predict } from '../predict/define.ts';
import { isRight, outcomeOf, type Guess } from '../predict/judge.ts';
import { directionChoices, guessText, outcomeText, amountInWords, unitOfGuess } from '../predict/words.ts';
import { announce } from './announce.ts';
import { keepGuess, keptGuesses } from './guesses-kept.ts';
import { PredictCurve } from './PredictCurve.tsx';
import { today } from './today.ts';

const FINE = 100; // steps of a slide from one end to the other

export function PredictView(props: { readonly of: Predict }) {
  const predict = props.of; // an island never changes its props
  const { moves, gives } = predict;
  const id = `guess-${predict.id}`;
  const { house, name } = useHouse();
  /** The house that is reckoned with: the reader’s, or the built-in one where theirs has no answer. */
  const own = createMemo(() => outcomeOf(predict, house()));
  const outcome = () => own() ?? outcomeOf(predict, builtInHouse)!;
  const inHouse = () => (own() ? house() : builtInHouse);

  const [guess, setGuess] = createSignal<Guess | undefined>(keptGuesses()[predict.id]?.guess);
  const [chosen, setChosen] = createSignal<Guess>();
  const [typed, setTyped] = createSignal('');
  const [problem, setProblem] = createSignal('');
  const [slide, setSlide] = createSignal(FINE);
  let seen: HTMLDivElement | undefined;

  const along = (step: number) => outcome().from + ((outcome().to - outcome().from) * step) / FINE;
  const at = () => along(slide());
  const value = createMemo(() => {
    try {
      return gives.of(inHouse(), at());
    } catch {
      return undefined; // between the ends there may be no such house
    }
  });
  const right = () => isRight(predict, outcome(), guess()!);
  const verdict = () => {
    if (right()) return predict.way === 'direction' ? 'As you guessed.' : 'Near enough.';
    return 'Not as you guessed.';
  };

  /** What was chosen or typed, as a guess; otherwise the sentence that asks for one. */
  function read(): Guess | undefined {
    if (predict.way !== 'number') return chosen();
    const answer = readQuantity(typed(), { kind: gives.kind, label: gives.label });
    if (isRefusal(answer)) return void setProblem(answer.refused);
    return answer.as === 'range' ? (answer.low + answer.high) / 2 : answer.value;
  }
  function commit(event: Event): void {
    event.preventDefault();
    setProblem('');
    const given = read();
    if (given === undefined) {
      if (problem() === '') setProblem('Choose one first: a wrong guess costs nothing.');
      return;
    }
    setGuess(given);
    setSlide(FINE);
    keepGuess(predict.id, { guess: given, right: right(), day: today() });
    announce(id, () => `${verdict()} ${outcomeText(predict, outcome())} ${predict.why}`);
    queueMicrotask(() => seen?.focus());
  }

  return (
    <div class="predict-in">
      <p class="predict-asks">{predict.asks}</p>
      <Show
        when={guess() !== undefined}
        fallback={
          <form autocomplete="off" onSubmit={commit}>
            <Switch>
              <Match when={predict.way === 'direction'}>
                <fieldset class="options">
                  <legend>Your guess</legend>
                  <For each={directionChoices(predict)}>
                    {([way, word]) => (
                      <label class="tick">
                        <input
                          type="radio"
                          name={id}
                          checked={chosen() === way}
                          onChange={() => setChosen(way)}
                        />
                        <span>{word}</span>
                      </label>
                    )}
                  </For>
                </fieldset>
              </Match>
              <Match when={predict.way === 'number'}>
                <Show when={predict.way === 'number' && predict.tells}>
                  <p class="small">
                    {moves.label}: from {amountInWords(moves, outcome().from)} to{' '}
                    {amountInWords(moves, outcome().to)}.
                  </p>
                </Show>
                <div class="field">
                  <label for={`${id}-number`}>
                    Your guess{unitOfGuess(gives) && `, in ${unitOfGuess(gives)}`}
                  </label>
                  <input
                    id={`${id}-number`}
                    class="words"
                    type="text"
                    maxlength="60"
                    aria-describedby={`${id}-problem`}
                    value={typed()}
                    onInput={(event) => setTyped(event.currentTarget.value)}
                  />
                </div>
              </Match>
              <Match when={predict.way === 'place'}>
                <div class="predict-slide">
                  <label for={`${id}-place`}>Your guess: {moves.label.toLowerCase()}</label>
                  <input
                    id={`${id}-place`}
                    type="range"
                    min="0"
                    max={FINE}
                    value="0"
                    aria-valuetext={amountInWords(moves, (chosen() as number | undefined) ?? along(0))}
                    onInput={(event) => setChosen(along(event.currentTarget.valueAsNumber))}
                  />
                  <output>
                    {chosen() === undefined ? 'move it' : amountInWords(moves, chosen() as number)}
                  </output>
                </div>
              </Match>
            </Switch>
            <p class="problem" id={`${id}-problem`} role="status">
              {problem()}
            </p>
            <p class="actions">
              <button type="submit">That is my guess</button>
            </p>
          </form>
        }
      >
        <div class="predict-seen" data-right={right() ? '' : undefined} tabindex="-1" ref={seen}>
          <dl>
            <dt>You guessed</dt>
            <dd>{guessText(predict, guess()!)}</dd>
            <dt>It is</dt>
            <dd>
              <b>{guessText(predict, outcome().answer)}</b>
            </dd>
          </dl>
          <p>
            <b>{verdict()}</b>{' '}
            <Show when={predict.way === 'direction'}>{outcomeText(predict, outcome())}</Show> {predict.why}
          </p>
          <div class="predict-slide">
            <label for={`${id}-move`}>Move it yourself: {moves.label.toLowerCase()}</label>
            <input
              id={`${id}-move`}
              type="range"
              min="0"
              max={FINE}
              value={slide()}
              aria-valuetext={amountInWords(moves, at())}
              onInput={(event) => setSlide(event.currentTarget.valueAsNumber)}
            />
            <output>
              {amountInWords(moves, at())}: {gives.label.toLowerCase()}{' '}
              <b>{value() === undefined ? 'cannot be' : amountInWords(gives, value()!)}</b>
            </output>
          </div>
          <PredictCurve
            of={predict}
            house={inHouse()}
            outcome={outcome()}
            at={at()}
            value={value()}
            guess={guess()!}
          />
          <p class="small">
            <Show
              when={own()}
              fallback={`With your figures there is no answer, so these are ${builtInName}’s. `}
            >
              By the figures of {name()}.{' '}
            </Show>
            Source: {predict.sources.map((each) => sources[each].short).join('; ')}.
          </p>
          <p class="actions">
            <button
              type="button"
              onClick={() => {
                setGuess(undefined);
                setChosen(undefined);
                setTyped('');
                queueMicrotask(() => document.getElementById(id)?.querySelector('input')?.focus());
              }}
            >
              Guess again
            </button>
          </p>
        </div>
      </Show>
    </div>
  );
}
