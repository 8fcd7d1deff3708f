// A hydrometer in its jar: the stem is drawn with the meniscus, the reader types what it shows and what that is at 20 °C.
import { createSignal, For, onMount, Show } from 'solid-js';
import { formatNumber as n, rangeProblem } from '../core/format.ts';
import { readAtOnce } from '../core/reading/at-once.ts';
import type { Jar, Stem } from './shift-post.ts';

const MARK = 13; // drawing units of one mark
const SURFACE = 100; // where the level surface is drawn
const MARKS = 7.5; // marks drawn above and below it

export function ShiftReading(props: {
  readonly jar: Jar;
  readonly stem: Stem;
  readonly write: (read: number, corrected: number) => void;
  readonly leave: () => void;
}) {
  const [problem, setProblem] = createSignal('');
  let read: HTMLInputElement | undefined;
  let at20: HTMLInputElement | undefined;
  onMount(() => read?.focus());
  const stem = () => props.stem;
  const isLong = () => stem().kind === 'gravity'; // its printed figures need more of the stem
  /** What is read, in marks. */
  const stands = () => props.jar.stands / stem().mark;
  const named = (mark: number) => n(mark * stem().mark, stem().kind === 'gravity' ? stem().digits - 1 : 0);
  /** The marks that are drawn, and where each stands on the stem: spirit’s stronger marks are higher, wort’s denser ones lower. */
  const marks = () => {
    const up = stem().isDenserMore ? -1 : 1;
    const [low, high] = stem().limits.map((limit) => limit / stem().mark);
    return Array.from({ length: 2 * MARKS + 1 }, (_, i) => Math.ceil(stands() - MARKS) + i)
      .filter((mark) => mark >= low! - 1e-9 && mark <= high! + 1e-9)
      .map((mark) => ({ mark, y: SURFACE - up * (mark - stands()) * MARK }));
  };
  const inWords = () => {
    const halves = Math.round(stands() * 2);
    const below = Math.floor(halves / 2 / stem().printed) * stem().printed;
    const over = halves - 2 * below;
    return `Seen under the meniscus, the surface is ${Math.floor(over / 2)}${over % 2 === 1 ? ' and a half' : ''} marks of ${stem().mark} above ${named(below)}${stem().unit}. The sample is at ${n(props.jar.temperature, 1)} °C.`;
  };
  /** The table that goes with the glass: readings round this one, at the sample’s temperature. */
  const rows = () => {
    const { row, limits: [low, high] } = stem();
    const last = Math.floor(high / row + 1e-9) - 3;
    const first = Math.min(last, Math.max(Math.ceil(low / row - 1e-9), Math.floor(props.jar.stands / row + 1e-9) - 1));
    return [0, 1, 2, 3].map((i) => {
      const shown = (first + i) * row;
      return { shown: n(shown, stem().kind === 'gravity' ? stem().digits - 1 : 0), at20: props.jar.at20(shown) };
    });
  };
  const figure = (input: HTMLInputElement | undefined, label: string) => {
    const text = input?.value ?? '';
    const value = readAtOnce(text.replace(',', '.'), { kind: stem().kind })?.value;
    return value !== undefined && value >= stem().limits[0] && value <= stem().limits[1] ? value : rangeProblem(label, text, stem().kind, stem().limits); // prettier-ignore
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
              <path class="wall" d={`M36 ${y} h${mark % stem().printed === 0 ? (isLong() ? 16 : 22) : 12}`} />
              <Show when={mark % stem().printed === 0}>
                <text x={isLong() ? 54 : 61} y={y + 5} style={isLong() ? { 'font-size': '11px' } : {}}>
                  {named(mark)}
                </text>
              </Show>
            </>
          )}
        </For>
        <path class="surface-line" d={`M16 ${SURFACE} H104`} />
      </svg>
      <div>
        <p>
          Sample at <b>{n(props.jar.temperature, 1)} °C</b>. Read under the meniscus; each mark is {stem().mark}.
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
                  <td class="number">{n(at20, stem().digits)}</td>
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
