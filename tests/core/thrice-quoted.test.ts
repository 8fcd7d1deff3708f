// The cross-check of a house that distils three times goes by what holds in such a house: sound talks stand, a planted fault is found.
import { describe, expect, test } from 'vitest';
import { crossCheckRules, type Distilled } from '../../src/core/cross-check/distilled.ts';
import type { Quoted } from '../../src/core/cross-check/quoted.ts';
import { accusedFigures, reconcile, type Reconciliation } from '../../src/core/cross-check/reconcile.ts';
import { gapOf, type Relation } from '../../src/core/cross-check/relations.ts';
import { findingSentences } from '../../src/core/cross-check/verdict.ts';
import { distilledAs, housesOf, tally, truthOf } from '../study/thrice/judge.ts';
import rounds from '../study/plant/rounds.json';

const schemes = ['thrice', 'part-thrice'] as const;
const exact = (value: number) => ({ as: 'exact' as const, value });
const answer = (quoted: Quoted, distilled: Distilled) => reconcile(quoted, distilled) as Reconciliation;

describe.each(schemes)('a hundred houses of another physics, distilled %s', (scheme) => {
  const halves = housesOf(scheme);
  const all = [...halves.tuned, ...halves['left out']];

  test('every relation holds in every house, to three of its spreads', () => {
    for (const house of all)
      for (const [name, relation] of Object.entries(crossCheckRules(distilledAs(house)).relations) as [string, Relation][])
        if (relation.only !== 'told') expect(Math.abs(gapOf(relation, truthOf(house))), name).toBeLessThan(3);
  }); // prettier-ignore

  test('all figures as they are: none is accused', () => {
    for (const house of all) {
      const quoted = Object.fromEntries(Object.entries(truthOf(house)).map(([name, value]) => [name, exact(value)]));
      expect(accusedFigures(answer(quoted, distilledAs(house)))).toEqual([]);
    }
  }, 60_000); // prettier-ignore

  test.each(['tuned', 'left out'] as const)('%s: no sound talk is accused; by two distillations some are', (half) => {
    expect(tally(halves[half], 0)).toMatchObject({ trueCalled: 0, noticed: 0, unsettled: 0 });
    expect(tally(halves[half], 0, () => ({ scheme: 'twice' })).trueCalled).toBeGreaterThanOrEqual(3);
  }, 60_000); // prettier-ignore

  test('a figure moved by a fifth is named first as often as in houses of two distillations, a true one called seldom', () => {
    // Of four hundred houses of two distillations 92 and 100 of 200 were named first, 9 and 18 called besides: src/published/measured/study.json.
    const found = tally(all, 3);
    expect(found.first).toBeGreaterThanOrEqual(44);
    expect(found.trueCalled).toBeLessThanOrEqual(9);
  }, 60_000); // prettier-ignore
});

describe('what only a third distillation can break', () => {
  const [house] = housesOf('thrice')['left out'];
  const truth = truthOf(house!);
  const of = (names: readonly (keyof typeof truth)[]) => Object.fromEntries(names.map((name) => [name, exact(truth[name])])); // prettier-ignore

  test('a charge as weak as that of two distillations is found, and told', () => {
    const said = { ...of(['lowWinesVolume', 'lowWinesStrength', 'heartVolume', 'heartStrength', 'heartBegins', 'heartEnds', 'chargeVolume']), chargeStrength: exact(27) }; // prettier-ignore
    const found = answer(said, distilledAs(house!));
    expect(accusedFigures(found)).toContain('chargeStrength');
    expect(findingSentences(found).join(' ')).toMatch(/[Cc]harge/);
  });
  test('a charge that is less than its low wines is sound of three distillations, and cannot be of two', () => {
    const said = of(['lowWinesVolume', 'chargeVolume']);
    expect(truth.chargeVolume).toBeLessThan(truth.lowWinesVolume / 2);
    expect(accusedFigures(answer(said, distilledAs(house!)))).toEqual([]);
    expect(accusedFigures(answer(said, { scheme: 'twice' }))).not.toEqual([]);
  });
  test('new spirit that holds more than the low wines cannot be, however often it is distilled', () => {
    const said = { ...of(['lowWinesVolume', 'lowWinesStrength', 'heartStrength']), heartVolume: exact(1.1 * truth.heartVolume) }; // prettier-ignore
    for (const distilled of [distilledAs(house!), { scheme: 'part-thrice', runAgain: 50 } as const])
      expect(answer(said, distilled).impossible).not.toEqual([]);
  });
});

describe('rounds worked by recycling, with the vapour of two laboratories (tests/study/plant/rounds.py)', () => {
  test.each(rounds.cases.filter(({ scheme }) => scheme !== 'twice').map((each) => [each.name, each] as const))('%s', (_, each) => {
    const distilled: Distilled = each.scheme === 'thrice' ? { scheme: 'thrice', strongFeintsEnd: each.strong } : { scheme: 'part-thrice', runAgain: each.runAgain! };
    for (const { lowWines, charge, heart } of Object.values(each.by)) {
      const said = {
        washVolume: exact(each.washOf[0]!), washStrength: exact(each.washOf[1]!),
        lowWinesVolume: exact(lowWines[0]!), lowWinesStrength: exact(lowWines[1]!),
        chargeVolume: exact(charge[0]!), chargeStrength: exact(charge[1]!),
        heartVolume: exact(heart[0]!), heartStrength: exact(heart[1]!), heartEnds: exact(each.heart),
      };
      expect(accusedFigures(answer(said, distilled))).toEqual([]);
      const wrong = { ...said, heartVolume: exact(0.8 * heart[0]!) };
      expect(accusedFigures(answer(wrong, distilled))).toContain('heartVolume');
    }
  }); // prettier-ignore
});
