// The integral of a smooth function over one short panel.

const NODES = [0, 0.5384693101056831, -0.5384693101056831, 0.906179845938664, -0.906179845938664]; // Gauss–Legendre, five points; DLMF table 3.5.1
const WEIGHTS = [
  0.5688888888888889, 0.47862867049936647, 0.47862867049936647, 0.23692688505618908, 0.23692688505618908,
]; // the same

/**
 * Integrates `f` from `low` to `high` with five Gauss–Legendre points; exact for polynomials to degree 9.
 * @example gaussPanel((x) => x ** 2, 0, 3) // 9 (a third of 27)
 */
export function gaussPanel(f: (x: number) => number, low: number, high: number): number {
  const [middle, half] = [(low + high) / 2, (high - low) / 2];
  let sum = 0;
  for (let i = 0; i < NODES.length; i++) sum += WEIGHTS[i]! * f(middle + half * NODES[i]!);
  return half * sum;
}
