// Sums between the figures of a house, and sums done aloud: by numbers made here by hand.
import { expect, test } from 'vitest';
import { quantitiesIn } from '../../src/talk/quantities.ts';
import { sumsAloudIn } from '../../src/talk/sums-aloud.ts';
import { sumsHeld, type FigureTelling } from '../../src/talk/sums.ts';

const told = (all: Readonly<Record<string, readonly FigureTelling[]>>) => new Map(Object.entries(all));
const telling = (quantity: number, value: number, chance = 1): FigureTelling => ({ quantity, value, chance });

test('Fourteen mashes in each of 43 weeks are 602 a year: all three stand in one sum', () => {
  const held = sumsHeld(
    told({ mashesPerWeek: [telling(0, 14)], weeksPerYear: [telling(1, 43)], mashesPerYear: [telling(2, 602)] }),
  );
  for (const [figure, quantity] of [['mashesPerWeek', 0], ['weeksPerYear', 1], ['mashesPerYear', 2]] as const)
    expect(held.get(figure)?.get(quantity)).toEqual({ near: 1, far: 1 });
}); // prettier-ignore

test('A sum that fails is none, one by rounding counts half, and one apart is not near', () => {
  const of = (mashes: number, place = 2) =>
    sumsHeld(told({ mashesPerWeek: [telling(0, 14)], weeksPerYear: [telling(1, 43)], mashesPerYear: [telling(place, mashes)] }))
      .get('mashesPerYear')
      ?.get(place);
  expect(of(650)).toBeUndefined();
  expect(of(600)).toEqual({ near: 1, far: 1 }); // as said: 600 is within 4 in a thousand of 602
  expect(of(608)).toEqual({ near: 0.5, far: 0.5 });
  expect(of(602, 40)).toEqual({ near: 0, far: 1 });
}); // prettier-ignore

test('A sum is as sure as what it is made of, and no quantity stands in it twice', () => {
  const unsure = sumsHeld(
    told({ lowWinesVolume: [telling(0, 15640, 0.5)], feintsVolume: [telling(1, 7760)], chargeVolume: [telling(2, 23400)] }),
  );
  expect(unsure.get('chargeVolume')?.get(2)?.near).toBe(0.5);
  expect(unsure.get('feintsVolume')?.get(1)?.near).toBe(0.5);
  expect(unsure.get('lowWinesVolume')?.get(0)?.near).toBe(1);
  const twice = sumsHeld(told({ numberOfWashStills: [telling(0, 2)], numberOfSpiritStills: [telling(0, 2)], numberOfStills: [telling(1, 4)] }));
  expect(twice.get('numberOfStills')).toBeUndefined();
}); // prettier-ignore

test.each([
  ['Fourteen times 3,870 is 54,180.', 'times'],
  ['51,100 litres in two is 25,550 each.', 'over'],
  ['15,640 and 7,760 make 23,400.', 'plus'],
  ['51,100 less 15,640 leaves 35,460.', 'less'],
] as const)('A sum done aloud is seen: %s', (text, manner) => {
  const [first, second, result] = sumsAloudIn(quantitiesIn(text));
  expect(result?.result[manner]).toBe(1);
  expect(first?.part[manner]).toBe(1);
  expect(second?.part[manner]).toBe(1);
});

test('Numbers that make no sum are told of none', () => {
  for (const { result, part } of sumsAloudIn(quantitiesIn('Ten tonnes, 38,700 litres, then 51,130 of wort.')))
    expect([result, part]).toEqual([{}, {}]);
});
