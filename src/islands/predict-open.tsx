// Fills a question to guess at, once the reader has opened it.
import { render } from 'solid-js/web';
import type { Stage } from '../house/figures.ts';
import type { Predict } from '../predict/define.ts';
import { PredictView } from './PredictView.tsx';

const stages: Readonly<Record<Stage, () => Promise<readonly Predict[]>>> = {
  malting: async () => (await import('../predict/malting.ts')).maltingPredicts,
  milling: async () => (await import('../predict/milling.ts')).millingPredicts,
  mashing: async () => (await import('../predict/mashing.ts')).mashingPredicts,
  fermenting: async () => (await import('../predict/fermenting.ts')).fermentingPredicts,
  distilling: async () => (await import('../predict/distilling.ts')).distillingPredicts,
  maturing: async () => (await import('../predict/maturing.ts')).maturingPredicts,
};

/** Puts the question of its name into its place. Fails when a part of the script does not come. */
export async function fill(place: HTMLElement): Promise<void> {
  const { predict: id, stage } = place.dataset;
  const found = (await stages[stage as Stage]()).find((predict) => predict.id === id);
  if (!found) throw new RangeError(`There is no guess called ${id}.`);
  render(() => <PredictView of={found} />, place);
}
