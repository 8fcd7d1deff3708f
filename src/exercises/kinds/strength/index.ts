// Kinds of question on strength and volume.
import type { QuestionKind } from '../../question.ts';
import alcoholFromProofGallons from './alcohol-from-proof-gallons.ts';
import contractionEstimate from './contraction-estimate.ts';
import massOfSpirit from './mass-of-spirit.ts';
import massPercent from './mass-percent.ts';
import mixingThatCannotBe from './mixing-that-cannot-be.ts';
import platoFromTable from './plato-from-table.ts';
import reduceToStrength from './reduce-to-strength.ts';
import strengthFromAlcohol from './strength-from-alcohol.ts';
import strengthFromDensityInAir from './strength-from-density-in-air.ts';
import strengthFromDensity from './strength-from-density.ts';
import strengthFromMassPercent from './strength-from-mass-percent.ts';
import strengthFromOldProof from './strength-from-old-proof.ts';
import usProofGallons from './us-proof-gallons.ts';
import usProof from './us-proof.ts';
import volumeMadeInMixing from './volume-made-in-mixing.ts';
import warmTank from './warm-tank.ts';

export const strength: readonly QuestionKind[] = [
  strengthFromAlcohol,
  massOfSpirit,
  massPercent,
  strengthFromMassPercent,
  volumeMadeInMixing,
  contractionEstimate,
  mixingThatCannotBe,
  reduceToStrength,
  strengthFromDensity,
  strengthFromDensityInAir,
  warmTank,
  platoFromTable,
  usProof,
  strengthFromOldProof,
  usProofGallons,
  alcoholFromProofGallons,
];
