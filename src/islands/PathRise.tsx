// What is mastered, day by day: right once, and reached.
import { For, Show } from 'solid-js';
import { inWords } from './today.ts';

const MOST = 10; // days shown, the last ones

export interface RiseDay {
  readonly day: string;
  readonly once: number;
  readonly reached: number;
}

export function PathRise(props: { readonly days: readonly RiseDay[]; readonly of: number }) {
  const shown = () => props.days.slice(-MOST);
  const high = (count: number) => (100 * count) / props.of;
  const last = () => shown().at(-1)!;
  return (
    <Show
      when={shown().length > 0}
      fallback={<p>Nothing is answered yet: the picture begins with the first right answer.</p>}
    >
      <figure class="path-rise">
        <svg
          viewBox={`0 0 ${MOST * 30} 104`}
          role="img"
          aria-label={`Of ${props.of} kinds of question, ${last().once} were right once and ${last().reached} reached the standard by ${inWords(last().day)}.`}
        >
          <line x1="0" x2={MOST * 30} y1="102" y2="102" />
          <For each={shown()}>
            {({ once, reached }, i) => (
              <>
                <rect class="once" x={i() * 30 + 4} width="22" y={102 - high(once)} height={high(once)} />
                <rect
                  class="reached"
                  x={i() * 30 + 4}
                  width="22"
                  y={102 - high(reached)}
                  height={high(reached)}
                />
              </>
            )}
          </For>
        </svg>
        <figcaption>
          A bar for each day on which you practised. Its whole height: right once, {last().once} of {props.of}
          . Its lower part: reached, {last().reached}.
        </figcaption>
      </figure>
    </Show>
  );
}
