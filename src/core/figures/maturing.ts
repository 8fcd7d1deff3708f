// Figures of filling, store and bottling.
import { computed, spokenSpreads, type Figure } from './define.ts';

// prettier-ignore
export const maturingFigures = {
  fillingStrength: { is: 'set', either: true, kind: 'strength', label: 'Filling strength', limits: [35, 80], step: 0.1, also: ['distilling'], usual: { range: [63.5, 63.5], source: 'common-practice' }, at: 'filling.strength', clean: [62, 63, 63.5, 64], card: true, meaning: 'Strength to which new spirit is let down before it goes into wood.', quoted: { typical: 63.5, spread: spokenSpreads.strength, houses: { spread: 2.5, why: 'customary; some fill at 58 to 62, and some as it runs', source: 'common-practice' } } },
  fillingVolume: { ...computed.volume, counted: true, label: 'Spirit filled from a mash', at: 'filling.volume', watched: true },
  fillingAlcohol: { ...computed.alcohol, label: 'Pure alcohol filled from a mash', at: 'filling.alcohol' },
  fillingWater: { ...computed.volume, label: 'Reducing water for the casks', at: 'filling.water', watched: true },
  barrels: { is: 'set', either: true, kind: 'percent', label: 'Share of barrels, 200 L', limits: [0, 100], step: 1, meaning: 'Barrels in every hundred casks filled.' },
  hogsheads: { is: 'set', either: true, kind: 'percent', label: 'Share of hogsheads, 250 L', limits: [0, 100], step: 1, meaning: 'Hogsheads in every hundred casks filled. The rest are butts of 500 L.' },
  caskSize: { is: 'computed', kind: 'volume', label: 'Mean size of the casks', limits: [20, 700], at: ['casks.meanSize', 'beside.barrel', 'beside.hogshead', 'beside.butt'], quoted: { typical: 225, spread: spokenSpreads.caskSize } },
  casksPerMash: { is: 'computed', kind: 'count', label: 'Casks filled from a mash', limits: [0, 5000], at: 'casks.perMash', grows: true, digits: 1, things: ['cask', 'casks'], whole: 'up', card: true, watched: true }, // times the mashes of a year it must give the casks of a year, so one decimal
  casksPerWeek: { is: 'computed', counted: true, kind: 'count', label: 'Casks filled a week', limits: [0.02, 50_000], at: 'casks.perWeek', things: ['cask', 'casks'], whole: 'up', card: true, quoted: { typical: 220, spread: spokenSpreads.casks } },
  casksPerYear: { is: 'computed', counted: true, kind: 'count', label: 'Casks filled a year', limits: [1, 2e6], at: 'casks.perYear', things: ['cask', 'casks'], whole: 'up', card: true, quoted: { typical: 10_000, spread: spokenSpreads.casks } },
  yearsInWood: { is: 'set', either: true, kind: 'years', label: 'Years in wood', limits: [0.5, 80], step: 1, usual: { range: [3, 25], source: 'common-practice' }, card: true, meaning: 'Years from filling to bottling.', quoted: { typical: 10, spread: spokenSpreads.years } },
  casksInStore: { is: 'computed', counted: true, kind: 'count', label: 'Casks in store', limits: [1, 5e7], at: 'casks.inStore', things: ['cask', 'casks'], card: true, watched: true, quoted: { typical: 100_000, spread: spokenSpreads.casks } },
  indrink: { is: 'measured', kind: 'percent', label: 'Indrink', limits: [0, 6], step: 0.1, usual: { range: [2, 2], source: 'common-practice' }, meaning: 'Share of a filling that soaks into the wood in its first days.' },
  alcoholLoss: { is: 'measured', kind: 'percent', label: 'Alcohol lost in a year', limits: [0, 15], step: 0.1, usual: { range: [1.5, 2.5], source: 'common-practice' }, card: true, meaning: 'Share of the alcohol in a cask that leaves it in a year.', quoted: { typical: 2, spread: spokenSpreads.loss, houses: { spread: 0.8, why: '1.5 to 2.5 % a year in one cool country, 1 to 4 quoted in general', source: 'common-practice' } } },
  storeHumidity: { is: 'measured', kind: 'percent', label: 'Humidity of the store', limits: [20, 99], step: 1, usual: { range: [65, 90], source: 'common-practice' }, meaning: 'Relative humidity of the air round the casks.' },
  steadyHumidity: { is: 'measured', kind: 'percent', label: 'Humidity at which strength is steady', limits: [40, 80], step: 1, usual: { range: [60, 70], source: 'memory' }, meaning: 'In this air a cask of 63.5 % vol keeps its strength; fit it to a regauge.' },
  maturedVolume: { ...computed.volume, label: 'Spirit out of the wood from a mash', at: 'matured.volume' },
  maturedStrength: { ...computed.strength, counted: true, label: 'Strength out of the wood', at: 'matured.strength', watched: true },
  maturedAlcohol: { ...computed.alcohol, label: 'Pure alcohol out of the wood', at: 'matured.alcohol' },
  alcoholLost: { ...computed.alcohol, label: 'Pure alcohol lost from a mash in wood', at: 'matured.alcoholLost', watched: true },
  caskResidue: { is: 'measured', kind: 'volume20', label: 'Left in an emptied cask', limits: [0, 10], step: 0.1, usual: { range: [0.5, 2], source: 'memory' }, meaning: 'Spirit that stays in each cask when it is emptied.' },
  filterLoss: { is: 'measured', kind: 'percent', label: 'Lost in bottling', limits: [0, 20], step: 0.1, usual: { range: [0.3, 1], source: 'memory' }, meaning: 'Share of the spirit, once let down, that filters, pipes and spills take.' },
  toWood: { ...computed.alcohol, label: 'Pure alcohol soaked into wood from a mash', at: 'matured.toWood' },
  inCasks: { ...computed.alcohol, label: 'Pure alcohol left in emptied casks from a mash', at: 'matured.inCasks' },
  inFilters: { ...computed.alcohol, label: 'Pure alcohol lost in bottling a mash', at: 'bottling.inFilters' },
  bottlingStrength: { is: 'set', either: true, kind: 'strength', label: 'Bottling strength', limits: [35, 75], step: 0.1, usual: { range: [40, 46], source: 'common-practice' }, at: 'bottling.strength', card: true, meaning: 'Strength to which the spirit is let down for the bottle.', quoted: { typical: 43, spread: spokenSpreads.strength } },
  bottlingVolume: { ...computed.volume, label: 'Spirit bottled from a mash', at: 'bottling.volume' },
  bottlingAlcohol: { ...computed.alcohol, label: 'Pure alcohol bottled from a mash', at: 'bottling.alcohol' },
  bottlingWater: { ...computed.volume, label: 'Reducing water for the bottles', at: 'bottling.water' },
  bottleSize: { is: 'set', kind: 'bottle', label: 'Bottle', limits: [1, 500], step: 5, usual: { range: [70, 75], source: 'common-practice' }, meaning: 'What a bottle holds.', quoted: { typical: 70, spread: spokenSpreads.bottle } },
  bottles: { is: 'computed', kind: 'count', label: 'Bottles from a mash', limits: [0, 4e7], at: 'bottling.bottles', grows: true, things: ['bottle', 'bottles'], whole: 'down', watched: true },
  bottlesPerCask: { is: 'computed', counted: true, kind: 'count', label: 'Bottles from a cask', limits: [5, 10_000], at: 'bottling.bottlesPerCask', things: ['bottle', 'bottles'], whole: 'down', card: true, quoted: { typical: 390, spread: spokenSpreads.bottles } },
  bottlesPerYear: { is: 'computed', counted: true, kind: 'count', label: 'Bottles a year', limits: [1, 2e9], at: 'bottling.bottlesPerYear', things: ['bottle', 'bottles'], whole: 'down', card: true, quoted: { typical: 3.9e6, spread: spokenSpreads.bottles }, watched: true },
} as const satisfies Record<string, Figure>;
