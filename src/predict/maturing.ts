// Guesses about maturing.
import type { House } from '../core/line/house.ts';
import { caskAfter } from '../core/maturing/cask.ts';
import { fullCask, WOOD } from '../core/maturing/full-cask.ts';
import { afterFirstDrink } from '../core/maturing/to-bottle.ts';
import { dippedVolume, caskCapacity, shapeOf, woodToLitre } from '../core/maturing/shape.ts';
import { celsius, litres, litres20, percent, quantity, strength, years } from '../core/quantity.ts';
import { blend, reduce } from '../core/spirit/mixing.ts';
import { lineWithFigures, type Predict } from './define.ts';

/** Length and head over the diameter at the bung, of a usual cask; from memory. */
const USUAL = { length: 1.3, head: 0.83 };

/** A barrel of a house after some years, in air of some humidity. */
const barrel = (house: House, after: number, humidity: number) =>
  caskAfter({
    volume: afterFirstDrink(litres20(200), house.indrink),
    strength: strength(lineWithFigures(house, {}).filling.strength),
    cask: { size: litres(200) },
    store: { ...house, humidity: percent(humidity) },
    years: years(after),
  });

/** Throws where a house’s casks lose nothing. */
function yearsTo(part: number, { alcoholLoss }: House): number {
  if (alcoholLoss <= 0) throw new RangeError('The casks lose nothing.');
  return Math.log(part) / Math.log(1 - alcoholLoss / 100);
}

export const maturingPredicts: readonly Predict[] = [
  {
    id: 'fifty-and-fifty',
    stage: 'maturing',
    way: 'number',
    title: 'Fifty and fifty',
    asks: '50 L of pure alcohol are poured into 50 L of water, both at 20 °C. How many litres are there then?',
    moves: { label: 'Alcohol poured in', kind: 'volume20', from: () => 0, to: () => 50 },
    gives: {
      label: 'Litres in all',
      kind: 'volume20',
      digits: 1,
      of: (_, at) =>
        blend([
          { volume: litres20(50), strength: strength(0) },
          { volume: litres20(at), strength: strength(100) },
        ]).volume,
    },
    near: 0.01,
    why: 'Water and alcohol pack closer together than either alone. Masses add up, and volumes do not.',
    sources: ['oiml-r22'],
  },
  {
    id: 'half-the-strength',
    stage: 'maturing',
    way: 'direction',
    title: 'As much water as spirit',
    asks: 'A litre of spirit at 80 % vol gets a litre of water, both at 20 °C. Is the mixture stronger than 40 % vol, weaker, or just that?',
    words: ['stronger', 'weaker'],
    moves: { label: 'Strength poured in', kind: 'strength', from: () => 2, to: () => 80 },
    gives: {
      label: 'Strength of the mixture, over half of what was poured in',
      kind: 'ratio',
      digits: 2,
      of: (_, at) =>
        blend([
          { volume: litres20(1), strength: strength(at) },
          { volume: litres20(1), strength: strength(0) },
        ]).strength /
        (at / 2),
    },
    same: 0.005,
    why: 'The alcohol is all there, but the mixture is smaller than two litres. So spirit that is let down by volumes comes out too strong.',
    sources: ['oiml-r22'],
  },
  {
    id: 'water-for-filling',
    stage: 'maturing',
    way: 'number',
    title: 'Water for filling strength',
    asks: 'A thousand litres at 70 % vol are let down to 60. How many litres of water does it take?',
    moves: { label: 'Let down to', kind: 'strength', from: () => 70, to: () => 60 },
    gives: {
      label: 'Water',
      kind: 'volume20',
      of: (_, at) => reduce({ volume: litres20(1000), strength: strength(70) }, strength(at)).waterVolume,
    },
    near: 0.03,
    why: 'By volumes alone it would seem to be 167 L. The mixture shrinks, so it takes some litres more: reckon by mass, mix, wait and measure.',
    sources: ['oiml-r22'],
  },
  {
    id: 'after-twenty-years',
    stage: 'maturing',
    way: 'number',
    title: 'What twenty years leave',
    asks: 'Each year the air takes its usual part of the alcohol in your casks. After twenty years, how many per cent of it are left?',
    moves: { label: 'Years', kind: 'years', from: () => 0, to: () => 20 },
    gives: {
      label: 'Alcohol left',
      kind: 'percent',
      of: ({ alcoholLoss }, at) => 100 * (1 - alcoholLoss / 100) ** at,
    },
    near: 0.04,
    why: 'Each year takes its part of what is still there, so the loss slows down. To multiply the yearly loss by the years takes too much off.',
    sources: ['derived'],
  },
  {
    id: 'a-quarter-gone',
    stage: 'maturing',
    way: 'place',
    title: 'The year when a quarter is gone',
    asks: 'After how many years has the air taken a quarter of the alcohol in one of your casks?',
    moves: {
      label: 'Years',
      kind: 'years',
      digits: 0,
      from: () => 0,
      to: (house) => 3 * yearsTo(0.75, house),
    },
    gives: {
      label: 'Alcohol left',
      kind: 'percent',
      of: ({ alcoholLoss }, at) => 100 * (1 - alcoholLoss / 100) ** at,
    },
    where: (house) => yearsTo(0.75, house),
    near: 0.08,
    why: 'A quarter takes somewhat longer than 25 years over the yearly per cent, for each year takes its part of less. The curve bends.',
    sources: ['derived'],
  },
  {
    id: 'drier-store',
    stage: 'maturing',
    way: 'direction',
    title: 'A drier store',
    asks: 'Your casks lie ten years in air a fifth drier than that of your store. Beside casks that stay, are they stronger in the end, weaker or the same?',
    words: ['stronger', 'weaker'],
    moves: {
      label: 'Humidity of the store',
      kind: 'percent',
      from: ({ storeHumidity }) => storeHumidity,
      to: ({ storeHumidity }) => 0.8 * storeHumidity,
    },
    gives: {
      label: 'Strength after ten years',
      kind: 'strength',
      of: (house, at) => {
        if (house.alcoholLoss <= 0) throw new RangeError('The casks lose nothing.');
        return barrel(house, 10, at).strength;
      },
    },
    same: 0.001,
    why: 'Dry air pulls the water out as well. Alcohol leaves all the same, so a cask in dry air shrinks more and stays stronger.',
    sources: ['conner-2003', 'derived'],
  },
  {
    id: 'drier-store-litres',
    stage: 'maturing',
    way: 'direction',
    title: 'A drier store, in litres',
    asks: 'In air a fifth drier, is there more liquid in a cask after ten years, less, or the same?',
    moves: {
      label: 'Humidity of the store',
      kind: 'percent',
      from: ({ storeHumidity }) => storeHumidity,
      to: ({ storeHumidity }) => 0.8 * storeHumidity,
    },
    gives: {
      label: 'In a barrel after ten years',
      kind: 'volume20',
      digits: 1,
      of: (house, at) => {
        if (house.alcoholLoss <= 0) throw new RangeError('The casks lose nothing.');
        return barrel(house, 10, at).volume;
      },
    },
    same: 0.001,
    why: 'The stronger spirit of the dry store is bought with water. Stronger does not mean that much more alcohol was kept: it is within a hundredth or so.',
    sources: ['conner-2003', 'derived'],
  },
  {
    id: 'smaller-cask',
    stage: 'maturing',
    way: 'number',
    title: 'A quarter of the size',
    asks: 'A cask of 50 L has the shape of one of 200. How many times as much wood does a litre in it meet?',
    moves: { label: 'Size of the cask', kind: 'volume', from: () => 200, to: () => 50 },
    gives: {
      label: 'Times as much wood to a litre',
      kind: 'ratio',
      digits: 2,
      of: (_, at) => woodToLitre(shapeOf(litres(at), USUAL)) / woodToLitre(shapeOf(litres(200), USUAL)),
    },
    near: 0.12,
    why: 'A cask half as wide has an eighth of the volume and a quarter of the wood. So a quarter of the size means 1.6 times the wood, not four times.',
    sources: ['derived'],
  },
  {
    id: 'rod-at-a-quarter',
    stage: 'maturing',
    way: 'direction',
    title: 'The rod a quarter wet',
    asks: 'A cask lies on its side, and the rod comes out wet to a quarter of its height. Does the cask hold more than a quarter of what it can, less, or just a quarter?',
    moves: { label: 'Part of the height that is wet', kind: 'percent', from: () => 50, to: () => 25 },
    gives: {
      label: 'Part that it holds, over the part that is wet',
      kind: 'ratio',
      digits: 2,
      of: (_, at) => {
        const cask = shapeOf(litres(200), USUAL);
        const dip = quantity('length', (cask.bung * at) / 100);
        return (100 * dippedVolume(cask, dip)) / caskCapacity(cask) / at;
      },
    },
    same: 0.005,
    why: 'Lying down, a cask is narrow at the bottom and widest in the middle. Low readings hold less than they seem to: use the shape, or weigh it.',
    sources: ['derived'],
  },
  {
    id: 'weaker-bottles',
    stage: 'maturing',
    way: 'number',
    title: 'Bottled at forty',
    asks: 'The same spirit is bottled at 40 % vol instead of 46. By how many per cent do the bottles grow in number?',
    moves: { label: 'Let down to', kind: 'strength', from: () => 46, to: () => 40 },
    gives: {
      label: 'More bottles',
      kind: 'percent',
      of: (_, at) => {
        const cask = { volume: litres20(100), strength: strength(56) };
        const made = (to: number) => reduce(cask, strength(to)).volume;
        return 100 * (made(at) / made(46) - 1);
      },
    },
    near: 0.1,
    why: 'A bottle holds alcohol in proportion to its strength, so it is 46 over 40 that counts: more than the six points between them.',
    sources: ['oiml-r22'],
  },
  {
    id: 'full-barrel',
    stage: 'maturing',
    way: 'number',
    title: 'A full barrel',
    asks: 'A barrel of 200 L, whose wood weighs 50 kg, is full of spirit at your filling strength and 20 °C. How many kilograms does it weigh?',
    moves: { label: 'Litres in it', kind: 'volume', from: () => 0, to: () => 200 },
    gives: {
      label: 'The barrel and its spirit',
      kind: 'mass',
      digits: 0,
      of: (house, at) =>
        fullCask(
          { size: litres(at), wood: WOOD.barrel.wood },
          lineWithFigures(house, {}).filling.strength,
          celsius(20),
        ).total,
    },
    near: 0.07,
    why: 'Spirit is a tenth lighter than water, and still it is a quarter of a tonne. Nobody lifts that, and nobody stops it once it rolls: it moves by gear and by people trained for it.',
    sources: ['oiml-r22', 'memory'],
  },
];
