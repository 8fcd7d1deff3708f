// Which reading of a regauge cannot be true.
import { formatNumber as n } from '../../../core/format.ts';
import { choice } from '../../choice.ts';

const FILLED = [190, 195, 200, 205, 210, 250];
const STRENGTHS = [62.5, 63.5, 64, 65];

export default choice({
  id: 'regauge-that-cannot-be',
  title: 'Which regauge cannot be?',
  topic: 'maturing',
  form: 'impossible',
  level: 2,
  sources: ['derived', 'conner-2003'],
  ask: (chance) => {
    const [filled, strength] = [chance.pick(FILLED), chance.pick(STRENGTHS)];
    const poured = (filled * strength) / 100;
    const reading = (volume: number, found: number) => {
      const alcohol = (volume * found) / 100;
      const text = `${n(volume, 0)} L at ${n(found, 1)} % vol`;
      return alcohol > poured
        ? {
            text,
            why: `That is ${n(alcohol, 1)} L of pure alcohol, more than the ${n(poured, 1)} L poured in. Strength may rise in a dry store; the alcohol itself cannot grow.`,
          }
        : {
            text,
            why: `That is ${n(alcohol, 1)} L of pure alcohol of the ${n(poured, 1)} L poured in, which may well be.`,
          };
    };
    // A strength that has risen further than the litres have fallen.
    const volume = Math.round(filled * chance.pick([0.93, 0.94, 0.95]));
    const risen = Math.ceil((100 * poured * chance.pick([1.02, 1.03, 1.04])) / volume);
    return {
      prompt: `Four casks were each filled with ${filled} L at ${n(strength, 1)} % vol and lay some years in different stores. Which regauge cannot be true?`,
      right: reading(volume, risen),
      others: [
        reading(Math.round(filled * chance.pick([0.86, 0.88, 0.9])), strength - chance.pick([2.1, 2.8, 3.4])),
        reading(Math.round(filled * chance.pick([0.78, 0.8, 0.82])), strength + chance.pick([2.2, 3.1, 4])),
        reading(Math.round(filled * chance.pick([0.72, 0.74, 0.76])), strength - chance.pick([4.3, 5.2, 6])),
      ],
    };
  },
});
