// A cask lying end on: chime, head of staves and the shade under it, round (0, 0) with a radius of 1.

const chord = (x: number) => Math.sqrt(0.74 ** 2 - x ** 2);

export const cask = {
  body: 'M-1 0 A1 1 0 1 1 1 0 A1 1 0 1 1 -1 0Z',
  lines: 'M-0.8 0 A0.8 0.8 0 1 1 0.8 0 A0.8 0.8 0 1 1 -0.8 0Z',
  hatch:
    [-0.54, -0.27, 0, 0.27, 0.54]
      .map((x) => `M${x} ${(-chord(x)).toFixed(2)} V${chord(x).toFixed(2)}`)
      .join(' ') +
    [0.3, 0.4, 0.5, 0.6].map((y) => ` M${(y - 0.35).toFixed(2)} ${y} H${(Math.sqrt(0.78 ** 2 - y ** 2)).toFixed(2)}`).join('') +
    ' M0.72 0.55 A0.9 0.9 0 0 1 -0.3 0.85 M0.86 0.28 A0.9 0.9 0 0 1 0.55 0.72',
}; // prettier-ignore
