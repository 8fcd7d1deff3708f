// How a case came out: points, the cause with its source, what each reading said, and the line for a record.
import { For, Show } from 'solid-js';
import type { Line } from '../core/line/line.ts';
import { told, type FaultCase } from '../fault/draw.ts';
import { faultLine, linkOfFault } from '../fault/link.ts';
import { POINTS, rulesOut, type FaultMark } from '../fault/mark.ts';
import { codeOfHouse } from '../shift/link.ts';
import { today } from './today.ts';

export function FaultResult(props: {
  readonly of: FaultCase;
  readonly mark: FaultMark;
  readonly asked: readonly string[];
  readonly chosen: string;
  readonly house: string;
  readonly line: Line;
  readonly sources: Readonly<Record<string, string>>;
  readonly next: () => void;
}) {
  const { bench, cause, readings, least, seed } = props.of;
  const title = (id: string) => bench.causes.find((each) => each.id === id)!.title;
  const right = () => bench.firsts.find(({ id }) => id === cause.first)!.says;
  const out = (id: string) => rulesOut(props.of, readings.find((each) => each.id === id)!);
  const said = (id: string) => {
    const gone = out(id);
    if (gone.length === 0) return 'Fits every cause: it tells nothing here.';
    const stays = bench.causes.filter((each) => !gone.includes(each.id));
    if (stays.length === 1) return `Leaves only: ${stays[0]!.title}.`;
    return gone.length <= stays.length
      ? `Against: ${gone.map(title).join('; ')}.`
      : `For: ${stays.map((each) => each.title).join('; ')}. Against the others.`;
  };
  const others = () => props.mark.open.filter((id) => id !== cause.id);
  const code = () => codeOfHouse({ name: '', ...props.line.house });
  return (
    <div class="fault-end">
      <h3 id="fault-end" tabindex="-1">
        {props.mark.total} of 100
      </h3>
      <ul>
        <li>
          {props.mark.isCause ? `The cause is right: ${POINTS.cause}.` : 'The cause is another.'} {cause.title}. {cause.why}{' '}
          <span class="small">({props.sources[cause.rests]})</span>
        </li>
        <li>
          {props.mark.isFirst ? `First, what comes first: ${POINTS.first}.` : `First comes: ${right()}.`}{' '}
          <Show when={props.mark.harm}>
            <strong>{`${props.mark.harm} ${POINTS.harm} points off.`}</strong>
          </Show>
        </li>
        <li>
          {`${props.mark.spent} minutes; ${props.mark.least} would have decided it`}
          {least.length > 0 ? ` (${least.map(({ asks }) => asks.toLowerCase()).join('; ')}). ` : '. '}
          {others().length > 0
            ? `What you asked for leaves open: ${others().map(title).join('; ')}. A lucky guess earns nothing for being cheap.`
            : `What you asked for decides it: up to ${POINTS.cost} points, in the part that the least is of yours.`}
        </li>
      </ul>
      <h3>What each reading said</h3>
      <div class="table" tabindex="0" role="group" aria-label="What each reading said">
        <table>
          <thead>
            <tr>
              <th scope="col">Reading</th>
              <th scope="col">Found</th>
              <th scope="col">Usual</th>
              <th scope="col">For and against</th>
            </tr>
          </thead>
          <tbody>
            <For each={readings}>
              {(each) => (
                <tr>
                  <th scope="row">
                    {each.asks}
                    {each.minutes > 0 && !props.asked.includes(each.id) ? ' (not asked)' : ''}
                  </th>
                  <td>{told(each, each.shown)}</td>
                  <td>{told(each, each.usual)}</td>
                  <td>{said(each.id)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <h3>For the record</h3>
      <p>
        <output class="result-line">{faultLine(seed, code(), props.mark, today())}</output>
      </p>
      <p class="meaning">
        {props.house}. Anybody can type such a line, so it proves nothing alone. It is practice and no leave to do the work.{' '}
        <a href={linkOfFault(seed)}>Link to this case</a>: with the same house it is the same for everybody.
      </p>
      <p class="actions">
        <button type="button" id="fault-next" onClick={() => props.next()}>
          Next case
        </button>
      </p>
    </div>
  );
} // prettier-ignore
