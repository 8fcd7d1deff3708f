// Casks put together for a bottling: how many of each group, what they make, and the age that the label may state.
import { createMemo, createSignal, For, Index, Show } from 'solid-js';
import { format, formatCount, formatNumber } from '../core/format.ts';
import type { House } from '../core/line/house.ts';
import { parseNumber } from '../core/reading/plain.ts';
import { isRefusal } from '../core/refusal.ts';
import { isDay } from '../core/stock/days.ts';
import { barredBy, dumpCasks, type Dumped } from '../core/stock/dump.ts';
import { heldOn } from '../core/stock/held.ts';
import type { Stock } from '../house/parts/stock.ts';
import { useAnnouncement } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { StockField } from './StockField.tsx';
import { groupTitle } from './StockGroups.tsx';

export interface StockDumpProps {
  readonly register: Stock;
  readonly house: House;
  readonly day: string;
  /** Takes casks out of the register, by the place of their group. */
  readonly empty: (casks: ReadonlyMap<number, number>) => void;
}

interface Chosen {
  readonly at: number;
  readonly text: string;
}
const EXAMPLE = 10; // casks of the first group, to begin with, or all where there are fewer

export function StockDump(props: StockDumpProps) {
  const [chosen, setChosen] = createSignal<readonly Chosen[]>();
  const [date, setDate] = createSignal<string>();
  let part: HTMLElement | undefined;
  const day = () => date() ?? props.day;
  const groups = () => props.register.groups;
  const lines = (): readonly Chosen[] =>
    chosen()?.filter(({ at }) => at < groups().length) ?? [
      { at: 0, text: String(Math.min(EXAMPLE, groups()[0]!.casks)) },
    ];
  const rest = () => groups().flatMap((_, at) => (lines().some((line) => line.at === at) ? [] : [at]));
  const casksOf = ({ text }: Chosen) => (text.trim() === '' ? 0 : parseNumber(text));
  const problemOf = (line: Chosen): string | undefined => {
    const [casks, there] = [casksOf(line), groups()[line.at]!.casks];
    if (casks !== undefined && casks >= 0 && casks <= there && casks % 1 === 0) return undefined;
    return `There ${there === 1 ? 'is 1 cask' : `are ${formatNumber(there, 0)} casks`} in this group; give a whole number up to that.`;
  };
  const found = createMemo(() => {
    if (props.day === '') return undefined;
    if (!isDay(day()) || day().length < 10) return { refused: 'Give the day on which they are emptied.' };
    const dumped: Dumped[] = [];
    for (const line of lines()) {
      const [group, casks] = [groups()[line.at]!, casksOf(line) ?? 0];
      if (problemOf(line)) return { refused: problemOf(line)! };
      const held = heldOn(group, props.house, day());
      if (isRefusal(held)) return { refused: `${groupTitle(group)}: ${held.refused}` };
      if (casks > 0) dumped.push({ group, held, casks });
    }
    const made = dumpCasks(dumped, props.house);
    return isRefusal(made)
      ? made
      : { ...made, dumped, barred: barredBy(dumped, made.vatting, props.house.bottlingStrength) };
  });
  const made = () => {
    const now = found();
    return now && !isRefusal(now) ? now : undefined;
  };
  const youngest = () => made()!.dumped.reduce((a, b) => (b.held.age < a.held.age ? b : a)).group;
  const age = () =>
    made()!.vatting.age < 1 ? 'none: not a year old' : formatCount(made()!.vatting.age, 'year');
  useAnnouncement(
    'stock-dump',
    found,
    () =>
      made()
        ? `${formatCount(made()!.run.bottles, 'bottle')}; age on the label ${age()}.`
        : ((found() as { refused?: string } | undefined)?.refused ?? ''),
    () => part,
  );

  return (
    <section ref={part} class="calculator stock" aria-labelledby="stock-dump-title">
      <h2 id="stock-dump-title">Casks for a bottling</h2>
      <p class="purpose">Choose the casks to empty together. The youngest gives its age to all.</p>
      <div>
        <StockField
          id="dump-day"
          label="Emptied on"
          isDay
          text={day()}
          problem={isDay(day()) || props.day === '' ? undefined : 'Give a day.'}
          take={setDate}
        />
        <Index each={lines()}>
          {(line, i) => (
            <div class="dumped">
              <StockField
                id={`dump-${i}`}
                label={`${groupTitle(groups()[line().at]!)}, casks of ${formatNumber(groups()[line().at]!.casks, 0)}`}
                isNumber
                text={line().text}
                problem={problemOf(line())}
                take={(text) => setChosen(lines().map((old, at) => (at === i ? { ...old, text } : old)))}
              />
              <button
                type="button"
                aria-label={`Leave out ${groupTitle(groups()[line().at]!)}`}
                onClick={(event) => {
                  setChosen(lines().filter((_, at) => at !== i));
                  focusAfter(event, () => document.getElementById('dump-add'));
                }}
              >
                ×
              </button>
            </div>
          )}
        </Index>
        <div class="field">
          <label for="dump-add">Add casks of</label>
          <select
            id="dump-add"
            autocomplete="off"
            onChange={(event) => {
              const at = Number(event.currentTarget.value);
              event.currentTarget.value = '';
              setChosen([...lines(), { at, text: '1' }]);
              focusAfter(event, () => document.getElementById(`dump-${lines().length - 1}`));
            }}
          >
            <option value="">Choose a group</option>
            <For each={rest()}>{(at) => <option value={at}>{groupTitle(groups()[at]!)}</option>}</For>
          </select>
        </div>
      </div>
      <Show
        when={made()}
        fallback={<p class="remark">{(found() as { refused?: string } | undefined)?.refused ?? '…'}</p>}
      >
        {(now) => (
          <>
            <div class="results">
              <dl class="others">
                <Row says="In the vat">
                  {format(now().vatting.volume, 'volume20')} at {format(now().vatting.strength, 'strength')}
                </Row>
                <Row says={`Water, down to ${format(props.house.bottlingStrength, 'strength')}`}>
                  {format(now().run.reduction.waterVolume, 'volume20')}
                </Row>
                <Row says={`Bottles of ${format(props.house.bottleSize, 'bottle')}`}>
                  {formatNumber(now().run.bottles, 0)}
                </Row>
                <Row says="In cases of six">
                  {formatNumber(now().run.cases, 0)} and {now().run.loose} over
                </Row>
                <Row says="Age the label may state">{age()}</Row>
              </dl>
            </div>
            <p class="remark">
              The youngest is {groupTitle(youngest())}. Only whole years in wood count; a year or month
              without a day counts from its last.
            </p>
            <Show when={now().barred.length > 0}>
              <div class="remark">
                <p>Rules that these casks do not meet:</p>
                <ul>
                  <For each={now().barred}>
                    {({ asks, names }) => (
                      <li>
                        {asks} ({names.join('; ')})
                      </li>
                    )}
                  </For>
                </ul>
              </div>
            </Show>
            <p class="actions">
              <button
                type="button"
                onClick={() => {
                  props.empty(new Map(lines().map((line) => [line.at, casksOf(line) ?? 0])));
                  setChosen([]);
                }}
              >
                Take these casks out of the register
              </button>
            </p>
          </>
        )}
      </Show>
      <p class="purpose">
        Gauge before a label is printed, and read <a href="/law/">Law and labels</a>: the rules of the place
        decide. Moving and emptying casks can hurt: <a href="/maturing/safe/">stay safe</a>.
      </p>
    </section>
  );
}

function Row(props: { readonly says: string; readonly children: unknown }) {
  return (
    <div>
      <dt>{props.says}</dt>
      <dd class="number">{props.children as never}</dd>
    </div>
  );
}
