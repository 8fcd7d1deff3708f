// The vessels as rows to open: a row says what a group is, and opens to its fields.
import { createSignal, For, Index, Show } from 'solid-js';
import { formatCount, formatNumber } from '../core/format.ts';
import type { Line } from '../core/line/line.ts';
import {
  holdingField,
  holdingNames,
  holdings,
  MOST_VESSEL_GROUPS,
  plantFields,
  stillFields,
  tunFields,
  washbackFields,
  type VesselField,
} from '../core/plant/fields.ts';
import {
  condensers,
  heatings,
  schemes,
  stillNames,
  washbackMaterials,
  type Plant,
  type Stills,
  type Washbacks,
} from '../core/plant/plant.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { focusAfter } from './focus-after.ts';
import { NumberField } from './NumberField.tsx';
import { useWayBack } from './use-way-back.tsx';

type Take = (next: Plant) => string | undefined;
type Row = Readonly<Record<string, number | string>>;
type GroupKey = 'mashTuns' | 'washbacks' | 'washStills' | 'intermediateStills' | 'spiritStills';

interface GroupKind {
  readonly key: GroupKey;
  readonly title: string;
  readonly fields: Readonly<Record<string, VesselField>>;
  readonly choices: Readonly<Record<string, readonly [label: string, options: Readonly<Record<string, string>>]>>;
  /** What one more group begins as, in a house of this line. */
  readonly fresh: (line: Line) => Row;
  readonly says: (row: Row) => string;
} // prettier-ignore

const litres = (value: unknown) => `${formatNumber(Number(value), 0)} L`;
const hundreds = (value: number, [low, high]: readonly [number, number]) =>
  Math.min(high, Math.max(low, 100 * Math.ceil(value / 100)));

const stillsOf = (key: GroupKey, title: string, charge: (line: Line) => number, hours: number, reflux: (line: Line) => number): GroupKind => ({
  key,
  title,
  fields: stillFields,
  choices: { condenser: ['Condenser', condensers], heating: ['Heated by', heatings] },
  fresh: (line): Row => ({ number: 1, charge: hundreds(charge(line), stillFields.charge.limits), hours, reflux: reflux(line), condenser: 'shell-and-tube', heating: 'steam' }) satisfies Stills & Row,
  says: ({ number, charge, hours, reflux }) => `${number} of ${litres(charge)}, ${hours} h a charge, reflux ${reflux}`,
}); // prettier-ignore

const groupKinds = {
  mashTuns: {
    key: 'mashTuns',
    title: 'Mash tuns',
    fields: tunFields,
    choices: {},
    fresh: () => ({ number: 1, hours: 8 }),
    says: ({ number, hours }) => `${formatCount(Number(number), 'tun')}, a mash every ${hours} h`,
  },
  washbacks: {
    key: 'washbacks',
    title: 'Washbacks',
    fields: washbackFields,
    choices: { material: ['Made of', washbackMaterials] },
    fresh: ({ wort }) => {
      const working = hundreds(wort.volume, washbackFields.working.limits);
      const full = hundreds(1.2 * working, washbackFields.full.limits); // a fifth for the head of froth; common practice
      return { number: 4, full, working, material: 'wood' } satisfies Washbacks & Row;
    },
    says: ({ number, full, working, material }) => `${number} of ${String(material)}, filled to ${litres(working)} of ${litres(full)}`,
  },
  washStills: stillsOf('washStills', stillNames.wash, ({ wash }) => wash.volume, 7, ({ house }) => house.washReflux),
  intermediateStills: stillsOf('intermediateStills', stillNames.intermediate, ({ lowWines }) => 1.3 * lowWines.volume, 7, ({ house }) => house.spiritReflux),
  spiritStills: stillsOf('spiritStills', stillNames.spirit, ({ charge }) => charge.volume, 8, ({ house }) => house.spiritReflux),
} as const satisfies Record<GroupKey, GroupKind>; // prettier-ignore

/** A group with those figures alone that are still usual values; and one of which all are. */
function given(row: Row, isUsual: (name: string) => boolean): Row {
  const { usual = [], ...rest } = row as Row & { readonly usual?: readonly string[] };
  const left = (usual as readonly string[]).filter(isUsual);
  return left.length > 0 ? ({ ...rest, usual: left } as unknown as Row) : (rest as Row);
}
const asUsual = (row: Row): Row => {
  const figures = given(row, () => false);
  return { ...figures, usual: Object.keys(figures) } as unknown as Row;
};

/** All groups of one kind: each a row to open, and a button for one more. */
function Groups(props: { readonly of: GroupKind; readonly plant: Plant; readonly line: Line; readonly set: Take }) {
  const [added, setAdded] = createSignal(-1);
  const { say, Said, saying } = useWayBack(true);
  const groups = () => props.plant[props.of.key] as readonly unknown[] as readonly Row[];
  const id = (i: number, name: string) => `plant-${props.of.key}-${i}-${name}`;
  const usual = (i: number): readonly string[] => props.plant[props.of.key][i]?.usual ?? [];
  const change = (rows: readonly Row[]) => props.set({ ...props.plant, [props.of.key]: rows });
  const withValue = (i: number, name: string, value: number | string) =>
    change(groups().map((row, at) => (at === i ? given({ ...row, [name]: value }, (each) => each !== name) : row)));
  const one = () => props.of.title.replace(/s$/, '').toLowerCase();
  return (
    <>
      <Index each={groups()}>
        {(row, i) => (
          <details class="vessel" open={added() === i}>
            <summary>
              {props.of.says(row())}
              {usual(i).length > 0 ? ' (usual values)' : ''}
            </summary>
            <Show when={usual(i).length > 0}>
              <p class="meaning">Usual values are marked: put in yours.</p>
              <button
                type="button"
                onClick={(event) => {
                  change(groups().map((each, at) => (at === i ? given(each, () => false) : each)));
                  focusAfter(event, () => document.getElementById(id(i, 'number')));
                }}
              >
                They are ours too
              </button>
            </Show>
            <For each={Object.entries(props.of.fields)}>
              {([name, { label, kind, limits, step, meaning }]) => (
                <NumberField
                  id={id(i, name)}
                  label={label}
                  kind={kind}
                  range={limits}
                  step={step}
                  value={row()[name] as number}
                  among={props.plant}
                  notKnown={usual(i).includes(name) ? 'usual' : undefined}
                  meaning={meaning}
                  take={(value) =>
                    kind === 'count' && !Number.isInteger(value)
                      ? `${label}: a whole number is wanted.`
                      : withValue(i, name, value)
                  }
                />
              )}
            </For>
            <For each={Object.entries(props.of.choices)}>
              {([name, [label, options]]) => (
                <ChoiceField
                  id={id(i, name)}
                  label={usual(i).includes(name) ? `${label} (usual)` : label}
                  options={options}
                  value={row()[name] as string}
                  take={(value) => withValue(i, name, value)}
                />
              )}
            </For>
            <button
              type="button"
              onClick={(event) => {
                const [gone, what] = [row(), props.of.says(row())];
                change(groups().filter((_, at) => at !== i));
                say(`${what}: removed.`, () =>
                  groups().length < MOST_VESSEL_GROUPS && change(groups().toSpliced(i, 0, gone)) === undefined
                    ? `${what}: back.`
                    : 'There is no room for them: remove others first.',
                );
                focusAfter(event, saying);
              }}
            >
              Remove {groups().length > 1 ? `these, ${one()} ${i + 1}` : `the ${props.of.title.toLowerCase()}`}
            </button>
          </details>
        )}
      </Index>
      <Said />
      <Show when={groups().length < MOST_VESSEL_GROUPS}>
        <button
          type="button"
          id={`plant-add-${props.of.key}`}
          onClick={(event) => {
            const at = groups().length;
            setAdded(at);
            change([...groups(), asUsual(groups().at(-1) ?? props.of.fresh(props.line))]);
            focusAfter(event, () => document.getElementById(id(at, 'number')));
          }}
        >
          {groups().length > 0 ? `Add ${props.of.title.toLowerCase()} of another kind` : `Add ${props.of.title.toLowerCase()}`}
        </button>
      </Show>
    </>
  );
} // prettier-ignore

export function PlantVessels(props: { readonly plant: Plant; readonly line: Line; readonly set: Take }) {
  const single = (name: keyof typeof plantFields, meaning?: string) => {
    const { label, kind, limits, step } = plantFields[name];
    return (
      <NumberField
        id={`plant-${name}`}
        label={label}
        kind={kind}
        range={limits}
        step={step}
        value={props.plant[name]}
        among={props.plant}
        notKnown={props.plant.usual?.includes(name) ? 'usual' : undefined}
        meaning={meaning}
        take={(value) =>
          props.set({
            ...props.plant,
            [name]: value,
            usual: (props.plant.usual ?? []).filter((each) => each !== name),
          })
        }
      />
    );
  };
  const groups = (key: GroupKey) => (
    <section class="vessels" aria-labelledby={`plant-${key}-title`}>
      <h3 id={`plant-${key}-title`}>{groupKinds[key].title}</h3>
      <Groups of={groupKinds[key]} plant={props.plant} line={props.line} set={props.set} />
      <Show when={key === 'washbacks'}>
        {single('shortFermentation')}
        {single('weekendFermentation')}
      </Show>
    </section>
  );
  const holding = (name: keyof typeof holdingNames) => (
    <NumberField
      id={`plant-${name}`}
      label={holdingNames[name]}
      kind={holdingField.kind}
      range={holdingField.limits}
      step={holdingField.step}
      value={props.plant[name].holds}
      among={props.plant}
      take={(holds) => props.set({ ...props.plant, [name]: { holds } })}
    />
  );
  return (
    <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <section class="vessels" aria-labelledby="plant-scheme-title">
        <h3 id="plant-scheme-title">The distillation</h3>
        <ChoiceField
          id="plant-scheme"
          label="How it is distilled"
          options={schemes}
          value={props.plant.scheme}
          take={(scheme) => props.set({ ...props.plant, scheme: scheme as Plant['scheme'] })}
        />
        <Show when={props.plant.scheme === 'thrice'}>
          {single(
            'strongFeintsEnd',
            'What comes over above this goes on to the spirit stills; below it, back to the intermediate stills. The spirit run is cut where your house cuts it.',
          )}
        </Show>
        <Show when={props.plant.scheme === 'part-thrice'}>
          {single(
            'runAgain',
            'This part of the low wines is run once more in the intermediate stills, all of it, and then joins the rest. Houses differ; this is one usual way.',
          )}
        </Show>
      </section>
      <For each={['mashTuns', 'washbacks', 'washStills'] as const}>{groups}</For>
      <Show when={props.plant.scheme !== 'twice'}>{groups('intermediateStills')}</Show>
      {groups('spiritStills')}
      <section class="vessels" aria-labelledby="plant-holding-title">
        <h3 id="plant-holding-title">Chargers and receivers</h3>
        <For each={holdings}>{holding}</For>
        <p class="meaning">How much each holds; 0 where there is none.</p>
      </section>
    </form>
  );
}
