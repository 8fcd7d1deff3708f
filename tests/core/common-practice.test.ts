// The whole line against what the trade says of a mash of 9.4 t: common practice, no source.
import { expect, test } from 'vitest';
import { settleRound } from '../../src/core/distilling/round.ts';
import { fermentWort } from '../../src/core/fermenting/wash.ts';
import { mashEfficiency } from '../../src/core/mashing/wort.ts';
import { splitGrist } from '../../src/core/milling/grist.ts';
import { gravity, kilograms, litres20, percent, share, strength } from '../../src/core/quantity.ts';
import { answer } from './draw.ts';

const wash = { volume: litres20(42_500), strength: strength(9) };
const rounds = [0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3].map((reflux) => ({
  reflux,
  ...answer(
    settleRound({
      wash,
      washStill: { until: strength(1) },
      spiritStill: {
        reflux: share(reflux),
        foreshots: strength(74),
        heart: strength(62.5),
        feints: strength(1),
      },
      diluteTo: strength(30),
    }),
  ),
}));

test('9.4 t of malt fill 42,500 L with a wort that ferments to about 9 % vol', () => {
  const wort = { volume: wash.volume, gravity: gravity(1.064) };
  expect(Math.abs(fermentWort(wort, gravity(0.997)).strength - 9)).toBeLessThan(0.3);
  const efficiency = mashEfficiency(wort, { mass: kilograms(9400), extract: percent(77.5) });
  expect(efficiency).toBeGreaterThan(93);
  expect(efficiency).toBeLessThan(100);
});

test('a grist of 20, 70 and 10 in a hundred is the whole of the malt', () => {
  const grist = answer(splitGrist(kilograms(9400), { husk: percent(20), flour: percent(10) }));
  expect(grist).toEqual({ husk: 1880, grits: 6580, flour: 940 });
});

test('the low wines are within 1.5 of 22 % vol', () => {
  expect(Math.abs(rounds[0]!.lowWines.strength - 22)).toBeLessThan(1.5);
});

test.each(rounds)(
  'reflux $reflux: the heart from 74 down to 62.5 % vol is 5,500 to 6,000 L, or at most 1 % short of it',
  ({ heart }) => {
    expect(heart.volume).toBeGreaterThan(5500 * 0.99);
    expect(heart.volume).toBeLessThan(6000);
  },
);

// A heart at the upper end would carry more alcohol than the wash brought, so only the lower end of the statement can be true.
test.each(rounds)(
  'reflux $reflux: 6,000 L at the strength of this heart hold more alcohol than the wash; 5,500 L do not',
  ({ heart }) => {
    const brought = (wash.volume * wash.strength) / 100;
    expect((6000 * heart.strength) / 100).toBeGreaterThan(brought);
    expect((5500 * heart.strength) / 100).toBeLessThan(brought);
  },
);
