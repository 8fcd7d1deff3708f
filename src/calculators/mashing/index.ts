// The calculators of mashing.
import conversion from './conversion.ts';
import draff from './draff.ts';
import extractInWort from './extract-in-wort.ts';
import mashEfficiency from './mash-efficiency.ts';
import returnedWorts from './returned-worts.ts';
import strikeWater from './strike-water.ts';
import successiveWaters from './successive-waters.ts';

export const mashing = [
  conversion,
  strikeWater,
  successiveWaters,
  returnedWorts,
  extractInWort,
  mashEfficiency,
  draff,
];
