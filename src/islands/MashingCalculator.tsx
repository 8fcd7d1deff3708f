// A calculator of mashing, by its id. Written by `npm run gather`.
import { declaredIsland } from './declared-island.tsx';

export default declaredIsland({
  conversion: () => import('../calculators/mashing/conversion.ts'),
  'strike-water': () => import('../calculators/mashing/strike-water.ts'),
  'mash-rescue': () => import('../calculators/mashing/mash-rescue.ts'),
  'successive-waters': () => import('../calculators/mashing/successive-waters.ts'),
  'returned-worts': () => import('../calculators/mashing/returned-worts.ts'),
  'gravity-read-warm': () => import('../calculators/mashing/gravity-read-warm.ts'),
  'extract-in-wort': () => import('../calculators/mashing/extract-in-wort.ts'),
  'mash-efficiency': () => import('../calculators/mashing/mash-efficiency.ts'),
  draff: () => import('../calculators/mashing/draff.ts'),
  'wort-cooler': () => import('../calculators/mashing/wort-cooler.ts'),
});
