// What a mash becomes in the vessels of a plant, and what one charge of each still takes and gives.
import { createMemo, For } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { eachStill, type ChargeOfStill } from '../core/plant/each-still.ts';
import { stillNames, type Plant, type StillKind } from '../core/plant/plant.ts';
import { litresOfAlcohol, strength, type Portion } from '../core/quantity.ts';
import { amountsOf, plus, portionOf } from '../core/spirit/amounts.ts';
import { useUnits } from '../browser/units-store.ts';
import type { Looked } from './PlantDesk.tsx';

/** A quantity as printed, in the units that the reader likes. */
function usePrinted() {
  const unitOf = useUnits();
  return (kind: KindName, value: number) => {
    const { unit, digits, fromCore } = unitOf(kind);
    return `${formatNumber(fromCore(value), digits)}${unit && ` ${unit}`}`;
  };
}

const onward: Readonly<Record<Plant['scheme'], string>> = {
  twice: '',
  thrice: 'Strong feints, to the spirit stills',
  'part-thrice': 'Run again, to the spirit stills',
};

const LITTLE = 0.5; // L: less water is not told
const water = (volume: Portion['volume']): Portion => ({
  volume,
  strength: strength(0),
  alcohol: litresOfAlcohol(0),
});

/** What comes of a mash, from the wash on. */
function rowsOf({ line }: Looked, plant: Plant): readonly (readonly [name: string, portion: Portion])[] {
  const { between } = line.round;
  return [
    ['Wash', line.wash],
    ['Low wines', line.lowWines],
    ...(between ? ([['Intermediate charge', between.charge], [onward[plant.scheme], between.onward]] as const) : []),
    ...(between && between.weak.volume > 0 ? ([['Weak feints, back', portionOf(plus(amountsOf(between.weak), amountsOf(between.fromSpirit)))]] as const) : []),
    ...(line.round.dilution > LITTLE ? ([['Water put in', water(line.round.dilution)]] as const) : []),
    ['Spirit charge', line.charge],
    ['Foreshots', line.foreshots],
    ['New spirit', line.heart],
    [between ? 'Feints of the spirit stills' : 'Feints', line.feints],
    ['Spent lees', line.spentLees],
  ];
} // prettier-ignore

const gives: Readonly<Record<StillKind, string>> = {
  wash: 'low wines',
  intermediate: 'what goes on',
  spirit: 'new spirit',
};

/** How many mashes are in a charge, as it is said. */
function mashesIn({ mashes, aMash }: ChargeOfStill): string {
  if (Math.abs(mashes - 1) < 1e-9) return 'one mash in each';
  return mashes > 1
    ? `one charge takes ${formatNumber(mashes, 2)} mashes`
    : `a mash makes ${formatNumber(aMash, aMash % 1 < 1e-9 ? 0 : 2)} charges`;
}

export function PlantResult(props: {
  readonly of: Looked;
  readonly plant: Plant;
  /** From a mash, as the house bottles it. */
  readonly bottles: number;
}) {
  const printed = usePrinted();
  const unitOf = useUnits();
  const each = createMemo(() => eachStill(props.of.line, props.plant, props.of.charges));
  const number = (kind: KindName, value: number) => {
    const { digits, fromCore } = unitOf(kind);
    return formatNumber(fromCore(value), kind === 'alcohol' ? 0 : digits);
  };
  return (
    <>
      <h3>One mash</h3>
      <table class="plant-mash">
        <thead>
          <tr>
            <td />
            <th scope="col" class="number">
              {unitOf('volume20').unit}
            </th>
            <th scope="col" class="number">
              {unitOf('strength').unit}
            </th>
            <th scope="col" class="number">
              {unitOf('alcohol').unit}
            </th>
          </tr>
        </thead>
        <tbody>
          <For each={rowsOf(props.of, props.plant)}>
            {([name, portion]) => (
              <tr>
                <th scope="row">{name}</th>
                <td class="number">{number('volume20', portion.volume)}</td>
                <td class="number">{number('strength', portion.strength)}</td>
                <td class="number">{number('alcohol', portion.alcohol)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p>
        {formatNumber(Math.floor(props.bottles), 0)} bottles from a mash, after{' '}
        {formatNumber(props.of.line.house.yearsInWood, 0)} years.
      </p>
      <h3>One charge</h3>
      <ul class="plant-charges">
        <For each={['wash', 'intermediate', 'spirit'] as const}>
          {(kind) => (
            <For each={each()[kind]}>
              {(group, i) => (
                <li>
                  <b>
                    {stillNames[kind]}
                    {each()[kind].length > 1 ? ` ${i() + 1}` : ''}:
                  </b>{' '}
                  {group.aWeek} charges a week of {printed('volume20', group.litres)}; {mashesIn(group)}. One
                  gives {printed('volume20', group.gives.volume)} of {gives[kind]} at{' '}
                  {printed('strength', group.gives.strength)}; {group.number > 1 ? 'each still' : 'the still'}{' '}
                  runs {formatNumber(group.hoursAWeek / group.number, 0)} h a week.
                </li>
              )}
            </For>
          )}
        </For>
      </ul>
    </>
  );
}
