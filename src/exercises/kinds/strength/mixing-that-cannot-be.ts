// Which entry of a day's mixing cannot be true.
import { formatNumber as n } from '../../../core/format.ts';
import { litres20, strength } from '../../../core/quantity.ts';
import { reduce } from '../../../core/spirit/mixing.ts';
import { choice } from '../../choice.ts';

const VOLUMES = [400, 500, 600, 800, 1000, 1200, 1500];
const STRENGTHS = [68, 69, 70, 71, 72];
const LIMITS = [55, 58, 60, 62, 63.5];

export default choice({
  id: 'mixing-that-cannot-be',
  title: 'Which mixing cannot be?',
  topic: 'strength',
  form: 'impossible',
  level: 2,
  sources: ['oiml-r22', 'derived'],
  ask: (chance) => {
    const entry = (volume: number, grown: boolean) => {
      const [from, to] = [chance.pick(STRENGTHS), chance.pick(LIMITS)];
      const made = reduce({ volume: litres20(volume), strength: strength(from) }, strength(to));
      const water = Math.round(made.waterVolume);
      const stands = grown
        ? volume + water + Math.max(2, Math.round(made.contraction))
        : Math.round(made.volume);
      const text = `${n(volume, 0)} L at ${from} % vol and ${n(water, 0)} L of water made ${n(stands, 0)} L.`;
      const off = Math.abs(volume + water - stands);
      const why = grown
        ? `That is ${n(off, 0)} L more than was poured. Spirit and water draw together; they never grow.`
        : `That is ${n(off, 0)} L less than was poured, as it should be: spirit and water draw together.`;
      return { text, why };
    };
    const [odd, ...rest] = chance.shuffle(VOLUMES).slice(0, 4);
    return {
      prompt: 'Four reductions stand in the vat book, all measured at 20 °C. Which entry cannot be true?',
      right: entry(odd!, true),
      others: rest.map((volume) => entry(volume, false)),
    };
  },
});
