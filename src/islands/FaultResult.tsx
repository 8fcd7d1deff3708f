// How a case came out: points, the cause with its source, what each reading said, and the line for a record.
import { createSignal, For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { readingInWords, valueInWords, type FaultCase } from '../fault/draw.ts';
import { faultLine, linkOfFault, LONGEST_NAME_ON_RESULT } from '../fault/link.ts';
import { readingsNeeded, FAULT_POINTS, rulesOut, type FaultMark } from '../fault/mark.ts';
import { minutes } from '../fault/minutes.ts';
import { today } from './today.ts';

export function FaultResult(props: {
  readonly of: FaultCase;
  readonly mark: FaultMark;
  readonly asked: readonly string[];
  readonly chosenCause: string;
  /** True where the answer to this case was shown before. */
  readonly isAgain: boolean;
  readonly house: string;
  /** Of the house that the case was drawn in. */
  readonly code: string;
  readonly sources: Readonly<Record<string, string>>;
  /** The trainee's name, for the line of the result. */
  readonly whose: string;
  readonly setWhose: (name: string) => void;
  readonly next: () => void;
}) {
  const { bench, cause, readings, seed } = props.of;
  const title = (id: string) => bench.causes.find((each) => each.id === id)!.title;
  const right = () => bench.firsts.find(({ id }) => id === cause.first)!.says;
  const out = (id: string) => rulesOut(props.of, readings.find((each) => each.id === id)!);
  const said = (id: string) => (cause.confirms.includes(id) ? `It confirms the fault. ${rules(id)}` : rules(id));
  const rules = (id: string) => {
    const gone = out(id);
    if (gone.length === 0) return 'Fits every cause: it tells nothing here.';
    const stays = bench.causes.filter((each) => !gone.includes(each.id));
    if (stays.length === 1) return `Leaves only: ${stays[0]!.title}.`;
    return gone.length <= stays.length
      ? `Against: ${gone.map(title).join('; ')}.`
      : `For: ${stays.map((each) => each.title).join('; ')}. Against the others.`;
  };
  const scores = () => props.mark.bears && !props.mark.harm;
  const worth = (points: number) => (scores() ? `: ${points}` : '');
  /** 20 points × 3 minutes needed ÷ 8 minutes you asked for = 7.5. */
  const costWords = () =>
    props.mark.spent <= props.mark.least
      ? `${FAULT_POINTS.cost} points, as you asked for no more than needed.`
      : `${FAULT_POINTS.cost} points × ${minutes(props.mark.least)} needed ÷ ${minutes(props.mark.spent)} you asked for = ${formatNumber(props.mark.cost, 1)}.`;
  const lower = (order: string) => order[0]!.toLowerCase() + order.slice(1);
  const needed = () => readingsNeeded(props.of, props.asked).map(({ asks }) => lower(asks));
  const others = () => props.mark.open.filter((id) => id !== cause.id);
  const [copied, setCopied] = createSignal('');
  const resultLine = () => faultLine(props.whose, seed, props.code, { ...props.mark, named: title(props.chosenCause), isAgain: props.isAgain }, today()); // prettier-ignore;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(resultLine());
      setCopied('The line is copied. Send it to your trainer.');
    } catch {
      setCopied('Copy the line by hand, and send it to your trainer.');
    }
  };
  return (
    <div class="fault-end">
      <h3 id="fault-end" tabindex="-1">
        {props.mark.total} of 100{props.isAgain ? ', not the first go' : ''}
      </h3>
      <Show when={props.isAgain}>
        <p>The answer to this case was shown in this browser before. The line for the record says so.</p>
      </Show>
      <ul>
        <Show when={props.mark.harm}>
          <li>
            <strong>{props.mark.harm}</strong> A dangerous act first scores nothing.
          </li>
        </Show>
        <Show when={!props.mark.bears}>
          <li>
            {props.mark.isAgainst
              ? `“${title(props.chosenCause)}”: your reading spoke against it. Of the causes still open it ruled out none, so it scores nothing.`
              : 'No reading was asked for that bears on it. A guess scores nothing.'}
          </li>
        </Show>
        <li>
          {props.mark.isCause ? `The cause is right${worth(FAULT_POINTS.cause)}.` : 'The cause is another.'} {cause.title}. {cause.why}{' '}
          <span class="small">({props.sources[cause.rests]})</span>
        </li>
        <Show when={scores() && !props.mark.isCause}>
          <li>
            {`Your readings had ruled out ${props.mark.gone} of the ${props.mark.others} other causes. `}
            {props.mark.ruledOut > 0 || props.mark.open.includes(props.chosenCause)
              ? `Yours was still open to them: ${props.mark.ruledOut} of ${FAULT_POINTS.ruledOut} points.`
              : 'Yours was among those, so that earns nothing.'}
          </li>
        </Show>
        <li>
          {props.mark.isFirst ? `What comes first was done first${worth(FAULT_POINTS.first)}.` : `First comes: ${right()}.`}
        </li>
        <li>
          {`${minutes(props.mark.spent)} asked for; ${minutes(props.mark.least)} needed (${needed().join('; ')}). `}
          {others().length > 0
            ? `${props.mark.spent > 0 ? 'What you asked for' : 'What everybody sees'} leaves open: ${others().map(title).join('; ')}.${props.mark.isCause && scores() ? ' So it earns nothing for being cheap.' : ''}`
            : props.mark.isCause && scores()
              ? `What you asked for decides it: ${costWords()}`
              : 'What you asked for decides it.'}
        </li>
      </ul>
      <h3>What each reading said</h3>
      <div class="table" tabindex="0" role="group" aria-label="What each reading said">
        <table>
          <thead>
            <tr>
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
                    {readingInWords(each)}
                    {each.minutes > 0 && !props.asked.includes(each.id) ? ' (Not asked for.)' : ''}
                  </th>
                  <td>{valueInWords(each, each.usual)}</td>
                  <td>{said(each.id)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <h3>For the record</h3>
      <div class="field">
        <label for="fault-name">Your name, if you hand it in</label>
        <input
          id="fault-name"
          class="words"
          type="text"
          maxlength={LONGEST_NAME_ON_RESULT}
          autocomplete="off"
          value={props.whose}
          onInput={({ currentTarget }) => props.setWhose(currentTarget.value)}
        />
      </div>
      <p>
        <output class="result-line">{resultLine()}</output>
      </p>
      <p class="actions">
        <button type="button" onClick={() => void copy()}>
          Copy the line
        </button>
      </p>
      <p role="status">{copied()}</p>
      <p class="meaning">
        {props.house}. Anybody can type such a line, so it proves nothing alone. The class book takes it. It is practice and no leave to do the work.{' '}
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
