// Where each computed figure of the cards comes from: the sum that it follows from, with the house's own numbers.
import { ETHANOL_MOLAR_MASS } from '../core/constants.ts';
import type { FigureId } from '../core/figures/index.ts';
import { slaking } from '../core/mashing/strike.ts';
import { HYDROLYSIS_WATER } from '../core/mashing/wort.ts';
import { SPIRIT_YIELD_FACTOR } from '../core/malting/spirit-yield.ts';
import { platoFromGravity } from '../core/wort/extract.ts';
import { handSum, type HandSum } from './hand-sum.ts';

export const CO2_MOLAR_MASS = 44.01; // kg/kmol, carbon and two of oxygen; IUPAC standard atomic weights
const ALCOHOL_WEIGHS = 0.789; // kg, a litre of pure alcohol at 20 °C; OIML R 22 has 0.78924
const ETHANOL = Number(ETHANOL_MOLAR_MASS.toFixed(2));

/** The sums of the computed figures of cards, in the order of the line. */
export const whereFrom = {
  barley: handSum({
    rule: 'Dry malt, and the dry barley behind it, which malting makes less; then with the barley’s own water.',
    uses: { malt: 'house.maltPerMash', maltMoisture: 'house.maltMoisture', loss: 'house.maltingLoss', moisture: 'house.barleyMoisture' },
    gives: (v) => ((v.malt * (100 - v.maltMoisture)) / (100 - v.loss) / (100 - v.moisture)) * 100,
    sum: (t) => `${t.malt} × (100 − ${t.maltMoisture}) ÷ (100 − ${t.loss}) ÷ (100 − ${t.moisture}) × 100`,
    of: 'mass',
    source: 'derived',
  }),
  predictedYield: handSum({
    rule: `${SPIRIT_YIELD_FACTOR} times the fermentable extract of the malt, which is extract × the part of it that ferments.`,
    uses: { extract: 'house.solubleExtract', fermentability: 'house.fermentability' },
    gives: (v) => (SPIRIT_YIELD_FACTOR * v.extract * v.fermentability) / 100,
    sum: (t) => `${SPIRIT_YIELD_FACTOR} × ${t.extract} × ${t.fermentability} ÷ 100`,
    of: 'yield',
    source: 'bringhurst-1996',
  }),
  maltPerWeek: handSum({
    rule: 'Malt in a mash × mashes a week.',
    uses: { malt: 'house.maltPerMash', mashes: 'house.mashesPerWeek' },
    gives: (v) => v.malt * v.mashes,
    sum: (t) => `${t.malt} × ${t.mashes}`,
    of: 'mass',
    source: 'derived',
  }),
  firstWaterTemperature: handSum({
    rule: 'The mash, less the warmth that malt gives on wetting, shared between grist and water; malt takes less heat than as much water.',
    uses: {
      mash: 'house.mashTemperature',
      grist: 'house.gristTemperature',
      ratio: 'house.liquorRatio',
      heat: ['ratio', ({ house }) => slaking(house.maltMoisture, house.liquorRatio).heat],
      rise: ['temperatureDifference', ({ house }) => slaking(house.maltMoisture, house.liquorRatio).rise],
    },
    gives: (v) => ((v.mash - v.rise) * (v.heat + v.ratio) - v.heat * v.grist) / v.ratio,
    sum: (t) => `((${t.mash} − ${t.rise}) × (${t.heat} + ${t.ratio}) − ${t.heat} × ${t.grist}) ÷ ${t.ratio}`,
    of: 'temperature',
    source: 'slaking-table',
  }),
  draff: handSum({
    rule: 'Dry malt, with the water that starch takes up, less the extract in the wort; then with the water of the draff.',
    uses: { malt: 'house.maltPerMash', maltMoisture: 'house.maltMoisture', promised: 'malt.extract', extract: 'wort.extract', moisture: 'house.draffMoisture' },
    gives: (v) => ((v.malt * (100 - v.maltMoisture)) / 100 + HYDROLYSIS_WATER * v.promised - v.extract) / (1 - v.moisture / 100),
    sum: (t) => `(${t.malt} × (100 − ${t.maltMoisture}) ÷ 100 + ${HYDROLYSIS_WATER} × ${t.promised} − ${t.extract}) ÷ (1 − ${t.moisture} ÷ 100)`,
    of: 'mass',
    digits: 0,
    source: 'derived',
  }),
  washStrength: handSum({
    rule: 'Balling: the extract that the yeast used gives the alcohol by mass; × gravity × 998.2 ÷ 789.24 it is by volume.',
    uses: {
      original: 'wort.plato',
      apparent: ['plato', ({ house }) => platoFromGravity(house.finalGravity)],
      gravity: 'house.finalGravity',
    },
    gives: (v) => ((0.8192 * (v.original - v.apparent)) / (2.0665 - 0.010665 * v.original)) * v.gravity * (998.2 / 789.24),
    sum: (t) => `0.8192 × (${t.original} − ${t.apparent}) ÷ (2.0665 − 0.010665 × ${t.original}) × ${t.gravity} × 998.2 ÷ 789.24`,
    of: 'strength',
    source: 'balling',
  }),
  carbonDioxide: handSum({
    rule: `Each ${ETHANOL} kg of alcohol comes with ${CO2_MOLAR_MASS} kg of gas, and a litre of alcohol weighs ${ALCOHOL_WEIGHS} kg. The book’s own figure follows Balling and lies a hair above.`,
    uses: { alcohol: 'wash.alcohol' },
    gives: (v) => (v.alcohol * ALCOHOL_WEIGHS * CO2_MOLAR_MASS) / ETHANOL,
    sum: (t) => `${t.alcohol} × ${ALCOHOL_WEIGHS} × ${CO2_MOLAR_MASS} ÷ ${ETHANOL}`,
    of: 'mass',
    digits: 0,
    source: 'derived',
  }),
  lowWinesVolume: handSum({
    rule: 'The alcohol of the wash, less what stays in the pot ale, ÷ the strength of the low wines.',
    uses: { wash: 'wash.alcohol', left: 'potAle.alcohol', strength: 'lowWines.strength' },
    gives: (v) => ((v.wash - v.left) / v.strength) * 100,
    sum: (t) => `(${t.wash} − ${t.left}) ÷ ${t.strength} × 100`,
    of: 'volume20',
    digits: 0,
    source: 'derived',
  }),
  lowWinesStrength: handSum({
    rule: 'The mean of all that comes over, by Rayleigh’s law, until the run ends: its alcohol ÷ its litres.',
    uses: { alcohol: 'lowWines.alcohol', volume: 'lowWines.volume' },
    gives: (v) => (v.alcohol / v.volume) * 100,
    sum: (t) => `${t.alcohol} ÷ ${t.volume} × 100`,
    of: 'strength',
    source: 'derived',
  }),
  chargeVolume: handSum({
    rule: 'The low wines, with the foreshots and feints of the round before, and water where the charge is let down; mixed they make a little less.',
    uses: { lowWines: 'lowWines.volume', foreshots: 'foreshots.volume', feints: 'feints.volume', water: 'round.dilution' },
    gives: (v) => v.lowWines + v.foreshots + v.feints + v.water,
    sum: (t) => `${t.lowWines} + ${t.foreshots} + ${t.feints}${t.water === '0' ? '' : ` + ${t.water}`}`,
    of: 'volume20',
    digits: 0,
    source: 'derived',
  }),
  chargeStrength: handSum({
    rule: 'The alcohol of the low wines, the foreshots and the feints ÷ the litres of the charge.',
    uses: { lowWines: 'lowWines.alcohol', foreshots: 'foreshots.alcohol', feints: 'feints.alcohol', volume: 'charge.volume' },
    gives: (v) => ((v.lowWines + v.foreshots + v.feints) / v.volume) * 100,
    sum: (t) => `(${t.lowWines} + ${t.foreshots} + ${t.feints}) ÷ ${t.volume} × 100`,
    of: 'strength',
    source: 'derived',
  }),
  heartVolume: handSum({
    rule: 'The alcohol of the charge, less foreshots, feints and spent lees, ÷ the strength of the heart.',
    uses: { charge: 'charge.alcohol', foreshots: 'foreshots.alcohol', feints: 'feints.alcohol', lees: 'spentLees.alcohol', strength: 'heart.strength' },
    gives: (v) => ((v.charge - v.foreshots - v.feints - v.lees) / v.strength) * 100,
    sum: (t) => `(${t.charge} − ${t.foreshots} − ${t.feints} − ${t.lees}) ÷ ${t.strength} × 100`,
    of: 'volume20',
    digits: 0,
    source: 'derived',
  }),
  heartStrength: handSum({
    rule: 'The mean of the heart, by Rayleigh’s law, from where it begins to where it ends: its alcohol ÷ its litres.',
    uses: { alcohol: 'heart.alcohol', volume: 'heart.volume' },
    gives: (v) => (v.alcohol / v.volume) * 100,
    sum: (t) => `${t.alcohol} ÷ ${t.volume} × 100`,
    of: 'strength',
    source: 'derived',
  }),
  heartAlcohol: handSum({
    rule: 'Litres of new spirit × their strength ÷ 100.',
    uses: { volume: 'heart.volume', strength: 'heart.strength' },
    gives: (v) => (v.volume * v.strength) / 100,
    sum: (t) => `${t.volume} × ${t.strength} ÷ 100`,
    of: 'alcohol',
    source: 'derived',
  }),
  casksPerMash: handSum({
    rule: 'New spirit at filling strength ÷ the mean size of the casks.',
    uses: { volume: 'filling.volume', size: 'casks.meanSize' },
    gives: (v) => v.volume / v.size,
    sum: (t) => `${t.volume} ÷ ${t.size}`,
    of: 'count',
    digits: 1,
    source: 'derived',
  }),
  casksPerWeek: handSum({
    rule: 'New spirit of a mash at filling strength × mashes a week ÷ the mean size of the casks.',
    uses: { volume: 'filling.volume', mashes: 'house.mashesPerWeek', size: 'casks.meanSize' },
    gives: (v) => (v.volume * v.mashes) / v.size,
    sum: (t) => `${t.volume} × ${t.mashes} ÷ ${t.size}`,
    of: 'count',
    digits: 1,
    source: 'derived',
  }),
  casksPerYear: handSum({
    rule: 'New spirit of a mash at filling strength × mashes a week × weeks ÷ the mean size of the casks.',
    uses: { volume: 'filling.volume', mashes: 'house.mashesPerWeek', weeks: 'house.weeksPerYear', size: 'casks.meanSize' },
    gives: (v) => (v.volume * v.mashes * v.weeks) / v.size,
    sum: (t) => `${t.volume} × ${t.mashes} × ${t.weeks} ÷ ${t.size}`,
    of: 'count',
    digits: 0,
    source: 'derived',
  }),
  casksInStore: handSum({
    rule: 'Casks filled in a year × years in wood: what the store holds once it is full.',
    uses: { casks: 'casks.perYear', years: 'house.yearsInWood' },
    gives: (v) => v.casks * v.years,
    sum: (t) => `${t.casks} × ${t.years}`,
    of: 'count',
    digits: 0,
    source: 'derived',
  }),
  bottlesPerCask: handSum({
    rule: 'Alcohol bottled from a mash ÷ bottling strength ÷ what a bottle holds ÷ casks of the mash.',
    uses: { alcohol: 'bottling.alcohol', strength: 'bottling.strength', bottle: 'house.bottleSize', casks: 'casks.perMash' },
    gives: (v) => (v.alcohol / v.strength / v.bottle / v.casks) * 1e4,
    sum: (t) => `${t.alcohol} ÷ ${t.strength} × 100 ÷ (${t.bottle} ÷ 100) ÷ ${t.casks}`,
    of: 'count',
    digits: 0,
    source: 'derived',
  }),
  bottlesPerYear: handSum({
    rule: 'Bottles from a mash × mashes a week × weeks.',
    uses: { bottles: 'bottling.bottles', mashes: 'house.mashesPerWeek', weeks: 'house.weeksPerYear' },
    gives: (v) => v.bottles * v.mashes * v.weeks,
    sum: (t) => `${t.bottles} × ${t.mashes} × ${t.weeks}`,
    of: 'count',
    digits: 0,
    source: 'derived',
  }),
} as const satisfies Partial<Record<FigureId, HandSum>>; // prettier-ignore

/** The sum of a figure; undefined for one that the house gives. */
export const sumOf = (id: FigureId): HandSum | undefined =>
  (whereFrom as Partial<Record<FigureId, HandSum>>)[id];
