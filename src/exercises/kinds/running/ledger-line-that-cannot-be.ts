// Four lines of a ledger, of which one does not agree with itself.
import type { Chance } from '../../seeded-random.ts';
import { choice, type Option } from '../../choice.ts';
import { formatNumber as n } from '../../../core/format.ts';

const WAYS = [
  'In from the still',
  'Out to the filling vat',
  'In from the filling vat',
  'Out to casks',
  'In from casks',
  'Out to bottling',
] as const;
const OFF = [0.9, 0.93, 0.95, 1.05, 1.07, 1.1]; // a wrong line's alcohol, as a part of what it should be

/** A line of the ledger, and its sum; its alcohol as it is, or off by a factor. */
function lineOf(way: string, chance: Chance, off = 1): Option {
  const litres = 100 + 10 * chance.below(120) + chance.below(10);
  const strength = (560 + chance.below(150)) / 10;
  const alcohol = (litres * strength) / 100;
  const is = n(alcohol, 1);
  return {
    text: `${way}: ${n(litres, 0)} L at 20 °C, ${n(strength, 1)} % vol, ${n(alcohol * off, 1)} L of pure alcohol.`,
    why:
      off === 1
        ? `${n(litres, 0)} × ${n(strength, 1)} ÷ 100 = ${is}: it agrees.`
        : `${n(litres, 0)} × ${n(strength, 1)} ÷ 100 = ${is}, and the line says ${n(alcohol * off, 1)}. One line through it, the right figure beside it, and initials.`,
  };
}

const kind = choice({
  id: 'ledger-line-that-cannot-be',
  title: 'The line that does not agree',
  topic: 'running',
  form: 'impossible',
  level: 1,
  sources: ['derived', 'common-practice'],
  ask: (chance) => {
    const [wrong, ...rest] = chance.shuffle(WAYS);
    const scene = chance.pick([
      'Before you sign the ledger you go through its lines.',
      'The colleague of the night shift has written four lines.',
      'The total of the week is off, and four lines may be why.',
    ]);
    return {
      prompt: `${scene} Which of them cannot be true?`,
      right: lineOf(wrong!, chance, chance.pick(OFF)),
      others: rest.slice(0, 3).map((way) => lineOf(way, chance)),
    };
  },
});

export default { ...kind, since: 7 };
