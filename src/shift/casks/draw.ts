// What a number draws for a shift of two casks: the other store, the age wanted, a leak. How often and how hard has no source: it is an exercise.
import type { CasksEvents } from '../../core/shift/casks/rig.ts';
import { seededDrawing, roundedTo } from '../seed.ts';

/** The second store of a round: its name, temperature, °C, and humidity, %. The first is the house's own. */
export interface DrawnStores extends CasksEvents {
  readonly store: { readonly name: string; readonly temperature: number; readonly humidity: number };
}

const STORES = [
  ['racked store', [13, 16], [58, 68]],
  ['hot racked store', [20, 26], [50, 62]],
  ['cold, damp cellar', [7, 9], [84, 92]],
] as const; // temperatures and humidities are of usual stores, from memory

export function drawCasks(seed: number, filling: number): DrawnStores {
  const { random, between } = seededDrawing(seed, 3_000_000 + filling); // not the numbers of the other shifts
  const [name, warm, damp] = STORES[Math.floor(random() * STORES.length)]!;
  const store = {
    name,
    temperature: roundedTo(between(warm[0], warm[1]), 0),
    humidity: roundedTo(between(damp[0], damp[1]), 0),
  };
  const age = 12 * Math.round(between(6, 11));
  const slack: readonly [number, number] = [Math.round(between(18, 30)), Math.round(between(18, 30))];
  const cask = random() < 0.5 ? 0 : 1;
  const leak = {
    cask,
    from: Math.round(between(0.2, 0.7) * age),
    litres: roundedTo(between(0.2, 0.5), 2),
  } as const;
  const asks = { at: Math.round(between(0.3, 0.9) * age) };
  return { store, age, slack, leak, ...(random() < 0.6 && { asks }) };
}
