// Draws rounds off the main thread, a few hundred at a time, and tells how far it is.
import type { House } from '../core/line/house.ts';
import { roundOf } from '../core/line/line.ts';
import {
  drawRounds,
  summariseTwo,
  type DrawnHouse,
  type DrawnFigure,
  type Settle,
  type SpreadOfTwo,
  type Uncertainties,
} from '../core/line/monte-carlo.ts';
import { drawnOf, settleInPlant } from '../core/plant/drawn.ts';
import { saysMore } from '../core/plant/line.ts';
import { isRefusal } from '../core/refusal.ts';
import { readPart } from '../house/parts/part.ts';
import { plantPart } from '../house/parts/plant.ts';
import { vapourModels } from '../core/vapour/models.ts';

export interface SpreadQuestion {
  readonly house: House;
  readonly unsure: Uncertainties;
  /** The house’s part “plant”, as it is kept. */
  readonly plant?: unknown;
  /** Rounds: half as many houses are drawn, and each is settled by both models of vapour. */
  readonly count: number;
}
export type SpreadAnswer =
  | { readonly done: number }
  | {
      readonly summaries: Readonly<Record<string, SpreadOfTwo | undefined>>;
      readonly refused: number;
      readonly milliseconds: number;
    };

/** How the rounds of a house are settled, and what of its plant is drawn: by its own stills where those say more, and come to a round. */
function wayOf({ house, plant }: SpreadQuestion): { readonly drawn: DrawnHouse; readonly settle: Settle } {
  const { value } = readPart(plantPart, plant);
  const settle = settleInPlant(value, house);
  return saysMore(value, house) && !isRefusal(settle(house))
    ? { drawn: { ...house, ...drawnOf(value) }, settle }
    : { drawn: house, settle: roundOf };
}

const PORTION = 500; // rounds between two reports
const FIRST_SEED = 1; // the same question gives the same answer

addEventListener('message', ({ data }: MessageEvent<SpreadQuestion>) => {
  const began = performance.now();
  const values: Record<string, [one: number[], other: number[]]> = {};
  let refused = 0;
  const { drawn, settle } = wayOf(data);
  for (let done = 0; done < data.count; done += PORTION) {
    const houses = Math.min(PORTION, data.count - done) / vapourModels.length;
    vapourModels.forEach((model, i) => {
      const draws = drawRounds(drawn, data.unsure, houses, FIRST_SEED + done, model, settle);
      refused += draws.refused;
      for (const [name, some] of Object.entries(draws.values) as [DrawnFigure, readonly number[]][])
        (values[name] ??= [[], []])[i]!.push(...some);
    });
    postMessage({ done: Math.min(done + PORTION, data.count) } satisfies SpreadAnswer);
  }
  const summaries = Object.fromEntries(
    Object.entries(values).map(([name, [one, other]]) => [name, summariseTwo(one, other)]),
  );
  postMessage({ summaries, refused, milliseconds: performance.now() - began } satisfies SpreadAnswer);
});
