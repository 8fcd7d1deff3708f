// When a cask becomes too weak to be called whisky.
import { formatCount, formatNumber as n } from '../../core/format.ts';
import { fallsBelow, fallsEvenly, LONGEST_FOLLOWED } from '../../core/maturing/falls-below.ts';
import { litres20, quantity, years, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { storeInputs, storeOf } from './store.ts';

interface Given {
  readonly size: Quantity<'volume'>;
  readonly strength: Quantity<'strength'>;
  readonly loss: Quantity<'percent'>;
  readonly humidity: Quantity<'percent'>;
  readonly steady: Quantity<'percent'>;
  readonly limit: Quantity<'strength'>;
}

const passing = (given: Given) =>
  fallsBelow(
    {
      volume: litres20(given.size),
      strength: given.strength,
      cask: { size: given.size },
      store: storeOf(given),
    },
    given.limit,
  );

export default defineCalculator({
  id: 'below-forty',
  stage: 'maturing',
  title: 'How long a cask stays strong enough',
  purpose: 'When a cask falls below 40 % vol, or another floor.',
  sources: ['eu-2019-787', 'cfr-27-5', 'conner-2003', 'memory'],
  inputs: {
    by: {
      label: 'Strength falls',
      options: { store: 'with the air of the store', evenly: 'evenly, as your regauges show' },
      value: 'store',
    },
    size: { kind: 'volume', label: 'Cask, filled to', range: [1, 700], step: 10, from: 'casks.meanSize' },
    strength: {
      kind: 'strength',
      label: 'Strength now',
      range: [30, 80],
      step: 0.1,
      from: 'filling.strength',
    },
    limit: { kind: 'strength', label: 'Must not fall below', range: [30, 60], step: 0.5, value: 40 },
    ...storeInputs,
    yearly: {
      kind: 'strength',
      label: 'Fall in a year',
      range: [0.05, 3],
      step: 0.05,
      value: 0.4,
      usedWhen: { choice: 'by', is: ['evenly'] },
    },
  },
  main: ['by', 'strength', 'loss', 'yearly', 'limit'],
  outputs: {
    year: { kind: 'years', label: 'Strong enough for', digits: 1 },
    strength: { kind: 'strength', label: 'Strength then, or after 60 years', digits: 1 },
    firstYear: { kind: 'strength', label: 'Fall in the first year', digits: 2 },
  },
  refuse: ({ strength, limit }) =>
    strength < limit ? `${n(strength, 1)} % vol is below ${n(limit, 1)} already.` : undefined,
  compute: (given) => {
    if (given.by === 'evenly') {
      const year = Math.min(LONGEST_FOLLOWED, fallsEvenly(given.strength, given.limit, given.yearly));
      return {
        year: years(year),
        strength: quantity('strength', given.strength - year * given.yearly),
        firstYear: given.yearly,
      };
    }
    const { year, cask, record } = passing(given);
    return {
      year: year ?? LONGEST_FOLLOWED,
      strength: cask.strength,
      firstYear: quantity('strength', record[0]!.strength - record[1]!.strength),
    };
  },
  steps: (given, result) =>
    given.by === 'evenly'
      ? [
          'Years = (strength now − limit) ÷ fall in a year',
          `(${n(given.strength, 1)} − ${n(given.limit, 1)}) ÷ ${n(given.yearly, 2)} = ${n((given.strength - given.limit) / given.yearly, 2)}`,
        ]
      : [
          `The cask is followed year by year in air of ${n(given.humidity, 0)} %, steady at ${n(given.steady, 0)} %, losing ${n(given.loss, 1)} % of its alcohol in a year`,
          `In the first year it goes from ${n(given.strength, 1)} to ${n(given.strength - result.firstYear, 2)} % vol`,
          `After ${n(result.year, 1)} years it stands at ${n(result.strength, 1)} % vol`,
        ],
  remark: (given, { year, strength }) => {
    if (year >= LONGEST_FOLLOWED)
      return `In 60 years it does not fall below ${n(given.limit, 1)} % vol: it is at ${n(strength, 1)} % vol then.`;
    const law = given.limit === 40 ? ', and may no longer be sold as whisky where 40 is the floor' : '';
    return `After ${n(year, 1)} years it falls below ${n(given.limit, 1)} % vol${law}. Regauge it as usual, and every year from four fifths of that time on, ${formatCount(Math.max(0, Math.round(year * 0.8)), 'year')}; or vat it with stronger casks before then.`;
  },
  chart: (given) => {
    const ages = Array.from({ length: LONGEST_FOLLOWED + 1 }, (_, year) => year);
    const record = given.by === 'store' ? passing(given).record : undefined;
    const evenly = (year: number) => Math.max(0, given.strength - year * given.yearly);
    return {
      caption: 'Strength, year by year',
      limits: [{ value: given.limit, label: 'not to fall below' }],
      columns: [
        { kind: 'years', label: 'Year', values: ages },
        {
          kind: 'strength',
          label: 'Strength',
          values: ages.map((year) => record?.[year]?.strength ?? evenly(year)),
        },
      ],
    };
  },
  examples: [
    {
      given: {
        by: 'evenly',
        size: 200,
        strength: 63.5,
        limit: 40,
        loss: 2,
        humidity: 80,
        steady: 65,
        yearly: 0.4,
      },
      gives: { year: 58.75, strength: 40 },
      within: 1e-9,
      source: 'derived',
      note: '(63.5 − 40) ÷ 0.4, the middle of the 0.2–0.6 % vol a year remembered for a cool, damp country',
    },
    {
      given: {
        by: 'store',
        size: 200,
        strength: 63.5,
        limit: 40,
        loss: 2,
        humidity: 65,
        steady: 65,
        yearly: 0.4,
      },
      gives: { year: 60, strength: 63.5 },
      within: 1e-6,
      source: 'derived',
      note: 'at the steady humidity the strength never moves',
    },
  ],
});
