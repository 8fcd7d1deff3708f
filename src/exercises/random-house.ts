// An invented house by seed: the built-in one with some of its figures moved, for sheets on which every trainee has a house of their own.
import { figureTable, type NumberName } from '../core/figures/index.ts';
import type { House } from '../core/line/house.ts';
import { line } from '../core/line/line.ts';
import { isRefusal } from '../core/refusal.ts';
import { builtInHouse, numberFigures } from '../house/figures.ts';
import { chanceOf } from './chance.ts';

/** Clean values that a house of this size may have, in the order of the table: a seed’s house hangs on it. */
export const choices: Readonly<Record<string, readonly number[]>> = Object.fromEntries(
  (Object.keys(numberFigures) as NumberName[]).flatMap((name) => {
    const { clean } = figureTable[name];
    return clean ? [[name, clean]] : [];
  }),
);

const ATTEMPTS = 40; // draws before the built-in house is taken

/** A house by seed; its line always runs. */
export function randomHouse(seed: string): House {
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const { pick } = chanceOf(`house/${seed}/${attempt}`);
    const moved = Object.fromEntries(Object.entries(choices).map(([name, values]) => [name, pick(values)]));
    const house: House = { ...builtInHouse, ...moved };
    if (!isRefusal(line(house))) return house;
  }
  return builtInHouse;
}
