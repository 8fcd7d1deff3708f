// Low wines with more than the wash held, a whole stronger than its strongest part, and other impossible runs.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, OWN_FIRST_SINCE, optionOf } from './impossible.ts';
import { alcoholSaid, said } from './quoted.ts';

export default impossible({
  id: 'impossible-in-the-wash-still',
  title: 'Figures of the wash run',
  topic: 'distilling',
  level: 2,
  sources: ['carey-lewis-1932', 'derived'],
  scenes: [
    'The stillman’s book of the wash still is read out.',
    'A trainee was told some figures of the wash run.',
    'Figures of the wash still are checked at the end of the shift.',
  ],
  spans: true,
  claims: (line, chance, mashes) => {
    const { house, wash, lowWines, potAle } = line;
    const volume = (litres: number) => said(litres * mashes, 'volume20');
    const strength = (percent: number) => said(percent, 'strength', 3);
    const moreAlcohol = wash.alcohol * chance.pick([1.02, 1.04, 1.07]);
    const moreRest = potAle.volume + wash.volume * chance.pick([0.05, 0.08, 0.12]);
    const strongRest = wash.strength * chance.pick([1.06, 1.1, 1.2]);
    const first =
      chance.generator < OWN_FIRST_SINCE ? 2 * lowWines.strength : line.round.washRun.curve[0]!.strength;
    const highest = lowWines.strength * chance.pick([0.88, 0.92, 0.95]);
    const [liquid, vapour, weaker] = chance.pick([
      [20.4, 69.6, 17.2],
      [26.3, 73.8, 22.5],
      [51.5, 81.6, 45.1],
      [79.2, 87.9, 74.3],
    ] as const);
    return [
      {
        alike: {
          can: optionOf(
            `The wash held ${alcoholSaid(wash.alcohol * mashes)} and the low wines hold ${volume(lowWines.alcohol)} of it.`,
            `It can be: a little stays in the pot ale.`,
          ),
          cannot: optionOf(
            `The wash held ${alcoholSaid(wash.alcohol * mashes)} and the low wines hold ${volume(moreAlcohol)} of it.`,
            `A still gathers alcohol and makes none. The low wines cannot hold more than the wash did.`,
          ),
        },
        can: optionOf(
          `The wash held ${alcoholSaid(wash.alcohol * mashes)} and the low wines hold ${volume(lowWines.alcohol)} of it.`,
          'It can be: a little stays in the pot ale.',
        ),
        cannot: [
          optionOf(
            `The wash held ${alcoholSaid(wash.alcohol * mashes)} and the low wines hold ${volume(moreAlcohol)}.`,
            'A still gathers alcohol and makes none. The low wines cannot hold more than the wash did.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `${volume(wash.volume)} of wash became ${volume(lowWines.volume)} of low wines and ${volume(potAle.volume)} of pot ale, with no water let in.`,
            `It can be: the two together are about the wash.`,
          ),
          cannot: optionOf(
            `${volume(wash.volume)} of wash became ${volume(lowWines.volume)} of low wines and ${volume(moreRest)} of pot ale, with no water let in.`,
            `Low wines and pot ale come out of the wash, and together they would be far more of it than there was.`,
          ),
        },
        can: optionOf(
          `${volume(wash.volume)} of wash became ${volume(lowWines.volume)} of low wines and ${volume(potAle.volume)} of pot ale.`,
          'It can be: the two together are about the wash.',
        ),
        cannot: [
          optionOf(
            `${volume(wash.volume)} of wash became ${volume(lowWines.volume)} of low wines and ${volume(moreRest)} of pot ale, with no water let in.`,
            'Low wines and pot ale come out of the wash, and together they would be far more of it than there was.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `From wash at ${strength(wash.strength)} the still left pot ale at ${n(potAle.strength, 2)} % vol.`,
            `It can be: nearly all the alcohol went over.`,
          ),
          cannot: optionOf(
            `From wash at ${strength(wash.strength)} the still left pot ale at ${n(strongRest, 2)} % vol.`,
            `The vapour of wash is stronger than the wash, so what stays in the pot grows weaker all the time.`,
          ),
        },
        can: optionOf(
          `From wash at ${strength(wash.strength)} the still left pot ale at ${n(potAle.strength, 2)} % vol.`,
          'It can be: nearly all the alcohol went over.',
        ),
        cannot: [
          optionOf(
            `From wash at ${strength(wash.strength)} the still left pot ale at ${strength(strongRest)}.`,
            'The vapour of wash is stronger than the wash, so what stays in the pot grows weaker all the time.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `The strongest spirit seen in the run was ${strength(first)}, and the low wines as a whole are at ${strength(lowWines.strength)}.`,
            `It can be: the run begins strong and ends weak, and the whole lies between.`,
          ),
          cannot: optionOf(
            `The strongest spirit seen in the run was ${strength(highest)}, and the low wines as a whole are at ${strength(lowWines.strength)}.`,
            `The whole is a mean of its parts. It cannot be stronger than the strongest of them.`,
          ),
        },
        can: optionOf(
          `The run was stopped at ${strength(house.washEnd)} at the safe, and the low wines as a whole are at ${strength(lowWines.strength)}.`,
          'It can be: the run begins strong and ends weak, and the whole lies between.',
        ),
        cannot: [
          optionOf(
            `The strongest spirit seen in the run was ${strength(highest)}, and the low wines as a whole are at ${strength(lowWines.strength)}.`,
            'The whole is a mean of its parts. It cannot be stronger than the strongest of them.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Liquid at ${liquid} % vol was boiling in a plain pot, and its vapour was at ${vapour} % vol.`,
            `It can be: that pair stands in a published table.`,
          ),
          cannot: optionOf(
            `Liquid at ${liquid} % vol was boiling in a plain pot, and its vapour was at ${weaker} % vol.`,
            `Below the azeotrope, near 97 % vol, the vapour is always stronger than the liquid that it leaves.`,
          ),
        },
        can: optionOf(
          `Liquid at ${liquid} % vol was boiling, and its vapour was at ${vapour} % vol.`,
          'It can be: that pair stands in a published table.',
        ),
        cannot: [
          optionOf(
            `Liquid at ${liquid} % vol was boiling in a plain pot, and its vapour was at ${weaker} % vol.`,
            'Below the azeotrope, near 97 % vol, the vapour is always stronger than the liquid that it leaves.',
          ),
        ],
      },
    ];
  },
});
