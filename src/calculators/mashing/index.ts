// The calculators of mashing.
import conversion from './conversion.ts';
import draff from './draff.ts';
import extractInWort from './extract-in-wort.ts';
import gravityReadWarm from './gravity-read-warm.ts';
import mashEfficiency from './mash-efficiency.ts';
import mashRescue from './mash-rescue.ts';
import returnedWorts from './returned-worts.ts';
import strikeWater from './strike-water.ts';
import successiveWaters from './successive-waters.ts';
import wortCooler from './wort-cooler.ts';

export const mashing = [
  conversion,
  strikeWater,
  mashRescue,
  successiveWaters,
  returnedWorts,
  gravityReadWarm,
  extractInWort,
  mashEfficiency,
  draff,
  wortCooler,
];
