// Rounds of two and three distillations against the same rounds worked by plain recycling: tests/study/plant/rounds.py.
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import type { House } from '../../src/core/line/house.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import { distilIn } from '../../src/core/plant/distil.ts';
import type { Plant, Stills } from '../../src/core/plant/plant.ts';
import { runsOfMash } from '../../src/core/plant/runs-of-mash.ts';
import { line } from '../../src/core/line/line.ts';
import { litres20, strength, type Spirit } from '../../src/core/quantity.ts';
import { amountsOf, plus } from '../../src/core/spirit/amounts.ts';
import study from '../study/plant/rounds.json' with { type: 'json' };
import { answer, apart } from './draw.ts';
import { plainPlant, stills } from './plants.ts';
import { wilson } from '../../src/core/vapour/wilson.ts';

type Case = (typeof study.cases)[number];
type Group = Case['wash'][number];

const houseOf = (each: Case): House =>
  ({
    ...builtInHouse,
    airPressure: each.pressure,
    washEnd: each.washEnd,
    foreshotsBy: 'share',
    foreshotsShare: 100 * each.foreshots,
    heartEnd: each.heart,
    feintsEnd: each.feints,
    dilution: 'never',
  }) as House;
const groups = (given: readonly Group[]): readonly Stills[] =>
  given.map(({ number, charge, reflux }) => stills(number, charge, reflux));
const plantOf = (each: Case): Plant => ({
  ...plainPlant,
  washStills: groups(each.wash),
  intermediateStills: groups(each.intermediate as readonly Group[]),
  spiritStills: groups(each.spirit),
  scheme: each.scheme as Plant['scheme'],
  strongFeintsEnd: each.strong,
  runAgain: 'runAgain' in each ? each.runAgain : 0,
});
const washOf = ({ washOf: [volume, of] }: Case): Spirit => ({
  volume: litres20(volume!),
  strength: strength(of!),
});
const portions = [
  'lowWines',
  'intermediateCharge',
  'charge',
  'foreshots',
  'heart',
  'feints',
  'lees',
] as const;

/** How far the study by Wilson's constants may lie: parts of the litres, and % vol. First look: 6.7 % and 2.0 for low wines, 0.9 % and 0.7 for the heart. */
const byWilson: Partial<Record<(typeof portions)[number], { part: number; strength: number }>> = {
  lowWines: { part: 0.07, strength: 2.1 },
  heart: { part: 0.01, strength: 0.7 },
};

type Own = Readonly<
  Record<(typeof portions)[number], { readonly volume: number; readonly strength: number }>
>;

test.each(study.cases)('$name: as charge after charge from empty receivers comes to be', (each) => {
  const [own, ofWilson] = [undefined, wilson].map((model) => {
    const round = answer(distilIn(plantOf(each), houseOf(each), washOf(each), model));
    const intermediateCharge = round.between?.charge ?? { volume: 0, strength: 0 };
    return { ...round, intermediateCharge, lees: round.residue };
  }) as readonly Own[] as [Own, Own];
  for (const portion of portions) {
    const [volume, of] = each.by['van Laar'][portion] as [number, number];
    // The study follows the same constants by quadrature at 1e-11; the handbook follows the still by polynomials.
    expect(apart(own[portion].volume, volume), `${portion}, L`).toBeLessThan(1e-7);
    expect(Math.abs(own[portion].strength - of), `${portion}, % vol`).toBeLessThan(1e-6);
    // Another laboratory's constants for the vapour: how far they lie is the error of the model, the same as of two distillations.
    const [otherVolume, other] = each.by.Wilson[portion] as [number, number];
    // … and the handbook by those constants comes to the same round as the study does by them.
    expect(apart(ofWilson[portion].volume, otherVolume), `${portion}, L, both by Wilson`).toBeLessThan(1e-6);
    expect(Math.abs(ofWilson[portion].strength - other), `${portion}, % vol, both by Wilson`).toBeLessThan(
      1e-3,
    );
    const far = byWilson[portion];
    if (!far) continue;
    expect(apart(own[portion].volume, otherVolume), `${portion}, L, by Wilson`).toBeLessThan(far.part);
    expect(Math.abs(own[portion].strength - other), `${portion}, % vol, by Wilson`).toBeLessThan(
      far.strength,
    );
  }
});

test('twice, with stills that are alike, is the house’s own line, however the foreshots end', () => {
  for (const foreshotsBy of ['share', 'volume', 'minutes', 'strength'] as const) {
    const house: House = { ...builtInHouse, foreshotsBy };
    const one = { ...plainPlant, spiritStills: [stills(1, 6500, 0.1)] };
    for (const alike of [one, { ...one, washStills: [stills(1, 3000, 0.05), stills(2, 9000, 0.05)] }]) {
      const { round, ...rest } = answer(lineWithPlant(house, alike));
      const { round: of, ...plain } = answer(line(house));
      expect(rest).toEqual(plain);
      expect(round.heart).toEqual(of.heart);
    }
  }
}); // prettier-ignore

test('foreshots by litres or minutes are of one run: a mash of several charges is so many mashes of one, and a charge of several is their sum', () => {
  // Outside: nothing but the size of the mash differs, so every share and strength is that of the mash that fills one charge.
  const sized = (times: number, by: House['foreshotsBy']) => ({ ...builtInHouse, mashesPerWeek: 9, foreshotsBy: by, wortVolume: times * builtInHouse.wortVolume, maltPerMash: times * builtInHouse.maltPerMash }) as House;
  for (const by of ['volume', 'minutes'] as const) {
    const one = answer(line(sized(1, by)));
    const held = one.charge.volume * (1 + 1e-9);
    const cases = [
      [3, [stills(3, held, 0.1)]],
      [2, [stills(2, held, 0.1)]],
      [2, [stills(1, held, 0.1), stills(1, held, 0.1 + 1e-12)]], // half to each, found the other way
      [1, [stills(1, held, 0.1)]],
      [1 / 3, [stills(1, held, 0.1)]],
    ] as const;
    for (const [times, spiritStills] of cases) {
      const own = answer(lineWithPlant(sized(times, by), { ...plainPlant, spiritStills }));
      expect(own.round.runs).toBeCloseTo(times, 9);
      for (const of of ['foreshots', 'heart', 'feints', 'charge'] as const) {
        expect(apart(own[of].volume, times * one[of].volume), `${by}, ${times}, ${of}`).toBeLessThan(1e-7);
        expect(Math.abs(own[of].strength - one[of].strength)).toBeLessThan(1e-5);
      }
    }
    // A mash that fills most of a charge is run by itself; and where the stills' charge is not known, one charge is a mash.
    expect(answer(lineWithPlant(sized(1, by), { ...plainPlant, spiritStills: [stills(1, one.charge.volume * 1.8, 0.1)] })).foreshots).toEqual(one.foreshots);
    const unknown = { ...stills(1, 100, 0.1), usual: ['charge'] };
    expect(answer(lineWithPlant(sized(1, by), { ...plainPlant, spiritStills: [unknown] })).foreshots).toEqual(one.foreshots);
  }
}); // prettier-ignore

test('stills that are alike have the reflux that the house gives for them; of others each has its own', () => {
  const house = { ...builtInHouse, washReflux: 0.2, spiritReflux: 0.3 } as House;
  const found = (spiritStills: readonly Stills[]) => answer(lineWithPlant(house, { ...plainPlant, spiritStills })).heart;
  const plain = answer(line(house)).heart;
  expect(found([stills(1, 5000, 0.1)])).toEqual(plain);
  expect(found([stills(1, 5000, 0.1), stills(2, 3000, 0.1)])).toEqual(plain);
  // More reflux makes stronger spirit: one weak and one strong neck lie between two of each.
  const [weak, strong] = [0, 0.6].map((spiritReflux) => answer(line({ ...house, spiritReflux } as House)).heart.strength);
  const mixed = found([stills(1, 5000, 0), stills(1, 5000, 0.6)]).strength;
  expect(mixed).toBeGreaterThan(weak!);
  expect(mixed).toBeLessThan(strong!);
}); // prettier-ignore

test('stills that hardly differ give the round of stills that are alike, though it is found another way', () => {
  const nearly = {
    ...plainPlant,
    spiritStills: [stills(1, 6000, 0.1), stills(1, 4000, 0.1 + 1e-12)],
    washStills: [stills(1, 3000, 0.05), stills(1, 2000, 0.05 + 1e-12)],
  };
  for (const foreshotsBy of ['share', 'volume', 'strength'] as const)
    for (const dilution of ['never', 'when-needed'] as const) {
      const house: House = { ...builtInHouse, foreshotsBy, dilution, foreshotsStrength: strength(74.5) };
      const [one, other] = [plainPlant, nearly].map((plant) => lineWithPlant(house, plant));
      if ('refused' in one! || 'refused' in other!) {
        expect(other).toEqual(one);
        continue;
      }
      for (const portion of ['lowWines', 'charge', 'foreshots', 'heart', 'feints', 'spentLees'] as const)
        expect(apart(one![portion].volume, other![portion].volume), portion).toBeLessThan(1e-9);
      expect(Math.abs(one!.round.dilution - other!.round.dilution)).toBeLessThan(1e-6);
    }
});

test('ethanol and water of the wash are in pot ale, heart and lees, whatever the plant', () => {
  const plants = (['thrice', 'part-thrice', 'twice'] as const).flatMap((scheme) =>
    [
      { washStills: [stills(1, 8000, 0.05)], spiritStills: [stills(1, 5000, 0.1)] },
      { washStills: [stills(2, 4000, 0), stills(1, 3000, 0.2)], spiritStills: [stills(1, 3000, 0), stills(1, 2500, 0.35)] },
    ].map((groups) => ({ ...plainPlant, ...groups, scheme })),
  );
  for (const plant of plants)
    for (const foreshotsBy of ['share', 'volume'] as const)
      for (const heartEnd of [58, 62, 66, 70]) {
        const house = { ...builtInHouse, foreshotsBy, heartEnd, dilution: 'never' } as House;
        const found = answer(lineWithPlant(house, plant));
        const [wash, ...out] = [found.wash, found.potAle, found.heart, found.spentLees].map(amountsOf);
        const sum = out.reduce(plus);
        expect(apart(wash!.ethanol, sum.ethanol)).toBeLessThan(1e-9);
        expect(apart(wash!.water, sum.water)).toBeLessThan(1e-9);
      }
}); // prettier-ignore

test('three distillations make new spirit of about 80 % vol, from a spirit charge of 55 to 70', () => {
  // Common practice: trade writers tell of new spirit of 80 to 84 % vol distilled three times, against about 70 distilled twice.
  const { heart, charge } = answer(lineWithPlant(builtInHouse, { ...plainPlant, scheme: 'thrice' }));
  expect(heart.strength).toBeGreaterThan(79);
  expect(heart.strength).toBeLessThan(85);
  expect(charge.strength).toBeGreaterThan(55);
  expect(charge.strength).toBeLessThan(70);
});

test('foreshots by volume are so many litres of each run, in every scheme', () => {
  for (const scheme of ['thrice', 'part-thrice'] as const) {
    const house = { ...builtInHouse, foreshotsBy: 'volume', foreshotsVolume: 55 } as House;
    const found = answer(lineWithPlant(house, { ...plainPlant, scheme }));
    expect(
      apart(found.foreshots.volume, 55 * runsOfMash(plainPlant, found.charge.volume, house)),
    ).toBeLessThan(1e-9);
  }
});

test('what cannot be is refused in a sentence', () => {
  const refused = (over: Partial<Plant>, house: Partial<House> = {}) => {
    const found = lineWithPlant({ ...builtInHouse, ...house }, { ...plainPlant, ...over });
    return 'refused' in found ? found.refused : 'found';
  };
  expect(refused({ washStills: [] })).toBe('No wash still is named, so no wash is distilled.');
  expect(refused({ spiritStills: [] })).toBe('No spirit still is named, so no spirit is made.');
  expect(refused({ scheme: 'thrice', intermediateStills: [] })).toContain('a third distillation needs one');
  expect(refused({ scheme: 'part-thrice', intermediateStills: [] })).toContain('needs one');
  expect(refused({ scheme: 'thrice', strongFeintsEnd: 0.5 })).toContain('must end above the weak ones');
  const by = { foreshotsBy: 'strength', foreshotsStrength: strength(72) } as const;
  expect(refused({ scheme: 'thrice' }, by)).toContain('find no balance with these cuts');
  const much = { foreshotsBy: 'volume', foreshotsVolume: litres20(5000) } as const;
  expect(refused({ scheme: 'thrice' }, much)).toMatch(/more than 40 %|find no balance/);
});
