// Draws rounds off the main thread, a few hundred at a time, and tells how far it is.
import type { House } from '../core/line/house.ts';
import {
  drawRounds,
  summariseTwo,
  type DrawnFigure,
  type SpreadOfTwo,
  type Unsure,
} from '../core/line/spread.ts';
import { vapourModels } from '../core/vapour/equilibrium.ts';

export interface SpreadQuestion {
  readonly house: House;
  readonly unsure: Unsure;
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

const PORTION = 500; // rounds between two reports
const FIRST_SEED = 1; // the same question gives the same answer

addEventListener('message', ({ data }: MessageEvent<SpreadQuestion>) => {
  const began = performance.now();
  const values: Record<string, [one: number[], other: number[]]> = {};
  let refused = 0;
  for (let done = 0; done < data.count; done += PORTION) {
    const houses = Math.min(PORTION, data.count - done) / vapourModels.length;
    vapourModels.forEach((model, i) => {
      const draws = drawRounds(data.house, data.unsure, houses, FIRST_SEED + done, model);
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
