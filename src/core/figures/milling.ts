// Figures of the milling.
import { computed, spokenSpreads, type Figure } from './define.ts';

// prettier-ignore
export const millingFigures = {
  maltPerMash: { is: 'set', either: true, kind: 'mass', label: 'Malt in a mash', told: 'Malt a mash', limits: [10, 100_000], step: 50, also: ['malting', 'mashing'], at: 'malt.mass', grows: true, clean: [900, 950, 1000, 1050, 1100], card: true, meaning: 'Malt milled and mashed in one go.', quoted: { typical: 8000, spread: spokenSpreads.mass } },
  maltPerWeek: { is: 'computed', counted: true, kind: 'mass', label: 'Malt a week', limits: [1, 1e7], also: ['malting', 'mashing'], at: 'pace.maltPerWeek', card: true, quoted: { typical: 80_000, spread: spokenSpreads.mass } },
  maltPerYear: { is: 'computed', counted: true, kind: 'mass', label: 'Malt a year', limits: [1, 5.3e8], also: ['malting', 'mashing'], at: 'pace.maltPerYear', quoted: { typical: 3.7e6, spread: spokenSpreads.mass } },
  husk: { is: 'measured', kind: 'percent', label: 'Husk in the grist', limits: [0, 100], step: 1, usual: { range: [17, 23], source: 'memory' }, instead: 'it moves the grist, and with it how the bed drains', meaning: 'The coarse part, kept back by the widest sieve.' },
  grits: { is: 'computed', kind: 'percent', label: 'Grits in the grist', limits: [0, 100], usual: { range: [65, 75], source: 'memory' }, at: 'grist.gritsPercent' },
  flour: { is: 'measured', kind: 'percent', label: 'Flour in the grist', limits: [0, 100], step: 1, usual: { range: [7, 13], source: 'memory' }, clean: [8, 9, 10, 11, 12], instead: 'it moves the grist, and with it how the bed drains', meaning: 'The fine part: what passes the flour sieve, 0.253 mm in a laboratory’s stack, 0.212 mm in a hand box. What is neither husk nor flour is grits.' },
  millRate: { is: 'measured', kind: 'milling', label: 'Mill rate', limits: [0.05, 50], step: 0.1, instead: 'it moves the hours of milling', meaning: 'Malt that the mill takes in an hour.' },
  huskMass: { ...computed.mass, label: 'Husk of a mash', at: 'grist.husk', watched: true },
  gritsMass: { ...computed.mass, label: 'Grits of a mash', at: 'grist.grits' },
  flourMass: { ...computed.mass, label: 'Flour of a mash', at: 'grist.flour', watched: true },
  millingTime: { is: 'computed', counted: true, kind: 'hours', label: 'Hours of milling for a mash', limits: [0, 2000], at: 'grist.time', grows: true, watched: true },
} as const satisfies Record<string, Figure>;
