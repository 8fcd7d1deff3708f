// A week, or a day of it, as strips: one for each vessel, one for each receiver, and one each for steam and water.
import { createMemo, For, Index, Show } from 'solid-js';
import {
  vesselDoings,
  vesselStretches,
  vesselsOf,
  type Doing,
  type Stretch,
} from '../core/week/vessels-at-hour.ts';
import { dayNames } from '../core/week/clock.ts';
import type { Timetable } from '../core/week/timetable.ts';

/** A quantity over the week: points from Monday's midnight to Sunday's. */
export interface WeekCurve {
  readonly name: string;
  readonly says: string;
  readonly points: readonly (readonly [hour: number, value: number])[];
  /** What it must not pass. */
  readonly limit?: number;
}
export interface WeekStripsProps {
  readonly week: Timetable;
  readonly curves: readonly WeekCurve[];
  /** The day that is shown, from 0; all of the week when left out. */
  readonly day?: number | undefined;
}

const WIDE = 1680; // the side of a strip along the hours, and stretched with it
const HIGH = 100;
const part = (share: number) => `${(100 * share).toFixed(3)}%`;

export function WeekStrips(props: WeekStripsProps) {
  const from = () => (props.day === undefined ? 0 : 24 * props.day);
  const long = () => (props.day === undefined ? 168 : 24);
  const place = (hour: number) => (hour - from()) / long();
  const all = createMemo(() => vesselStretches(props.week));
  const shown = (vessel: string, which: number) =>
    all().filter(
      (each) => each.vessel === vessel && each.which === which && each.end > from() && each.start < from() + long(),
    );
  const rect = ({ start, end }: Stretch) => {
    const [left, right] = [Math.max(0, place(start)), Math.min(1, place(end))];
    return { x: part(left), width: part(right - left) };
  };
  /** Hours at which a line is drawn: midnights, or every six hours of a day. */
  const lines = () => Array.from({ length: long() / (props.day === undefined ? 24 : 6) - 1 }, (_, i) => (i + 1) * (props.day === undefined ? 24 : 6) / long()); // prettier-ignore
  const heads = () => (props.day === undefined ? dayNames.map((day) => day.slice(0, 2)) : ['00', '06', '12', '18']);
  const vessels = createMemo(() => vesselsOf(props.week));
  const number = (vessel: string) => vessels().filter((each) => each.vessel === vessel).length;
  const Lines = () => (
    <For each={lines()}>{(at) => <line class="day" x1={part(at)} x2={part(at)} y2="100%" />}</For>
  );
  return (
    <div class="strips">
      <svg width="0" height="0" aria-hidden="true" class="patterns">
        <defs>
          <pattern id="week-ferment" width="5" height="5" patternUnits="userSpaceOnUse">
            <rect class="ground" width="5" height="5" />
            <circle cx="2.5" cy="2.5" r="1.1" />
          </pattern>
          <pattern id="week-fill" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <rect class="ground" width="5" height="5" />
            <rect width="2" height="5" />
          </pattern>
          <pattern id="week-wait" width="5" height="5" patternUnits="userSpaceOnUse">
            <rect class="ground" width="5" height="5" />
            <rect width="5" height="1.5" />
          </pattern>
          <pattern id="week-clean" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
            <rect width="1" height="6" />
          </pattern>
        </defs>
      </svg>
      <div class="strip-head" aria-hidden="true">
        <span />
        <div class="heads">
          <Index each={heads()}>{(head) => <span>{head()}</span>}</Index>
        </div>
      </div>
      <div
        role="img"
        aria-label={`What each vessel does ${props.day === undefined ? 'through the week' : `on ${dayNames[props.day]}`}; the table below says the same in words`}
      >
        <Index each={vessels()}>
          {(one) => (
            <div class="strip">
              <span class="strip-name">{number(one().vessel) > 1 ? `${one().vessel} ${one().which}` : one().vessel}</span>
              <svg class="band" width="100%" height="100%">
                <Index each={shown(one().vessel, one().which)}>
                  {(stretch) => (
                    <rect class={`doing ${stretch().doing}`} y="12%" height="76%" x={rect(stretch()).x} width={rect(stretch()).width} />
                  )}
                </Index>
                <Lines />
              </svg>
            </div>
          )}
        </Index>
      </div>
      <ul class="strip-key" aria-label="What the patterns mean">
        <For each={Object.entries(vesselDoings) as [Doing, string][]}>
          {([doing, name]) => (
            <li>
              <svg width="28" height="14" aria-hidden="true">
                <rect class={`doing ${doing}`} width="28" height="14" />
              </svg>{' '}
              {name}
            </li>
          )}
        </For>
        <li>blank: at rest</li>
      </ul>
      <Index each={props.curves}>
        {(curve) => {
          const top = () => Math.max(curve().limit ?? 0, ...curve().points.map(([, value]) => value)) || 1;
          const line = () =>
            curve().points
              .map(([hour, value]) => `${(place(hour) * WIDE).toFixed(1)},${(HIGH - (value / top()) * (HIGH - 4) - 2).toFixed(1)}`)
              .join(' ');
          return (
            <div class="strip tall" role="img" aria-label={`${curve().name}: ${curve().says}`}>
              <span class="strip-name">
                {curve().name} <small>{curve().says}</small>
              </span>
              <div class="band">
                <svg viewBox={`0 0 ${WIDE} ${HIGH}`} preserveAspectRatio="none" width="100%" height="100%">
                  <Show when={curve().limit}>
                    <line class="limit" x2={WIDE} y1="2" y2="2" />
                  </Show>
                  <polyline class="curve" points={line()} />
                </svg>
                <svg width="100%" height="100%" class="over">
                  <Lines />
                </svg>
              </div>
            </div>
          );
        }}
      </Index>
    </div>
  );
} // prettier-ignore
