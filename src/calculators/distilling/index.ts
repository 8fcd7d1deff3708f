// The calculators of distilling.
import blendTwoSpirits from './blend-two-spirits.ts';
import chargeStrength from './charge-strength.ts';
import congenersInTheRun from './congeners-in-the-run.ts';
import fitStills from './fit-stills.ts';
import hydrometerInTheSafe from './hydrometer-in-the-safe.ts';
import perLitre from './per-litre.ts';
import season from './season.ts';
import spentLiquors from './spent-liquors.ts';
import spiritRunEnergy from './spirit-run-energy.ts';
import strengthFromDensity from './strength-from-density.ts';
import washRun from './wash-run.ts';
import whatIf from './what-if.ts';

export const distilling = [
  strengthFromDensity,
  hydrometerInTheSafe,
  blendTwoSpirits,
  washRun,
  fitStills,
  spiritRunEnergy,
  chargeStrength,
  whatIf,
  season,
  congenersInTheRun,
  spentLiquors,
  perLitre,
];
