// Guesses about milling.
import { maltInBin, mashesInBin } from '../core/milling/bin.ts';
import { dustCloud, dustForCloud, LOWEST_CLOUDS } from '../core/milling/dust.ts';
import { millingTime, splitGrist } from '../core/milling/grist.ts';
import { sieveTest } from '../core/milling/sieve.ts';
import { sizeCurve } from '../core/milling/size-curve.ts';
import { kilograms, percent, quantity } from '../core/quantity.ts';
import { answerOrThrow, type Predict } from './define.ts';

const grams = (n: number) => quantity('grams', n);
const rate = (n: number) => quantity('milling', n);

/** A stack of sieves under a grist of 20, 70 and 10 per cent; openings from memory, as in the sum of sizes. */
const STACK = [
  [1.27, 20],
  [1.01, 10],
  [0.547, 38],
  [0.253, 22],
  [0.152, 5],
].map(([opening, mass]) => ({ opening: quantity('opening', opening!), mass: grams(mass!) }));
const PAN = grams(5);

/** Part of that grist that passes an opening, %: between two sieves it grows evenly with the logarithm of the size. */
function passing(opening: number): number {
  const { points } = answerOrThrow(sizeCurve(STACK, PAN));
  const above = Math.max(
    1,
    points.findIndex((point) => point.opening >= opening),
  );
  const [low, high] = [points[above - 1]!, points[above]!];
  const part = Math.log(opening / low.opening) / Math.log(high.opening / low.opening);
  return low.passing + part * (high.passing - low.passing);
}

export const millingPredicts: readonly Predict[] = [
  {
    id: 'faster-mill',
    stage: 'milling',
    way: 'number',
    title: 'A faster mill',
    asks: 'The mill is made to run a quarter faster. By how many per cent does the milling of a mash grow shorter?',
    moves: { label: 'Faster by', kind: 'percent', from: () => 0, to: () => 25 },
    gives: {
      label: 'Shorter by',
      kind: 'percent',
      of: ({ maltPerMash, millRate }, at) =>
        100 *
        (1 - millingTime(maltPerMash, rate(millRate * (1 + at / 100))) / millingTime(maltPerMash, millRate)),
    },
    near: 0.1,
    why: 'Time is malt over rate. A quarter more in each hour makes the hours four fifths, not three quarters.',
    sources: ['derived'],
  },
  {
    id: 'what-sticks',
    stage: 'milling',
    way: 'direction',
    title: 'What sticks in the sieves',
    asks: 'A tenth of the sample sticks in the sieves, from all three parts alike. By the rule of this page, is the flour then reckoned to be more of the grist, less, or the same?',
    moves: { label: 'Part that sticks', kind: 'percent', from: () => 0, to: () => 10 },
    gives: {
      label: 'Flour in the grist',
      kind: 'percent',
      of: ({ husk, flour }, at) => {
        const found = (part: number) => grams((part * (100 - at)) / 100);
        return answerOrThrow(
          sieveTest({ husk: found(husk), grits: found(100 - husk - flour), flour: found(flour) }, grams(100)),
        ).flour;
      },
    },
    same: 0.001,
    why: 'Each part is divided by what was found, and what was found shrank alike. Divided by what was put in, every part would look too small.',
    sources: ['derived'],
  },
  {
    id: 'flour-that-sticks',
    stage: 'milling',
    way: 'direction',
    title: 'Flour that sticks',
    asks: 'Now only flour sticks, as it usually does: a fifth of it. Does the husk then look more, less or the same?',
    moves: { label: 'Part of the flour that sticks', kind: 'percent', from: () => 0, to: () => 20 },
    gives: {
      label: 'Husk in the grist',
      kind: 'percent',
      of: ({ husk, flour }, at) =>
        answerOrThrow(
          sieveTest(
            {
              husk: grams(husk),
              grits: grams(100 - husk - flour),
              flour: grams((flour * (100 - at)) / 100),
            },
            grams(100),
          ),
        ).husk,
    },
    same: 0.001,
    why: 'The parts are shares of what was found. Where one part goes missing, the others seem to have grown.',
    sources: ['derived'],
  },
  {
    id: 'husk-for-grits',
    stage: 'milling',
    way: 'direction',
    title: 'More husk',
    asks: 'The first gap is widened, and the sieves find 3 per cent more husk with the same flour. Are there more kilograms of grits in the mash, fewer, or the same?',
    words: ['more', 'fewer'],
    moves: {
      label: 'Husk in the grist',
      kind: 'percent',
      from: ({ husk }) => husk,
      to: ({ husk }) => husk + 3,
    },
    gives: {
      label: 'Grits in a mash',
      kind: 'mass',
      of: ({ maltPerMash, flour }, at) =>
        answerOrThrow(splitGrist(maltPerMash, { husk: percent(at), flour })).grits,
    },
    same: 0.001,
    why: 'The three parts are one malt. What stays in large pieces is missing from the small ones, where water finds it sooner.',
    sources: ['derived'],
  },
  {
    id: 'half-passes',
    stage: 'milling',
    way: 'place',
    title: 'The size that half passes',
    asks: 'On a laboratory’s sieves of 1.27, 1.01, 0.55, 0.25 and 0.15 mm a grist leaves 20, 10, 38, 22 and 5 per cent, and 5 pass them all. Which opening, in millimetres, does half of it pass?',
    moves: { label: 'Opening', kind: 'opening', digits: 2, from: () => 0.16, to: () => 1.27 },
    gives: { label: 'Passes', kind: 'percent', of: (_, at) => passing(at) },
    where: () => answerOrThrow(sizeCurve(STACK, PAN)).median,
    near: 0.1,
    why: 'Most of a good grist is grits. Half of it passes a mesh of well under a millimetre, and still it drains, for the husk holds the bed open.',
    sources: ['memory'],
  },
  {
    id: 'dust-in-a-room',
    stage: 'milling',
    way: 'number',
    title: 'Dust in a room',
    asks: 'A mill room has 100 m³. How many kilograms of dust, hanging in all its air, make the thinnest cloud that is quoted as explosive?',
    moves: { label: 'Room', kind: 'space', from: () => 0, to: () => 100 },
    gives: {
      label: 'Dust',
      kind: 'mass',
      digits: 1,
      of: (_, at) => dustForCloud(quantity('dustCloud', LOWEST_CLOUDS[0]), quantity('space', at)),
    },
    near: 0.35,
    why: 'A few kilograms are enough, less than lies on ledges that look merely dusty. And no cloud is even: near the fall it is many times as thick. Dust is taken up by the site’s procedure, never blown about.',
    sources: ['memory', 'derived'],
  },
  {
    id: 'wider-room',
    stage: 'milling',
    way: 'direction',
    title: 'A higher room',
    asks: 'Dust of one kind lies a millimetre deep on the floor. The room is twice as high. Is the cloud, once all of it hangs in the air, thicker, thinner or the same?',
    words: ['thicker', 'thinner'],
    moves: { label: 'Height of the room, m', kind: 'count', digits: 1, from: () => 3, to: () => 6 },
    gives: {
      label: 'Cloud from a millimetre of dust at 0.5 kg a litre',
      kind: 'dustCloud',
      of: (_, at) => dustCloud(kilograms(0.5), quantity('space', at)), // a square metre, a millimetre deep, is a litre
    },
    same: 0.02,
    why: 'The floor has as much dust, and the air is twice as much. Yet both lie within or above what is quoted as explosive, and no cloud is even: a thin layer is never harmless.',
    sources: ['derived', 'memory'],
  },
  {
    id: 'lighter-malt',
    stage: 'milling',
    way: 'direction',
    title: 'Lighter malt in the bin',
    asks: 'A new lot is lighter: a cubic metre weighs 520 kg instead of 560. Does a full bin feed more mashes, fewer, or the same?',
    words: ['more', 'fewer'],
    moves: { label: 'A cubic metre of malt weighs', kind: 'bulkDensity', from: () => 560, to: () => 520 },
    gives: {
      label: 'Mashes from a bin of 30 m³',
      kind: 'count',
      digits: 1,
      of: ({ maltPerMash }, at) =>
        mashesInBin(maltInBin(quantity('space', 30), quantity('bulkDensity', at)), maltPerMash),
    },
    same: 0.01,
    why: 'A mash is weighed, a bin is filled by volume. The same full bin holds less malt, and the level by the eye does not show it.',
    sources: ['derived'],
  },
];
