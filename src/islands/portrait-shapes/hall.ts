// A floor of the house cut open, as strokes: slated roof, walls of stone, arched windows behind, and the ground.

interface Hall {
  readonly left: number;
  readonly right: number;
  readonly ridge: number;
  readonly ceiling: number;
  readonly floor: number;
}
const n = (value: number) => Number(value.toFixed(2));
const [WALL, EAVES] = [3, 5]; // mm: thickness of an end wall, and how far the roof reaches over it

export const roofOf = ({ left, right, ridge, ceiling }: Hall): string =>
  `M${left - EAVES} ${ceiling} L${left + 3} ${ridge} H${right - 3} L${right + EAVES} ${ceiling}Z`;

/** Slates: courses, and joints that do not stand over each other. */
export function slatesOf({ left, right, ridge, ceiling }: Hall): string {
  const courses = 5;
  const deep = (ceiling - ridge) / courses;
  let strokes = '';
  for (let row = 0; row < courses; row++) {
    const [top, part] = [ridge + row * deep, (row + 1) / courses];
    const [from, to] = [left + 3 - (EAVES + 3) * part, right - 3 + (EAVES + 3) * part];
    strokes += `M${n(from)} ${n(top + deep)} H${n(to)} `;
    for (let x = from + 2.4 + (row % 2) * 1.1; x < to - 2; x += 2.2) strokes += `M${n(x)} ${n(top)} v${n(deep)} `;
  }
  return strokes;
} // prettier-ignore

/** A louvred vent on the ridge, with its own small roof. */
export const ventAt = (x: number, { ridge }: Hall): string =>
  `M${x - 4} ${ridge} V${ridge - 3.4} H${x + 4} V${ridge} M${x - 5.4} ${ridge - 3.4} L${x} ${ridge - 7} L${x + 5.4} ${ridge - 3.4}Z M${x - 4} ${ridge - 2.3} h8 M${x - 4} ${ridge - 1.2} h8`;

export const hallWalls = ({ left, right, ceiling, floor }: Hall): string =>
  `M${left - WALL} ${ceiling} V${floor} H${left} V${ceiling}Z M${right} ${ceiling} V${floor} H${right + WALL} V${ceiling}Z`;

/** Stones of the end walls, and the inner walls' two faces with strokes between. */
export function stonesOf({ left, right, ceiling, floor }: Hall, inner: readonly number[]): string {
  let strokes = '';
  for (let y = ceiling + 2.6, row = 0; y < floor; y += 2.6, row++)
    for (const x of [left - WALL, right])
      strokes += `M${x} ${n(y)} h${WALL} M${n(x + (row % 2 ? 1 : 2))} ${n(y)} v${-2.6} `;
  for (const x of inner)
    for (let y = ceiling + 1.5; y < floor; y += 1.1) strokes += `M${n(x + 0.7)} ${n(y)} l-1.4 1 `;
  return strokes;
}

/** The wall behind, in the half dark: level strokes, closer under the ceiling. */
export function duskOf({ left, right, ceiling, floor }: Hall): string {
  let strokes = '';
  for (let y = ceiling + 0.5, gap = 0.42; y < floor - 0.4; y += gap, gap *= 1.017)
    strokes += `M${left} ${n(y)} H${right} `;
  return strokes;
}

/** The windows of the wall behind, between two walls: arched, with panes. */
export function windowsOf({ ceiling }: Hall, from: number, to: number): string {
  const many = Math.max(1, Math.floor((to - from) / 24));
  let strokes = '';
  for (let i = 0; i < many; i++) {
    const [x, y] = [from + ((to - from) * (i + 0.5)) / many, ceiling + 6];
    strokes += `M${n(x - 3)} ${y + 11} V${y} a3 3 0 0 1 6 0 V${y + 11}Z M${n(x - 4)} ${y + 11} h8 M${n(x)} ${y - 3} V${y + 11} M${n(x - 3)} ${y + 3.5} h6 M${n(x - 3)} ${y + 7.2} h6 `;
  }
  return strokes;
} // prettier-ignore

/** The ground under the floor: strokes that thin out. */
export function groundOf({ left, right, floor }: Hall): string {
  let strokes = `M${left - 6} ${floor} H${right + 6} M${left - 6} ${n(floor + 0.8)} H${right + 6} `;
  for (let x = left - 5, i = 0; x < right + 6; x += 1.5, i++)
    strokes += `M${n(x)} ${n(floor + 0.8)} l${[-1.2, -0.6, -0.9][i % 3]} ${[1.2, 0.6, 0.9][i % 3]} `;
  return strokes;
}
