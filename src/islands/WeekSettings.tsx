// The few figures of a working week: days and hours of mashing and of the stills, cleaning, and how warm water and wash are.
import { For, Show } from 'solid-js';
import {
  daysFromMonday,
  hoursOfDay,
  weekFigures,
  type WeekFigure,
  type WeekSettings as Settings,
} from '../core/week/settings.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { focusAfter } from './focus-after.ts';
import { NumberField } from './NumberField.tsx';

const choices: Readonly<Partial<Record<WeekFigure, Readonly<Record<string, string>>>>> = {
  mashDays: daysFromMonday,
  stillDays: daysFromMonday,
  mashFrom: hoursOfDay,
  stillFrom: hoursOfDay,
};
const groups = {
  Mashing: ['mashDays', 'mashFrom', 'mashHours', 'turnRound'],
  Stills: ['stillDays', 'stillFrom', 'stillHours'],
  'Heat and water': ['water', 'waterLeaves', 'wash'],
} as const satisfies Record<string, readonly WeekFigure[]>;

const round = (hours: number) => (hours === 24 ? 'round the clock' : `for ${hours} h a day`);
const says: Readonly<Record<keyof typeof groups, (set: Settings) => string>> = {
  Mashing: (set) => `${daysFromMonday[set.mashDays]}, from ${hoursOfDay[set.mashFrom]}, ${round(set.mashHours)}`,
  Stills: (set) => `${daysFromMonday[set.stillDays]}, from ${hoursOfDay[set.stillFrom]}, ${round(set.stillHours)}`,
  'Heat and water': (set) => `water at ${set.water} °C, wash charged at ${set.wash} °C`,
}; // prettier-ignore

export interface WeekSettingsProps {
  readonly set: Settings;
  /** Those of them that the reader has given; the others are usual values. */
  readonly given: Partial<Settings>;
  /** Takes what is given; gives back what is wrong with it. */
  readonly take: (next: Partial<Settings>) => string | undefined;
}

export function WeekSettings(props: WeekSettingsProps) {
  const change = (name: WeekFigure, value: number) => props.take({ ...props.given, [name]: value });
  const isUsual = (name: WeekFigure) => props.given[name] === undefined;
  const usualOf = (group: keyof typeof groups): readonly WeekFigure[] => groups[group].filter(isUsual);
  /** Takes the usual values of a group over as they stand. */
  const takeOver = (group: keyof typeof groups) =>
    props.take({
      ...props.given,
      ...Object.fromEntries(usualOf(group).map((name) => [name, props.set[name]])),
    });
  return (
    <For each={Object.keys(groups) as (keyof typeof groups)[]}>
      {(group) => (
        <details class="vessel">
          <summary>
            {group}: {says[group](props.set)}
            {usualOf(group).length > 0 ? ' (usual values)' : ''}
          </summary>
          <Show when={usualOf(group).length > 0}>
            <p class="meaning">Usual values are marked: put in yours.</p>
            <button
              type="button"
              onClick={(event) => {
                takeOver(group);
                focusAfter(event, () => document.getElementById(`week-${groups[group][0]}`));
              }}
            >
              They are ours too
            </button>
          </Show>
          <For each={groups[group]}>
            {(name) =>
              choices[name] ? (
                <ChoiceField
                  id={`week-${name}`}
                  label={isUsual(name) ? `${weekFigures[name].label} (usual)` : weekFigures[name].label}
                  options={choices[name]}
                  value={String(props.set[name])}
                  take={(value) => change(name, Number(value))}
                />
              ) : (
                <NumberField
                  id={`week-${name}`}
                  label={weekFigures[name].label}
                  kind={weekFigures[name].kind}
                  range={weekFigures[name].limits}
                  step={weekFigures[name].step}
                  value={props.set[name]}
                  notKnown={isUsual(name) ? 'usual' : undefined}
                  among={props.set}
                  take={(value) => change(name, value)}
                />
              )
            }
          </For>
        </details>
      )}
    </For>
  );
}
