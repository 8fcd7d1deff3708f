// Two questions of a week that is set out: what goes on at an hour, and what it costs to run warmer.
import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import { isRefusal } from '../core/refusal.ts';
import { dayNames } from '../core/week/clock.ts';
import type { Warmth } from '../core/week/heat.ts';
import type { LevelAt } from '../core/week/levels.ts';
import { hoursOfDay } from '../core/week/settings.ts';
import type { Timetable } from '../core/week/timetable.ts';
import { warmable, warmerChange } from '../core/week/warmer.ts';
import { useAnnouncement } from './announce.ts';
import { useWeek } from './ask-week.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { NumberField } from './NumberField.tsx';
import { vesselsAtHourInWords } from './week-table.ts';

export interface WeekQuestionsProps {
  readonly week: Timetable;
  readonly line: Line;
  readonly warmth: Warmth;
  /** Receivers by name, with their levels. */
  readonly levels: readonly (readonly [name: string, levels: readonly LevelAt[]])[];
}

const days = Object.fromEntries(dayNames.map((day, i) => [i, day]));

function levelAt(levels: readonly LevelAt[], hour: number): number {
  const i = levels.findLastIndex((level) => level.hour <= hour);
  const [a, b] = [levels[i]!, levels[Math.min(i + 1, levels.length - 1)]!];
  return b.hour > a.hour
    ? a.litres + ((b.litres - a.litres) * (hour - a.hour)) / (b.hour - a.hour)
    : a.litres;
}

/** What is running at an hour of a day. */
export function VesselsAtHour(props: WeekQuestionsProps) {
  let part: HTMLElement | undefined;
  const [day, setDay] = createSignal(1);
  const [hour, setHour] = createSignal(14);
  const at = () => 24 * day() + hour();
  const now = createMemo(() => vesselsAtHourInWords(props.week, at()));
  const stands = () =>
    props.levels
      .map(([name, levels]) => `${name} ${formatNumber(Math.max(0, levelAt(levels, at())), 0)} L`)
      .join(', ');
  const said = () => {
    const { working } = now();
    return `${dayNames[day()]} ${hoursOfDay[hour()]}: ${working.map(({ name, says }) => `${name}: ${says}`).join('; ') || 'nothing is at work'}.`;
  };
  useAnnouncement('week-now', at, said, () => part);
  return (
    <section ref={part} aria-labelledby="week-now-title">
      <h3 id="week-now-title">What is running?</h3>
      <div class="inputs pair">
        <ChoiceField
          id="week-now-day"
          label="On"
          options={days}
          value={String(day())}
          take={(value) => void setDay(Number(value))}
        />
        <ChoiceField
          id="week-now-hour"
          label="At"
          options={hoursOfDay}
          value={String(hour())}
          take={(value) => void setHour(Number(value))}
        />
      </div>
      <Show when={props.week.number < props.line.house.mashesPerWeek}>
        <p class="remark">
          This is the week of {props.week.number} mashes that fits, not of {props.line.house.mashesPerWeek}.
        </p>
      </Show>
      <ul class="now">
        <For each={now().working}>
          {({ name, says }) => (
            <li>
              <b>{name}</b>: {says}
            </li>
          )}
        </For>
        <Show when={now().resting.length > 0}>
          <li>At rest: {now().resting.join(', ')}</li>
        </Show>
        <li>Stands in the receivers: {stands()}</li>
      </ul>
    </section>
  );
}

const signed = (n: number, digits: number, unit: string, more: string, less: string) =>
  `${formatNumber(Math.abs(n), digits)} ${unit} ${n < 0 ? less : more}`;

/** What warmer or colder wash, or cooling water, costs or saves. */
export function Warmer(props: WeekQuestionsProps) {
  let part: HTMLElement | undefined;
  const [what, setWhat] = createSignal<keyof typeof warmable>('wash');
  const [by, setBy] = createSignal(5);
  const worker = useWeek();
  const answer = createMemo(() =>
    warmerChange(what(), by(), {
      line: props.line,
      needs: props.week.needs,
      mashes: props.week.number,
      warmth: props.warmth,
    }),
  );
  createEffect(
    on(answer, (now) => {
      if (isRefusal(now) || now.hoursOfRun === 0) worker.drop();
      else worker.ask(now.needs, props.week.number);
    }),
  );
  const says = (): string => {
    const now = answer();
    if (isRefusal(now)) return now.refused;
    const hours =
      now.hoursOfRun === 0
        ? 'No run is longer or shorter.'
        : `Each wash run is ${signed(now.hoursOfRun, 2, 'h', 'longer', 'shorter')} with the same heat an hour, all of them in the week ${signed(now.hoursOfWeek, 1, 'h', 'longer', 'shorter')}.`;
    const heat =
      now.steam === 0
        ? 'The stills take the same heat.'
        : `The stills take the heat of ${signed(now.steam, 0, 'kg', 'more', 'less')} steam a week.`;
    const water =
      now.water === 0
        ? 'The condensers take the same water, as the same comes over.'
        : `The condensers take ${signed(now.water, 0, 'L', 'more', 'less')} water a week.`;
    return `${hours} ${heat} ${water}`;
  };
  const isSought = () => {
    const now = answer();
    return !isRefusal(now) && now.hoursOfRun !== 0 && worker.found()?.most === undefined && !worker.failed();
  };
  const most = () => {
    const found = worker.found();
    if (isSought()) return ' How many fit is being looked for.';
    return found?.most === undefined || isRefusal(answer())
      ? ''
      : ` The most is then ${formatNumber(found.most, 0)} mashes a week.`;
  };
  useAnnouncement('week-warmer', says, says, () => part);
  return (
    <section ref={part} aria-labelledby="week-warmer-title">
      <h3 id="week-warmer-title">What does warmer cost?</h3>
      <div class="inputs">
        <ChoiceField
          id="week-warmer-what"
          label="Warmer or colder is"
          options={warmable}
          value={what()}
          take={(value) => void setWhat(value as keyof typeof warmable)}
        />
        <NumberField
          id="week-warmer-by"
          label="By, below 0 for colder"
          kind="temperatureDifference"
          range={[-30, 30]}
          step={1}
          value={by()}
          take={(value) => void setBy(value)}
          plain
        />
      </div>
      <p class="remark" aria-busy={isSought()}>
        {says()}
        {most()}
      </p>
    </section>
  );
}
