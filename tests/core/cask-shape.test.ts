// The inside of a cask against cylinder, ball, lens and Kepler's rule.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  caskCapacity,
  dippedVolume,
  innerSurface,
  shapeOf,
  woodToLitre,
  type CaskShape,
} from '../../src/core/maturing/shape.ts';
import { litres, quantity } from '../../src/core/quantity.ts';
import kept from '../../src/published/reference/maturing.json' with { type: 'json' };
import { always, apart, between, ordered } from './draw.ts';

const mm = (n: number) => quantity('length', n);
const shape = (bung: number, head: number, length: number): CaskShape => ({
  bung: mm(bung),
  head: mm(head),
  length: mm(length),
});
const shapes = fc
  .tuple(between(300, 1000), between(0.5, 1), between(400, 1500))
  .map(([bung, part, length]) => shape(bung, part * bung, length));
const proportions = fc.record({ length: between(0.8, 2), head: between(0.6, 1) });

/** Volume of a cylinder lying on its side, mm³, by the sine of the wetted angle. */
function cylinder(radius: number, length: number, dip: number): number {
  const angle = 2 * Math.acos((radius - dip) / radius);
  return length * 0.5 * radius * radius * (angle - Math.sin(angle));
}

test('a straight cask is a cylinder at every dip', () => {
  always(fc.tuple(between(100, 600), between(200, 1500), between(0, 1)), ([radius, length, part]) => {
    const dip = part * 2 * radius;
    const held = dippedVolume(shape(2 * radius, 2 * radius, length), mm(dip));
    expect(Math.abs(held - cylinder(radius, length, dip) / 1e6)).toBeLessThan(1e-6 * caskCapacity(shape(2 * radius, 2 * radius, length)));
  });
}); // prettier-ignore

test('full to the bung holds the whole cask, empty nothing, half the depth half of it', () => {
  always(shapes, (cask) => {
    const full = caskCapacity(cask);
    expect(apart(dippedVolume(cask, cask.bung), full)).toBeLessThan(1e-12);
    expect(dippedVolume(cask, mm(0))).toBe(0);
    expect(apart(dippedVolume(cask, mm(cask.bung / 2)), full / 2)).toBeLessThan(1e-9);
  });
});

test('what is wet and what is dry make the cask; deeper is always more', () => {
  always(fc.tuple(shapes, ordered(0, 1, 1e-3)), ([cask, [low, high]]) => {
    const at = (part: number) => dippedVolume(cask, mm(part * cask.bung));
    expect(Math.abs(at(low) + at(1 - low) - caskCapacity(cask))).toBeLessThan(2e-5 * caskCapacity(cask));
    expect(at(high)).toBeGreaterThan(at(low));
  });
});

test('the dip agrees with slices counted one by one', () => {
  for (const [part, cask] of [[0.2, shape(605, 500, 790)], [0.7, shape(605, 500, 790)], [0.93, shape(880, 600, 1100)]] as const) {
    const { bung, head, length } = cask;
    const level = part * bung - bung / 2;
    const count = 20_000;
    let sum = 0;
    for (let i = 0; i < count; i++) {
      const x = ((i + 0.5) / count) * length - length / 2;
      const r = bung / 2 - ((bung - head) / 2) * (2 * x / length) ** 2;
      const z = Math.max(-r, Math.min(r, level));
      const angle = 2 * Math.acos(-z / r);
      sum += 0.5 * r * r * (angle - Math.sin(angle));
    }
    expect(apart(dippedVolume(cask, mm(part * bung)), ((sum / count) * length) / 1e6)).toBeLessThan(2e-6);
  }
}); // prettier-ignore

test('a full cask is within 1.5 % of the truncated spheroid of Oughtred and Kepler, and never above it (school geometry)', () => {
  always(fc.tuple(between(0.75, 1), between(0.8, 2)), ([head, length]) => {
    const spheroid = (Math.PI * length * 1000 * (2 * 1000 ** 2 + (head * 1000) ** 2)) / 12 / 1e6;
    const held = caskCapacity(shape(1000, head * 1000, length * 1000));
    expect(held).toBeLessThanOrEqual(spheroid * (1 + 1e-12));
    expect(held / spheroid).toBeGreaterThan(0.985);
  });
});

test('pointed at both ends it is a spindle of 8/15 of its cylinder', () => {
  expect(apart(caskCapacity(shape(600, 0, 900)), ((8 / 15) * Math.PI * 300 ** 2 * 900) / 1e6)).toBeLessThan(
    1e-12,
  );
});

test('as a cylinder of 200 L it touches the wood of the worked sum', () => {
  const { given, answer } = kept.sums.rows.find(({ id }) => id === 'T3')!;
  const wood = woodToLitre(shapeOf(litres(given.V!), { length: given.k!, head: 1 }));
  expect(apart(wood / 10, answer)).toBeLessThan(1e-6); // cm²/L in m²/m³
});

test('the wood of a cask lies between that of the cylinders inside and around it', () => {
  always(shapes.filter(({ bung, head }) => head < 0.99 * bung), ({ bung, head, length }) => {
    const wood = innerSurface(shape(bung, head, length));
    const heads = (Math.PI * head ** 2) / 2;
    expect(wood).toBeGreaterThan((Math.PI * head * length + heads) / 1e6);
    expect(wood).toBeLessThan((Math.PI * bung * (length + bung - head) + heads) / 1e6);
  });
}); // prettier-ignore

test('a shape made for a size holds that size, in its proportions', () => {
  always(fc.tuple(between(20, 700), proportions), ([size, wanted]) => {
    const cask = shapeOf(litres(size), wanted);
    expect(apart(caskCapacity(cask), size)).toBeLessThan(1e-12);
    expect(apart(cask.length / cask.bung, wanted.length)).toBeLessThan(1e-12);
    expect(apart(cask.head / cask.bung, wanted.head)).toBeLessThan(1e-12);
  });
});

test('wood to a litre falls as the cube root of the size, whatever the shape', () => {
  always(fc.tuple(ordered(20, 700, 1), proportions), ([[small, large], like]) => {
    const [more, less] = [small, large].map((size) => woodToLitre(shapeOf(litres(size), like)));
    expect(apart(more! / less!, (large / small) ** (1 / 3))).toBeLessThan(1e-9);
  });
});

test('a head wider than the bung, and a dip above it, are refused by name', () => {
  expect(() => caskCapacity(shape(500, 501, 800))).toThrow(/head diameter/);
  expect(() => dippedVolume(shape(500, 400, 800), mm(501))).toThrow(/dip/);
});
