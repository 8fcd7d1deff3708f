// What is usual for a house figure in the trade, and how that is known.
import type { SourceId } from '../core/sources.ts';
import type { NumberName } from './figures.ts';

export interface Usual {
  readonly range: readonly [number, number];
  readonly source: SourceId;
}

export const usual: Partial<Readonly<Record<NumberName, Usual>>> = {
  barleyMoisture: { range: [11, 14], source: 'oxford-beer' },
  maltMoisture: { range: [4, 5], source: 'memory' },
  maltingLoss: { range: [7.5, 12.5], source: 'memory' },
  solubleExtract: { range: [76, 79], source: 'memory' },
  fermentability: { range: [86, 88.5], source: 'memory' },
  husk: { range: [17, 23], source: 'memory' },
  flour: { range: [7, 13], source: 'memory' },
  liquorRatio: { range: [3.8, 4.2], source: 'memory' },
  mashTemperature: { range: [63, 65], source: 'common-practice' },
  secondWater: { range: [65, 75], source: 'common-practice' },
  lastWater: { range: [80, 95], source: 'common-practice' },
  originalGravity: { range: [1.05, 1.07], source: 'memory' },
  setTemperature: { range: [18, 20], source: 'common-practice' },
  fermentationHours: { range: [48, 120], source: 'common-practice' },
  finalGravity: { range: [0.996, 1], source: 'memory' },
  foreshotsStrength: { range: [72, 75], source: 'common-practice' },
  washEnd: { range: [1, 1], source: 'common-practice' },
  feintsEnd: { range: [1, 1], source: 'nicol-2003' },
  fillingStrength: { range: [63.5, 63.5], source: 'common-practice' },
  indrink: { range: [2, 2], source: 'common-practice' },
  alcoholLoss: { range: [1.5, 2.5], source: 'common-practice' },
  caskResidue: { range: [0.5, 2], source: 'memory' },
  filterLoss: { range: [0.3, 1], source: 'memory' },
  steadyHumidity: { range: [60, 70], source: 'memory' },
};
