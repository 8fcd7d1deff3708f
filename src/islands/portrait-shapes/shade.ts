// Engraver's shade: fine strokes that draw together on the side away from the light, to be cut off at an outline.

const n = (value: number) => Number(value.toFixed(2));

/** Upright strokes on a round wall: closer towards both edges, and more of them to the right. */
export function upright(left: number, right: number, top: number, bottom: number): string {
  const [middle, half] = [(left + right) / 2, (right - left) / 2];
  const at = [-78, -66, 8, 20, 30, 38, 45, 51, 56, 61, 65, 69, 73, 77, 81, 85];
  return at.map((angle) => `M${n(middle + half * Math.sin((angle * Math.PI) / 180))} ${top} V${bottom}`).join(' ');
} // prettier-ignore

const REACH = [0.5, 0.24, 0.4, 0.3]; // of the width: how far each stroke comes in from the dark side, in turn

/** Level strokes round a bowl, from the right, long and short in turn; a few short ones on the left. */
export function level(left: number, right: number, top: number, bottom: number, gap = 2): string {
  let strokes = '';
  for (let y = top, i = 0; y <= bottom; y += gap, i++) {
    const long = (right - left) * REACH[i % 4]!;
    strokes += `M${n(right - long)} ${n(y)} q${n(long / 2)} 2.5 ${n(long)} -1 `;
    if (i % 3 === 0)
      strokes += `M${n(right - 0.22 * (right - left))} ${n(y - gap)} l${n(0.22 * (right - left))} ${3 * gap} `;
    if (i % 2 === 0) strokes += `M${left} ${n(y)} q${n(long / 8)} 2 ${n(long / 4)} 2 `;
  }
  return strokes;
}
