// Figures of the mashing, and of how often the house mashes.
import { computed, spokenSpreads, type FigureChoice, type Figure } from './define.ts';

// prettier-ignore
export const mashingFigures = {
  mashesPerWeek: { is: 'set', either: true, kind: 'count', label: 'Mashes in a week', told: 'Mashes a week', limits: [0.1, 100], step: 1, also: ['malting', 'milling'], things: ['mash', 'mashes'], clean: [8, 10, 12, 14], meaning: 'Each mash fills one washback; its wash is distilled as one charge, or in several.', quoted: { typical: 10, spread: spokenSpreads.working } },
  weeksPerYear: { is: 'set', either: true, kind: 'count', label: 'Working weeks in a year', told: 'Weeks a year', limits: [1, 52.3], step: 1, also: ['malting', 'milling'], usual: { range: [42, 50], source: 'common-practice' }, things: ['week', 'weeks'], clean: [44, 46, 48], meaning: 'Weeks in which the house mashes.', quoted: { typical: 46, spread: spokenSpreads.working } }, // 366 days are 52.29 weeks
  mashesPerYear: { is: 'computed', counted: true, kind: 'count', label: 'Mashes in a year', limits: [0.1, 5230], at: 'pace.mashesPerYear', things: ['mash', 'mashes'] },
  liquorRatio: { is: 'set', kind: 'liquorRatio', label: 'Water-to-grist ratio', limits: [2, 8], step: 0.1, usual: { range: [3.8, 4.2], source: 'memory' }, instead: 'it moves the first water and how hot it has to be', meaning: 'Litres of the first water for each kilogram of grist.' },
  firstWater: { is: 'computed', kind: 'volume', label: 'First water of a mash', limits: [20, 800_000], at: 'mash.firstWater', grows: true, watched: true },
  firstWaterTemperature: { is: 'computed', counted: true, kind: 'temperature', label: 'Temperature of the first water', limits: [40, 100], at: 'mash.strike', card: true, watched: true },
  mashTemperature: { is: 'set', either: true, kind: 'temperature', label: 'Mash temperature', limits: [40, 80], step: 0.5, usual: { range: [63, 65], source: 'common-practice' }, instead: 'it moves how hot the first water has to be', meaning: 'Temperature of the grist and first water once mixed.' },
  gristTemperature: { is: 'measured', kind: 'temperature', label: 'Grist temperature', limits: [-5, 40], step: 1, usual: { range: [10, 25], source: 'common-practice' }, instead: 'it moves how hot the first water has to be', meaning: 'Temperature of the grist before it meets the water.' },
  secondWater: { is: 'set', either: true, kind: 'temperature', label: 'Second water temperature', told: 'Temperature of the second water', alias: 'secondWaterTemperature', limits: [50, 98], step: 1, usual: { range: [65, 75], source: 'common-practice' }, instead: 'it moves the heat of the mash', meaning: 'Temperature of the second water.' },
  lastWater: { is: 'set', either: true, kind: 'temperature', label: 'Last water temperature', told: 'Temperature of the last water', alias: 'lastWaterTemperature', limits: [50, 100], step: 1, usual: { range: [80, 95], source: 'common-practice' }, instead: 'it moves the heat of the mash', meaning: 'Temperature of the last, weak water, which goes to the next mash.' },
  wortVolume: { is: 'measured', either: true, kind: 'volume20', label: 'Wort collected', told: 'Wort from a mash', limits: [20, 600_000], step: 50, at: 'wort.volume', grows: true, card: true, meaning: 'Wort run into the washback from one mash, at 20 °C.', quoted: { typical: 40_000, spread: spokenSpreads.volume } },
  originalGravity: { is: 'measured', either: true, kind: 'gravity', label: 'Original gravity', limits: [1.02, 1.12], step: 0.001, also: ['fermenting'], usual: { range: [1.05, 1.07], source: 'memory' }, clean: [1.054, 1.056, 1.058, 1.06], card: true, meaning: 'Density of the wort over that of water, both at 20 °C, before the yeast works.', quoted: { typical: 1.06, spread: spokenSpreads.gravity } },
  wortMass: { ...computed.mass, label: 'Mass of the wort of a mash', at: 'wort.mass' },
  wortPlato: { is: 'computed', kind: 'plato', label: 'Extract of the wort', limits: [0, 34], at: 'wort.plato' },
  wortExtract: { ...computed.mass, label: 'Extract in the wort of a mash', at: 'wort.extract' },
  mashEfficiency: { is: 'computed', kind: 'percent', label: 'Share of the malt’s extract in the wort', limits: [0, 1e6], at: 'mash.efficiency', watched: true }, // figures that disagree give any number, and a caution
  draffMoisture: { is: 'measured', kind: 'percent', label: 'Moisture of the draff', limits: [50, 90], step: 1, usual: { range: [75, 82], source: 'memory' }, instead: 'it moves the weight of the draff', meaning: 'Water in the spent grains as they leave the tun.' },
  draff: { ...computed.mass, counted: true, label: 'Draff from a mash', at: 'mash.draff', card: true, watched: true },
} as const satisfies Record<string, Figure>;

export const mashingChoices = {
  holds: {
    label: 'When a figure changes, keep',
    meaning:
      'Keeping the efficiency, more malt makes more wort, and a higher gravity makes less of it. Keeping the readings, only the figure that you change moves.',
    options: {
      efficiency: 'the efficiency, and how far wort ferments',
      readings: 'the volumes and gravities as read',
    },
  },
} as const satisfies Record<string, FigureChoice>;
