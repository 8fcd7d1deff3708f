// Guesses about malting.
import { gasVolume } from '../core/fermenting/gas.ts';
import { extractAsIs } from '../core/malting/analysis.ts';
import { passAir } from '../core/malting/kiln-air.ts';
import { waterBetween } from '../core/malting/kiln-drying.ts';
import { blendPeat } from '../core/malting/peat.ts';
import { predictedSpiritYield } from '../core/malting/spirit-yield.ts';
import { HYDRATION_ENERGY, k1At, wetHoursTo, moistureAfter } from '../core/malting/steep.ts';
import { celsius, hours, kilograms, percent, quantity } from '../core/quantity.ts';
import { answerOrThrow, lineWithFigures, numberOrThrow, type Predict } from './define.ts';

const CARBON_DIOXIDE_OF_STARCH = (6 * 44.01) / 162.14; // kg to a kilogram breathed, C6H10O5 to six CO2; molar masses, from memory

const ppm = (n: number) => quantity('ppm', n);

/** A likely lot in the steep; no constants for malting barley were found in print. */
const lot = (moisture: number, water: number) => ({
  startMoisture: percent(moisture),
  k1: k1At(
    quantity('hoursPerPercent', 0.1), // h/% at 15 °C; from memory, as in the steeping sum
    celsius(15),
    celsius(water),
    quantity('molarEnergy', HYDRATION_ENERGY),
  ),
  k2: quantity('perPercent', 0.009), // 1/%; from memory, as in the steeping sum
});

export const maltingPredicts: readonly Predict[] = [
  {
    id: 'steep-water',
    stage: 'malting',
    way: 'number',
    tells: true,
    title: 'Water into a tonne of barley',
    asks: 'A tonne of your barley is steeped to 45 % moisture. How many kilograms of water does it take up?',
    moves: {
      label: 'Steeped to',
      kind: 'percent',
      from: ({ barleyMoisture }) => barleyMoisture,
      to: () => 45,
    },
    gives: {
      label: 'Water taken up by a tonne',
      kind: 'mass',
      of: ({ barleyMoisture }, at) =>
        -waterBetween(kilograms(10 * (100 - barleyMoisture)), barleyMoisture, percent(at)),
    },
    near: 0.1,
    why: 'The dry matter stays the same while the whole grows, and the per cent is of the whole. To subtract one moisture from the other finds little more than half of it.',
    sources: ['derived'],
  },
  {
    id: 'warmer-steep',
    stage: 'malting',
    way: 'direction',
    title: 'Warmer steep water',
    asks: 'The steep water is 20 °C instead of 12. Will the grain need more hours in the water to reach 42 %, fewer, or the same?',
    words: ['more hours', 'fewer hours'],
    moves: { label: 'Steep water', kind: 'temperature', from: () => 12, to: () => 20 },
    gives: {
      label: 'Hours in water to 42 %',
      kind: 'hours',
      of: ({ barleyMoisture }, at) => numberOrThrow(wetHoursTo(lot(barleyMoisture, at), percent(42))),
    },
    same: 0.02,
    why: 'Water moves into the grain faster when it is warm. The grain’s need of air grows as fast, so warm water is no free gain.',
    sources: ['mok-1983', 'memory'],
  },
  {
    id: 'second-wetting',
    stage: 'malting',
    way: 'place',
    title: 'A day in the water',
    asks: 'The grain lies in water at 15 °C for a day. At which hour has it taken up half of what it takes up in that day?',
    moves: { label: 'Hours in water', kind: 'hours', from: () => 0, to: () => 24 },
    gives: {
      label: 'Moisture',
      kind: 'percent',
      of: ({ barleyMoisture }, at) => moistureAfter(lot(barleyMoisture, 15), hours(at)),
    },
    where: () => {
      const { k1, k2 } = lot(0, 15);
      const taken = 24 / (k1 + k2 * 24) / 2; // water to a hundred of dry matter
      return (k1 * taken) / (1 - k2 * taken);
    },
    near: 0.08,
    why: 'The drier the grain, the faster it drinks: the first hours give most. Later hours in water mostly keep the air away from it.',
    sources: ['peleg-1988', 'memory'],
  },
  {
    id: 'kiln-water',
    stage: 'malting',
    way: 'number',
    tells: true,
    title: 'Water up the chimney',
    asks: 'Green malt at 45 % moisture is kilned until a tonne of your finished malt is left. How many kilograms of water go up the chimney, rootlets not counted?',
    moves: {
      label: 'Dried to',
      kind: 'percent',
      from: () => 45,
      to: ({ maltMoisture }) => maltMoisture,
    },
    gives: {
      label: 'Water driven off',
      kind: 'mass',
      of: ({ maltMoisture }, at) =>
        waterBetween(kilograms(10 * (100 - maltMoisture)), percent(45), percent(at)),
    },
    near: 0.12,
    why: 'To leave a tonne, the kiln must be filled with far more than a tonne. The difference of the two moistures says nothing until it is set against the dry matter.',
    sources: ['derived'],
  },
  {
    id: 'kiln-on-a-damp-day',
    stage: 'malting',
    way: 'direction',
    title: 'Kilning on a wet day',
    asks: 'Outside it is 10 °C, and the air goes from fairly dry, 50 %, to wet, 95 %. Will a kilogram of air, warmed to 60 °C, carry off clearly more water, clearly less, or nearly the same (within a tenth)?',
    words: ['clearly more', 'clearly less'],
    moves: { label: 'Humidity outside', kind: 'percent', from: () => 50, to: () => 95 },
    gives: {
      label: 'Water that a tonne of air carries off, kg',
      kind: 'count',
      digits: 1,
      of: ({ airPressure }, at) =>
        1000 *
        answerOrThrow(
          passAir({
            outside: celsius(10),
            humidity: percent(at),
            pressure: airPressure,
            airOn: celsius(60),
            airOff: percent(95),
          }),
        ).water,
    },
    same: 0.1,
    why: 'Cold air holds little water even when it is full. The heat decides what the warmed air can take up, so a wet day costs less than one expects.',
    sources: ['derived'],
  },
  {
    id: 'loss-in-malting',
    stage: 'malting',
    way: 'direction',
    title: 'A larger loss in malting',
    asks: 'The maltings lose 2 per cent more of the barley’s dry matter. What becomes of the spirit that a tonne of malt could give: more, less or the same?',
    moves: {
      label: 'Dry matter lost in malting',
      kind: 'percent',
      from: ({ maltingLoss }) => maltingLoss,
      to: ({ maltingLoss }) => maltingLoss + 2,
    },
    gives: {
      label: 'Spirit that a tonne of malt could give',
      kind: 'yield',
      of: (house, at) => lineWithFigures(house, { maltingLoss: at }).malt.spiritYield,
    },
    same: 0.001,
    why: 'The loss is paid in barley. A tonne of malt with the same analysis gives the same, but more barley went into it.',
    sources: ['bringhurst-1996'],
  },
  {
    id: 'moister-malt',
    stage: 'malting',
    way: 'number',
    title: 'Moister malt',
    asks: 'Your malt comes at 2 per cent more moisture, and its dry matter is as good as ever. How many litres of pure alcohol does a tonne lose?',
    moves: {
      label: 'Moisture more',
      kind: 'points',
      from: () => 0,
      to: () => 2,
    },
    gives: {
      label: 'Spirit that a tonne loses',
      kind: 'yield',
      of: ({ solubleExtract, fermentability, maltMoisture }, at) => {
        const yieldOf = (moisture: number) =>
          predictedSpiritYield({
            extract: extractAsIs(percent((100 * solubleExtract) / (100 - maltMoisture)), percent(moisture)),
            fermentability,
          });
        return yieldOf(maltMoisture) - yieldOf(maltMoisture + at);
      },
    },
    near: 0.2,
    why: 'Water is bought at the price of malt. Two parts in a hundred of the tonne are no longer dry matter, so about two in a hundred of its spirit are gone.',
    sources: ['bringhurst-1996', 'derived'],
  },
  {
    id: 'peat-by-halves',
    stage: 'malting',
    way: 'number',
    title: 'Twenty from fifty',
    asks: 'You want 20 ppm of phenols in a mash, from malt with 50 ppm and malt with none. What share of the mash, in per cent, is the peated malt?',
    moves: { label: 'Phenols wanted', kind: 'ppm', from: () => 0, to: () => 20 },
    gives: {
      label: 'Peated malt',
      kind: 'percent',
      of: (_, at) =>
        answerOrThrow(blendPeat(kilograms(100), { plain: ppm(0), peated: ppm(50), wanted: ppm(at) })).peated,
    },
    near: 0.05,
    why: 'Phenols only mix: the part that is peated is what you want over what the peated malt has.',
    sources: ['derived'],
  },
  {
    id: 'breath-of-a-tonne',
    stage: 'malting',
    way: 'number',
    title: 'The breath of a tonne of grain',
    asks: 'As it grows, a tonne of your barley breathes away a twentieth of its dry matter, as if it were all starch. How many cubic metres of carbon dioxide, at 20 °C, does it give off?',
    moves: { label: 'Dry matter breathed away', kind: 'percent', from: () => 0, to: () => 5 },
    gives: {
      label: 'Carbon dioxide',
      kind: 'space',
      digits: 0,
      of: ({ barleyMoisture }, at) =>
        gasVolume(CARBON_DIOXIDE_OF_STARCH * 10 * (100 - barleyMoisture) * (at / 100), celsius(20)),
    },
    near: 0.35,
    why: 'Starch takes up oxygen as it is breathed, so the gas weighs more than what was lost. It lies where the grain lies, and the oxygen is gone: nobody climbs into a steep, a bed or a bin but by the site’s permit, with the air measured.',
    sources: ['memory', 'derived'],
  },
];
