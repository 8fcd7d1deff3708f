// An invented house by seed: the built-in one with some of its figures moved, for sheets on which every trainee has a house of their own.
import { figureTable, type NumberName } from '../core/figures/index.ts';
import type { House } from '../core/line/house.ts';
import { builtInHouse, numberFigures } from '../house/figures.ts';
import { seededChance } from './seeded-random.ts';

/** Clean values that a house of this size may have, in the order of the table: a seed’s house hangs on it. */
export const cleanValues: Readonly<Record<string, readonly number[]>> = Object.fromEntries(
  (Object.keys(numberFigures) as NumberName[]).flatMap((name) => {
    const { clean } = figureTable[name];
    return clean ? [[name, clean]] : [];
  }),
);

const CLEAN_WORT = 50; // L; wort of an invented house is a multiple of it
const degrees = (gravity: number) => 1000 * (gravity - 1);

/** Wort in proportion to the malt, and against the degrees of its gravity, so that no house has more extract than its malt. */
const wortFor = ({ maltPerMash, originalGravity }: House): number =>
  (builtInHouse.wortVolume *
    (maltPerMash / builtInHouse.maltPerMash) *
    degrees(builtInHouse.originalGravity)) /
  degrees(originalGravity);

/**
 * A house by seed, as a generator draws it. It depends on nothing that is computed; every mixture of the values runs,
 * which the tests hold. The first generator left the wort as the built-in house has it.
 */
export function randomHouse(seed: string, generator: number): House {
  const { pick } = seededChance(`house/${seed}/0`);
  const moved = Object.fromEntries(Object.entries(cleanValues).map(([name, values]) => [name, pick(values)]));
  const house: House = { ...builtInHouse, ...moved };
  const wortVolume = CLEAN_WORT * Math.round(wortFor(house) / CLEAN_WORT);
  return generator === 1 ? house : { ...house, wortVolume: wortVolume as House['wortVolume'] };
}
