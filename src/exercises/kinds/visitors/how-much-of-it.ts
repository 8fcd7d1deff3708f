// How much there is of each thing in one mash, as a visitor asks.
import { firstApart } from '../../first-apart.ts';
import { choice } from '../../choice.ts';
import { ofTwoDistillations } from '../../of-two-distillations.ts';
import { formatNumber as n } from '../../../core/format.ts';
import type { Line } from '../../../core/line/line.ts';

type Amount = readonly [asks: string, of: (line: Line) => number, is: string];

/** What visitors ask of one mash, in litres and in kilograms: only amounts of one unit stand side by side. */
const groups: readonly (readonly [unit: string, amounts: readonly Amount[]])[] = [
  [
    'litres',
    [
      ['How much hot water goes in first?', (line) => line.mash.firstWater, 'are the first water'],
      ['How much comes out of the mash tun for the yeast?', (line) => line.wort.volume, 'are the wort'],
      ['How much comes over from the first still?', (line) => line.lowWines.volume, 'are the low wines'],
      ['How much is left behind in the first still?', (line) => line.potAle.volume, 'are the pot ale'],
      ['How much of it is the good part, in the end?', (line) => line.heart.volume, 'are the heart'],
      ['How much is left behind in the second still?', (line) => line.spentLees.volume, 'are the spent lees'],
    ],
  ],
  [
    'kilograms',
    [
      ['How much barley was that?', (line) => line.barley.mass, 'are the barley'],
      ['How much of the malt is husk?', (line) => line.grist.husk, 'are the husk'],
      [
        'How much of the malt ends up dissolved in the wort?',
        (line) => line.wort.extract,
        'are the extract of the wort',
      ],
      ['How much of that gas comes off?', (line) => line.wash.carbonDioxide, 'are the carbon dioxide'],
      ['How much of the malt is flour?', (line) => line.grist.flour, 'are the flour'],
    ],
  ],
];

const APART = 1.12; // by which factor two that are shown together differ at least
const SHOWN = 4;

/** An amount as it is told to visitors, in two figures. */
const rounded = (value: number) => {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Math.round(value / step) * step;
};

const kind = choice({
  id: 'how-much-of-it',
  title: 'How much is it?',
  topic: 'visitors',
  form: 'judgement',
  level: 2,
  sources: ['derived', 'de-nevers'],
  ask: (chance, line) => {
    const [unit, amounts] = chance.pick(groups);
    const shown = firstApart(
      chance.shuffle(amounts),
      SHOWN,
      ([, of]) => chance.quotes.quote(rounded(of(line)), 0),
      (one, other) => Math.max(one / other, other / one) >= APART,
    ).map(({ of: [asks, , is], value }) => ({
      asks,
      text: `About ${n(value, 0)} ${unit}.`,
      why: `About ${n(value, 0)} ${unit} ${is} of one mash in this house.`,
    }));
    const [right, ...others] = shown;
    const scene = chance.pick([
      `You have told a group that one mash takes ${n(line.house.maltPerMash, 0)} kg of malt.`,
      `“${n(line.house.maltPerMash, 0)} kg of malt go into one mash,” you have said.`,
    ]);
    return {
      prompt: `${scene} A visitor asks about that mash: “${right!.asks}” What do you say?`,
      right: right!,
      others,
    };
  },
});

export default ofTwoDistillations({ ...kind, since: 7 });
