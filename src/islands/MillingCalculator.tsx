// A calculator of milling, by its id. Written by `npm run gather`.
import { declaredIsland } from './declared-island.tsx';

export default declaredIsland({
  'grist-split': () => import('../calculators/milling/grist-split.ts'),
  'sieve-test': () => import('../calculators/milling/sieve-test.ts'),
  'size-curve': () => import('../calculators/milling/size-curve.ts'),
  'mill-and-bin': () => import('../calculators/milling/mill-and-bin.ts'),
  'dust-cloud': () => import('../calculators/milling/dust-cloud.ts'),
  'dust-class': () => import('../calculators/milling/dust-class.ts'),
});
