// A calculator of maturing, by its id. Written by `npm run gather`.
import { declaredIsland } from './declared-island.tsx';

export default declaredIsland({
  'reduce-to-strength': () => import('../calculators/maturing/reduce-to-strength.ts'),
  'blend-to-strength': () => import('../calculators/maturing/blend-to-strength.ts'),
  'fill-casks': () => import('../calculators/maturing/fill-casks.ts'),
  'cask-through-years': () => import('../calculators/maturing/cask-through-years.ts'),
  'cask-in-the-store': () => import('../calculators/maturing/cask-in-the-store.ts'),
  'calibrate-loss': () => import('../calculators/maturing/calibrate-loss.ts'),
  'below-forty': () => import('../calculators/maturing/below-forty.ts'),
  'vat-dip': () => import('../calculators/maturing/vat-dip.ts'),
  'regauge-by-dip': () => import('../calculators/maturing/regauge-by-dip.ts'),
  'regauge-by-weight': () => import('../calculators/maturing/regauge-by-weight.ts'),
  'surface-to-volume': () => import('../calculators/maturing/surface-to-volume.ts'),
  vatting: () => import('../calculators/maturing/vatting.ts'),
  'casks-and-bottles': () => import('../calculators/maturing/casks-and-bottles.ts'),
  duty: () => import('../calculators/maturing/duty.ts'),
  warehouse: () => import('../calculators/maturing/warehouse.ts'),
  lifting: () => import('../calculators/maturing/lifting.ts'),
  'label-tolerance': () => import('../calculators/maturing/label-tolerance.ts'),
  obscuration: () => import('../calculators/maturing/obscuration.ts'),
  'fill-by-mass': () => import('../calculators/maturing/fill-by-mass.ts'),
});
