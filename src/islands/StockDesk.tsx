// The register of casks: what is there, by age; group by group; counted beside reckoned; and casks put together.
import { createMemo, createSignal, onMount, Show } from 'solid-js';
import type { Chart as ChartData } from '../calculators/define.ts';
import { format, formatCount, formatNumber } from '../core/format.ts';
import type { CaskGroup } from '../core/stock/group.ts';
import { lossByRegauges } from '../core/stock/held.ts';
import { stockOn, type StockTotals } from '../core/stock/totals.ts';
import { usePart } from '../browser/part-store.ts';
import { stockPart, type Stock } from '../house/parts/stock.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { Chart } from './Chart.tsx';
import { InTurn } from './InTurn.tsx';
import { FromOneCask } from './FromOneCask.tsx';
import { StockCounted } from './StockCounted.tsx';
import { StockDump } from './StockDump.tsx';
import { StockGroupForm } from './StockGroupForm.tsx';
import { StockGroups, groupTitle } from './StockGroups.tsx';
import { StockTable } from './StockTable.tsx';
import { today } from './today.ts';
import { Troubles } from './Troubles.tsx';

const byAge = ({ byAge }: StockTotals): ChartData => ({
  caption: 'Pure alcohol by age',
  as: 'bars',
  columns: [
    { kind: 'years', label: byAge.some(({ age, to }) => to > age) ? 'Age, from' : 'Age', values: byAge.map(({ age }) => age) },
    { kind: 'alcohol', label: 'Pure alcohol', values: byAge.map(({ alcohol }) => alcohol) },
    { kind: 'count', label: 'Casks', values: byAge.map(({ casks }) => casks) },
  ],
}); // prettier-ignore

const litres = (alcohol: number) => `${formatNumber(alcohol, 0)} L`;

/** What was done, told under the part of the page where it was done. */
interface Said {
  readonly at: 'groups' | 'dump' | 'table';
  readonly says: string;
}

export default function StockDesk() {
  const { value: register, set } = usePart(stockPart);
  const { house, line, name } = useHouse();
  const [day, setDay] = createSignal('');
  const [editing, setEditing] = createSignal<number | 'new'>();
  const [said, setSaid] = createSignal<Said>();
  const [before, setBefore] = createSignal<Stock>();
  let desk: HTMLDivElement | undefined;
  onMount(() => setDay(today()));

  const totals = createMemo(() => (day() === '' ? undefined : stockOn(register().groups, house(), day())));
  const regauged = createMemo(() =>
    day() === '' ? undefined : lossByRegauges(register().groups, house().indrink, day()),
  );
  /** Takes a register, and keeps the one before it until the next change; returns the first thing that was wrong. */
  const change = (next: Stock, done?: Said): string | undefined => {
    const old = register();
    const [problem] = set(next);
    if (problem !== undefined) return problem;
    setBefore(done && old);
    setSaid(done);
    return undefined;
  };
  const withGroups = (groups: readonly CaskGroup[], at: Said['at'], says: string) =>
    change({ ...register(), groups }, { at, says });
  const sentence = () =>
    totals()
      ? `${formatCount(totals()!.all.casks, 'cask')}, ${format(totals()!.all.alcohol, 'alcohol')}.`
      : '';
  useAnnouncement(
    'stock',
    () => [said(), totals()],
    () => `${said()?.says ?? ''} ${sentence()}`.trim(),
    () => desk,
  );
  const group = () => {
    const at = editing();
    return typeof at === 'number' ? register().groups[at] : undefined;
  };
  const focusOn = (id: string) => queueMicrotask(() => document.getElementById(id)?.focus());
  const close = () => {
    const at = editing();
    setEditing(undefined);
    focusOn(typeof at === 'number' ? `group-row-${at}` : 'group-add');
  };
  const keep = (kept: CaskGroup): string | undefined => {
    const [at, groups] = [editing(), register().groups];
    const next = typeof at === 'number' ? groups.map((old, i) => (i === at ? kept : old)) : [...groups, kept];
    const wrong = withGroups(next, 'groups', `${groupTitle(kept)} is in the register.`);
    if (wrong === undefined) close();
    return wrong;
  };
  const drop = () => {
    const [at, gone] = [editing(), group()!];
    setEditing(undefined);
    withGroups(register().groups.filter((_, i) => i !== at), 'groups', `${groupTitle(gone)} is taken out.`); // prettier-ignore
    focusOn('group-add');
  };
  const empty = (casks: ReadonlyMap<number, number>) => {
    const { groups, emptied, ...rest } = register();
    const gone = [...casks.values()].reduce((sum, each) => sum + each, 0);
    const left = groups.flatMap((each, at) => {
      const still = each.casks - (casks.get(at) ?? 0);
      return still > 0 ? [{ ...each, casks: still }] : [];
    });
    const counted = emptied === undefined ? {} : { emptied: emptied + gone };
    change({ ...rest, ...counted, groups: left }, { at: 'dump', says: `${formatCount(gone, 'cask')} taken out of the register.` }); // prettier-ignore
  };

  /** What was done in a part, with the way back. */
  const told = (at: Said['at']) => (
    <Show when={said()?.at === at}>
      <p class="remark said">
        {said()!.says}{' '}
        <Show when={before()}>
          {(old) => (
            <button
              type="button"
              onClick={() => {
                set(old());
                setBefore(undefined);
                setSaid({ at, says: 'The register is as it was.' });
                focusOn('group-add');
              }}
            >
              Put it back as it was
            </button>
          )}
        </Show>
      </p>
    </Show>
  );

  return (
    <div ref={desk} class="stock-desk">
      <Troubles />
      <section class="calculator stock" aria-labelledby="stock-title">
        <h2 id="stock-title">What is there</h2>
        <Show
          when={register().groups.length > 0}
          fallback={
            <>
              <p class="remark">
                {name()} has no register yet. Add a group of casks, or paste a table below.
              </p>
              <FromOneCask line={line()} />
            </>
          }
        >
          <div class="results">
            <dl class="others">
              <Row says="Casks">{totals() ? formatNumber(totals()!.all.casks, 0) : '…'}</Row>
              <Row says="Spirit in them">{totals() ? format(totals()!.all.volume, 'volume20') : '…'}</Row>
              <Row says="Pure alcohol in them">{totals() ? litres(totals()!.all.alcohol) : '…'}</Row>
              <Row says="Pure alcohol lost in a year">{totals() ? litres(totals()!.yearsLoss) : '…'}</Row>
              <Row says="Casks laid elsewhere">
                {totals() ? formatNumber(totals()!.elsewhere.casks, 0) : '…'}
              </Row>
              <Row says="Casks sold, lying with us">
                {totals() ? formatNumber(totals()!.sold.casks, 0) : '…'}
              </Row>
            </dl>
          </div>
          <div class="by-age">
            <Show when={totals()}>
              {(now) => (
                <InTurn>
                  <Chart of={byAge(now())} />
                </InTurn>
              )}
            </Show>
          </div>
          <Show when={register().groups.some((each) => each.regauged !== undefined)}>
            <p class="remark">
              {regauged() ? formatCount(regauged()!.groups, 'regauged group') : '… regauged groups'}:{' '}
              {regauged() ? format(regauged()!.loss, 'percent') : '…'} of the alcohol leaves in a year. Your
              figure for the store is {format(house().alcoholLoss, 'percent')}.
            </p>
          </Show>
        </Show>
      </section>
      <section class="calculator stock" aria-labelledby="stock-groups-title">
        <h2 id="stock-groups-title">Group by group</h2>
        <Show when={register().groups.length > 0}>
          <StockGroups
            groups={register().groups}
            totals={totals()}
            house={house()}
            edit={(at) => {
              setEditing(at);
              focusOn('group-form-title');
            }}
          />
          <p class="meaning">
            Your mean cask, {format(line().casks.meanSize, 'volume')}, would give{' '}
            {formatCount(Math.floor(line().bottling.bottlesPerCask), 'bottle')} after{' '}
            {formatCount(house().yearsInWood, 'year')}. No real cask holds just that: each gives its own.
          </p>
        </Show>
        {told('groups')}
        <Show
          keyed
          when={editing() === undefined ? undefined : `${editing()}`}
          fallback={
            <p class="actions">
              <button
                type="button"
                id="group-add"
                onClick={() => {
                  setEditing('new');
                  focusOn('group-form-title');
                }}
              >
                Add a group
              </button>
            </p>
          }
        >
          <StockGroupForm
            group={group()}
            opened={register().opened}
            day={day()}
            keep={keep}
            drop={group() ? drop : undefined}
            close={close}
          />
        </Show>
      </section>
      <Show when={register().groups.length > 0}>
        <StockDump register={register()} house={house()} day={day()} empty={empty} />
      </Show>
      {told('dump')}
      <StockCounted register={register()} line={line()} day={day()} change={change} />
      <StockTable
        register={register()}
        name={name()}
        day={day()}
        take={(groups, says) => withGroups(groups, 'table', says)}
      />
      {told('table')}
    </div>
  );
}

function Row(props: { readonly says: string; readonly children: string }) {
  return (
    <div>
      <dt>{props.says}</dt>
      <dd class="number">{props.children}</dd>
    </div>
  );
}
