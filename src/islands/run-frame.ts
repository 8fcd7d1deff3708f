// The frame of the drawn spirit run, and the names of its parts.

export const [RUN_WIDTH, RUN_HEIGHT] = [720, 440];
export const RUN_MARGIN = { left: 52, right: 20, top: 40, bottom: 44 };
export const STRONGEST_SHOWN = 90; // % vol at the top of the drawing: stronger than any pot still gives
export const RUN_FOOT = RUN_HEIGHT - RUN_MARGIN.bottom;

export const runParts = {
  foreshots: 'Foreshots',
  heart: 'Heart',
  feints: 'Feints',
} as const;
