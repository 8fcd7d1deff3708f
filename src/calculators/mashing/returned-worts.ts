// Weak worts that become the first water of the next mash.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { firstMashes, returnWeakWorts, type Returned } from '../../core/mashing/returned-worts.ts';
import { asWort } from '../../core/mashing/waters.ts';
import { isRefusal } from '../../core/refusal.ts';
import { percent } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { allWaters, bedInputs, refuseRunoffs, type BedGiven } from './bed.ts';

const MASHES = 6; // enough to see the balance come
const balance = (given: BedGiven) => returnWeakWorts(given, allWaters(given), given.collected);

export default defineCalculator({
  id: 'returned-worts',
  stage: 'mashing',
  title: 'Weak worts returned',
  purpose:
    'Follows a house whose last waters begin the next mash until they bring as much as they take, and finds what returning them saves.',
  sources: ['derived', 'sugar-tables', 'memory'],
  cautions: ['hot-liquor'],
  inputs: bedInputs,
  main: ['malt', 'ratio', 'strike', 'later'],
  outputs: {
    plato: { kind: 'plato', label: 'Strength of the returned wort' },
    weakVolume: { kind: 'volume20', label: 'Wort returned' },
    weakExtract: { kind: 'mass', label: 'Extract returned', digits: 1 },
    volume: { kind: 'volume20', label: 'Wort to the washback' },
    gravity: { kind: 'gravity', label: 'Its gravity' },
    recovered: { kind: 'percent', label: 'Extract recovered in it' },
    without: { kind: 'percent', label: 'Recovered if nothing is returned' },
    left: { kind: 'percent', label: 'Left in the draff' },
  },
  refuse: refuseRunoffs,
  compute: (given) => {
    const found = balance(given);
    if (isRefusal(found)) return found;
    const strongest = asWort(found.drained.runoffs[0]!);
    if (isRefusal(strongest)) return strongest;
    const [wort, weak] = [asWort(found.wort), asWort(found.weak)];
    if (isRefusal(wort)) return wort;
    if (isRefusal(weak)) return weak;
    const part = (extract: number) => percent((1e4 * extract) / (given.malt * given.extract));
    return {
      plato: weak.plato,
      weakVolume: weak.volume,
      weakExtract: found.weak.extract,
      volume: wort.volume,
      gravity: wort.gravity,
      recovered: part(found.wort.extract),
      without: part(found.withoutReturn),
      left: part(found.drained.left.extract),
    };
  },
  steps: (given, result) => {
    const { passedOn, wort, weak, fresh } = balance(given) as Returned;
    const promised = (given.malt * given.extract) / 100;
    return [
      `Of the extract in the tun, the weak worts take the part s = ${w(passedOn)} to the next mash; the working of “One water after another” shows how`,
      'In balance, what is passed on is what was brought: y = s × (E + y), so y = s × E ÷ (1 − s)',
      `${w(passedOn)} × ${w(promised)} ÷ (1 − ${w(passedOn)}) = ${n(result.weakExtract, 1)} kg`,
      `In ${n(weak.water, 0)} kg of water that is ${n(result.plato, 2)} °P; ${n(fresh, 0)} kg of fresh water fill up the first water`,
      `The wort then holds ${n(wort.extract, 0)} of the malt’s ${n(promised, 0)} kg: ${n(result.recovered, 1)} %, and ${n(result.left, 1)} % is in the draff`,
    ];
  },
  remark: (given, { recovered, without }) =>
    `Returning the weak worts brings ${n(((recovered - without) * given.malt * given.extract) / 1e4, 0)} kg more extract to the washback at every mash, ${n(recovered - without, 1)} % of what the malt has. Weak wort spoils if kept warm: follow your site’s procedure.`,
  chart: (given) => {
    const found = balance(given) as Returned;
    const promised = (given.malt * given.extract) / 100;
    const worts = firstMashes(found, MASHES);
    return {
      caption: 'Share of the malt’s extract in the wort, from a first mash with fresh water',
      as: 'bars',
      columns: [
        { kind: 'count', label: 'Mash', values: worts.map((_, i) => i + 1) },
        { kind: 'percent', label: 'In the wort', values: worts.map((extract) => (100 * extract) / promised) },
        { kind: 'mass', label: 'Extract in the wort', values: worts },
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
        later: [{ ratio: 3.00539, temperature: 20 }],
        collected: 1,
        held: 1,
        washing: 1,
      },
      gives: { recovered: 92.3077, without: 75, left: 7.6923, weakExtract: 177.692 },
      within: 1e-4,
      source: 'derived',
      note: 'by hand: 3/4 drawn, then 3/16 passed on, 1/16 left; in balance 12/13, 3/13 and 1/13 of the malt’s 770 kg',
    },
  ],
});
