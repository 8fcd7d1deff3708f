// A calculator of distilling, by its id. Written by `npm run gather`.
import { declaredIsland } from './declared-island.tsx';

export default declaredIsland({
  'strength-from-density': () => import('../calculators/distilling/strength-from-density.ts'),
  'hydrometer-in-the-safe': () => import('../calculators/distilling/hydrometer-in-the-safe.ts'),
  'blend-two-spirits': () => import('../calculators/distilling/blend-two-spirits.ts'),
  'wash-run': () => import('../calculators/distilling/wash-run.ts'),
  'fit-stills': () => import('../calculators/distilling/fit-stills.ts'),
  'spirit-run-energy': () => import('../calculators/distilling/spirit-run-energy.ts'),
  'charge-strength': () => import('../calculators/distilling/charge-strength.ts'),
  'what-if': () => import('../calculators/distilling/what-if.ts'),
  season: () => import('../calculators/distilling/season.ts'),
  'congeners-in-the-run': () => import('../calculators/distilling/congeners-in-the-run.ts'),
  'spent-liquors': () => import('../calculators/distilling/spent-liquors.ts'),
  'per-litre': () => import('../calculators/distilling/per-litre.ts'),
});
