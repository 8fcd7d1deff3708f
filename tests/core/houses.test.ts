// Five hundred houses drawn over all their ranges: each gives finite figures throughout, or one sentence that says why not.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cautions } from '../../src/core/line/cautions.ts';
import type { House } from '../../src/core/line/house.ts';
import { ledger, paces, type LedgerPace } from '../../src/core/line/ledger.ts';
import { line } from '../../src/core/line/line.ts';
import { builtInHouse, choiceFigures, numberFigures } from '../../src/house/figures.ts';
import { between } from './draw.ts';

const numbers = Object.fromEntries(
  Object.entries(numberFigures).map(
    ([
      name,
      {
        range: [low, high],
      },
    ]) => [name, between(low, high)],
  ),
);
const choices = Object.fromEntries(
  Object.entries(choiceFigures).map(([name, { options }]) => [
    name,
    fc.constantFrom(...Object.keys(options)),
  ]),
);
const every = { ...numbers, ...choices } as Record<string, fc.Arbitrary<unknown>>;

/** Houses with all figures drawn: most of them contradict themselves. */
const wild = fc.record(every);
/** Houses with a few figures drawn and the rest as built in: most of them run. */
const near = fc
  .record(every, { requiredKeys: [] })
  .chain((drawn) =>
    fc
      .subarray(Object.keys(drawn), { maxLength: 6 })
      .map((names) => Object.fromEntries(names.map((name) => [name, drawn[name]]))),
  );
/** Houses whose figures are drawn but made to agree where two of them must. */
const agreeing = wild.map((drawn) => {
  const of = (name: keyof House) => drawn[name] as number;
  return {
    ...drawn,
    finalGravity: Math.min(of('finalGravity'), of('originalGravity') - 0.01),
    husk: of('husk') / 2,
    flour: of('flour') / 2,
    barrels: of('barrels') / 2,
    hogsheads: of('hogsheads') / 2,
    heartEnd: 20 + of('heartEnd') / 2,
    feintsEnd: of('feintsEnd') / 4,
    washEnd: of('washEnd') / 10,
  };
});

/** Every number inside a value that is not finite, by its path. */
function unsound(value: unknown, path = 'line'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => unsound(part, `${path}.${name}`));
}

function judge(change: Record<string, unknown>): 'refused' | 'answered' {
  const found = line({ ...builtInHouse, ...change } as House);
  if ('refused' in found) {
    expect(found.refused).toMatch(/^[A-Z0-9][^]*[.]$/);
    expect(found.refused).not.toMatch(/NaN|Infinity|undefined/);
    return 'refused';
  }
  expect(unsound(found)).toEqual([]);
  for (const pace of Object.keys(paces) as LedgerPace[]) expect(unsound(ledger(found, pace))).toEqual([]);
  expect(cautions(found).filter(({ says }) => /NaN|Infinity|undefined/.test(says))).toEqual([]);
  for (const part of [
    found.lowWines,
    found.potAle,
    found.charge,
    found.foreshots,
    found.heart,
    found.feints,
    found.spentLees,
    found.filling,
    found.matured,
    found.bottling,
  ]) {
    expect(part.volume).toBeGreaterThanOrEqual(0);
    expect(part.strength).toBeGreaterThanOrEqual(0);
    expect(part.strength).toBeLessThanOrEqual(100);
  }
  return 'answered';
}

test.each([
  ['drawn at will', wild, 0],
  ['near the built-in house', near, 0.3],
  ['made to agree', agreeing, 0.3],
] as const)('houses %s', { timeout: 60_000 }, (_, houses, least) => {
  let answered = 0;
  fc.assert(
    fc.property(houses, (change) => {
      if (judge(change) === 'answered') answered++;
    }),
    { numRuns: 500 },
  );
  expect(answered).toBeGreaterThanOrEqual(500 * least);
});
