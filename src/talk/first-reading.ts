// The first reading: how likely each quantity is each of its candidates, by its own evidence alone.
import { labels, partsOf, type Candidate } from './candidates.ts';
import type { Evidence } from './evidence.ts';

/** What is learnt of a sign: the parts that it speaks for or against, and how much. */
export interface Learnt {
  readonly parts: readonly number[];
  readonly weights: readonly number[];
}
export interface FirstModel {
  readonly signs: { readonly get: (sign: number) => Learnt | undefined };
  /** What the size of a quantity counts for. */
  readonly size: number;
}

/** Every part of every label, in the order in which weights are kept. */
export const partNames: readonly string[] = [...new Set(labels.flatMap(partsOf))];
const place = new Map(partNames.map((name, i) => [name, i]));
/** The parts of a label, by their places. */
export const placesOf: ReadonlyMap<string, readonly number[]> = new Map(
  labels.map((label) => [label, partsOf(label).map((part) => place.get(part)!)]),
);

/** Scores as chances that make one together. */
export function chancesOf(scores: readonly number[]): number[] {
  const most = Math.max(...scores);
  const parts = scores.map((score) => Math.exp(score - most));
  const whole = parts.reduce((sum, part) => sum + part, 0);
  return parts.map((part) => part / whole);
}

const HARDLY = 2e-3; // a chance that is not read further

/** The candidates that are read further, by their places. */
export const shortlist = (chances: readonly number[]): number[] =>
  chances.flatMap((chance, i) => (chance >= HARDLY ? [i] : []));

const votes = new Float64Array(partNames.length); // of the quantity at hand

/** The chances of one quantity's candidates, in their order. */
export function firstChances({ signs, size }: FirstModel, evidence: Evidence, candidates: readonly Candidate[]): number[] {
  votes.fill(0);
  for (let k = 0; k < evidence.signs.length; k++) {
    const learnt = signs.get(evidence.signs[k]!);
    if (!learnt) continue;
    const strength = evidence.strengths[k]!;
    const { parts, weights } = learnt;
    for (let i = 0; i < parts.length; i++) votes[parts[i]!]! += strength * weights[i]!;
  }
  return chancesOf(
    candidates.map((each) => placesOf.get(each.label)!.reduce((sum, part) => sum + votes[part]!, size * each.size)),
  );
} // prettier-ignore
