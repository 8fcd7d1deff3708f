// Figures of the fermenting.
import { computed, spokenSpreads, type Figure } from './define.ts';

// prettier-ignore
export const fermentingFigures = {
  setTemperature: { is: 'set', either: true, kind: 'temperature', label: 'Pitching temperature', limits: [10, 35], step: 0.5, usual: { range: [18, 20], source: 'common-practice' }, instead: 'it moves the heat and the pace of the fermentation', meaning: 'Temperature of the wort when the yeast goes in.' },
  yeast: { is: 'set', either: true, kind: 'mass', label: 'Pressed yeast', told: 'Yeast put into a washback, by weight', alias: 'yeastMass', limits: [0.05, 5000], step: 1, instead: 'it moves the pace of the fermentation', meaning: 'Pressed yeast put into one washback.' },
  yeastVolume: { is: 'said', kind: 'volume', label: 'Yeast put into a washback, by volume', limits: [0.2, 20_000] },
  fermentationHours: { is: 'set', either: true, kind: 'hours', label: 'Hours in the washback', limits: [24, 240], step: 1, usual: { range: [48, 120], source: 'common-practice' }, card: true, instead: 'it moves how many washbacks are needed', meaning: 'From yeast in to wash out.' },
  finalGravity: { is: 'measured', kind: 'gravity', label: 'Final gravity', limits: [0.985, 1.04], step: 0.001, usual: { range: [0.996, 1], source: 'memory' }, card: true, meaning: 'Gravity of the wash when the yeast has finished; alcohol makes it lighter than water.', quoted: { typical: 0.998, spread: spokenSpreads.gravity } },
  numberOfWashbacks: { is: 'said', kind: 'count', label: 'Number of washbacks', limits: [1, 60] },
  washVolume: { is: 'computed', counted: true, kind: 'volume20', label: 'Wash from a mash', limits: [20, 600_000], also: ['distilling'], at: 'wash.volume', grows: true, quoted: { typical: 40_000, spread: spokenSpreads.volume }, watched: true },
  washStrength: { is: 'computed', counted: true, kind: 'strength', label: 'Wash strength', limits: [2, 15], also: ['distilling'], usual: { range: [7, 9], source: 'common-practice' }, at: 'wash.strength', card: true, watched: true, quoted: { typical: 8.3, spread: spokenSpreads.strength } },
  washAlcohol: { ...computed.alcohol, label: 'Alcohol in the wash', at: 'wash.alcohol', watched: true },
  washMass: { ...computed.mass, label: 'Mass of the wash of a mash', at: 'wash.washMass' },
  fermented: { is: 'computed', kind: 'percent', label: 'Share of the extract fermented', limits: [0, 110], at: 'wash.fermented' },
  extractUsed: { is: 'computed', kind: 'percent', label: 'Share of the extract that the yeast used', limits: [0, 110], at: 'wash.attenuation.extractUsed' },
  carbonDioxide: { ...computed.mass, label: 'Carbon dioxide from a mash', at: 'wash.carbonDioxide', card: true },
  yeastGrown: { ...computed.mass, label: 'Yeast grown in a mash', at: 'wash.yeastGrown' },
} as const satisfies Record<string, Figure>;
