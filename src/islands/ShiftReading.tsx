// A hydrometer in its jar: the stem is drawn with the meniscus, the reader types what it shows and what that is at 20 °C.
import { createSignal, For, onMount, Show } from 'solid-js';
import { formatNumber as n, rangeProblem } from '../core/format.ts';
import { celsius, strength } from '../core/quantity.ts';
import { readAtOnce } from '../core/reading/at-once.ts';
import { corrected, type Sample } from '../core/shift/samples.ts';

const MARK = 13; // drawing units of one mark of 0.2 % vol
const SURFACE = 100; // where the level surface is drawn
const SPAN = 1.5; // % vol drawn above and below it

const LIMITS = [0, 100] as const;

export function ShiftReading(props: {
  readonly sample: Sample;
  readonly write: (read: number, corrected: number) => void;
  readonly leave: () => void;
}) {
  const [problem, setProblem] = createSignal('');
  let read: HTMLInputElement | undefined;
  let at20: HTMLInputElement | undefined;
  onMount(() => read?.focus());
  const stands = () => props.sample.stands;
  /** Marks of 0.2 from the least to the greatest that is drawn, and where each stands: stronger marks are higher on the stem. */
  const marks = () => {
    const least = Math.ceil((stands() - SPAN) / 0.2);
    return Array.from({ length: Math.floor((2 * SPAN) / 0.2) + 1 }, (_, i) => least + i)
      .filter((mark) => mark >= 0 && mark <= 500)
      .map((mark) => ({ mark, y: SURFACE - (mark * 0.2 - stands()) * (MARK / 0.2) }));
  };
  const inWords = () => {
    const tenths = Math.round(stands() * 10);
    const [whole, over] = [Math.floor(tenths / 10), tenths % 10];
    const half = over % 2 === 1 ? ' and a half' : '';
    return `Seen under the meniscus, the surface is ${Math.floor(over / 2)}${half} marks of 0.2 above ${whole} % vol. The sample is at ${n(props.sample.temperature, 1)} °C.`;
  };
  /** The table that goes with the glass: whole readings round this one, at the sample’s temperature. */
  const rows = () => {
    const first = Math.min(97, Math.max(0, Math.floor(stands()) - 1));
    return [0, 1, 2, 3].map((i) => {
      const shown = first + i;
      return { shown, at20: corrected(strength(shown), celsius(props.sample.temperature)) };
    });
  };
  const figure = (input: HTMLInputElement | undefined, label: string) => {
    const text = input?.value ?? '';
    const value = readAtOnce(text.replace(',', '.'), { kind: 'strength' })?.value;
    return value !== undefined && value >= LIMITS[0] && value <= LIMITS[1] ? value : rangeProblem(label, text, 'strength', LIMITS); // prettier-ignore
  };
  const write = () => {
    const shown = figure(read, 'What the glass shows');
    const made = figure(at20, 'At 20 °C');
    if (typeof shown === 'string' || typeof made === 'string') {
      setProblem([shown, made].filter((each) => typeof each === 'string').join(' '));
      (typeof shown === 'string' ? read : at20)?.focus();
    } else props.write(shown, made);
  };
  return (
    <form
      class="shift-reading"
      aria-label="Hydrometer"
      autocomplete="off"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === 'Escape') props.leave();
      }}
    >
      <svg class="drawing" viewBox="0 0 120 200" role="img" aria-label={inWords()}>
        <rect class="liquid" x="2" y={SURFACE} width="116" height="98" />
        <path class="wall" d="M2 10 V198 M118 10 V198" />
        <path class="liquid surface" d={`M2 ${SURFACE - 6} Q8 ${SURFACE} 16 ${SURFACE} H26 Q32 ${SURFACE} 36 ${SURFACE - 9} V${SURFACE} H84 V${SURFACE - 9} Q88 ${SURFACE} 94 ${SURFACE} H104 Q112 ${SURFACE} 118 ${SURFACE - 6}`} />
        <path class="wall" d="M36 4 V198 M84 4 V198" />
        <For each={marks()}>
          {({ mark, y }) => (
            <>
              <path class="wall" d={`M36 ${y} h${mark % 5 === 0 ? 22 : 12}`} />
              <Show when={mark % 5 === 0}>
                <text x="61" y={y + 5}>
                  {mark / 5}
                </text>
              </Show>
            </>
          )}
        </For>
        <path class="surface-line" d={`M16 ${SURFACE} H104`} />
      </svg>
      <div>
        <p>
          Sample at <b>{n(props.sample.temperature, 1)} °C</b>. Read under the meniscus; each mark is 0.2.
        </p>
        <table>
          <thead>
            <tr>
              <th scope="col">Glass shows</th>
              <th scope="col">at 20 °C</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {({ shown, at20 }) => (
                <tr>
                  <th scope="row">{shown}</th>
                  <td class="number">{n(at20, 1)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <div class="two">
          <label for="shift-read">Glass shows</label>
          <input id="shift-read" type="text" inputmode="decimal" ref={read} aria-describedby="shift-read-problem" />
          <label for="shift-at20">At 20 °C</label>
          <input id="shift-at20" type="text" inputmode="decimal" ref={at20} aria-describedby="shift-read-problem" />
        </div>
        <p class="problem" id="shift-read-problem" role="alert">
          {problem()}
        </p>
        <p class="actions">
          <button type="submit">Write it down</button>
          <button type="button" onClick={() => props.leave()}>
            Leave it
          </button>
        </p>
      </div>
    </form>
  );
} // prettier-ignore
