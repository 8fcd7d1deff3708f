// The calculators of maturing.
import belowForty from './below-forty.ts';
import blendToStrength from './blend-to-strength.ts';
import calibrateLoss from './calibrate-loss.ts';
import caskInTheStore from './cask-in-the-store.ts';
import caskThroughYears from './cask-through-years.ts';
import casksAndBottles from './casks-and-bottles.ts';
import duty from './duty.ts';
import fillByMass from './fill-by-mass.ts';
import fillCasks from './fill-casks.ts';
import labelTolerance from './label-tolerance.ts';
import lifting from './lifting.ts';
import obscuration from './obscuration.ts';
import reduceToStrength from './reduce-to-strength.ts';
import regaugeByDip from './regauge-by-dip.ts';
import regaugeByWeight from './regauge-by-weight.ts';
import surfaceToVolume from './surface-to-volume.ts';
import vatDip from './vat-dip.ts';
import vatting from './vatting.ts';
import warehouse from './warehouse.ts';

export const maturing = [
  reduceToStrength,
  blendToStrength,
  fillCasks,
  caskThroughYears,
  caskInTheStore,
  calibrateLoss,
  belowForty,
  vatDip,
  regaugeByDip,
  regaugeByWeight,
  surfaceToVolume,
  vatting,
  casksAndBottles,
  duty,
  warehouse,
  lifting,
  labelTolerance,
  obscuration,
  fillByMass,
];
