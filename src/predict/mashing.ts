// Guesses about mashing.
import { changeHouse } from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import { enzymeSurvival } from '../core/mashing/enzymes.ts';
import { rescueWater } from '../core/mashing/rescue.ts';
import { strikeTemperature } from '../core/mashing/strike.ts';
import { drainWaters } from '../core/mashing/waters.ts';
import { mashEfficiency, waterKept, wortExtract } from '../core/mashing/wort.ts';
import { celsius, kilograms, litres, litresPerKilogram, percent, quantity, share } from '../core/quantity.ts';
import { gravityAt20 } from '../core/wort/warm-reading.ts';
import { answerOrThrow, lineWithFigures, numberOrThrow, type Predict } from './define.ts';

/** The first water of a house with some of its mash as given. */
const strike = (house: House, mash: Partial<Record<'ratio' | 'gristTemperature' | 'maltMoisture', number>>) =>
  strikeTemperature(house.mashTemperature, {
    ratio: litresPerKilogram(mash.ratio ?? house.liquorRatio),
    gristTemperature: celsius(mash.gristTemperature ?? house.gristTemperature),
    maltMoisture: percent(mash.maltMoisture ?? house.maltMoisture),
  });

/** The house, if one figure of its mash moves and it goes on taking out the same part of the extract. */
const holding = (house: House, figure: 'wortVolume' | 'maltPerMash', value: number): House =>
  answerOrThrow(changeHouse({ ...house, holds: 'efficiency' }, figure, value as never)).house;

export const mashingPredicts: readonly Predict[] = [
  {
    id: 'colder-grist',
    stage: 'mashing',
    way: 'number',
    title: 'Colder grist',
    asks: 'The grist is 10 degrees colder than usual. By how many degrees must the first water be hotter?',
    moves: { label: 'Grist colder by', kind: 'temperatureDifference', from: () => 0, to: () => 10 },
    gives: {
      label: 'Water hotter by',
      kind: 'temperatureDifference',
      of: (house, at) => strike(house, { gristTemperature: house.gristTemperature - at }) - strike(house, {}),
    },
    near: 0.3,
    why: 'A kilogram of grist takes less than half the heat of a kilogram of water, and there is far more water. So the water need rise only a little.',
    sources: ['slaking-table', 'derived'],
  },
  {
    id: 'thicker-mash',
    stage: 'mashing',
    way: 'direction',
    title: 'A thicker mash',
    asks: 'The mash is made thicker, with half a litre less water to a kilogram. Must the water go in hotter, cooler or the same?',
    words: ['hotter', 'cooler'],
    moves: {
      label: 'Water to grist',
      kind: 'liquorRatio',
      from: ({ liquorRatio }) => liquorRatio,
      to: ({ liquorRatio }) => liquorRatio - 0.5,
    },
    gives: { label: 'First water', kind: 'temperature', of: (house, at) => strike(house, { ratio: at }) },
    same: 0.001,
    why: 'Less water has to warm the same cold grist. The grist’s own warmth on wetting makes up for a part of it only.',
    sources: ['slaking-table', 'derived'],
  },
  {
    id: 'damp-malt-in',
    stage: 'mashing',
    way: 'direction',
    title: 'Damp malt in the mash',
    asks: 'The malt has taken up moisture, 2 per cent more. Must the first water be hotter for the same mash, cooler, or the same?',
    words: ['hotter', 'cooler'],
    moves: {
      label: 'Moisture of the malt',
      kind: 'percent',
      from: ({ maltMoisture }) => maltMoisture,
      to: ({ maltMoisture }) => maltMoisture + 2,
    },
    gives: {
      label: 'First water',
      kind: 'temperature',
      digits: 2,
      of: (house, at) => strike(house, { maltMoisture: at }),
    },
    same: 0.0005,
    why: 'Dry malt gives off warmth when it is wetted. Malt that is damp already has given a part of it away, so the water must bring more.',
    sources: ['slaking-table'],
  },
  {
    id: 'hot-mash',
    stage: 'mashing',
    way: 'number',
    title: 'Half an hour at 62 degrees',
    asks: 'A mash stands at 62 °C for half an hour. Of a hundred parts of beta-amylase, how many are still alive?',
    moves: { label: 'Temperature of the mash', kind: 'temperature', from: () => 56, to: () => 62 },
    gives: {
      label: 'Beta-amylase still alive',
      kind: 'percent',
      of: (_, at) => enzymeSurvival('beta', [{ minutes: quantity('minutes', 30), temperature: celsius(at) }]),
    },
    near: 0.4,
    why: 'Even at a heat that suits it, this enzyme dies while it works; a few degrees more shorten its life many times over. The constants are recalled: take the shape of it, not the figure.',
    sources: ['memory'],
  },
  {
    id: 'three-small-waters',
    stage: 'mashing',
    way: 'direction',
    title: 'Three waters or one',
    asks: 'Six litres of water to a kilogram rinse the grist, as three equal waters. Given all at once, do they leave more extract in the draff, less or the same?',
    moves: { label: 'Waters', kind: 'count', from: () => 3, to: () => 1 },
    gives: {
      label: 'Extract left in the draff of a mash',
      kind: 'mass',
      of: (house, at) => {
        const { maltPerMash, maltMoisture, solubleExtract } = house;
        const malt = { mass: maltPerMash, moisture: maltMoisture, extract: solubleExtract };
        const inWort = wortExtract({ volume: house.wortVolume, gravity: house.originalGravity });
        const waters = Math.max(1, Math.round(at));
        const water = { ratio: litresPerKilogram(6 / waters), temperature: celsius(70) };
        const bed = {
          malt: maltPerMash,
          moisture: maltMoisture,
          extract: solubleExtract,
          held: waterKept(malt, inWort, house.draffMoisture),
          washing: share(0.85), // part of it that a water reaches; from memory
        };
        return answerOrThrow(
          drainWaters(
            bed,
            Array.from({ length: waters }, () => water),
          ),
        ).left.extract;
      },
    },
    same: 0.02,
    why: 'Each draining leaves a part of what was there, and the next takes its share of that part. Several small rinses beat one large one.',
    sources: ['derived', 'memory'],
  },
  {
    id: 'more-wort',
    stage: 'mashing',
    way: 'direction',
    title: 'More wort of the same extract',
    asks: 'With the same extract, the wort is run off a tenth larger, and so weaker. Is there more alcohol in the washback in the end, less, or the same (within a hundredth)?',
    moves: { label: 'Wort larger by', kind: 'percent', from: () => 0, to: () => 10 },
    gives: {
      label: 'Pure alcohol in the wash',
      kind: 'alcohol',
      of: (house, at) =>
        lineWithFigures(holding(house, 'wortVolume', house.wortVolume * (1 + at / 100)), {}).wash.alcohol,
    },
    same: 0.01,
    why: 'Yeast lives on the extract, and there is no more of it. A larger, weaker wort fills the washback and asks more heat of the still.',
    sources: ['balling'],
  },
  {
    id: 'warm-sample',
    stage: 'mashing',
    way: 'direction',
    title: 'A warm sample of wort',
    asks: 'A sample of wort is read while it is still warm, at 35 °C. Is the true gravity higher than the hydrometer shows, lower, or the same?',
    words: ['higher', 'lower'],
    moves: { label: 'Temperature of the sample', kind: 'temperature', from: () => 20, to: () => 35 },
    gives: {
      label: 'True gravity where the float shows the house’s',
      kind: 'gravity',
      of: ({ originalGravity }, at) => gravityAt20(originalGravity, celsius(at)),
    },
    same: 0.0005,
    why: 'Warm wort is lighter, so the float sinks deeper and shows too little. Cool the sample, or correct the reading.',
    sources: ['oiml-r22', 'oiml-r44'],
  },
  {
    id: 'wetter-draff',
    stage: 'mashing',
    way: 'number',
    title: 'Wetter draff',
    asks: 'The moisture of the draff is four points higher, as 82 per cent for 78. By how many per cent does its weight grow?',
    moves: { label: 'Moisture more', kind: 'points', from: () => 0, to: () => 4 },
    gives: {
      label: 'Draff heavier by',
      kind: 'percent',
      of: (house, at) =>
        100 *
        (lineWithFigures(house, { draffMoisture: house.draffMoisture + at }).mash.draff /
          lineWithFigures(house, {}).mash.draff -
          1),
    },
    near: 0.25,
    why: 'The dry part stays, and it is a small part of the whole. Where it falls from 22 to 18 in a hundred, the whole grows by 22 per cent.',
    sources: ['derived'],
  },
  {
    id: 'a-degree-misread',
    stage: 'mashing',
    way: 'number',
    title: 'Two degrees misread',
    asks: 'The gravity is read two degrees too high, as 1.062 for 1.060. By how many points does the efficiency seem to rise?',
    moves: { label: 'Degrees too high', kind: 'count', digits: 1, from: () => 0, to: () => 2 },
    gives: {
      label: 'Efficiency seems higher by',
      kind: 'points',
      of: ({ wortVolume, originalGravity, maltPerMash, solubleExtract }, at) => {
        const efficiency = (gravity: number) =>
          mashEfficiency(
            { volume: wortVolume, gravity: quantity('gravity', gravity) },
            { mass: maltPerMash, extract: solubleExtract },
          );
        return efficiency(originalGravity + at / 1000) - efficiency(originalGravity);
      },
    },
    near: 0.25,
    why: 'Two degrees in sixty are a thirtieth of the extract. An efficiency that jumps so far is more often a reading than a better mash.',
    sources: ['sugar-tables'],
  },
  {
    id: 'cold-for-hot',
    stage: 'mashing',
    way: 'number',
    title: 'Cold water for hot',
    asks: 'Each litre of your last water is let down with cold water, at 10 °C, until it is a hot bath of 43. How many litres of cold does it take?',
    moves: {
      label: 'Let down to',
      kind: 'temperature',
      from: ({ lastWater }) => lastWater,
      to: () => 43,
    },
    gives: {
      label: 'Cold water to a litre',
      kind: 'volume',
      digits: 2,
      of: ({ lastWater, maltMoisture }, at) =>
        numberOrThrow(
          rescueWater(
            { malt: kilograms(0), water: litres(1), maltMoisture, temperature: lastWater },
            celsius(at),
            celsius(10),
          ),
        ),
    },
    near: 0.15,
    why: 'Skin bears little, so it takes more cold than hot: half and half still scalds. Burns are quoted within seconds at 60 °C and within minutes at 50, so the cold goes in first, and a thermometer tells, not a hand.',
    sources: ['derived', 'memory'],
  },
];
