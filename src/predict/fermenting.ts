// Guesses about fermenting.
import { partFallen, type Pace } from '../core/fermenting/fall.ts';
import { gasVolume, levelAfter } from '../core/fermenting/gas.ts';
import { heatOf, riseWithoutLoss, warmest, warmWashback } from '../core/fermenting/heat.ts';
import { washbacksNeeded } from '../core/fermenting/washbacks.ts';
import type { House } from '../core/line/house.ts';
import { celsius, gravity, hours, kilograms, quantity } from '../core/quantity.ts';
import { attenuate } from '../core/wort/attenuation.ts';
import { lineWithFigures, type Predict } from './define.ts';

const HEAT = quantity('heatOfExtract', 586); // kJ from a kilogram of extract; from memory
const PACE: Pace = { half: hours(16), steepness: quantity('perHour', 0.2) }; // a first guess; from memory

/** What the yeast burns in a washback of a house: heat, MJ. */
const heatIn = (house: House) => {
  const { wort, wash } = lineWithFigures(house, {});
  return heatOf(kilograms((wort.extract * wash.attenuation.extractUsed) / 100), HEAT);
};

/** The highest temperature of a washback set at so many degrees, with a small loss to the air and no cooling. */
const peak = (house: House, start: number) =>
  warmest(
    warmWashback({
      mass: lineWithFigures(house, {}).wash.washMass,
      heat: heatIn(house),
      pace: PACE,
      start: celsius(start),
      hours: house.fermentationHours,
      air: celsius(15),
      loss: quantity('heatLoss', 0.00765 * lineWithFigures(house, {}).wash.washMass), // W/K to the kilogram: 60 W/K for 7.8 t, as the sum of the washback’s heat has it; a figure to try by
      cooling: { power: quantity('power', 0), from: celsius(30) },
    }),
  ).temperature;

export const fermentingPredicts: readonly Predict[] = [
  {
    id: 'rise-of-a-washback',
    stage: 'fermenting',
    way: 'number',
    title: 'How warm the wash grows',
    asks: 'Nothing cools the washback, and no heat leaves it. By how many degrees does the yeast warm your wash?',
    moves: { label: 'Part of the fermentation done', kind: 'percent', from: () => 0, to: () => 100 },
    gives: {
      label: 'Warmer by',
      kind: 'temperatureDifference',
      of: (house, at) =>
        riseWithoutLoss(
          quantity('energy', (heatIn(house) * at) / 100),
          lineWithFigures(house, {}).wash.washMass,
        ),
    },
    near: 0.25,
    why: 'Sugar that ferments gives off a good deal of heat, and the wash has to hold it. That is why the wort goes in cool.',
    sources: ['memory', 'derived'],
  },
  {
    id: 'set-warmer',
    stage: 'fermenting',
    way: 'direction',
    title: 'Set three degrees warmer',
    asks: 'The wort is set 3 degrees warmer, in a washback that loses a little heat to the air. The yeast keeps its pace. Does its peak stand further above the start than before, less far, or as far?',
    words: ['further', 'less far'],
    moves: {
      label: 'Set at',
      kind: 'temperature',
      from: ({ setTemperature }) => setTemperature,
      to: ({ setTemperature }) => setTemperature + 3,
    },
    gives: {
      label: 'Peak above the start',
      kind: 'temperatureDifference',
      digits: 1,
      of: (house, at) => peak(house, at) - at,
    },
    same: 0.001,
    why: 'The yeast gives off the same heat, but a warmer wash loses more of it to the same air. The peak still comes out higher than before, and warm yeast works faster, which takes back most of what is lost.',
    sources: ['memory', 'derived'],
  },
  {
    id: 'another-day',
    stage: 'fermenting',
    way: 'direction',
    title: 'Another day in the washback',
    asks: 'The washback, done by its usual hours, is left another day. Is the pure alcohol in it more, less or the same?',
    moves: {
      label: 'Hours in the washback',
      kind: 'hours',
      from: ({ fermentationHours }) => Math.max(48, fermentationHours),
      to: ({ fermentationHours }) => Math.max(48, fermentationHours) + 24,
    },
    gives: {
      label: 'Part of the fall that is done',
      kind: 'percent',
      of: (_, at) => 100 * partFallen(PACE, at),
    },
    same: 0.01,
    why: 'By the end of the second day the sugar is all but gone, and no sugar means no alcohol. What the extra day changes is flavour: acids and esters.',
    sources: ['reid-2021', 'common-practice', 'memory'],
  },
  {
    id: 'half-the-fall',
    stage: 'fermenting',
    way: 'place',
    title: 'When the gas comes fastest',
    asks: 'The gas of a washback comes slowly, then fast, then slowly. At which hour does it come fastest?',
    moves: { label: 'Hour', kind: 'hours', digits: 0, from: () => 0, to: () => 48 },
    gives: {
      label: 'Part of the fall that is done',
      kind: 'percent',
      of: (_, at) => 100 * partFallen(PACE, at),
    },
    where: () => PACE.half,
    near: 0.1,
    why: 'The curve is steepest where half is done, commonly between the fourteenth and the eighteenth hour: often in the night after the mash. That is when the room needs its fresh air most.',
    sources: ['reid-2021', 'memory'],
  },
  {
    id: 'extract-below-one',
    stage: 'fermenting',
    way: 'number',
    title: 'What is left in the wash',
    asks: 'The final gravity says that the yeast is done. Of the extract that went in, how many per cent are still there?',
    moves: {
      label: 'Gravity',
      kind: 'gravity',
      from: ({ originalGravity }) => originalGravity,
      to: ({ finalGravity }) => finalGravity,
    },
    gives: {
      label: 'Extract still there',
      kind: 'percent',
      of: ({ originalGravity }, at) =>
        100 - attenuate({ original: originalGravity, final: gravity(at) }).extractUsed,
    },
    near: 0.3,
    why: 'Alcohol is lighter than water and hides what is left. A wash may weigh less than water and still hold a good part of its extract, which the yeast cannot use.',
    sources: ['balling'],
  },
  {
    id: 'gas-of-a-washback',
    stage: 'fermenting',
    way: 'number',
    title: 'Gas from a litre of wort',
    asks: 'How many litres of carbon dioxide, at 20 °C, does one litre of your wort give off?',
    moves: { label: 'Part of the fermentation done', kind: 'percent', from: () => 0, to: () => 100 },
    gives: {
      label: 'Litres of gas to a litre of wort',
      kind: 'count',
      digits: 0,
      of: (house, at) => {
        const { wash, wort } = lineWithFigures(house, {});
        return (1000 * gasVolume((wash.carbonDioxide * at) / 100, celsius(20))) / wort.volume;
      },
    },
    near: 0.3,
    why: 'Gas takes up about five hundred times the room of the same mass of wash. One washback can fill a whole room, from the floor up.',
    sources: ['balling', 'derived'],
  },
  {
    id: 'fan-at-half',
    stage: 'fermenting',
    way: 'number',
    title: 'A room with too little air',
    asks: 'Ten cubic metres of the gas run into a room each hour. After a day with 1,000 m³ of fresh air an hour, how many per cent of carbon dioxide does its air hold?',
    moves: { label: 'Fresh air', kind: 'flow', from: () => 4000, to: () => 1000 },
    gives: {
      label: 'Carbon dioxide in the air',
      kind: 'percent',
      digits: 2,
      of: (_, at) =>
        levelAfter(
          { volume: quantity('space', 500), gas: quantity('flow', 10), freshAir: quantity('flow', at) },
          24,
        ) / 10_000, // ppm in a per cent
    },
    near: 0.3,
    why: 'Where gas and air mix, the level settles at the part of the gas in all that flows in. Gas does not mix well, so near the floor there is more: trust a meter for carbon dioxide, and the site’s procedure, not this sum.',
    sources: ['derived'],
  },
  {
    id: 'longer-needs-more',
    stage: 'fermenting',
    way: 'direction',
    title: 'Twice the hours',
    asks: 'A house mashes five days a week. Each mash is given twice the hours, with as many mashes. Are more washbacks needed, fewer, or as many?',
    words: ['more', 'fewer'],
    moves: {
      label: 'Hours in the washback',
      kind: 'hours',
      from: ({ fermentationHours }) => fermentationHours,
      to: ({ fermentationHours }) => 2 * fermentationHours,
    },
    gives: {
      label: 'Washbacks needed',
      kind: 'count',
      of: ({ mashesPerWeek }, at) =>
        washbacksNeeded({ mashes: mashesPerWeek, pattern: 'five' }, hours(at + 8)).needed,
    },
    same: 0.01,
    why: 'A washback is free again only when its hours and its cleaning are over. Longer hours are paid for in vessels.',
    sources: ['derived'],
  },
];
