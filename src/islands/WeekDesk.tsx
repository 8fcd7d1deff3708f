// The week of the house set out: whether the mashes fit, what stands in the way, and what each vessel does when.
import { createEffect, createMemo, createSignal, For, on, Show, type JSX } from 'solid-js';
import { formatCount, formatNumber } from '../core/format.ts';
import { lineWithPlant } from '../core/plant/line.ts';
import { usualSentence } from '../core/plant/usual.ts';
import { isRefusal } from '../core/refusal.ts';
import { dayAndTime, dayNames } from '../core/week/clock.ts';
import { asSteam, heatOfMash, heatOfWeek } from '../core/week/heat.ts';
import { emptyings, lowWinesLevel, spiritLevel } from '../core/week/levels.ts';
import { weekNeeds } from '../core/week/needs.ts';
import { fitsSentence, lackSentence, mostSentence } from '../core/week/sentences.ts';
import { usualOfWeek, usualWeek, shiftsOf, warmthOf } from '../core/week/settings.ts';
import type { Timetable } from '../core/week/timetable.ts';
import { csvOf } from '../exercises/csv.ts';
import { whenIdle } from '../browser/defer.ts';
import { useKnown } from '../browser/known-store.ts';
import { usePart } from '../browser/part-store.ts';
import { isSamePart } from '../house/parts/part.ts';
import { periodsPart } from '../house/parts/periods.ts';
import { emptyPlant } from '../house/parts/plant.ts';
import { useAnnouncement } from './announce.ts';
import { useWeek } from './ask-week.ts';
import { useHouseWhenIdle } from './house-when-idle.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { InTurn } from './InTurn.tsx';
import { NumberField } from './NumberField.tsx';
import { useOwnPlant } from './own-plant.ts';
import { saveFile } from './save-file.ts';
import { Troubles } from './Troubles.tsx';
import { beginningsIn, weekRows } from './week-table.ts';
import { VesselsAtHour, Warmer } from './WeekQuestions.tsx';
import { WeekSettings } from './WeekSettings.tsx';
import { WeekStrips, type WeekCurve } from './WeekStrips.tsx';

const FAILED = 'The week could not be set out: the browser stopped the sum. Change a figure to try again, or reload the page.'; // prettier-ignore
const shownDays: Readonly<Record<string, string>> = {
  week: 'the whole week',
  ...Object.fromEntries(dayNames.map((day, i) => [i, day])),
};
const litres = (n: number) => `${formatNumber(n, 0)} L`;
/** Values of each hour as a line with steps. */
const stepped = (values: readonly number[]) =>
  values.flatMap((value, hour): (readonly [number, number])[] => [
    [hour, value],
    [hour + 1, value],
  ]);
const peak = (values: readonly number[]) => {
  const most = Math.max(...values);
  return { most, hour: values.indexOf(most) };
};

export default function WeekDesk() {
  let island: HTMLElement | undefined;
  const { house, mounted } = useHouseWhenIdle(() => island);
  const { value: plant } = useOwnPlant();
  const periods = usePart(periodsPart);
  const set = () => ({ ...usualWeek, ...periods.value().week });
  const warmth = createMemo(() => warmthOf(set()));
  const [tried, setTried] = createSignal<number>();
  const [day, setDay] = createSignal('week');
  const mashes = () => tried() ?? Math.max(1, Math.round(house().mashesPerWeek));
  const isEmpty = createMemo(() => isSamePart(plant(), emptyPlant));
  const line = createMemo(() => lineWithPlant(house(), plant()));
  const needs = createMemo(() => {
    const now = line();
    return isRefusal(now) ? now : weekNeeds(now, plant(), shiftsOf(set()));
  });
  const { found, failed, ask, drop } = useWeek();
  const askNow = () => {
    const now = needs();
    if (isEmpty() || isRefusal(now)) drop();
    else ask(now, mashes());
  };
  createEffect(on([needs, mashes, mounted], () => mounted() && whenIdle(askNow)));

  const { standing } = useKnown();
  /** That a house mashes as often as it says, whatever is reckoned here: then one of the premises is not as it is there. */
  const doneSentence = ({ most }: { readonly most?: number }): string => {
    const own = house().mashesPerWeek;
    const isDone = most !== undefined && most < own && !['unknown', 'estimate'].includes(standing('mashesPerWeek'));
    return isDone ? `You mash ${formatNumber(own, 0)} times a week, so an hour, a day or a vessel here is not as it is with you.` : '';
  };
  /** The sentences that come first. */
  const says = (): readonly string[] => {
    const [given, now] = [needs(), found()];
    if (isEmpty()) return ['Say which vessels you have, and the week is set out.'];
    if (isRefusal(given)) return [given.refused];
    if (failed()) return [FAILED];
    if (!now) return ['The week is being set out.'];
    const first = now.week ? fitsSentence(now.week) : lackSentence(now.lack!, now.mashes, now.needs);
    const most = now.most === undefined ? 'How many fit is being looked for.' : !now.next ? '' : mostSentence(now.most, now.next, now.needs, now.mashes);
    return [first, most, doneSentence(now), usualSentence(plant(), usualOfWeek(periods.value().week)) ?? ''].filter(Boolean);
  };
  const isSeeking = () => mounted() && !isEmpty() && !isRefusal(needs()) && !failed() && found()?.most === undefined;
  useAnnouncement('week', () => says().join(' '), () => says().join(' '), () => island); // prettier-ignore

  /** The week that is set out; the last one stands until it is known whether another fits. */
  const week = createMemo((before: Timetable | undefined) => {
    const now = found();
    if (isEmpty() || isRefusal(needs())) return undefined;
    return now?.week ?? now?.fitting ?? (now?.most === undefined ? before : undefined);
  });
  const lineNow = () => {
    const now = line();
    return isRefusal(now) ? undefined : now;
  };
  const shown = () => (day() === 'week' ? undefined : Number(day()));

  return (
    <section ref={island} class="calculator plant week" aria-labelledby="week-title" aria-busy={isSeeking()}>
      <h2 id="week-title">Does the week fit?</h2>
      <Troubles />
      <div class="plant-says">
        <For each={says()}>{(sentence) => <p>{sentence}</p>}</For>
      </div>
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <NumberField
          id="week-mashes"
          label="Mashes a week, to try"
          kind="count"
          range={[1, 100]}
          step={1}
          value={mashes()}
          take={(value) =>
            Number.isInteger(value) ? void setTried(value) : 'Mashes to try: a whole number is wanted.'
          }
          plain
        />
        <WeekSettings
          set={set()}
          given={periods.value().week}
          take={(next) => periods.set({ ...periods.value(), week: next })[0]}
        />
      </form>
      <Show when={week() && lineNow()}>
        <Laid week={week()!} line={lineNow()!} plant={plant()} warmth={warmth()} day={shown()}>
          <Show when={found()?.fitting}>
            {(fitting) => <p>{formatCount(fitting().number, 'mash', 'mashes')} {fitting().number === 1 ? 'fits' : 'fit'}; this is that week.</p>}
          </Show>
          <ChoiceField
            id="week-shown"
            label="Show"
            options={shownDays}
            value={day()}
            take={(value) => void setDay(value)}
          />
        </Laid>
      </Show>
    </section>
  );
} // prettier-ignore

interface LaidProps {
  readonly week: Timetable;
  readonly line: Exclude<ReturnType<typeof lineWithPlant>, { refused: string }>;
  readonly plant: Parameters<typeof lineWithPlant>[1];
  readonly warmth: ReturnType<typeof warmthOf>;
  readonly day: number | undefined;
  readonly children: JSX.Element;
}

/** A week that fits: its strips, its table and file, and what may be asked of it. */
function Laid(props: LaidProps) {
  const levels = createMemo(
    () =>
      [
        ['Low wines receiver', lowWinesLevel(props.week), props.week.needs.receiver],
        ['Spirit receiver', spiritLevel(props.week), props.week.needs.spiritReceiver],
      ] as const,
  );
  const of = createMemo(() => heatOfMash(props.line, props.warmth));
  const curves = createMemo((): readonly WeekCurve[] => {
    const heat = of();
    const receivers = levels().map(([name, points, holds]): WeekCurve => {
      const most = Math.max(...points.map(({ litres }) => litres));
      return {
        name,
        says: `up to ${litres(most)}${holds === Infinity ? '' : ` of ${litres(holds)}`}`,
        points: points.map(({ hour, litres }) => [hour, Math.max(0, litres)] as const),
        ...(holds !== Infinity && { limit: holds }),
      };
    });
    if (isRefusal(heat)) return receivers;
    const { steam, flame, water } = heatOfWeek(props.week, heat, props.plant);
    const kilograms = steam.map(asSteam);
    const [bySteam, byFlame, cooling] = [peak(kilograms), peak(flame), peak(water)];
    return [
      ...receivers,
      { name: 'Steam', says: `up to ${formatNumber(bySteam.most, 0)} kg/h, ${dayAndTime(bySteam.hour)}`, points: stepped(kilograms) },
      ...(byFlame.most > 0 ? [{ name: 'Flame', says: `up to ${formatNumber((byFlame.most * 1000) / 3600, 0)} kW, ${dayAndTime(byFlame.hour)}`, points: stepped(flame) }] : []),
      { name: 'Cooling water', says: `up to ${litres(cooling.most)}/h, ${dayAndTime(cooling.hour)}`, points: stepped(water) },
    ];
  });
  const refusal = () => {
    const heat = of();
    return isRefusal(heat) ? heat.refused : undefined;
  };
  const rows = createMemo(() =>
    beginningsIn(props.week, props.day === undefined ? 0 : 24 * props.day, props.day === undefined ? 168 : 24 * props.day + 24),
  );
  const save = () => saveFile('week.csv', csvOf(weekRows(props.week)), 'text/csv;charset=utf-8');
  const ask = () => ({
    week: props.week,
    line: props.line,
    warmth: props.warmth,
    levels: levels().map(([name, points]) => [name, points] as const),
  });
  return (
    <>
      {props.children}
      <InTurn>
        <WeekStrips week={props.week} curves={curves()} day={props.day} />
      </InTurn>
      <InTurn>
        <Show when={refusal()}>{(why) => <p class="problem">{why()}</p>}</Show>
        <p class="meaning">
          The spirit receiver is emptied for filling {emptyings(props.week).map(dayAndTime).join(', ')}. Levels and heat are spread
          evenly over each run. Steam is for mashing water and stills; raising it, pumps and rooms are not in it.
        </p>
        <details class="working">
          <summary>{props.day === undefined ? 'The week in words' : `${dayNames[props.day]} in words`}</summary>
          <div class="table" tabindex="0" role="region" aria-label="What begins when">
            <table class="series">
              <thead>
                <tr>
                  <th scope="col">When</th>
                  <th scope="col">Vessel</th>
                  <th scope="col">What begins</th>
                </tr>
              </thead>
              <tbody>
                <For each={rows()}>
                  {([when, vessel, what]) => (
                    <tr>
                      <td>{when}</td>
                      <td>{vessel}</td>
                      <td>{what}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </div>
        </details>
        <p class="actions">
          <button type="button" onClick={save}>
            Save the timetable as CSV
          </button>
        </p>
      </InTurn>
      <InTurn>
        <VesselsAtHour {...ask()} />
        <Warmer {...ask()} />
      </InTurn>
    </>
  );
} // prettier-ignore
