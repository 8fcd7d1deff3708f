// What holds for a trainer's own sheet as a whole: title, time, pass mark, what is shown when, versions, whose figures.
import { For } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { partsOfLine } from '../exercises/own-line.ts';
import { oneLine } from '../exercises/own/one-line.ts';
import { OWN_SHEET_LIMITS, showings, type OwnSheet, type Showing } from '../exercises/own/own-sheet.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';
import { NumberField } from './NumberField.tsx';

const showingTitles: Readonly<Record<Showing, string>> = {
  'at once': 'at once: each question is marked as it is answered',
  'at the end': 'at the end: marks and workings when the sheet is handed in',
  never: 'never: the trainee gets the result code only',
};

export function OwnSheetRules(props: {
  readonly sheet: OwnSheet;
  readonly change: (part: Partial<OwnSheet>) => void;
}) {
  const { mounted, house, name } = useHouse();
  const ownName = () => (typeof props.sheet.house === 'string' ? name() : props.sheet.house.name);
  return (
    <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <div class="field">
        <label for="own-title">Title</label>
        <input
          id="own-title"
          class="words"
          type="text"
          maxlength={OWN_SHEET_LIMITS.title}
          autocomplete="off"
          value={props.sheet.title}
          onChange={(event) => {
            props.change({ title: oneLine(event.currentTarget.value) });
            event.currentTarget.value = props.sheet.title;
          }}
        />
      </div>
      <NumberField
        id="own-minutes"
        label="Time allowed, 0 for none set"
        kind="minutes"
        range={[0, OWN_SHEET_LIMITS.minutes]}
        step={5}
        value={props.sheet.minutes}
        take={(minutes) => void props.change({ minutes: Math.round(minutes) })}
      />
      <NumberField
        id="own-pass"
        label="Pass mark, 0 for none"
        kind="percent"
        range={[0, 100]}
        step={5}
        value={props.sheet.passMark}
        take={(passMark) => void props.change({ passMark: Math.round(passMark) })}
      />
      <NumberField
        id="own-versions"
        label="Versions, one for each trainee"
        kind="count"
        range={[1, OWN_SHEET_LIMITS.versions]}
        step={1}
        value={props.sheet.versions}
        take={(versions) => void props.change({ versions: Math.round(versions) })}
      />
      <div class="field">
        <label for="own-shows">The trainee sees what is right</label>
        <select
          id="own-shows"
          autocomplete="off"
          value={props.sheet.shows}
          onChange={(event) => props.change({ shows: event.currentTarget.value as Showing })}
        >
          <For each={showings}>{(each) => <option value={each}>{showingTitles[each]}</option>}</For>
        </select>
      </div>
      <div class="field">
        <label for="own-house">Whose figures</label>
        <select
          id="own-house"
          autocomplete="off"
          value={typeof props.sheet.house === 'string' ? 'built-in' : 'own'}
          onChange={(event) =>
            props.change({
              house:
                event.currentTarget.value === 'built-in'
                  ? 'built-in'
                  : { name: name(), house: { ...house() }, ...partsOfLine(unwrap(liveParts())) },
            })
          }
        >
          <option value="built-in">Harrowmere</option>
          <option value="own">{`${mounted() ? ownName() : name()}, as it stands now`}</option>
        </select>
      </div>
    </form>
  );
}
