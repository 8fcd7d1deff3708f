// Fills a question to guess at, once the reader has opened it.
import { render } from 'solid-js/web';
import type { Stage } from '../house/figures.ts';
import type { Predict } from '../predict/define.ts';
import { PredictView } from './PredictView.tsx';

const stages: Readonly<Record<Stage, () => Promise<readonly Predict[]>>> = {
  malting: async () => (await import('../predict/malting.ts')).malting,
  milling: async () => (await import('../predict/milling.ts')).milling,
  mashing: async () => (await import('../predict/mashing.ts')).mashing,
  fermenting: async () => (await import('../predict/fermenting.ts')).fermenting,
  distilling: async () => (await import('../predict/distilling.ts')).distilling,
  maturing: async () => (await import('../predict/maturing.ts')).maturing,
};

/** Puts the question of its name into its place. Fails when a part of the script does not come. */
export async function fill(place: HTMLElement): Promise<void> {
  const { predict: id, stage } = place.dataset;
  const found = (await stages[stage as Stage]()).find((predict) => predict.id === id);
  if (!found) throw new RangeError(`There is no guess called ${id}.`);
  render(() => <PredictView of={found} />, place);
}
