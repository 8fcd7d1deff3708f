// The periods of a stillhouse: what was dipped, charged and made is put down, and the balance says what was lost and where.
import { createMemo, createSignal, For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { litres20, strength, type Spirit } from '../core/quantity.ts';
import { isRefusal } from '../core/refusal.ts';
import { balanceOf, liquids, stepNames, whereLost, type Account, type StandingLiquid, type Period, type PeriodBalance } from '../core/week/period.ts'; // prettier-ignore
import { csvOf } from '../exercises/csv.ts';
import { usePart } from '../browser/part-store.ts';
import { freshPeriod, LONGEST_PERIOD_NAME, MOST_LITRES, MOST_MALT, MOST_PERIODS, periodsPart } from '../house/parts/periods.ts'; // prettier-ignore
import { useAnnouncement } from './announce.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { focusAfter } from './focus-after.ts';
import { NumberField } from './NumberField.tsx';
import { saveFile } from './save-file.ts';
import { Troubles } from './Troubles.tsx';
import { useWayBack } from './use-way-back.tsx';

const pure = (alcohol: number) => formatNumber(alcohol, 1);
const rows = { opening: 'Opening', made: '+ made', goneOn: '− gone on', loss: '− lost', closing: '= closing' } as const; // prettier-ignore
const madeNames = {
  washCharged: 'Wash charged',
  lowWinesMade: 'Low wines made',
  spiritMade: 'Spirit made',
  spiritSent: 'Spirit sent on',
} as const;

/** First that it balances or does not, then where most was lost, then what cannot be. */
function sentencesOf(balance: PeriodBalance): readonly string[] {
  const { came, left, loss, percent } = balance;
  const lost = loss >= 0 ? `${pure(loss)} L are lost, ${formatNumber(percent, 1)} %` : `${pure(-loss)} L are too many`; // prettier-ignore
  return [
    `Of ${pure(came)} L of pure alcohol that stood there or could be made, ${pure(left)} L were sent on or stand there: ${lost}.`,
    ...(balance.problems.length > 0 ? balance.problems : [whereLost(balance)]),
  ];
}

export default function PeriodDesk() {
  let island: HTMLElement | undefined;
  const { line, house, name } = useHouseWhenIdle(() => island);
  const part = usePart(periodsPart);
  const periods = () => part.value().periods;
  const [chosen, setChosen] = createSignal<number>();
  const { say, Said, saying } = useWayBack(true);
  const at = () => Math.min(chosen() ?? Infinity, periods().length - 1);
  const period = () => periods()[at()];
  const put = (next: readonly Period[]) => part.set({ ...part.value(), periods: next })[0];
  const change = (next: Partial<Period>) =>
    put(periods().map((each, i) => (i === at() ? { ...each, ...next } : each)));
  const balance = createMemo(() => {
    const now = period();
    return now && balanceOf(now, line());
  });
  const says = (): readonly string[] => {
    const now = balance();
    if (!now) return [`${name()} has put down no period yet.`];
    return isRefusal(now) ? [now.refused] : sentencesOf(now);
  };
  useAnnouncement('period', () => says().join(' '), () => says().join(' '), () => island); // prettier-ignore

  const begin = (event: Event) => {
    const last = periods().at(-1);
    const fresh = freshPeriod(`Period ${periods().length + 1}`, house());
    put([...periods(), last ? { ...fresh, opening: last.closing } : fresh]);
    setChosen(undefined);
    focusAfter(event, () => document.getElementById('period-name'));
  };
  const remove = (event: Event) => {
    const [gone, place] = [period()!, at()];
    put(periods().filter((_, i) => i !== place));
    setChosen(undefined);
    say(`“${gone.name}” is removed.`, () => {
      if (put(periods().toSpliced(place, 0, gone)) !== undefined)
        return 'There is no room for it: remove another period first.';
      setChosen(place);
      return `“${gone.name}” is back.`;
    });
    focusAfter(event, saying);
  };
  const found = () => {
    const now = balance();
    return now && !isRefusal(now) ? now : undefined;
  };

  return (
    <section ref={island} class="calculator plant period" aria-labelledby="period-title">
      <h2 id="period-title">Does it balance?</h2>
      <Troubles />
      <div class="plant-says">
        <For each={says()}>{(sentence) => <p>{sentence}</p>}</For>
      </div>
      <Show when={period()}>
        {(now) => (
          <>
            <Show when={found()}>{(balance) => <BalanceTables of={balance()} period={now()} />}</Show>
            <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
              <Show when={periods().length > 1}>
                <ChoiceField
                  id="period-which"
                  label="Period"
                  options={Object.fromEntries(periods().map(({ name }, i) => [`p${i}`, name]))}
                  value={`p${at()}`}
                  take={(value) => void setChosen(Number(value.slice(1)))}
                />
              </Show>
              <NameField period={now()} take={(name) => change({ name })} />
              <PeriodFields period={now()} take={change} />
            </form>
          </>
        )}
      </Show>
      <p class="actions">
        <Show when={periods().length < MOST_PERIODS}>
          <button type="button" onClick={begin}>
            {periods().length > 0 ? 'Begin the next period' : 'Begin a period'}
          </button>
        </Show>{' '}
        <Show when={period()}>
          <button type="button" onClick={remove}>
            Remove this period
          </button>
        </Show>
      </p>
      <Said />
    </section>
  );
} // prettier-ignore

/** The name of a period; one that is empty or too long is not taken. */
function NameField(props: { readonly period: Period; readonly take: (name: string) => string | undefined }) {
  const [problem, setProblem] = createSignal<string>();
  return (
    <div class="field" data-state={problem() ? 'wrong' : 'ok'}>
      <label for="period-name">Name</label>
      <input
        id="period-name"
        class="words"
        type="text"
        autocomplete="off"
        maxlength={LONGEST_PERIOD_NAME}
        value={props.period.name}
        aria-invalid={problem() ? 'true' : 'false'}
        aria-describedby={problem() ? 'period-name-problem' : undefined}
        onInput={(event) => setProblem(props.take(event.currentTarget.value))}
      />
      <Show when={problem()}>
        <p class="problem" id="period-name-problem">
          {problem()}
        </p>
      </Show>
    </div>
  );
}

interface FieldsProps {
  readonly period: Period;
  readonly take: (next: Partial<Period>) => string | undefined;
}

/** Litres and strength of one liquid, a field each. */
function SpiritFields(props: {
  readonly id: string;
  readonly label: string;
  readonly spirit: Spirit;
  readonly meaning?: string;
  readonly take: (next: Spirit) => string | undefined;
}) {
  return (
    <>
      <NumberField
        id={`${props.id}-volume`}
        label={props.label}
        kind="volume20"
        range={[0, MOST_LITRES]}
        step={10}
        value={props.spirit.volume}
        meaning={props.meaning}
        take={(value) => props.take({ ...props.spirit, volume: litres20(value) })}
      />
      <NumberField
        id={`${props.id}-strength`}
        label={`${props.label}, strength`}
        kind="strength"
        range={[0, 100]}
        step={0.1}
        value={props.spirit.strength}
        take={(value) => props.take({ ...props.spirit, strength: strength(value) })}
      />
    </>
  );
}

const wash = {
  malt: ['Malt mashed', 'mass', [0, MOST_MALT], 10],
  wort: ['Wort collected', 'volume20', [0, MOST_LITRES], 10],
  originalGravity: ['Original gravity, mean', 'gravity', [1.02, 1.12], 0.001],
  finalGravity: ['Final gravity, mean', 'gravity', [0.985, 1.04], 0.001],
} as const satisfies Partial<Record<keyof Period, readonly [string, KindName, readonly [number, number], number]>>; // prettier-ignore

const short = (spirits: Readonly<Record<string, Spirit>>) =>
  Object.values(spirits)
    .map(({ volume }) => `${formatNumber(volume, 0)} L`)
    .join(', ');

/** All readings of a period, in rows to open. */
function PeriodFields(props: FieldsProps) {
  const standing = (when: 'opening' | 'closing', title: string) => (
    <details class="vessel">
      <summary>
        {title}: {short(props.period[when])}
      </summary>
      <For each={Object.keys(liquids) as StandingLiquid[]}>
        {(liquid) => (
          <SpiritFields
            id={`period-${when}-${liquid}`}
            label={`${liquids[liquid]} at the ${when}`}
            spirit={props.period[when][liquid]}
            take={(next) => props.take({ [when]: { ...props.period[when], [liquid]: next } })}
          />
        )}
      </For>
    </details>
  );
  return (
    <>
      {standing('opening', 'Stood there')}
      <details class="vessel">
        <summary>
          Mashed and fermented: {formatNumber(props.period.malt, 0)} kg, {formatNumber(props.period.wort, 0)} L
        </summary>
        <For each={Object.entries(wash)}>
          {([key, [label, kind, range, step]]) => (
            <NumberField
              id={`period-${key}`}
              label={label}
              kind={kind}
              range={range}
              step={step}
              value={props.period[key as keyof typeof wash]}
              take={(value) => props.take({ [key]: value })}
            />
          )}
        </For>
      </details>
      <details class="vessel">
        <summary>
          Charged, made, sent on:{' '}
          {short(Object.fromEntries(Object.keys(madeNames).map((key) => [key, props.period[key as keyof typeof madeNames]])))}
        </summary>
        <For each={Object.entries(madeNames)}>
          {([key, label]) => (
            <SpiritFields
              id={`period-${key}`}
              label={label}
              spirit={props.period[key as keyof typeof madeNames]}
              take={(next) => props.take({ [key]: next })}
              {...(key === 'lowWinesMade' && { meaning: '0 L where they are not measured: both stills are then one step.' })}
            />
          )}
        </For>
      </details>
      {standing('closing', 'Stands there now')}
    </>
  );
} // prettier-ignore

/** The accounts and the walk back to where it was lost; and a file of them. */
function BalanceTables(props: { readonly of: PeriodBalance; readonly period: Period }) {
  const entry = (account: Account, row: keyof typeof rows) => pure(account[row]);
  const save = () => {
    const { accounts, steps } = props.of;
    const cells = [
      ['Period', props.period.name],
      ['L of pure alcohol', ...accounts.map(({ liquid }) => liquids[liquid])],
      ...Object.entries(rows).map(([row, title]) => [title.replace(/^\W /, ''), ...accounts.map((account) => Number(account[row as keyof typeof rows].toFixed(3)))]),
      ['Step', 'Came', 'Left', 'Lost', 'Lost, %', 'The house’s own loss'],
      ...steps.map(({ step, came, left, loss, percent, usual }) => [stepNames[step], ...[came, left, loss, percent, usual].map((n) => Number(n.toFixed(3)))]),
    ];
    saveFile('period.csv', csvOf(cells), 'text/csv;charset=utf-8');
  };
  return (
    <div class="paper">
      <div class="table" tabindex="0" role="region" aria-label="The balance, litres of pure alcohol">
        <table class="series">
          <caption>{props.period.name}: litres of pure alcohol</caption>
          <thead>
            <tr>
              <td />
              <For each={props.of.accounts}>{({ liquid }) => <th scope="col" class="number">{liquids[liquid]}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={Object.entries(rows) as [keyof typeof rows, string][]}>
              {([row, title]) => (
                <tr>
                  <th scope="row">{title}</th>
                  <For each={props.of.accounts}>{(account) => <td class="number">{entry(account, row)}</td>}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <div class="table" tabindex="0" role="region" aria-label="Where it was lost, litres of pure alcohol">
        <table class="series">
          <caption>Where it was lost</caption>
          <thead>
            <tr>
              <th scope="col">Step</th>
              <th scope="col" class="number">Came</th>
              <th scope="col" class="number">Lost</th>
              <th scope="col" class="number">%</th>
              <th scope="col" class="number">House’s own</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.of.steps}>
              {(step) => (
                <tr class={step === props.of.worst ? 'worst' : undefined}>
                  <th scope="row">{stepNames[step.step]}</th>
                  <td class="number">{pure(step.came)}</td>
                  <td class="number">{pure(step.loss)}</td>
                  <td class="number">{formatNumber(step.percent, 1)}</td>
                  <td class="number">{pure(step.usual)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p class="meaning">
        Extract is counted as the alcohol it gives at the house’s final gravity. The house’s own losses are what its figures
        leave in the mash, in pot ale and in spent lees.
      </p>
      <p class="sign">Signed, with the date:</p>
      <p class="actions">
        <button type="button" onClick={save}>
          Save the balance as CSV
        </button>{' '}
        <button type="button" onClick={() => print()}>
          Print to sign
        </button>
      </p>
    </div>
  );
} // prettier-ignore
