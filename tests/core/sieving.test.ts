// The sieve test, the curve of sizes and the bin: parts of a whole, hand sums, and which way a roller moves.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { maltInBin, mashesInBin, spaceFor } from '../../src/core/milling/bin.ts';
import { millingTime } from '../../src/core/milling/grist.ts';
import { rollersToMove, sieveTest } from '../../src/core/milling/sieve.ts';
import { sizeCurve, type Sieve } from '../../src/core/milling/size-curve.ts';
import { kilograms, quantity } from '../../src/core/quantity.ts';
import reference from '../../src/published/reference/milling-and-mashing.json' with { type: 'json' };
import { always, answer, apart, between } from './draw.ts';

const grams = (n: number) => quantity('grams', n);
const found = fc.record({
  husk: between(0, 500).map(grams),
  grits: between(0.1, 500).map(grams),
  flour: between(0, 500).map(grams),
});
const printed = (id: string) => reference.sums.rows.find((row) => row.id === id)!.answer;

test('L1: flour is 10 % of what was found, not of what was put on', () => {
  const { flour, lost } = answer(
    sieveTest({ husk: grams(24), grits: grams(84), flour: grams(12) }, grams(125)),
  );
  expect(flour).toBeCloseTo(printed('L1'), 12);
  expect(lost).toBeCloseTo(4, 12); // 5 of 125 g
});

test('the parts are the whole, whatever the sample weighed and however much was lost', () => {
  always(fc.tuple(found, between(1, 3), between(0.1, 10)), ([sieved, more, scale]) => {
    const total = sieved.husk + sieved.grits + sieved.flour;
    const parts = answer(sieveTest(sieved, grams(total * more)));
    expect(parts.husk + parts.grits + parts.flour).toBeCloseTo(100, 9);
    expect(parts.lost).toBeCloseTo(100 * (1 - 1 / more), 9);
    const scaled = {
      husk: grams(sieved.husk * scale),
      grits: grams(sieved.grits * scale),
      flour: grams(sieved.flour * scale),
    };
    expect(answer(sieveTest(scaled, grams(total * scale * more))).flour).toBeCloseTo(parts.flour, 9);
  });
});

test('a sieve test refuses nothing found and more than was put on, and stops at a mass below nought', () => {
  expect(sieveTest({ husk: grams(0), grits: grams(0), flour: grams(0) }, grams(100))).toHaveProperty(
    'refused',
  );
  expect(sieveTest({ husk: grams(30), grits: grams(70), flour: grams(20) }, grams(100))).toHaveProperty(
    'refused',
  );
  expect(sieveTest({ husk: grams(20), grits: grams(70.2), flour: grams(10) }, grams(100))).toHaveProperty(
    'husk',
  );
  expect(() => sieveTest({ husk: grams(-1), grits: grams(70), flour: grams(20) }, grams(100))).toThrow(
    RangeError,
  );
});

// Husk off, flour off → first pair, second pair; by the rule of the trade that a torn husk wants a wider first gap,
// uncracked grain a narrower one, and flour alone the second pair.
test.each([
  [0, 0, 'as it is', 'as it is'],
  [-5, 0, 'wider', 'as it is'],
  [-5, 5, 'wider', 'as it is'],
  [-5, -5, 'wider', 'narrower'],
  [5, 0, 'narrower', 'as it is'],
  [5, -5, 'narrower', 'as it is'],
  [5, 5, 'narrower', 'wider'],
  [0, 5, 'as it is', 'wider'],
  [0, -5, 'as it is', 'narrower'],
  [3, -3, 'as it is', 'as it is'],
] as const)(
  'husk %d and flour %d off a target of ± 3: first pair %s, second pair %s',
  (husk, flour, first, second) => {
    expect(rollersToMove({ husk, flour }, 3)).toEqual({ first, second });
  },
);

const stack = (rows: readonly (readonly [number, number])[]): readonly Sieve[] =>
  rows.map(([opening, mass]) => ({ opening: quantity('opening', opening), mass: grams(mass) }));
const OPENINGS = [1.27, 1.01, 0.547, 0.253, 0.152];
const masses = fc
  .array(between(0, 100), { minLength: 6, maxLength: 6 })
  .filter((all) => all.some((mass) => mass > 0));

test('sizes spread evenly by their logarithm have their middle at the geometric mean', () => {
  always(
    fc.tuple(between(0.05, 0.3), between(1.05, 4), fc.integer({ min: 3, max: 8 })),
    ([finest, step, sieves]) => {
      // Nothing below the finest and nothing on the widest: equal masses between, so half lies below the middle of the logarithms.
      const rows = Array.from(
        { length: sieves },
        (_, i) => [finest * step ** i, i === sieves - 1 ? 0 : 10] as const,
      );
      const { median } = answer(sizeCurve(stack(rows), grams(0)));
      expect(apart(median, Math.sqrt(finest * finest * step ** (sieves - 1)))).toBeLessThan(1e-12);
    },
  );
});

test('the curve climbs to what the widest sieve lets pass, and does not mind the order of the sieves', () => {
  always(masses, ([pan, ...on]) => {
    const rows = OPENINGS.map((opening, i) => [opening, on[i]!] as const);
    const total = on.reduce((sum, mass) => sum + mass, pan!);
    const [curve, turned] = [
      sizeCurve(stack(rows), grams(pan!)),
      sizeCurve(stack([...rows].reverse()), grams(pan!)),
    ];
    expect(turned).toEqual(curve);
    if ('refused' in curve) {
      expect(on[0]! > total / 2 || pan! > total / 2).toBe(true);
      return;
    }
    const passing = curve.points.map((point) => point.passing);
    expect(passing[0]).toBeCloseTo((100 * pan!) / total, 9);
    expect(passing.at(-1)).toBeCloseTo(100 - (100 * on[0]!) / total, 9);
    expect(passing.every((part, i) => part >= (passing[i - 1] ?? 0))).toBe(true);
    expect(curve.median).toBeGreaterThanOrEqual(0.152);
    expect(curve.median).toBeLessThanOrEqual(1.27);
  });
});

test('mass that moves to a finer sieve never makes the middle size larger', () => {
  always(fc.tuple(masses, fc.integer({ min: 0, max: 3 }), between(0, 1)), ([[pan, ...on], from, part]) => {
    const finer = on.map((mass, i) =>
      i === from ? mass * (1 - part) : i === from + 1 ? mass + on[from]! * part : mass,
    );
    const [before, after] = [on, finer].map((rows) =>
      sizeCurve(stack(OPENINGS.map((opening, i) => [opening, rows[i]!] as const)), grams(pan!)),
    );
    if ('refused' in before! || 'refused' in after!) return;
    expect(after!.median).toBeLessThanOrEqual(before!.median * (1 + 1e-12));
  });
});

test('a curve refuses an empty stack, an opening given twice, and a middle beyond the sieves', () => {
  expect(
    sizeCurve(
      stack([
        [1, 0],
        [0.5, 0],
      ]),
      grams(0),
    ),
  ).toHaveProperty('refused');
  expect(
    sizeCurve(
      stack([
        [1, 5],
        [1, 5],
      ]),
      grams(5),
    ),
  ).toHaveProperty('refused');
  expect(
    sizeCurve(
      stack([
        [1, 60],
        [0.5, 20],
      ]),
      grams(20),
    ),
  ).toMatchObject({ refused: expect.stringContaining('widest') });
  expect(
    sizeCurve(
      stack([
        [1, 20],
        [0.5, 20],
      ]),
      grams(60),
    ),
  ).toMatchObject({ refused: expect.stringContaining('finest') });
});

test('L2 and L4: nine tonnes at 3.5 t/h, without and with half an hour of standing', () => {
  const running = millingTime(kilograms(9000), quantity('milling', 3.5));
  expect(Math.abs(running - printed('L2'))).toBeLessThan(5e-6);
  expect(Math.abs(running + 0.5 - printed('L4'))).toBeLessThan(5e-6);
});

test('a bin that just takes a number of mashes holds that number', () => {
  always(fc.tuple(between(10, 50_000), between(300, 900), between(0.01, 100)), ([malt, bulk, mashes]) => {
    const [mass, loose] = [kilograms(malt), quantity('bulkDensity', bulk)];
    const bin = quantity('space', spaceFor(mass, loose) * mashes);
    expect(apart(mashesInBin(maltInBin(bin, loose), mass), mashes)).toBeLessThan(1e-12);
  });
  expect(spaceFor(kilograms(9000), quantity('bulkDensity', 500))).toBe(18); // by hand
  expect(() => spaceFor(kilograms(1), quantity('bulkDensity', 0))).toThrow(RangeError);
});
