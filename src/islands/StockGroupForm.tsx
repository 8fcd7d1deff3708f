// One group of casks to add or to change: every field is text, read by the same rules as a table.
import { createMemo, createSignal, For } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import {
  groupFieldNames,
  groupFields,
  type CaskGroup,
  type GroupField,
  type FieldName,
} from '../core/stock/group.ts';
import { namedSizes } from '../core/stock/sizes.ts';
import { readGroupTexts } from '../house/parts/stock-csv.ts';
import { StockField } from './StockField.tsx';

type Texts = Readonly<Partial<Record<FieldName, string>>>;

export interface StockGroupFormProps {
  readonly group?: CaskGroup | undefined;
  readonly opened?: number | undefined;
  readonly day: string;
  /** Takes the group; returns what was wrong. */
  readonly keep: (group: CaskGroup) => string | undefined;
  readonly drop?: (() => void) | undefined;
  readonly close: () => void;
}

const later = new Set<FieldName>(groupFieldNames.slice(groupFieldNames.indexOf('wood'))); // what is folded away
const meanings: Partial<Record<FieldName, string>> = {
  filled: 'A day, 14/03/2016 or 2016-03-14; a month, 2016-03; or the year alone.',
  size: 'Any size from 10 to 1,000 L.',
  filledVolume: 'Into each cask, at 20 °C.',
  regaugedVolume: 'In each cask, at 20 °C, as the mean of those gauged.',
  fill: '1 for the first spirit in this cask since it was made or came to you.',
};

const asText = (group: CaskGroup | undefined): Texts =>
  Object.fromEntries(
    Object.entries(group ?? {}).map(([name, value]) => [
      name,
      typeof value === 'number' && value >= 10_000 ? formatNumber(value, value % 1 === 0 ? 0 : 2) : String(value), // prettier-ignore
    ]),
  );

export function StockGroupForm(props: StockGroupFormProps) {
  const [texts, setTexts] = createSignal(asText(props.group));
  const [touched, setTouched] = createSignal<readonly FieldName[]>([]);
  const [problem, setProblem] = createSignal<string>();
  const read = createMemo(() => readGroupTexts(texts(), props.opened, props.day));
  const faultOf = (name: FieldName): string | undefined => {
    const now = read();
    if (!('faults' in now) || !touched().includes(name)) return undefined;
    return now.faults.find(({ field }) => field === name)?.says;
  };
  const take = (name: FieldName, text: string) => {
    setTexts({ ...texts(), [name]: text });
    setTouched([...touched(), name]);
    setProblem(undefined);
  };
  const keep = () => {
    const now = read();
    if ('group' in now) return void setProblem(props.keep(now.group));
    setTouched(groupFieldNames);
    const [first] = now.faults;
    setProblem(first!.says);
    const field = first!.field && document.getElementById(`group-${first!.field}`);
    field?.closest('details')?.setAttribute('open', '');
    field?.focus();
  };

  const one = (name: FieldName) => {
    const field: GroupField = groupFields[name];
    const id = `group-${name}`;
    if (field.is === 'choice')
      return (
        <div class="field">
          <label for={id}>{field.label}</label>
          <select id={id} autocomplete="off" onChange={(event) => take(name, event.currentTarget.value)}>
            <option value="">Not stated</option>
            <For each={Object.entries(field.options)}>
              {([key, words]) => (
                <option value={key} selected={texts()[name] === key}>
                  {words}
                </option>
              )}
            </For>
          </select>
        </div>
      );
    return (
      <StockField
        id={id}
        label={field.needed ? field.label : `${field.label}, if known`}
        isNumber={field.is === 'number'}
        list={name === 'size' ? 'cask-sizes' : undefined}
        text={texts()[name] ?? ''}
        problem={faultOf(name)}
        meaning={meanings[name]}
        take={(text) => take(name, text)}
      />
    );
  };

  return (
    <form
      class="group-form"
      autocomplete="off"
      aria-labelledby="group-form-title"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <h3 id="group-form-title" tabindex="-1">
        {props.group ? `Change ${props.group.name ?? 'these casks'}` : 'Add a group'}
      </h3>
      <datalist id="cask-sizes">
        <For each={Object.entries(namedSizes)}>{([name, size]) => <option value={size}>{name}</option>}</For>
      </datalist>
      <For each={groupFieldNames.filter((name) => !later.has(name))}>{one}</For>
      <details>
        <summary>Wood, store, regauge and owner</summary>
        <For each={groupFieldNames.filter((name) => later.has(name))}>{one}</For>
      </details>
      <p class="problem" role="alert">
        {problem()}
      </p>
      <p class="actions">
        <button type="submit">{props.group ? 'Keep the change' : 'Put it in the register'}</button>{' '}
        <button type="button" onClick={() => props.close()}>
          Leave it
        </button>{' '}
        {props.drop && (
          <button type="button" onClick={() => props.drop!()}>
            Take the group out
          </button>
        )}
      </p>
    </form>
  );
}
