// Figures of the malting.
import { computed, spokenSpreads, type Figure } from './define.ts';

// prettier-ignore
export const maltingFigures = {
  barleyMoisture: { is: 'measured', kind: 'percent', label: 'Moisture of the barley', limits: [8, 20], step: 0.5, usual: { range: [11, 14], source: 'oxford-beer' }, clean: [11, 11.5, 12, 12.5, 13], instead: 'it moves the barley that has to be bought', meaning: 'Water in the barley as it is stored, as a share of its whole weight.' },
  maltMoisture: { is: 'measured', kind: 'percent', label: 'Moisture of the malt', limits: [1, 8], step: 0.1, usual: { range: [4, 5], source: 'memory' }, clean: [4, 4.5, 5], meaning: 'Water in the kilned malt, as a share of its whole weight.' },
  maltingLoss: { is: 'measured', kind: 'percent', label: 'Dry matter lost in malting', limits: [2, 25], step: 0.5, usual: { range: [7.5, 12.5], source: 'memory' }, instead: 'it moves the barley that has to be bought', meaning: 'What breathing, rootlets and steep water take, as a share of the barley’s dry matter.' },
  solubleExtract: { is: 'measured', kind: 'percent', label: 'Soluble extract', limits: [50, 90], step: 0.1, usual: { range: [76, 79], source: 'memory' }, meaning: 'Share of the malt, as it is, that dissolves in the laboratory’s mash.',
    quoted: { typical: 77.5, spread: spokenSpreads.analysis, houses: { spread: 2.5, why: 'distilling malt is sold at 76 to 79 % (recalled), other malts from about 72', source: 'memory' } } },
  fermentability: { is: 'measured', kind: 'percent', label: 'Fermentability', limits: [50, 100], step: 0.1, usual: { range: [86, 88.5], source: 'memory' }, meaning: 'Share of that extract that yeast can use.',
    quoted: { typical: 87, spread: spokenSpreads.analysis, houses: { spread: 2, why: '86 to 88.5 % (recalled), and poorer worts', source: 'memory' } } },
  spiritYield: { is: 'computed', counted: true, kind: 'yield', label: 'Spirit from a tonne of malt', limits: [50, 560], also: ['distilling'], at: ['beside.spiritYield', 'malt.spiritYield'], quoted: { typical: 395, spread: spokenSpreads.yield } },
  barley: { ...computed.mass, label: 'Barley for a mash', at: 'barley.mass', card: true, watched: true },
  barleyPerBottle: { is: 'computed', kind: 'mass', label: 'Barley for a bottle', limits: [0, 1000], at: 'barley.perBottle', digits: 1 },
  maltExtract: { ...computed.mass, label: 'Extract in the malt of a mash', at: 'malt.extract' },
  predictedYield: { is: 'computed', kind: 'yield', label: 'Spirit that a tonne of malt could give', limits: [50, 560], usual: { range: [400, 425], source: 'memory' }, at: 'malt.spiritYield', card: true },
  maltAlcohol: { ...computed.alcohol, label: 'Alcohol that the malt could give', at: 'malt.alcohol', watched: true },
} as const satisfies Record<string, Figure>;
