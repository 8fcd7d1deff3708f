// The balance of a plant against the stillhouse's own way to it: charge after charge, from empty receivers, over drawn plants and cuts.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { settleThrice, settleTogether } from '../../src/core/plant/balance.ts';
import {
  cutSides,
  NO_AMOUNTS,
  partsOfAll,
  scaledAmounts,
  scaledCharge,
  type CutSide,
  type RunEnds,
  type StillSide,
} from '../../src/core/plant/side-by-side.ts';
import { kilopascals, litres20, share, strength } from '../../src/core/quantity.ts';
import { amountsOf, plus, type Amounts } from '../../src/core/spirit/amounts.ts';
import { apart, answer, between } from './draw.ts';

const CHARGES = 3000; // by then a round that comes to rest has done so, near its edge too
const AT_REST = 1e-13; // change of a charge from one to the next
const RUNS_AWAY = 0.74; // mole fraction of a charge that no still gains anything from

const sides: fc.Arbitrary<readonly StillSide[]> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 50 })), { minLength: 1, maxLength: 2 })
  .map((drawn) => {
    const all = drawn.reduce((sum, [size]) => sum + size, 0);
    return drawn.map(([size, reflux]) => ({ part: size / all, setting: { reflux: share(reflux / 100), pressure: kilopascals(100) } }));
  }); // prettier-ignore
const plans = fc
  .record({
    lowWines: between(15, 35).map((of) => amountsOf({ volume: litres20(1000), strength: strength(of) })),
    before: fc.option(sides, { freq: 3 }),
    last: sides,
    weak: between(0.3, 5).map(strength),
    heart: between(50, 82).map(strength),
    strong: between(6, 80).map(strength),
  })
  .chain((plan) =>
    fc
      .oneof(
        between(0, 0.1).map((part) => ({ share: part })),
        between(plan.heart, 88).map((end) => ({ strength: strength(end) })),
      )
      .map((foreshots) => ({ ...plan, foreshots })),
  );

const give = (charge: Amounts, cut: readonly CutSide[], foreshots: RunEnds['foreshots']) => {
  const moles = charge.ethanol + charge.water;
  return scaledCharge(moles, partsOfAll(charge.ethanol / moles, cut, foreshots));
};

/** The charge and the heart at which recycling comes to rest; nothing when the charges grow without end. */
function recycled(
  lowWines: Amounts,
  before: readonly StillSide[] | null,
  last: readonly StillSide[],
  ends: RunEnds,
) {
  const cut = answer(cutSides(last, ends));
  const cutBefore = before && answer(cutSides(before, { ...ends, heart: ends.strong }));
  let [weak, back, previous] = [NO_AMOUNTS, NO_AMOUNTS, NO_AMOUNTS];
  for (let i = 0; i < CHARGES; i++) {
    const first = cutBefore && give(plus(lowWines, weak), cutBefore, { share: 0 });
    if (first && !(first.heart.ethanol > 0)) {
      weak = first.weak; // too weak yet to give strong feints: only the feints go round
      continue;
    }
    const charge = plus(first ? first.heart : lowWines, back);
    if (charge.ethanol / (charge.ethanol + charge.water) > RUNS_AWAY) return undefined;
    const given = give(charge, cut, ends.foreshots);
    if (apart(charge.ethanol, previous.ethanol) < AT_REST && apart(charge.water, previous.water) < AT_REST)
      return { charge, heart: given.heart };
    previous = charge;
    back = plus(given.foreshots, first ? given.strong : plus(given.strong, given.weak));
    weak = first ? plus(first.weak, given.weak) : NO_AMOUNTS;
  }
  return undefined;
}

test('a plant that settles by recycling is settled to the same charge and heart, and any other is refused', () => {
  let [settled, refused] = [0, 0];
  fc.assert(
    fc.property(plans, ({ lowWines, before, last, foreshots, heart, strong, weak }) => {
      const ends: RunEnds = { foreshots, heart, strong: before ? strong : weak, weak };
      const found = before
        ? settleThrice(lowWines, before, last, ends)
        : settleTogether(lowWines, last, ends, Infinity);
      const rest = recycled(lowWines, before, last, ends);
      if ('refused' in found) {
        expect(rest, found.refused).toBeUndefined();
        refused++;
        return;
      }
      const { charge, heart: own } = 'spirit' in found ? found.spirit : found;
      expect(rest).toBeDefined();
      expect(apart(charge.ethanol, rest!.charge.ethanol)).toBeLessThan(1e-9);
      expect(apart(charge.water, rest!.charge.water)).toBeLessThan(1e-9);
      expect(apart(own.ethanol, rest!.heart.ethanol)).toBeLessThan(1e-9);
      settled++;
    }),
    { numRuns: 120 },
  );
  expect(Math.min(settled, refused)).toBeGreaterThan(12); // both are seen
});

test('low wines of twice the amount give twice the charge', () => {
  const side: readonly StillSide[] = [{ part: 1, setting: { reflux: share(0.1), pressure: kilopascals(100) } }];
  const ends: RunEnds = { foreshots: { share: 0.02 }, heart: strength(66), strong: strength(40), weak: strength(1) };
  const lowWines = amountsOf({ volume: litres20(1000), strength: strength(23) });
  const [one, two] = [1, 2].map((by) => answer(settleThrice(scaledAmounts(by, lowWines), side, side, ends)));
  expect(apart(2 * one!.spirit.charge.ethanol, two!.spirit.charge.ethanol)).toBeLessThan(1e-12);
}); // prettier-ignore
