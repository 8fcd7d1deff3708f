// A reader's shift of two casks: the house they are of, and what each filling came to.
import type { Action } from '../../core/shift/casks/course.ts';
import type { CasksSetup } from '../../core/shift/casks/rig.ts';
import type { Line } from '../../core/line/line.ts';
import { celsius, litres20, percent, quantity, strength } from '../../core/quantity.ts';
import type { KeptShift } from '../kept.ts';
import { drawCasks } from './draw.ts';

const FOUND_AT = 10; // °C of the store in which the house's loss was found; from memory
const CASK = 200; // L of the cask; a barrel

/** The figures of a house that its casks hang on. */
export interface CasksHouse {
  readonly name: string;
  readonly strength: number;
  readonly indrink: number;
  readonly loss: number;
  readonly humidity: number;
  readonly steady: number;
  readonly residue: number;
  readonly filter: number;
  readonly bottle: number;
  readonly bottled: number;
}
/** What a filling came to: bottles of each cask, their ages in months, points. */
export interface CasksDone {
  readonly first: number;
  readonly second: number;
  readonly firstAge: number;
  readonly secondAge: number;
  readonly score: number;
}
export type CasksShift = KeptShift<CasksHouse, CasksDone, Action>;

export const houseOfCasks = (name: string, { house, filling }: Line): CasksHouse => ({
  name,
  strength: filling.strength,
  indrink: house.indrink,
  loss: house.alcoholLoss,
  humidity: house.storeHumidity,
  steady: house.steadyHumidity,
  residue: house.caskResidue,
  filter: house.filterLoss,
  bottle: house.bottleSize,
  bottled: house.bottlingStrength,
});

/** What a round is about, and what is drawn for it. */
export function roundOfCasks({ house, seed, done }: Pick<CasksShift, 'house' | 'seed' | 'done'>) {
  const { store, ...events } = drawCasks(seed, done.length + 1);
  const setup: CasksSetup = {
    filling: { volume: litres20(CASK), strength: strength(house.strength) },
    indrink: percent(house.indrink),
    stores: [
      { name: 'dunnage', temperature: celsius(FOUND_AT), humidity: percent(house.humidity) },
      { name: store.name, temperature: celsius(store.temperature), humidity: percent(store.humidity) },
    ],
    alcoholLoss: percent(house.loss),
    foundAt: celsius(FOUND_AT),
    steadyHumidity: percent(house.steady),
    residue: litres20(house.residue),
    filterLoss: percent(house.filter),
    bottle: quantity('bottle', house.bottle),
    strength: strength(house.bottled),
  };
  return { setup, events };
}
