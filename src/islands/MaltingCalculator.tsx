// A calculator of malting, by its id. Written by `npm run gather`.
import { declaredIsland } from './declared-island.tsx';

export default declaredIsland({
  'barley-and-land': () => import('../calculators/malting/barley-and-land.ts'),
  'barley-for-malt': () => import('../calculators/malting/barley-for-malt.ts'),
  'germination-count': () => import('../calculators/malting/germination-count.ts'),
  'germination-plan': () => import('../calculators/malting/germination-plan.ts'),
  'steep-uptake': () => import('../calculators/malting/steep-uptake.ts'),
  'steep-fit': () => import('../calculators/malting/steep-fit.ts'),
  kiln: () => import('../calculators/malting/kiln.ts'),
  'peat-blend': () => import('../calculators/malting/peat-blend.ts'),
  'malt-analysis': () => import('../calculators/malting/malt-analysis.ts'),
  'predicted-spirit-yield': () => import('../calculators/malting/predicted-spirit-yield.ts'),
});
