// How much water the wort cooler takes.
import wortCooler from '../../../calculators/mashing/wort-cooler.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

const kind = exercise(wortCooler, {
  level: 2,
  ask: 'water',
  vary: {
    wort: [2000, 2400, 4000, 5000, 6000, 8000, 12_000],
    from: [60, 61, 62, 63, 64],
    wanted: [19, 20, 21, 22],
    water: [6, 8, 10, 12],
    leaves: [38, 40, 42, 45],
    near: [3],
  },
  prompt: (show) =>
    `${show.wort} of wort at ${show.from} is to leave the cooler at ${show.wanted}. Water comes at ${show.water} and leaves at ${show.leaves}. Count a litre of wort as holding as much heat as a litre of water. How many litres of water run through?`,
  working: ({ wort, from, wanted, water, leaves }) => [
    'The water takes what the wort gives, and a litre of either holds as much heat: water = wort × its fall ÷ the water’s rise',
    `${w(wort)} × (${w(from)} − ${w(wanted)}) ÷ (${w(leaves)} − ${w(water)}) = ${n((wort * (from - wanted)) / (leaves - water), 0)} L`,
  ],
  slips: [
    {
      family: 'upsideDown',
      gives: ({ wort, from, wanted, water, leaves }) => (wort * (leaves - water)) / (from - wanted),
      say: 'Upside down: the more degrees the wort must fall, the more water it takes.',
    },
    {
      family: 'temperature',
      gives: ({ wort, from, wanted, water }) => (wort * (from - wanted)) / (wanted - water),
      say: 'The water does not stop at the temperature of the cooled wort: it runs the other way and leaves as warm as it says.',
    },
    {
      family: 'forgotten',
      gives: ({ wort }) => wort,
      say: 'Litre for litre would do only if the water rose by as many degrees as the wort falls.',
    },
  ],
});

export default { ...kind, since: 5 };
