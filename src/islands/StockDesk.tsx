// The register of casks: what is there, by age; group by group; counted beside reckoned; and casks put together.
import { createMemo, createSignal, onMount, Show } from 'solid-js';
import type { Chart as ChartData } from '../calculators/define.ts';
import { format, formatCount, formatNumber } from '../core/format.ts';
import type { CaskGroup } from '../core/stock/group.ts';
import { lossByRegauges } from '../core/stock/held.ts';
import { stockOn, type StockTotals } from '../core/stock/totals.ts';
import { usePart } from '../house/part-store.ts';
import { stock, type Stock } from '../house/parts/stock.ts';
import { useHouse } from '../house/store.ts';
import { useAnnouncement } from './announce.ts';
import { Chart } from './Chart.tsx';
import { focusAfter } from './focus-after.ts';
import { StockCounted } from './StockCounted.tsx';
import { StockDump } from './StockDump.tsx';
import { StockGroupForm } from './StockGroupForm.tsx';
import { StockGroups, titleOf } from './StockGroups.tsx';
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

export default function StockDesk() {
  const { value: register, set } = usePart(stock);
  const { house, line, name } = useHouse();
  const [day, setDay] = createSignal('');
  const [editing, setEditing] = createSignal<number | 'new'>();
  const [said, setSaid] = createSignal('');
  const [before, setBefore] = createSignal<Stock>();
  let desk: HTMLDivElement | undefined;
  onMount(() => setDay(today()));

  const totals = createMemo(() => (day() === '' ? undefined : stockOn(register().groups, house(), day())));
  const regauged = createMemo(() =>
    day() === '' ? undefined : lossByRegauges(register().groups, house().indrink, day()),
  );
  /** Takes a register, and keeps the one before it until the next change; returns the first thing that was wrong. */
  const change = (next: Stock, says = ''): string | undefined => {
    const old = register();
    const [problem] = set(next);
    if (problem !== undefined) return problem;
    setBefore(says === '' ? undefined : old);
    setSaid(says);
    return undefined;
  };
  const withGroups = (groups: readonly CaskGroup[], says: string) => change({ ...register(), groups }, says);
  const sentence = () =>
    totals()
      ? `${formatCount(totals()!.all.casks, 'cask')}, ${format(totals()!.all.alcohol, 'alcohol')}.`
      : '';
  useAnnouncement(
    'stock',
    () => [said(), totals()],
    () => `${said()} ${sentence()}`.trim(),
    () => desk,
  );
  const group = () => {
    const at = editing();
    return typeof at === 'number' ? register().groups[at] : undefined;
  };
  const formTitle = () => document.getElementById('group-form-title');
  const close = (event?: Event) => {
    const at = editing();
    setEditing(undefined);
    if (event) focusAfter(event, () => document.getElementById(typeof at === 'number' ? `group-row-${at}` : 'group-add')); // prettier-ignore
  };
  const keep = (kept: CaskGroup): string | undefined => {
    const [at, groups] = [editing(), register().groups];
    const next = typeof at === 'number' ? groups.map((old, i) => (i === at ? kept : old)) : [...groups, kept];
    const wrong = withGroups(next, `${titleOf(kept)} is in the register.`);
    if (wrong === undefined) close();
    return wrong;
  };
  const drop = () => {
    const at = editing();
    const gone = group();
    close();
    if (gone) withGroups(register().groups.filter((_, i) => i !== at), `${titleOf(gone)} is taken out.`); // prettier-ignore
  };
  const empty = (casks: ReadonlyMap<number, number>) => {
    const { groups, emptied, ...rest } = register();
    const gone = [...casks.values()].reduce((sum, each) => sum + each, 0);
    const left = groups.flatMap((each, at) => {
      const still = each.casks - (casks.get(at) ?? 0);
      return still > 0 ? [{ ...each, casks: still }] : [];
    });
    const counted = emptied === undefined ? {} : { emptied: emptied + gone };
    change({ ...rest, ...counted, groups: left }, `${formatCount(gone, 'cask')} taken out of the register.`);
  };

  return (
    <div ref={desk} class="stock-desk">
      <Troubles />
      <section class="calculator stock" aria-labelledby="stock-title">
        <h2 id="stock-title">What is there</h2>
        <Show
          when={register().groups.length > 0}
          fallback={
            <p class="remark">{name()} has no register yet. Add a group of casks, or paste a table below.</p>
          }
        >
          <div class="results">
            <dl class="headline">
              <Row says="Casks">{totals() ? formatNumber(totals()!.all.casks, 0) : '…'}</Row>
              <Row says="In them">{totals() ? format(totals()!.all.alcohol, 'alcohol', 0) : '…'}</Row>
            </dl>
            <dl class="others">
              <Row says="Lost to the air in the year to come">
                {totals() ? format(totals()!.yearsLoss, 'alcohol', 0) : '…'}
              </Row>
              <Row says="Casks laid elsewhere">
                {totals() ? formatNumber(totals()!.elsewhere.casks, 0) : '…'}
              </Row>
              <Row says="Casks sold, lying with us">
                {totals() ? formatNumber(totals()!.sold.casks, 0) : '…'}
              </Row>
            </dl>
          </div>
          <div class="by-age">
            <Show when={totals()}>{(now) => <Chart of={byAge(now())} />}</Show>
          </div>
          <Show when={regauged()}>
            {(found) => (
              <p class="remark">
                {formatCount(found().groups, 'regauged group')}: {format(found().loss, 'percent')} of the
                alcohol leaves in a year. Your figure for the store is{' '}
                {format(house().alcoholLoss, 'percent')}.
              </p>
            )}
          </Show>
        </Show>
        <Show when={said()}>
          <p class="remark said">
            {said()}{' '}
            <Show when={before()}>
              {(old) => (
                <button
                  type="button"
                  onClick={(event) => {
                    set(old());
                    setBefore(undefined);
                    setSaid('The register is as it was.');
                    focusAfter(event, () => document.getElementById('group-add'));
                  }}
                >
                  Put it back as it was
                </button>
              )}
            </Show>
          </p>
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
              queueMicrotask(() => formTitle()?.focus());
            }}
          />
        </Show>
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
                  queueMicrotask(() => formTitle()?.focus());
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
      <StockDump register={register()} house={house()} day={day()} empty={empty} />
      <StockCounted register={register()} line={line()} day={day()} change={change} />
      <StockTable register={register()} name={name()} day={day()} take={withGroups} />
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
