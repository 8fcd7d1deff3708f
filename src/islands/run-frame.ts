// The frame of the drawn spirit run, and the names of its parts.

export const [WIDTH, HEIGHT] = [720, 440];
export const MARGIN = { left: 52, right: 20, top: 40, bottom: 44 };
export const STRONGEST = 90; // % vol at the top of the drawing: stronger than any pot still gives
export const FOOT = HEIGHT - MARGIN.bottom;

export const runParts = {
  foreshots: 'Foreshots',
  heart: 'Heart',
  feints: 'Feints',
} as const;
