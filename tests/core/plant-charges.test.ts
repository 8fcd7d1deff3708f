// Charges a week and what does not fit, redone by hand.
import { expect, test } from 'vitest';
import { chargesOfLine } from '../../src/core/plant/charges.ts';
import { chargesOfStills } from '../../src/core/plant/group-charges.ts';
import { eachStill } from '../../src/core/plant/each-still.ts';
import { notNamed } from '../../src/core/plant/not-named.ts';
import { plantFits } from '../../src/core/plant/fits.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import type { Plant } from '../../src/core/plant/plant.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import type { House } from '../../src/core/line/house.ts';
import { answer, apart } from './draw.ts';
import { plainPlant, stills } from './plants.ts';

test('wash divides by what the stills hold, and each mash into whole charges as far as the hours go', () => {
  // Two of 16,000 L and one of 8,000 L hold 40,000 L. Of a mash of 31,000 L the two take 32/40, 24,800 L: 1.55, so 2 charges of
  // 12,400 L, 36 in the week of 18; the one takes 8/40, 6,200 L: one charge, 18 in the week.
  const [two, one] = chargesOfStills([stills(2, 16_000, 0), stills(1, 8000, 0)], 31_000, 18);
  expect(two).toMatchObject({ number: 2, aWeek: 36, hoursAWeek: 252 });
  expect(two!.litres).toBeCloseTo(12_400, 6);
  expect(one).toMatchObject({ number: 1, aWeek: 18, hoursAWeek: 126 });
  expect(one!.litres).toBeCloseTo(6200, 6);
  // 36 × 7 h for two stills are 126 h each of a week of 168 h.
  expect(two!.taken).toBeCloseTo(126 / 168, 12);
  // At 10 h a charge 36 would take 180 h of each: so the fewest, 446,400 ÷ 16,000 = 27.9: 28 charges of 15,942.9 L.
  const [slow] = chargesOfStills([stills(2, 16_000, 0, 10), stills(1, 8000, 0)], 31_000, 18);
  expect(slow).toMatchObject({ aWeek: 28, hoursAWeek: 280 });
  expect(slow!.litres).toBeCloseTo(15_942.857, 3);
});

test('a charge may be of more than a mash, or a mash of several charges', () => {
  // A mash of 7,500 L fills less than half of 18,000 L: 13 of them are 97,500 L, 5.4 charges, so 6 of 16,250 L.
  const [large] = chargesOfStills([stills(1, 18_000, 0)], 7500, 13);
  expect(large).toMatchObject({ aWeek: 6, litres: 16_250 });
  expect(large!.mashes).toBeCloseTo(13 / 6, 12);
  // 6 mashes of 7,500 L in charges of 2,500 L: three to a mash.
  const [small] = chargesOfStills([stills(1, 2500, 0)], 7500, 6);
  expect(small).toMatchObject({ aWeek: 18, litres: 2500, aMash: 3 });
});

/** 6.5 t a mash, 18 a week, with wort of the built-in house's gravity: 7,500 L × 6.5/1.5 = 32,500 L. */
const large: House = { ...builtInHouse, maltPerMash: 6500, wortVolume: 32_500, mashesPerWeek: 18 } as House;
const largePlant: Plant = {
  ...plainPlant,
  mashTuns: [{ number: 1, hours: 8 }],
  washbacks: [{ number: 8, full: 38_000, working: 32_000, material: 'steel' }],
  shortFermentation: 60,
  washCharger: { holds: 20_000 },
  lowWinesReceiver: { holds: 15_000 },
  spiritReceiver: { holds: 8000 },
  washStills: [stills(2, 16_500, 0.05)],
  spiritStills: [stills(2, 9000, 0.1, 8)],
};
const saidOf = (house: House, plant: Plant) => {
  const line = answer(lineWithPlant(house, plant));
  return plantFits(line, plant, chargesOfLine(line, plant)).flatMap(({ says }) => says ?? []);
};

test('a mash of 32,500 L does not go into washbacks filled to 32,000 L; all else of such a house fits', () => {
  expect(saidOf(large, largePlant)).toEqual([
    'Washback: a mash is 32,500 L, and it is filled to 32,000 L: 500 L too little.',
  ]);
});

test('each vessel that is too small or too few is named, with what is missing', () => {
  // 18 mashes of 10 h ask for 180 h of a week of 168 h.
  expect(saidOf(large, { ...largePlant, mashTuns: [{ number: 1, hours: 10 }] })).toContain(
    'Mash tuns: 18 mashes a week ask for 180 h, and a week has 168 h: 12 h too little.',
  );
  // A mash every 9⅓ h; in 80 h nine begin, so nine washbacks are needed, and there are 8.
  expect(saidOf(large, { ...largePlant, shortFermentation: 80 })).toContain(
    'Washbacks: 18 mashes a week of 80 h each need 9 washbacks, and there are 8 washbacks: 1 too few.',
  );
  const said = saidOf(large, {
    ...largePlant,
    washCharger: { holds: 10_000 },
    lowWinesReceiver: { holds: 5000 },
    spiritReceiver: { holds: 1000 },
    washStills: [stills(1, 16_500, 0.05)],
  });
  expect(said.map((each) => each.split(':')[0])).toEqual([
    'Washback',
    'Wash charger',
    'Wash stills',
    'Low wines receiver',
    'Spirit receiver',
  ]);
  // 18 × 32,272 L of wash in charges of at most 16,500 L are 36 charges of 7 h: 252 h of 168 h.
  expect(said[2]).toBe(
    'Wash stills: 36 charges a week ask for 252 h, and a week has 168 h for one still: 84 h too little.',
  );
});

test('vessels that are not named are not found too small', () => {
  const none = { holds: 0 };
  const plant = { ...largePlant, mashTuns: [], washbacks: [], washCharger: none, lowWinesReceiver: none, spiritReceiver: none };
  expect(saidOf(large, plant)).toEqual([]);
}); // prettier-ignore

test('what all charges of a week give is what all mashes of it do', () => {
  for (const scheme of ['twice', 'thrice', 'part-thrice'] as const) {
    const plant: Plant = {
      ...plainPlant,
      scheme,
      washStills: [stills(1, 4000, 0.02), stills(2, 1900, 0.2)],
      intermediateStills: [stills(1, 2000, 0), stills(1, 900, 0.2)],
      spiritStills: [stills(1, 2000, 0.1), stills(1, 1100, 0.1)],
    };
    const line = answer(lineWithPlant(builtInHouse, plant));
    const each = eachStill(line, plant, chargesOfLine(line, plant));
    const sum = (kind: keyof typeof each) =>
      each[kind].reduce((all, { aWeek, gives }) => all + aWeek * gives.alcohol, 0);
    expect(apart(sum('wash'), 6 * line.lowWines.alcohol)).toBeLessThan(1e-9);
    expect(apart(sum('spirit'), 6 * line.heart.alcohol)).toBeLessThan(1e-9);
    if (scheme !== 'twice')
      expect(apart(sum('intermediate'), 6 * line.round.between!.onward.alcohol)).toBeLessThan(1e-9);
  }
});

test('vessels that are not named are told, and a third distillation needs one kind more', () => {
  expect(notNamed(plainPlant)).toEqual([]);
  const bare = { ...plainPlant, mashTuns: [], washCharger: { holds: 0 }, spiritReceiver: { holds: 0 } };
  expect(notNamed(bare)).toEqual(['mash tuns', 'spirit receiver']);
  const none = { ...plainPlant, intermediateStills: [] };
  expect(notNamed(none)).toEqual([]);
  expect(notNamed({ ...none, scheme: 'thrice' })).toEqual(['intermediate stills']);
});
