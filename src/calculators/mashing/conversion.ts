// What a path of temperatures does to the starch and to the enzymes.
import { formatNumber as n } from '../../core/format.ts';
import {
  halfLife,
  HOTTEST_FOR_BETA,
  restsUntil,
  enzymeSurvival,
  type Rest,
} from '../../core/mashing/enzymes.ts';
import { maltsBegun, ONSETS } from '../../core/mashing/swelling.ts';
import { celsius, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const POINTS = 21; // of the curve
const lasting = (rests: readonly Rest[]) => rests.reduce((sum, { minutes }) => sum + minutes, 0);
const hottest = (rests: readonly Rest[]) => celsius(Math.max(...rests.map(({ temperature }) => temperature)));

export default defineCalculator({
  id: 'conversion',
  stage: 'mashing',
  title: 'Warm enough, and not too warm',
  purpose:
    'Follows a mash through its temperatures: whether the starch gelatinises, and how much of each amylase survives.',
  sources: ['patindol-2012', 'rittenauer-2021', 'brandam-2003', 'maltose-2016'],
  cautions: ['hot-liquor'],
  inputs: {
    rests: {
      label: 'Temperatures of the mash, in order',
      columns: {
        minutes: { kind: 'minutes', label: 'Minutes', range: [0.5, 600], step: 5 },
        temperature: { kind: 'temperature', label: 'Temperature', range: [40, 80], step: 0.5 },
      },
      value: [{ minutes: 20, temperature: 64.5 }],
      count: [1, 8],
    },
  },
  outputs: {
    beta: { kind: 'percent', label: 'Beta-amylase still alive' },
    alpha: { kind: 'percent', label: 'Alpha-amylase still alive' },
    begun: {
      kind: 'percent',
      label: 'Malts whose starch has begun to gelatinise, of 25 tested',
      digits: 0,
    },
    begunMash: { kind: 'percent', label: 'The same, in another laboratory’s small mashes', digits: 0 },
    minutes: { kind: 'minutes', label: 'Total time' },
  },
  compute: ({ rests }) => ({
    beta: enzymeSurvival('beta', rests),
    alpha: enzymeSurvival('alpha', rests),
    begun: maltsBegun('patindol-2012', hottest(rests)),
    begunMash: maltsBegun('rittenauer-2021', hottest(rests)),
    minutes: quantity('minutes', lasting(rests)),
  }),
  steps: ({ rests }, result) => {
    const [first, second] = [ONSETS['patindol-2012'], ONSETS['rittenauer-2021']];
    return [
      `Starch: 25 malts began to gelatinise from ${first[0]} to ${first[1]} °C, another laboratory’s from ${second[0]} to ${second[1]} °C; spread evenly between, ${n(result.begun, 0)} and ${n(result.begunMash, 0)} % have begun at ${n(hottest(rests), 1)} °C`,
      'Enzymes: at each temperature half is lost in the half-life, then half of the rest; left = ½ to the power (minutes ÷ half-life)',
      ...rests.map(
        ({ minutes, temperature }) =>
          `${n(minutes, 0)} min at ${n(temperature, 1)} °C: half-life of beta-amylase ${n(halfLife('beta', temperature), 1)} min, of alpha-amylase ${n(halfLife('alpha', temperature), 0)} min`,
      ),
      `All together, ${n(result.beta, 1)} % of beta-amylase and ${n(result.alpha, 1)} % of alpha-amylase are left`,
    ];
  },
  remark: ({ rests }, { begun, begunMash }) => {
    const harsh =
      'The constants are recalled, and harsh: sugar protects, and one published test kept 85 to 93 % of beta-amylase for 120 minutes at 63 °C in strong maltose.';
    if (hottest(rests) > HOTTEST_FOR_BETA) {
      return `Above ${HOTTEST_FOR_BETA} °C the constants for beta-amylase no longer hold: read its figure only as “little or none”. ${harsh}`;
    }
    if (begunMash === 0)
      return `Neither laboratory saw starch gelatinise as cool as this: the enzymes live, but have little to work on. ${harsh}`;
    if (begun < 100)
      return `In one of the laboratories some malts had not begun to gelatinise at this temperature; test your own. ${harsh}`;
    return harsh;
  },
  chart: ({ rests }) => {
    const times = Array.from({ length: POINTS }, (_, i) => (lasting(rests) * i) / (POINTS - 1));
    const paths = times.map((time) => restsUntil(rests, time));
    return {
      caption: 'Beta-amylase still alive',
      columns: [
        { kind: 'minutes', label: 'Minutes', values: times },
        { kind: 'percent', label: 'Beta-amylase', values: paths.map((path) => enzymeSurvival('beta', path)) },
        {
          kind: 'percent',
          label: 'Alpha-amylase',
          values: paths.map((path) => enzymeSurvival('alpha', path)),
        },
        {
          kind: 'temperature',
          label: 'Mash at',
          values: paths.map((path) => (path.findLast(({ minutes }) => minutes > 0) ?? path[0]!).temperature),
        },
      ],
    };
  },
  examples: [
    {
      given: { rests: [{ minutes: 10, temperature: 63 }] },
      gives: { beta: 50 },
      within: 0.02,
      source: 'brandam-2003',
      note: 'half-life of beta-amylase at 63 °C, recalled to two figures',
    },
    {
      given: { rests: [{ minutes: 116, temperature: 63 }] },
      gives: { alpha: 50 },
      within: 0.02,
      source: 'brandam-2003',
      note: 'half-life of alpha-amylase at 63 °C, recalled to three figures',
    },
    {
      given: { rests: [{ minutes: 4.2, temperature: 64.3 }] },
      gives: { begun: 100, begunMash: 100 },
      within: 1e-9,
      source: 'patindol-2012',
      note: 'the last of 25 malts began at 64.3 °C',
    },
    {
      given: { rests: [{ minutes: 60, temperature: 57.1 }] },
      gives: { begun: 0, begunMash: 100 },
      within: 1e-9,
      source: 'rittenauer-2021',
      note: 'the last of the small mashes began at 57.1 °C, below the first of the 25 malts',
    },
  ],
});
