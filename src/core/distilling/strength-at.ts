// The strength at the safe after so much has come over.
import type { RunPoint } from './run.ts';

/**
 * Strength at a volume along a run, straight between the points of its curve.
 * @example strengthAt([{ volume: 0, strength: 80 }, { volume: 100, strength: 70 }], 50) // 75 (half way)
 */
export function strengthAt(curve: readonly RunPoint[], volume: number): number {
  const next = curve.findIndex((point) => point.volume >= volume);
  if (next <= 0) return curve[next === 0 ? 0 : curve.length - 1]!.strength;
  const [a, b] = [curve[next - 1]!, curve[next]!];
  return a.strength + ((volume - a.volume) / (b.volume - a.volume || 1)) * (b.strength - a.strength);
}
