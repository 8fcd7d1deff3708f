// What is mastered, day by day: right once, and reached, on a scale that grows with it.
import { For, Show } from 'solid-js';
import { formatCount } from '../core/format.ts';
import { topOfScale } from '../path/standing-of.ts';
import { dateInWords } from './today.ts';

const MOST = 10; // days shown, the last ones
const [WIDE, HIGH, LEFT, FOOT] = [30, 100, 24, 112] as const; // of a day's place, of the whole scale, of its figures, and where it stands

export interface RiseDay {
  readonly day: string;
  readonly once: number;
  readonly reached: number;
}

export function PathRise(props: {
  readonly days: readonly RiseDay[];
  readonly of: number;
  /** Right answers in all, also to what no stage asks. */
  readonly right: number;
}) {
  const shown = () => props.days.slice(-MOST);
  const last = () => shown().at(-1)!;
  const top = () => topOfScale(last().once, props.of);
  const high = (count: number) => (HIGH * count) / top();
  const more = () => last().once - (shown().at(-2)?.once ?? 0);
  return (
    <Show
      when={shown().length > 0}
      fallback={<p>Nothing is answered yet: the picture begins with the first right answer.</p>}
    >
      <figure class="path-rise">
        <svg
          viewBox={`0 0 ${LEFT + MOST * WIDE} ${FOOT + 2}`}
          role="img"
          aria-label={`Of ${props.of} kinds of question, ${last().once} were right once and ${last().reached} reached the standard by ${dateInWords(last().day)}. The scale ends at ${top()}.`}
        >
          <For each={[0, 0.5, 1]}>
            {(part) => (
              <>
                <line x1={LEFT} x2={LEFT + MOST * WIDE} y1={FOOT - part * HIGH} y2={FOOT - part * HIGH} />
                <text x={LEFT - 4} y={FOOT - part * HIGH + 4} text-anchor="end">
                  {Math.round(part * top())}
                </text>
              </>
            )}
          </For>
          <For each={shown()}>
            {({ once, reached }, i) => (
              <For each={[['once', once] as const, ['reached', reached] as const]}>
                {([name, count]) => (
                  <rect
                    class={name}
                    x={LEFT + i() * WIDE + 4}
                    width={WIDE - 8}
                    y={FOOT - high(count)}
                    height={high(count)}
                  />
                )}
              </For>
            )}
          </For>
        </svg>
        <figcaption>
          A bar for each day on which you practised. Its whole height: kinds right once, {last().once} of{' '}
          {props.of}
          <Show when={more() > 0}>, {more()} more than before that day</Show>
          <Show when={more() < 0}>
            , {-more()} fewer than before that day: a kind that is missed before it is reached is due again,
            and begins anew
          </Show>
          . Its lower part: reached, {last().reached}. The scale grows with you: it ends at {top()} now.{' '}
          {formatCount(props.right, 'right answer')} in all.
        </figcaption>
      </figure>
    </Show>
  );
}
