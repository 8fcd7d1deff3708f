// The calculators of fermenting.
import strengthFromGravities from './strength-from-gravities.ts';

export const fermenting = [strengthFromGravities];
