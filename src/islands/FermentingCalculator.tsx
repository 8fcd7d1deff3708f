// A calculator of fermenting, by its id. Written by `npm run gather`.
import { declaredIsland } from './declared-island.tsx';

export default declaredIsland({
  'strength-from-gravities': () => import('../calculators/fermenting/strength-from-gravities.ts'),
  'strength-three-ways': () => import('../calculators/fermenting/strength-three-ways.ts'),
  'fermentation-curve': () => import('../calculators/fermenting/fermentation-curve.ts'),
  'washback-heat': () => import('../calculators/fermenting/washback-heat.ts'),
  'yeast-dose': () => import('../calculators/fermenting/yeast-dose.ts'),
  'yeast-pitch': () => import('../calculators/fermenting/yeast-pitch.ts'),
  'washbacks-needed': () => import('../calculators/fermenting/washbacks-needed.ts'),
  'carbon-dioxide': () => import('../calculators/fermenting/carbon-dioxide.ts'),
  'carbon-dioxide-in-a-room': () => import('../calculators/fermenting/carbon-dioxide-in-a-room.ts'),
  caustic: () => import('../calculators/fermenting/caustic.ts'),
});
