// The move as a small curve: where the hand is, and where a place was guessed and is.
import { createMemo, Show } from 'solid-js';
import type { House } from '../core/line/house.ts';
import type { Predict } from '../predict/define.ts';
import { curveOf, type Guess, type GuessOutcome } from '../predict/judge.ts';
import { amountInWords } from '../predict/words.ts';

const [WIDE, HIGH, EDGE] = [320, 110, 8]; // of the picture, in its own units

export function PredictCurve(props: {
  readonly of: Predict;
  readonly house: House;
  readonly outcome: GuessOutcome;
  readonly at: number;
  readonly value: number | undefined;
  readonly guess: Guess;
}) {
  const curve = createMemo(() => curveOf(props.of, props.house, props.outcome));
  const ends = createMemo(() => {
    const values = curve().map(([, value]) => value);
    const [least, high] = [Math.min(...values), Math.max(...values)];
    const low = least > 0 && least < 0.5 * high ? 0 : least; // what falls to a part of itself is drawn over nothing
    // What hardly moves is drawn as hardly moving, and not blown up to the whole height.
    const room = Math.max(high - low, 0.05 * Math.max(Math.abs(low), Math.abs(high)), 1e-9);
    const middle = (low + high) / 2;
    return { low: middle - room / 2, room };
  });
  const x = (at: number) => {
    const { from, to } = props.outcome;
    return EDGE + ((WIDE - 2 * EDGE) * (at - from)) / (to - from);
  };
  const y = (value: number) => HIGH - EDGE - ((HIGH - 2 * EDGE) * (value - ends().low)) / ends().room;
  const line = () =>
    curve()
      .map(([at, value]) => `${x(at).toFixed(1)},${y(value).toFixed(1)}`)
      .join(' ');
  const { moves, gives } = props.of;
  const says = () =>
    `${gives.label} along ${moves.label.toLowerCase()}, from ${amountInWords(moves, props.outcome.from)} to ${amountInWords(moves, props.outcome.to)}.`;
  return (
    <figure class="predict-curve">
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} role="img" aria-label={says()}>
        <line class="foot-line" x1={EDGE} x2={WIDE - EDGE} y1={HIGH - 2} y2={HIGH - 2} />
        <polyline points={line()} />
        <Show when={props.of.way === 'place'}>
          <line
            class="guessed"
            x1={x(props.guess as number)}
            x2={x(props.guess as number)}
            y1={0}
            y2={HIGH}
          />
          <line
            class="is-place"
            x1={x(props.outcome.answer as number)}
            x2={x(props.outcome.answer as number)}
            y1={0}
            y2={HIGH}
          />
        </Show>
        <Show when={props.value !== undefined}>
          <circle cx={x(props.at)} cy={y(props.value!)} r="5" />
        </Show>
      </svg>
      <figcaption class="small">
        <span>{amountInWords(moves, props.outcome.from)}</span>
        <Show when={props.of.way === 'place'}>
          <span>dashed: your guess</span>
        </Show>
        <span>{amountInWords(moves, props.outcome.to)}</span>
      </figcaption>
    </figure>
  );
}
