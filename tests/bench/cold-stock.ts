// Prints how many milliseconds the first reckoning of a large register takes in a Node that has reckoned nothing yet: `npm run cold-stock`
import { stockOn } from '../../src/core/stock/totals.ts';
import type { CaskGroup } from '../../src/core/stock/group.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const SIZES = [125, 190, 200, 250, 500]; // L
/** 60,000 casks in 300 groups, filled over fifty years, every seventh group regauged. */
const groups = Array.from({ length: 300 }, (_, i): CaskGroup => {
  const size = SIZES[i % SIZES.length]!;
  const regauge = { regauged: '2025-03-01', regaugedVolume: 0.6 * size, regaugedStrength: 55 };
  return {
    casks: 200,
    size,
    filled: `${1975 + Math.floor(i / 6)}-0${1 + (i % 9)}-1${i % 9}`,
    filledVolume: 0.98 * size,
    filledStrength: 60 + (i % 12) / 2,
    ...(i % 7 === 0 ? regauge : {}),
  };
});
const began = performance.now();
const { all } = stockOn(groups, builtInHouse, '2026-11-28');
console.log(JSON.stringify({ milliseconds: performance.now() - began, casks: all.casks }));
