// Sacks of malt, two before one, tied at the neck.
import type { Engraving } from './engravings.ts';

const sack = (x: number, y: number) =>
  `M${x - 24} ${y} C${x - 31} ${y - 18} ${x - 28} ${y - 46} ${x - 9} ${y - 56} L${x - 5} ${y - 60} L${x - 11} ${y - 70} Q${x} ${y - 66} ${x + 11} ${y - 70} L${x + 5} ${y - 60} L${x + 9} ${y - 56} C${x + 28} ${y - 46} ${x + 31} ${y - 18} ${x + 24} ${y}Z`;
const tie = (x: number, y: number) => `M${x - 6} ${y - 58} Q${x} ${y - 55} ${x + 6} ${y - 58} M${x - 5} ${y - 61} Q${x} ${y - 58} ${x + 5} ${y - 61} `; // prettier-ignore
/** Folds that fall from the neck, and weave on the side away from the light. */
function folds(x: number, y: number): string {
  let strokes = `M${x - 4} ${y - 54} q-9 14 -11 30 M${x + 1} ${y - 54} q1 14 -2 24 M${x + 5} ${y - 54} q10 14 10 34 `;
  for (let row = 0; row < 14; row++) {
    const low = y - 4 - row * 3;
    strokes += `M${x + 24 - (row % 3) * 2} ${low} l${-9 + (row % 4)} 1.5 `;
    if (row % 2 === 0) strokes += `M${x - 25 + (row % 3)} ${low} l5 1 `;
  }
  return strokes;
}

export const sacks: Engraving = {
  beside: sack(65, 126),
  body: `${sack(35, 158)} ${sack(95, 158)}`,
  lines: tie(35, 158) + tie(95, 158) + tie(65, 126),
  hatch:
    folds(35, 158) +
    folds(95, 158) +
    'M61 72 q-9 12 -11 24 M66 72 q1 12 -1 22 M70 72 q10 12 10 26 M74 78 q8 8 9 20',
  shade: '',
};
