// Rounds drawn at random: the same seed gives the same draws, and small spreads agree with the first-order law.
import { expect, test } from 'vitest';
import { roundOf } from '../../src/core/line/line.ts';
import type { House } from '../../src/core/line/house.ts';
import {
  drawnFrom,
  drawRounds,
  summarise,
  summariseTwo,
  type DrawnFigure,
} from '../../src/core/line/monte-carlo.ts';
import { normalRandom, uniformRandom } from '../../src/core/numerics/random.ts';
import { vapourModels } from '../../src/core/vapour/models.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const heartAlcohol = (change: object) => {
  const round = roundOf({ ...builtInHouse, ...change });
  if ('refused' in round) throw new Error(round.refused);
  return round.heart.alcohol;
};

test('the same seed draws the same, another seed does not', () => {
  const unsure = { heartEnd: 0.2 };
  expect(drawRounds(builtInHouse, unsure, 5, 7)).toEqual(drawRounds(builtInHouse, unsure, 5, 7));
  expect(drawRounds(builtInHouse, unsure, 5, 7)).not.toEqual(drawRounds(builtInHouse, unsure, 5, 8));
});

test('random numbers are spread as they should be', () => {
  const uniform = uniformRandom(3);
  const flat = summarise(Array.from({ length: 20_000 }, uniform))!;
  expect(flat.mean).toBeCloseTo(0.5, 2);
  expect(flat.standard).toBeCloseTo(Math.sqrt(1 / 12), 2);
  const bell = summarise(Array.from({ length: 20_000 }, normalRandom(3)))!;
  expect(bell.mean).toBeCloseTo(0, 1);
  expect(bell.standard).toBeCloseTo(1, 1);
  expect(bell.high).toBeCloseTo(1.96, 1); // 97.5 % point of the normal distribution
});

test('a small ± comes out as slope × ±, as JCGM 100 has it', () => {
  const [volume, gravity] = [40, 0.0004];
  const slope = (name: 'wortVolume' | 'originalGravity', u: number) =>
    (heartAlcohol({ [name]: builtInHouse[name] + u }) - heartAlcohol({ [name]: builtInHouse[name] - u })) / 2;
  const expected = Math.hypot(slope('wortVolume', volume), slope('originalGravity', gravity));
  const drawn = summarise(
    drawRounds(builtInHouse, { wortVolume: volume, originalGravity: gravity }, 2000, 11).values.heartAlcohol,
  )!;
  expect(drawn.standard / expected).toBeGreaterThan(0.95);
  expect(drawn.standard / expected).toBeLessThan(1.05);
  expect(Math.abs(drawn.mean - heartAlcohol({}))).toBeLessThan((4 * expected) / Math.sqrt(2000));
});

test('draws that cannot be are counted', () => {
  const { refused, values } = drawRounds(builtInHouse, { spiritReflux: 0.2 }, 200, 5);
  expect(refused).toBeGreaterThan(20); // a normal of mean 0.1 and ± 0.2 is below nought 31 % of the time
  expect(refused).toBeLessThan(110);
  expect(values.heartVolume.length + refused).toBe(200);
});

test('the same houses by two models: variances add, and half the distance of the means is the model’s', () => {
  // By hand: 1, 3 and 5, 7 have means 2 and 6; each spreads by √2, and the means lie 4 apart.
  const { mean, figures, model } = summariseTwo([1, 3], [5, 7])!;
  expect([mean, model]).toEqual([4, 2]);
  expect(figures).toBeCloseTo(Math.SQRT2, 12);
  const [one, other] = vapourModels.map(
    (each) => drawRounds(builtInHouse, { heartEnd: 0.2, wortVolume: 50 }, 400, 3, each).values.feintsVolume,
  );
  const spread = summariseTwo(one!, other!)!;
  expect(spread.standard / Math.hypot(spread.figures, spread.model)).toBeCloseTo(1, 2);
  expect(summariseTwo([1], [2, 3])).toBeUndefined();
});

test('with every figure exact the model’s ± is there alone, of the size by which six published models differ', () => {
  // Reckoned apart, with van Laar (two sets), Margules, Wilson (two sets) and NRTL as printed, and plain panels in place
  // of this book's polynomials: the standard deviation of the six is 6.1 % of the charge, 12.2 % of the feints, 0.5 % of the heart.
  const [one, other] = vapourModels.map((model) => drawRounds(builtInHouse, {}, 2, 1, model).values);
  const part = (name: DrawnFigure) => {
    const { mean, figures, model } = summariseTwo(one![name], other![name])!;
    expect(figures).toBe(0);
    return model / mean;
  };
  for (const [name, published] of [['chargeVolume', 0.061], ['feintsVolume', 0.122], ['heartVolume', 0.005]] as const) {
    expect(part(name), name).toBeGreaterThan(0.6 * published);
    expect(part(name), name).toBeLessThan(1.4 * published);
  }
}); // prettier-ignore

test('draws are of an earlier house once a figure that they hang on, or its ±, is another', () => {
  const unsure = { heartEnd: 0.2, foreshotsStrength: 0.2 };
  const now = drawnFrom(builtInHouse, unsure);
  const other = (change: object, u: object = unsure) => drawnFrom({ ...builtInHouse, ...change } as House, u);
  expect(other({})).toBe(now);
  for (const change of [{ heartEnd: 61 }, { washReflux: 0.06 }, { airPressure: 100 }, { foreshotsBy: 'volume' }, { chargeLimit: 28 }])
    expect(other(change), JSON.stringify(change)).not.toBe(now);
  expect(other({}, { heartEnd: 0.3 })).not.toBe(now);
  // What no round hangs on: the bottle, and a foreshots figure that does not count.
  expect(other({ bottleSize: 75, foreshotsStrength: 74 }, { heartEnd: 0.2 })).toBe(now);
}); // prettier-ignore
