// Several waters through one bed, one after another.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import {
  asWort,
  draffMoistureOf,
  drainWaters,
  ownWater,
  runoffsTogether,
  waterMasses,
  type Drained,
} from '../../core/mashing/waters.ts';
import { HYDROLYSIS_WATER } from '../../core/mashing/wort.ts';
import { isRefusal, type Refusal } from '../../core/refusal.ts';
import { percent } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { allWaters, bedInputs, refuseRunoffs, type BedGiven } from './bed.ts';

const drain = (given: BedGiven) => drainWaters(given, allWaters(given)) as Drained;
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

export default defineCalculator({
  id: 'successive-waters',
  stage: 'mashing',
  title: 'One water after another',
  purpose:
    'Follows the extract through each water: what it carries off, how strong it runs, and what the draff keeps.',
  sources: ['derived', 'sugar-tables', 'memory'],
  cautions: ['hot-liquor'],
  inputs: bedInputs,
  main: ['malt', 'ratio', 'strike', 'later'],
  outputs: {
    volume: { kind: 'volume20', label: 'Wort collected' },
    gravity: { kind: 'gravity', label: 'Its gravity' },
    extract: { kind: 'mass', label: 'Extract in it' },
    part: { kind: 'percent', label: 'Malt’s extract recovered' },
    weak: { kind: 'mass', label: 'Extract in the later runoffs' },
    left: { kind: 'mass', label: 'Extract left in the draff', digits: 1 },
    leftPart: { kind: 'percent', label: 'Malt’s extract left in the draff' },
    draffMoisture: { kind: 'percent', label: 'Moisture of the draff' },
  },
  refuse: refuseRunoffs,
  compute: (given) => {
    const drained: Drained | Refusal = drainWaters(given, allWaters(given));
    if (isRefusal(drained)) return drained;
    const wort = runoffsTogether(drained.runoffs.slice(0, given.collected));
    const strength = asWort(wort);
    if (isRefusal(strength)) return strength;
    const promised = (given.malt * given.extract) / 100;
    return {
      volume: strength.volume,
      gravity: strength.gravity,
      extract: wort.extract,
      part: percent((100 * wort.extract) / promised),
      weak: runoffsTogether(drained.runoffs.slice(given.collected)).extract,
      left: drained.left.extract,
      leftPart: percent((100 * drained.left.extract) / promised),
      draffMoisture: draffMoistureOf(given, drained.left),
    };
  },
  steps: (given, result) => {
    const { runoffs } = drain(given);
    const masses = waterMasses(given, allWaters(given));
    const held = given.malt * given.held;
    const own = ownWater(given);
    let sofar = (given.malt * given.extract) / 100;
    return [
      `The malt brings ${w(given.malt)} × ${given.extract} ÷ 100 = ${w(sofar)} kg of extract; drained grains keep ${w(given.malt)} × ${given.held} = ${w(held)} kg of water`,
      `It brings water of its own, and its starch takes some up as it becomes sugar, ${HYDROLYSIS_WATER} kg in each kilogram of extract: ${w(given.malt)} × ${given.moisture} ÷ 100 − ${HYDROLYSIS_WATER} × ${w(sofar)} = ${own < 0 ? `−${w(-own)}` : w(own)} kg`,
      `So of the first water ${w(masses[0]!)} ${own < 0 ? `− ${w(-own)}` : `+ ${w(own)}`} − ${w(held)} = ${w(runoffs[0]!.water)} kg run off`,
      'A water carries off the part runoff ÷ (runoff + kept) of the extract it mixes with; the first mixes with all, a later one with the share it reaches',
      ...runoffs.map((runoff, i) => {
        const mixed = i === 0 ? 1 : given.washing;
        const said = `The ${ORDINALS[i]} water weighs ${w(masses[i]!)} kg and ${w(runoff.water)} kg run off: ${mixed} × ${w(sofar)} × ${w(runoff.water)} ÷ (${w(runoff.water)} + ${mixed} × ${w(held)}) = ${n(runoff.extract, 1)} kg of extract`;
        sofar -= runoff.extract;
        return said;
      }),
      `${n(result.left, 1)} kg stay in the draff`,
    ];
  },
  remark: (given, { leftPart }) => {
    const waters = allWaters(given);
    const last = waters.at(-1)!;
    const more = drainWaters(given, [...waters, last]) as Drained;
    const worth = more.runoffs.at(-1)!.extract;
    return `${leftPart > 5 ? 'The draff keeps a good deal. ' : ''}One more water like the last would fetch ${n(worth, 1)} kg, ${n((1e4 * worth) / (given.malt * given.extract), 1)} % of the malt’s extract. Adjust the share reached until the gravities agree with your readings.`;
  },
  chart: (given) => {
    const { runoffs } = drain(given);
    const worts = runoffs.map((runoff) => asWort(runoff) as Exclude<ReturnType<typeof asWort>, Refusal>);
    return {
      caption: 'Extract that each water carries off',
      as: 'bars',
      columns: [
        { kind: 'count', label: 'Which water', values: runoffs.map((_, i) => i + 1) },
        { kind: 'mass', label: 'Extract', values: runoffs.map(({ extract }) => extract) },
        { kind: 'plato', label: 'Strength', values: worts.map(({ plato }) => plato) },
        { kind: 'gravity', label: 'Gravity', values: worts.map(({ gravity }) => gravity) },
        { kind: 'volume20', label: 'Runoff', values: worts.map(({ volume }) => volume) },
      ],
    };
  },
  examples: [
    {
      given: {
        malt: 1000,
        moisture: 4,
        extract: 77,
        ratio: 3.99798,
        strike: 20,
        later: [
          { ratio: 3.00539, temperature: 20 },
          { ratio: 3.00539, temperature: 20 },
        ],
        collected: 3,
        held: 1,
        washing: 1,
      },
      gives: { leftPart: 1.5625, part: 98.4375 },
      within: 1e-4,
      source: 'derived',
      note: '0.25 to the third power: 4 t of water at first, the malt’s 40 kg in and the starch’s 30.8 kg out, then 3 t twice, at 20 °C, and 1 t kept each time',
    },
  ],
});
