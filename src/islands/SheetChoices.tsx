// What a sheet is made of: its topics, forms and levels, how many questions and versions, whose figures, its name.
import { For, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { liveParts, useHouse } from '../browser/house-store.ts';
import { partsOfLine } from '../exercises/own-line.ts';
import { forms, formTitles, levels, levelTitles, topics, topicTitles } from '../exercises/topics.ts';
import { MOST_QUESTIONS, MOST_SHEET_VERSIONS, type Worksheet } from '../exercises/worksheet.ts';
import { NumberField } from './NumberField.tsx';
import { Tick } from './Tick.tsx';

/** A choice with one more or one less in it; never empty, and in the list's own order. */
function toggled<T>(list: readonly T[], chosen: readonly T[], each: T): readonly T[] {
  const next = list.filter((one) => (one === each ? !chosen.includes(one) : chosen.includes(one)));
  return next.length === 0 ? chosen : next;
}

/** A name as an address carries it. */
const plainName = (typed: string) =>
  typed
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 24);

export function SheetChoices(props: {
  readonly sheet: Worksheet;
  readonly change: (part: Partial<Worksheet>) => void;
}) {
  const { mounted, house, name } = useHouse();
  const whose = () => (typeof props.sheet.house === 'string' ? props.sheet.house : 'own');
  const ownName = () =>
    mounted() && typeof props.sheet.house !== 'string' ? props.sheet.house.name : name();
  return (
    <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <Ticks
        legend="Topics"
        list={topics}
        titles={topicTitles}
        chosen={props.sheet.topics}
        take={(each) => props.change({ topics: toggled(topics, props.sheet.topics, each) })}
        only={(each) => props.change({ topics: [each] })}
      />
      <Ticks
        legend="Kinds of question"
        list={forms}
        titles={formTitles}
        chosen={props.sheet.forms}
        take={(each) => props.change({ forms: toggled(forms, props.sheet.forms, each) })}
      />
      <Ticks
        legend="Levels"
        list={levels}
        titles={levelTitles}
        chosen={props.sheet.levels}
        take={(each) => props.change({ levels: toggled(levels, props.sheet.levels, each) })}
      />
      <NumberField
        id="sheet-count"
        label="Questions"
        kind="count"
        range={[1, MOST_QUESTIONS]}
        step={1}
        value={props.sheet.count}
        take={(count) => void props.change({ count: Math.round(count) })}
      />
      <NumberField
        id="sheet-versions"
        label="Versions, one for each trainee"
        kind="count"
        range={[1, MOST_SHEET_VERSIONS]}
        step={1}
        value={props.sheet.versions}
        take={(versions) => void props.change({ versions: Math.round(versions) })}
      />
      <div class="field">
        <label for="sheet-house">Whose figures</label>
        <select
          id="sheet-house"
          autocomplete="off"
          value={whose()}
          onChange={(event) => {
            const wanted = event.currentTarget.value;
            props.change({
              house:
                wanted === 'built-in' || wanted === 'random'
                  ? wanted
                  : { name: name(), house: { ...house() }, ...partsOfLine(unwrap(liveParts())) },
            });
          }}
        >
          <option value="built-in">Harrowmere</option>
          <option value="own">{`${ownName()}, as it stands now`}</option>
          <option value="random">a random house for each version</option>
        </select>
      </div>
      <div class="field">
        <label for="sheet-seed">Sheet name: the same name draws the same sheet</label>
        <input
          id="sheet-seed"
          class="words"
          type="text"
          maxlength="24"
          autocomplete="off"
          value={props.sheet.seed}
          onChange={(event) => {
            const seed = plainName(event.currentTarget.value);
            if (seed !== '') props.change({ seed });
            event.currentTarget.value = props.sheet.seed;
          }}
        />
      </div>
      <p class="actions">
        <button type="button" onClick={() => props.change({ seed: `sheet-${Date.now().toString(36)}` })}>
          Another sheet
        </button>
      </p>
    </form>
  );
}

function Ticks<T extends string | number>(props: {
  readonly legend: string;
  readonly list: readonly T[];
  readonly titles: Readonly<Record<T, string>>;
  readonly chosen: readonly T[];
  readonly take: (each: T) => void;
  /** Ticks one alone. */
  readonly only?: (each: T) => void;
}) {
  return (
    <fieldset>
      <legend>{props.legend}</legend>
      <For each={props.list}>
        {(each) => (
          <div class="one-of">
            <Tick checked={props.chosen.includes(each)} take={() => props.take(each)}>
              {typeof each === 'number' ? `${each}: ${props.titles[each]}` : props.titles[each]}
            </Tick>
            <Show when={props.only}>
              <button
                type="button"
                class="reset"
                aria-label={`Only ${props.titles[each]}`}
                onClick={() => props.only!(each)}
              >
                only
              </button>
            </Show>
          </div>
        )}
      </For>
    </fieldset>
  );
}
