// The two ends of a range as they are meant: the 5 of "5-6,000" is five thousand.

export interface NumberEnd {
  readonly value: number;
  /** What its last word multiplied by: 1000 in "six thousand". */
  readonly scale: number;
}

const scaleOf = ({ value, scale }: NumberEnd) =>
  scale > 1 ? scale : value >= 1000 && value % 100 === 0 ? 1000 : 1;

/**
 * The first end of a range, lifted to the scale of the second where the two are too far apart otherwise.
 * @example lifted({ value: 5, scale: 1 }, { value: 6000, scale: 1 }) // 5000 (five to six thousand)
 */
export function lifted(first: NumberEnd, second: NumberEnd): number {
  const scale = scaleOf(second);
  const up = first.value * scale;
  return first.scale === 1 && scale > 1 && first.value < 1000 && up < second.value && first.value < second.value / 50 // prettier-ignore
    ? up
    : first.value;
}
