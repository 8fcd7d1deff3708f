// Where on a drawing a figure stands: the track along which the part that follows it is moved.

/** Values of a figure, rising, and where its part then is, in the drawing's units. */
export type Track = readonly (readonly [value: number, x: number, y: number])[];

/** The move for a value: straight between the points of the track, and held at its ends. */
export function placeOn(track: Track, value: number): string {
  const next = track.findIndex(([at]) => at >= value);
  const [to, from] = [track.at(next)!, track[Math.max(0, next < 0 ? track.length - 1 : next - 1)]!];
  const part = to[0] === from[0] ? 0 : (value - from[0]) / (to[0] - from[0]);
  const [x, y] = [1, 2].map((i) => Number((from[i]! + part * (to[i]! - from[i]!)).toFixed(1)));
  return `translate(${x} ${y})`;
}
