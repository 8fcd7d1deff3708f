// How strong it is at each station of the house, as a visitor asks.
import { firstApart } from '../../first-apart.ts';
import { choice } from '../../choice.ts';
import { formatNumber as n } from '../../../core/format.ts';
import type { Line } from '../../../core/line/line.ts';

/** What visitors ask, the figure of the house, and what the figure is. */
const stations: readonly (readonly [asks: readonly string[], of: (line: Line) => number, is: string])[] = [
  [
    ['How strong is it when the yeast is done?', 'How strong is what bubbles in there, at its end?'],
    (line) => line.wash.strength,
    'is the wash',
  ],
  [
    [
      'And what comes out of the first still, how strong is that?',
      'How strong is it after the first distilling?',
    ],
    (line) => line.lowWines.strength,
    'is the low wines',
  ],
  [
    [
      'How strong is the spirit that you keep, straight off the still?',
      'How strong is it in the spirit safe, the good part?',
    ],
    (line) => line.heart.strength,
    'is the heart',
  ],
  [
    ['How strong is it when it goes into the cask?', 'How strong do you fill the casks?'],
    (line) => line.house.fillingStrength,
    'is the filling strength',
  ],
  [
    ['How strong is it when it comes out of the cask?', 'What is cask strength here?'],
    (line) => line.matured.strength,
    'is what the casks give at the end',
  ],
  [
    ['How strong is it in the bottle?', 'How strong is what I can buy in the shop?'],
    (line) => line.house.bottlingStrength,
    'is the strength in bottle',
  ],
];

const APART = 3; // % vol between two that are shown together
const SHOWN = 4;

const kind = choice({
  id: 'how-strong-is-it',
  title: 'How strong is it?',
  topic: 'visitors',
  form: 'judgement',
  level: 1,
  sources: ['derived', 'de-nevers'],
  ask: (chance, line) => {
    const shown = firstApart(
      chance.shuffle(stations),
      SHOWN,
      ([, of]) => chance.quotes.quote(of(line), 0),
      (one, other) => Math.abs(one - other) >= APART,
    ).map(({ of: [asks, , is], value }) => ({
      asks,
      text: `About ${n(value, 0)} % vol.`,
      why: `About ${n(value, 0)} % vol ${is} in this house.`,
    }));
    const [right, ...others] = shown;
    const who = chance.pick([
      'A visitor asks',
      'A neighbour asks',
      'Somebody at the back asks',
      'The last of the group asks',
    ]);
    return {
      prompt: `${who} you in this house: “${chance.pick(right!.asks)}” What do you say?`,
      right: right!,
      others,
    };
  },
});

export default { ...kind, since: 7 };
