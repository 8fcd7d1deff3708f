// A vat of new spirit into casks of several sizes.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { fillCasks } from '../../core/maturing/fill-casks.ts';
import { count, litresOfAlcohol, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

interface Given {
  readonly volume: Quantity<'volume20'>;
  readonly from: Quantity<'strength'>;
  readonly to: Quantity<'strength'>;
  readonly casks: readonly { readonly size: Quantity<'volume'>; readonly count: Quantity<'count'> }[];
}

const filling = ({ volume, from, to, casks }: Given) => fillCasks({ volume, strength: from }, to, casks);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

export default defineCalculator({
  id: 'fill-casks',
  stage: 'maturing',
  title: 'Fill the casks you have',
  purpose: 'A vat let down and run into your casks in order.',
  sources: ['oiml-r22', 'cask-faq-1995'],
  cautions: ['ethanol-vapour', 'lifting'],
  inputs: {
    volume: {
      kind: 'volume20',
      label: 'New spirit',
      range: [0.1, 200_000],
      step: 10,
      from: 'heart.volume',
    },
    from: { kind: 'strength', label: 'Its strength', range: [1, 97], step: 0.1, from: 'heart.strength' },
    to: { kind: 'strength', label: 'Filled at', range: [1, 80], step: 0.1, from: 'filling.strength' },
    casks: {
      label: 'Empty casks, in the order they are filled',
      columns: {
        size: { kind: 'volume', label: 'Size', range: [1, 700], step: 5 },
        count: { kind: 'count', label: 'How many', range: [0, 1000], step: 1 },
      },
      value: [
        { size: 200, count: 3 },
        { size: 125, count: 2 },
        { size: 50, count: 2 },
      ],
      count: [1, 8],
    },
  },
  outputs: {
    filled: { kind: 'count', label: 'Casks filled' },
    empty: { kind: 'count', label: 'Casks left empty' },
    left: { kind: 'volume20', label: 'Left in the vat', digits: 1 },
    alcoholIn: { kind: 'alcohol', label: 'Pure alcohol in the casks' },
    alcoholLeft: { kind: 'alcohol', label: 'Pure alcohol in the vat' },
    made: { kind: 'volume20', label: 'Spirit at filling strength', digits: 1 },
    water: { kind: 'volume20', label: 'Water to add', digits: 1 },
    contraction: { kind: 'volume20', label: 'Volume lost in mixing', digits: 1 },
  },
  refuse: ({ from, to }) =>
    to > from
      ? `Water cannot raise the strength: the spirit is at ${n(from, 1)} % vol, and ${n(to, 1)} was asked for.`
      : undefined,
  compute: (given) => {
    const { reduction, groups, left } = filling(given);
    const filled = sum(groups.map((group) => group.filled));
    return {
      filled: count(filled),
      empty: count(sum(groups.map((group) => Math.floor(group.count))) - filled),
      left,
      alcoholIn: litresOfAlcohol(sum(groups.map((group) => group.alcohol))),
      alcoholLeft: litresOfAlcohol((left * given.to) / 100),
      made: reduction.volume,
      water: reduction.waterVolume,
      contraction: reduction.contraction,
    };
  },
  steps: (given, result) => [
    'Volume at filling strength = pure alcohol ÷ filling strength × 100; the water follows by mass',
    `${w(given.volume)} × ${w(given.from)} ÷ ${w(given.to)} = ${n(result.made, 1)} L, with ${n(result.water, 1)} L of water; ${n(result.contraction, 1)} L are lost in mixing`,
    ...filling(given).groups.map(
      ({ size, filled, count: all, alcohol, left }) =>
        `${n(filled, 0)} of ${n(Math.floor(all), 0)} casks of ${n(size, 0)} L, with ${n(alcohol, 1)} L of pure alcohol; ${n(left, 1)} L stay in the vat`,
    ),
  ],
  remark: (_, { filled, empty, left }) => {
    if (empty === 0 && left < 0.05) return 'Every cask is full and the vat is empty.';
    if (empty === 0)
      return `Every cask is full and ${n(left, 1)} L stay in the vat: ${left > 700 ? 'find more casks' : 'find one more cask'} for them, or keep them for the next filling.`;
    return `${n(empty, 0)} of ${n(filled + empty, 0)} casks ${empty === 1 ? 'stays' : 'stay'} empty: the ${n(left, 1)} L in the vat would fill none of them to the bung. Use a smaller cask, or keep them for the next filling.`;
  },
  chart: (given) => {
    const { reduction, groups } = filling(given);
    const sofar = groups.map((_, i) => sum(groups.slice(0, i + 1).map((group) => group.filled)));
    return {
      caption: 'Spirit in the vat, as the casks are filled',
      columns: [
        { kind: 'count', label: 'Casks filled', values: [0, ...sofar] },
        {
          kind: 'volume20',
          label: 'In the vat',
          values: [reduction.volume, ...groups.map((group) => group.left)],
        },
        {
          kind: 'volume',
          label: 'Size of these',
          empty: 1,
          values: [0, ...groups.map((group) => group.size)],
        },
        {
          kind: 'count',
          label: 'Of them filled',
          empty: 1,
          values: [0, ...groups.map((group) => group.filled)],
        },
        {
          kind: 'alcohol',
          label: 'Pure alcohol in them',
          empty: 1,
          values: [0, ...groups.map((group) => group.alcohol)],
        },
      ],
    };
  },
  examples: [
    {
      given: { volume: 1000, from: 70, to: 63.5, casks: [{ size: 200, count: 5 }] },
      gives: { water: 108.028, filled: 5, empty: 0, left: 102.362 },
      within: 2e-4,
      source: 'derived',
      note: 'water by masses with densities to 0.01 kg/m³: 1,000 × 70 ÷ 63.5 × 901.15 less 1,000 × 885.56, over 998.2; five casks of 200 L out of 1,102.36 L',
    },
    {
      given: { volume: 7874.01575, from: 63.5, to: 63.5, casks: [{ size: 200, count: 50 }] },
      gives: { filled: 39, empty: 11, left: 74.01575, alcoholIn: 4953, alcoholLeft: 47 },
      within: 1e-5,
      source: 'derived',
      note: '5,000 L of pure alcohol at 63.5 % vol are 39.3701 casks of 200 L, printed to six figures',
    },
    {
      given: { volume: 100, from: 65, to: 60, casks: [{ size: 50, count: 1 }] },
      gives: { water: 8.76 },
      within: 0.005,
      source: 'dilution-table',
      note: 'printed for 60 °F, three figures',
    },
  ],
});
