// Where on a drawing a figure stands: the track along which the part that follows it is moved, or how wide or high it then is.

/** Values of a figure, rising, where its part then is, in the drawing's units, and how many times as wide and as high as drawn. */
export type Track = readonly (readonly [value: number, x: number, y: number, wide?: number, high?: number])[];

/** The move for a value: straight between the points of the track, and held at its ends. */
export function moveOnTrack(track: Track, value: number): string {
  const next = track.findIndex(([at]) => at >= value);
  const [to, from] = [track.at(next)!, track[Math.max(0, next < 0 ? track.length - 1 : next - 1)]!];
  const part = to[0] === from[0] ? 0 : (value - from[0]) / (to[0] - from[0]);
  const between = (a: number, b: number, digits: number) => Number((a + part * (b - a)).toFixed(digits));
  const place = `translate(${between(from[1], to[1], 1)} ${between(from[2], to[2], 1)})`;
  if (from[3] === undefined) return place;
  const size = ([, , , wide = 1, high = 1]: Track[number]) => [wide, high] as const;
  const [[wideFrom, highFrom], [wideTo, highTo]] = [size(from), size(to)];
  return `${place} scale(${between(wideFrom, wideTo, 3)} ${between(highFrom, highTo, 3)})`;
}
