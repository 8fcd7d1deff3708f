// The inside of a cask as a shape: staves bent to a parabola between two flat heads.
import { gaussPanel } from '../numerics/gauss.ts';
import { litres, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** Inside measures, mm: diameter at the bung and at the heads, and length between the heads. */
export interface CaskShape {
  readonly bung: Quantity<'length'>;
  readonly head: Quantity<'length'>;
  readonly length: Quantity<'length'>;
}

const CUBIC_MM = 1e6; // mm³ in a litre
const SQUARE_MM = 1e6; // mm² in a square metre
const PANELS = 4; // Gauss panels along half a cask; the answer stands to 1e-12

function check({ bung, head, length }: CaskShape): void {
  within('The bung diameter, mm,', bung, Number.MIN_VALUE, 10_000);
  within('The head diameter, mm,', head, 0, bung);
  within('The length, mm,', length, Number.MIN_VALUE, 10_000);
}

/** Radius, mm, at a distance from the middle. */
const radiusAt =
  ({ bung, head, length }: CaskShape) =>
  (x: number) =>
    bung / 2 - ((bung - head) / 2) * ((2 * x) / length) ** 2;

function integrate(f: (x: number) => number, low: number, high: number): number {
  const panel = (high - low) / PANELS;
  return Array.from({ length: PANELS }, (_, i) =>
    gaussPanel(f, low + i * panel, low + (i + 1) * panel),
  ).reduce((sum, part) => sum + part);
}

/**
 * What the full cask holds, L: π L (8 D² + 4 D d + 3 d²) ÷ 60, with bung diameter D, head diameter d and length L.
 * Refuses (throws) a head wider than the bung. Source: the parabola turned about its axis, integrated; no approximation but the shape.
 * @example caskCapacity({ bung: 1000, head: 1000, length: 1000 }) // 785.40 (a cylinder, a quarter of π cubic metres)
 */
export function caskCapacity(shape: CaskShape): Quantity<'volume'> {
  check(shape);
  const { bung, head, length } = shape;
  return litres((Math.PI * length * (8 * bung ** 2 + 4 * bung * head + 3 * head ** 2)) / 60 / CUBIC_MM);
}

/** Area of a circle of radius `r` below a level `z` from its middle. */
function wetted(r: number, z: number): number {
  if (z >= r) return Math.PI * r * r;
  if (z <= -r) return 0;
  return r * r * Math.acos(-z / r) + z * Math.sqrt(r * r - z * z);
}

/**
 * What a cask lying with its bung up holds, L, when the rod through the bung is wet for `dip` mm, 0 to the bung diameter.
 * Source: the wetted part of each round slice, summed along the cask.
 * @example dippedVolume({ bung: 1000, head: 1000, length: 1000 }, 500) // 392.70 (half of the cylinder)
 */
export function dippedVolume(shape: CaskShape, dip: Quantity<'length'>): Quantity<'volume'> {
  check(shape);
  within('The dip, mm,', dip, 0, shape.bung);
  const { bung, head, length } = shape;
  const [half, level, radius] = [length / 2, dip - bung / 2, radiusAt(shape)];
  // Beyond `meets` the level lies outside the slices: they are wholly full, or wholly dry.
  const meets =
    Math.abs(level) <= head / 2 ? half : half * Math.sqrt((bung - 2 * Math.abs(level)) / (bung - head));
  const slice = (x: number) => wetted(radius(x), level);
  // With x = meets × (1 − s²) the slices end smoothly.
  const cut = integrate((s) => slice(meets * (1 - s * s)) * 2 * meets * s, 0, 1);
  const beyond = level > 0 && meets < half ? gaussPanel(slice, meets, half) : 0;
  return litres(Math.max(0, 2 * (cut + beyond)) / CUBIC_MM); // rounding may step a hair below nothing
}

/**
 * Wood that the full cask touches, m²: staves and both heads.
 * @example innerSurface({ bung: 1000, head: 1000, length: 1000 }) // 4.7124 (a cylinder, one and a half π square metres)
 */
export function innerSurface(shape: CaskShape): Quantity<'area'> {
  check(shape);
  const { bung, head, length } = shape;
  const radius = radiusAt(shape);
  const bend = (x: number) => (4 * (bung - head) * x) / length ** 2;
  const staves = 2 * integrate((x) => 2 * Math.PI * radius(x) * Math.hypot(1, bend(x)), 0, length / 2);
  return quantity('area', (staves + (Math.PI * head ** 2) / 2) / SQUARE_MM);
}

/** Length and head diameter, each over the bung diameter. */
export interface Proportions {
  readonly length: number;
  readonly head: number;
}

/**
 * The cask of these proportions that holds `size` litres.
 * @example shapeOf(litres(785.398163), { length: 1, head: 1 }) // { bung: 1000.000, head: 1000.000, length: 1000.000 } (the cylinder of a metre each way)
 */
export function shapeOf(size: Quantity<'volume'>, { length, head }: Proportions): CaskShape {
  within('The cask, L,', size, Number.MIN_VALUE, 100_000);
  const unit = {
    bung: quantity('length', 1),
    head: quantity('length', head),
    length: quantity('length', length),
  };
  const bung = Math.cbrt(size / caskCapacity(unit));
  return {
    bung: quantity('length', bung),
    head: quantity('length', head * bung),
    length: quantity('length', length * bung),
  };
}

/**
 * Wood touched by each litre, cm², in a full cask. Falls as the cube root of the size, for like casks.
 * @example woodToLitre({ bung: 1000, head: 1000, length: 1000 }) // 60.000 (47,124 cm² over 785.4 L)
 */
export function woodToLitre(shape: CaskShape): Quantity<'woodToLitre'> {
  return quantity('woodToLitre', (10_000 * innerSurface(shape)) / caskCapacity(shape));
}
