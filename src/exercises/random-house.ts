// An invented house by seed: the built-in one with some of its figures moved, for sheets on which every trainee has a house of their own.
import type { House } from '../core/line/house.ts';
import { builtInHouse } from '../house/figures.ts';
import { chanceOf } from './chance.ts';

/** Clean values that a house of this size may have. */
export const choices = {
  barleyMoisture: [11, 11.5, 12, 12.5, 13],
  maltMoisture: [4, 4.5, 5],
  maltPerMash: [900, 950, 1000, 1050, 1100],
  flour: [8, 9, 10, 11, 12],
  mashesPerWeek: [8, 10, 12, 14],
  weeksPerYear: [44, 46, 48],
  originalGravity: [1.054, 1.056, 1.058, 1.06],
  fillingStrength: [62, 63, 63.5, 64],
} as const satisfies { readonly [N in keyof House]?: readonly number[] };

/** A house by seed. It depends on nothing that is computed; every mixture of the values runs, which the tests hold. */
export function randomHouse(seed: string): House {
  const { pick } = chanceOf(`house/${seed}/0`);
  const moved = Object.fromEntries(
    Object.entries(choices).map(([name, values]) => [name, pick<number>(values)]),
  );
  return { ...builtInHouse, ...moved };
}
