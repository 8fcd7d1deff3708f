// Draws rounds off the main thread, a few hundred at a time, and tells how far it is.
import type { House } from '../core/line/house.ts';
import { drawRounds, summarise, type DrawnFigure, type Summary, type Unsure } from '../core/line/spread.ts';

export interface SpreadQuestion {
  readonly house: House;
  readonly unsure: Unsure;
  readonly count: number;
}
export type SpreadAnswer =
  | { readonly done: number }
  | {
      readonly summaries: Readonly<Record<string, Summary | undefined>>;
      readonly refused: number;
      readonly milliseconds: number;
    };

const PORTION = 500; // rounds between two reports
const FIRST_SEED = 1; // the same question gives the same answer

addEventListener('message', ({ data }: MessageEvent<SpreadQuestion>) => {
  const began = performance.now();
  const values: Record<string, number[]> = {};
  let refused = 0;
  for (let done = 0; done < data.count; done += PORTION) {
    const draws = drawRounds(
      data.house,
      data.unsure,
      Math.min(PORTION, data.count - done),
      FIRST_SEED + done,
    );
    refused += draws.refused;
    for (const [name, some] of Object.entries(draws.values) as [DrawnFigure, readonly number[]][]) {
      (values[name] ??= []).push(...some);
    }
    postMessage({ done: Math.min(done + PORTION, data.count) } satisfies SpreadAnswer);
  }
  const summaries = Object.fromEntries(Object.entries(values).map(([name, all]) => [name, summarise(all)]));
  postMessage({ summaries, refused, milliseconds: performance.now() - began } satisfies SpreadAnswer);
});
