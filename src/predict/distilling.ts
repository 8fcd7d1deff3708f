// Guesses about distilling.
import { runStill } from '../core/distilling/run.ts';
import { boilingPoint } from '../core/distilling/run-heat.ts';
import { distillateOver, strengthOfVapour } from '../core/distilling/still.ts';
import type { House } from '../core/line/house.ts';
import { celsius, kilopascals, litres20, quantity, strength } from '../core/quantity.ts';
import { amountsOf } from '../core/spirit/amounts.ts';
import { densityAtMark } from '../core/spirit/hydrometer.ts';
import { densityFromStrength, strengthFromDensity } from '../core/spirit/strength.ts';
import { heatToBoilOff } from '../core/vapour/latent-heat.ts';
import { answerOrThrow, lineWithFigures, type ForeseenAmount, type Predict } from './define.ts';

const LOWER_LIMIT = 0.033; // part of ethanol in air from which it burns; niosh-ethanol
const MOLE = 24.06; // m³ of vapour to a kilomole at 20 °C and one atmosphere; the gas law

/** The heart ended four per cent lower than the house ends it. */
const laterHeart = {
  label: 'Heart ends at',
  kind: 'strength',
  from: ({ heartEnd }: House) => heartEnd,
  to: ({ heartEnd }: House) => heartEnd - 4,
} as const satisfies ForeseenAmount & Record<string, unknown>;

const moleFractionOf = (strengthOfIt: number) => {
  const { ethanol, water } = amountsOf({ volume: litres20(1), strength: strength(strengthOfIt) });
  return quantity('moleFraction', ethanol / (ethanol + water));
};

/** The spirit run of a house as it stands in balance. */
const spiritRun = (house: House) =>
  answerOrThrow(
    runStill({
      charge: lineWithFigures(house, {}).charge,
      reflux: house.spiritReflux,
      pressure: house.airPressure,
      until: house.feintsEnd,
    }),
  );

export const distillingPredicts: readonly Predict[] = [
  {
    id: 'later-heart-alcohol',
    stage: 'distilling',
    way: 'direction',
    title: 'A longer heart, and its alcohol',
    asks: 'The heart is ended 4 % vol lower, round after round. Once the round is in balance again, does the heart hold more pure alcohol, less, or the same (within a hundredth)?',
    moves: laterHeart,
    gives: {
      label: 'Pure alcohol in the heart',
      kind: 'alcohol',
      of: (house, at) => lineWithFigures(house, { heartEnd: at }).heart.alcohol,
    },
    same: 0.01,
    why: 'What is not taken as heart comes back as feints and is taken next time. In balance the heart gets what the low wines bring, wherever it ends.',
    sources: ['de-nevers', 'oiml-r22'],
  },
  {
    id: 'later-heart-litres',
    stage: 'distilling',
    way: 'direction',
    title: 'A longer heart, and its litres',
    asks: 'The heart is ended 4 % vol lower. Are there more litres of it, fewer, or the same (within a hundredth)?',
    words: ['more', 'fewer'],
    moves: laterHeart,
    gives: {
      label: 'Heart',
      kind: 'volume20',
      of: (house, at) => lineWithFigures(house, { heartEnd: at }).heart.volume,
    },
    same: 0.01,
    why: 'The same alcohol comes in a weaker, larger heart. More litres in the vat are not more spirit.',
    sources: ['de-nevers', 'oiml-r22'],
  },
  {
    id: 'later-heart-charge',
    stage: 'distilling',
    way: 'direction',
    title: 'A longer heart, and what goes round',
    asks: 'The heart is ended 4 % vol lower. Is there more pure alcohol in the feints that go back, less, or the same?',
    moves: laterHeart,
    gives: {
      label: 'Pure alcohol in the feints',
      kind: 'alcohol',
      of: (house, at) => lineWithFigures(house, { heartEnd: at }).feints.alcohol,
    },
    same: 0.01,
    why: 'What the heart takes early need not be boiled again. A heart that ends sooner is lighter, and is paid for in feints and steam.',
    sources: ['de-nevers', 'oiml-r22'],
  },
  {
    id: 'wash-still-stopped-early',
    stage: 'distilling',
    way: 'direction',
    title: 'Stopping the wash still early',
    asks: 'The wash still is stopped early, 4 % vol above your usual end. Are the low wines stronger, weaker or the same?',
    words: ['stronger', 'weaker'],
    moves: {
      label: 'Wash run ends at',
      kind: 'strength',
      from: ({ washEnd }) => washEnd,
      to: ({ washEnd }) => washEnd + 4,
    },
    gives: {
      label: 'Low wines',
      kind: 'strength',
      of: (house, at) => lineWithFigures(house, { washEnd: at }).lowWines.strength,
    },
    same: 0.005,
    why: 'The last of a run is weak and thins what came before. Without it the low wines are stronger, and some alcohol goes to the pot ale.',
    sources: ['de-nevers', 'oiml-r22'],
  },
  {
    id: 'part-that-comes-over',
    stage: 'distilling',
    way: 'number',
    title: 'How much of the wash comes over',
    asks: 'Of a hundred litres of your wash, how many come over as low wines?',
    moves: {
      label: 'Wash run ends at',
      kind: 'strength',
      from: ({ washEnd }) => washEnd + 14,
      to: ({ washEnd }) => washEnd,
    },
    gives: {
      label: 'Low wines from a hundred litres',
      kind: 'volume20',
      of: (house, at) => {
        const { lowWines, wash } = lineWithFigures(house, { washEnd: at });
        return (100 * lowWines.volume) / wash.volume;
      },
    },
    near: 0.15,
    why: 'To get the last of the alcohol out, a good third of the wash is boiled over. Most of that is water, which the second still has to leave behind.',
    sources: ['de-nevers', 'oiml-r22'],
  },
  {
    id: 'first-drops',
    stage: 'distilling',
    way: 'number',
    tells: true,
    title: 'The first drops of the wash still',
    asks: 'Your wash comes to the boil. How strong, in % vol, is the first that comes over?',
    moves: {
      label: 'Strength of the wash',
      kind: 'strength',
      from: () => 1,
      to: (house) => lineWithFigures(house, {}).wash.strength,
    },
    gives: {
      label: 'First drops',
      kind: 'strength',
      of: ({ washReflux, airPressure }, at) =>
        strengthOfVapour(
          distillateOver(moleFractionOf(at), { reflux: washReflux, pressure: airPressure }).vapour,
        ),
    },
    near: 0.15,
    why: 'The weaker the liquid, the more its vapour gains: some six times the strength of the wash. Then it falls all through the run, for the pot grows weaker.',
    sources: ['de-nevers', 'carey-lewis-1932', 'oiml-r22'],
  },
  {
    id: 'warm-safe',
    stage: 'distilling',
    way: 'number',
    title: 'A warm reading at the safe',
    asks: 'A hydrometer marked for 20 °C shows 65 % vol in spirit at 26 °C. By how many % vol does it show too much?',
    moves: { label: 'Temperature of the spirit', kind: 'temperature', from: () => 20, to: () => 26 },
    gives: {
      label: 'Shows too much by',
      kind: 'strengthDifference',
      of: (_, at) =>
        65 -
        strengthFromDensity(
          densityAtMark(densityFromStrength(strength(65), celsius(20)), celsius(at)),
          celsius(at),
        ),
    },
    near: 0.25,
    why: 'Warm spirit is lighter, and light means strong to a float. Near this strength it comes to about a third of a per cent for each degree, so a cut by the float alone comes too late.',
    sources: ['oiml-r22', 'oiml-r44'],
  },
  {
    id: 'half-the-alcohol',
    stage: 'distilling',
    way: 'place',
    title: 'When half the alcohol is over',
    asks: 'A charge of the spirit still is run down to the end of the feints. At which strength at the safe is half of its alcohol over?',
    moves: {
      label: 'Strength at the safe',
      kind: 'strength',
      from: (house) => spiritRun(house).curve[0]!.strength,
      to: ({ feintsEnd }) => feintsEnd,
    },
    gives: {
      label: 'Part of the alcohol that is over',
      kind: 'percent',
      of: (house, at) => {
        const { curve } = spiritRun(house);
        const next = curve.findIndex(({ strength }) => strength <= at);
        const all = curve.at(-1)!.alcohol;
        if (next <= 0) return next === 0 ? 0 : 100;
        const [a, b] = [curve[next - 1]!, curve[next]!];
        const part = (a.strength - at) / (a.strength - b.strength || 1);
        return (100 * (a.alcohol + part * (b.alcohol - a.alcohol))) / all;
      },
    },
    where: (house) => {
      const { curve } = spiritRun(house);
      const half = curve.at(-1)!.alcohol / 2;
      const next = curve.findIndex(({ alcohol }) => alcohol >= half);
      const [a, b] = [curve[Math.max(0, next - 1)]!, curve[next]!];
      return a.strength + ((half - a.alcohol) / (b.alcohol - a.alcohol || 1)) * (b.strength - a.strength);
    },
    near: 0.1,
    why: 'The strength falls slowly at first and fast later. Half of the alcohol is over while the run is still strong: the tail is long in hours and short in alcohol.',
    sources: ['de-nevers', 'oiml-r22'],
  },
  {
    id: 'still-on-a-hill',
    stage: 'distilling',
    way: 'number',
    title: 'A still on a hill',
    asks: 'The air presses a tenth less, as it does about a thousand metres up. By how many degrees does your wash boil sooner?',
    moves: { label: 'Air pressure lower by', kind: 'percent', from: () => 0, to: () => 10 },
    gives: {
      label: 'Boils sooner by',
      kind: 'temperatureDifference',
      of: (house, at) => {
        const { wash } = lineWithFigures(house, {});
        return (
          boilingPoint(wash, house.airPressure) -
          boilingPoint(wash, kilopascals(house.airPressure * (1 - at / 100)))
        );
      },
    },
    near: 0.35,
    why: 'Less air above means that less heat makes it boil. The vapour is hardly stronger for it: a thermometer must be read with the weather in mind.',
    sources: ['de-nevers', 'memory'],
  },
  {
    id: 'steam-for-strength',
    stage: 'distilling',
    way: 'direction',
    title: 'What a litre of alcohol costs in heat',
    asks: 'Spirit at 70 % vol and low wines at 22: for each litre of pure alcohol that is boiled off, do the low wines take more heat, less or the same?',
    moves: { label: 'Strength boiled off', kind: 'strength', from: () => 70, to: () => 22 },
    gives: {
      label: 'Heat to a litre of pure alcohol',
      kind: 'energyPerAlcohol',
      of: (_, at) => {
        const boiled = { volume: litres20(100), strength: strength(at) };
        return heatToBoilOff(amountsOf(boiled)) / at;
      },
    },
    same: 0.02,
    why: 'The water that comes over with it must be boiled as well, and a kilogram of water takes more than twice the heat of a kilogram of alcohol. So a wash still, whose run is mostly water, takes much of a house’s fuel.',
    sources: ['derived', 'memory'],
  },
  {
    id: 'air-for-a-litre',
    stage: 'distilling',
    way: 'number',
    title: 'A litre of spirit, spilt',
    asks: 'A litre of your heart is spilt, and all its alcohol turns to vapour, evenly mixed in air at 20 °C. Air with 3.3 per cent of it can burn. How many cubic metres of air can one litre make so?',
    moves: { label: 'Spilt, in litres', kind: 'count', digits: 1, from: () => 0, to: () => 1 },
    gives: {
      label: 'Air that could burn',
      kind: 'space',
      digits: 1,
      of: (house, at) => {
        const spilt = { volume: litres20(at), strength: lineWithFigures(house, {}).heart.strength };
        return (amountsOf(spilt).ethanol * MOLE) / LOWER_LIMIT;
      },
    },
    near: 0.4,
    why: 'A litre of liquid becomes hundreds of litres of vapour, and it needs only three parts in a hundred. Vapour is heavier than air and lies low, so near the spill less is enough: no flame, no switch, and out, as your site’s procedure says.',
    sources: ['niosh-ethanol', 'derived'],
  },
];
