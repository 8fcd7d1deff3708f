// Strokes that the drawings share: hatching, arrow heads, grain, all as path data.

/** Slanting strokes that shade an edge, from (x, from) down to (x, to). */
export function hatching(x: number, from: number, to: number, length = 10, gap = 7): string {
  let strokes = '';
  for (let y = from; y <= to; y += gap) strokes += `M${x} ${y} l${-length} ${length * 0.7} `;
  return strokes;
}

/** Ground under a floor line at height `y`: short strokes from `left` to `right`. */
export function ground(y: number, left: number, right: number): string {
  let strokes = '';
  for (let x = left + 8; x <= right; x += 10) strokes += `M${x} ${y} l-6 6 `;
  return strokes;
}

const heads = {
  right: 'l-7 -4 m7 4 l-7 4',
  left: 'l7 -4 m-7 4 l7 4',
  up: 'l-4 7 m4 -7 l4 7',
  down: 'l-4 -7 m4 7 l4 -7',
} as const;

/** An arrow head with its tip at (x, y). */
export function arrow(x: number, y: number, way: keyof typeof heads): string {
  return `M${x} ${y} ${heads[way]}`;
}

/** Grains lying in a heap: rows from `top` to `bottom` between the edges at each height. */
export function grains(
  top: number,
  bottom: number,
  edges: (y: number) => readonly [left: number, right: number],
): string {
  let strokes = '';
  for (let row = 0; top + row * 9 <= bottom; row += 1) {
    const y = top + row * 9;
    const [left, right] = edges(y);
    for (let x = left + (row % 2 ? 12 : 5), n = row; x + 9 <= right; x += 15, n += 1) {
      const tilt = (n % 3) - 1;
      strokes += `M${x} ${y + 2 * tilt} q4 ${-5 - tilt} 9 ${-2 * tilt} q-5 ${5 - tilt} -9 ${2 * tilt} `;
    }
  }
  return strokes;
}

/** Still water: short waves on a surface, from `left` to `right` at height `y`. */
export function waves(y: number, left: number, right: number): string {
  let strokes = '';
  for (let x = left; x + 14 <= right; x += 22) strokes += `M${x} ${y} q3.5 -3 7 0 q3.5 3 7 0 `;
  return strokes;
}
