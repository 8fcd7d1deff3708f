// A number in plain figures is read the same by what reads it at once and by the whole reader.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { kinds, type KindName } from '../../src/core/kinds.ts';
import { readAtOnce } from '../../src/core/reading/at-once.ts';
import { readQuantity } from '../../src/core/reading/quantity.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { unitsOf } from '../../src/core/units.ts';

const names = Object.keys(kinds) as KindName[];
const figures = fc
  .tuple(
    fc.constantFrom('', '-', '−'),
    fc.nat({ max: 99_999_999 }),
    fc.option(fc.nat({ max: 9999 }), { nil: undefined }),
  )
  .map(([sign, whole, part]) => `${sign}${whole}${part === undefined ? '' : `.${part}`}`);

test.each(names)('%s, in each of its units', (kind) => {
  fc.assert(
    fc.property(fc.constantFrom(...unitsOf(kind)), figures, fc.boolean(), ({ unit }, text, plain) => {
      const whole = readQuantity(text, { kind, unit, plain });
      const atOnce = readAtOnce(text, { kind, unit, plain });
      if (isRefusal(whole) || whole.as === 'range') throw new Error(`${text} is not read as a number`);
      expect(atOnce).toEqual({ as: whole.as, value: whole.value, unit: whole.unit });
    }),
  );
});

test('what has more in it than figures is left to the whole reader', () => {
  for (const text of [
    '',
    'ten',
    '1,250',
    '12 %',
    '1/2',
    '1e3',
    '5 ± 1',
    'about 5',
    '.5',
    '5.',
    '--5',
    '1.2.3',
  ])
    expect(readAtOnce(text, { kind: 'mass' }), text).toBeUndefined();
});
