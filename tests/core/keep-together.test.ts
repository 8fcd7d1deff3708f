// A number stays with its unit at the end of a line.
import { expect, test } from 'vitest';
import { keepTogether } from '../../src/core/keep-together.ts';

test.each([
  ['It is at 20 % vol.', 'It is at 20_%_vol.'],
  ['From 20 to 25 % vol, 3,609 L at 20 °C', 'From 20 to 25_%_vol, 3,609_L at 20_°C'],
  ['after 48 hours', 'after 48_hours'],
  ['two litres, 5 volumes', 'two litres, 5 volumes'],
])('%s', (written, kept) => {
  expect(keepTogether(written)).toBe(kept.replaceAll('_', '\u00a0'));
});
