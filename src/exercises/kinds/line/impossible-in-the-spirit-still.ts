// A heart above the azeotrope, below its own end, or with more than the charge: runs that no spirit still gives.
import { formatNumber as n } from '../../../core/format.ts';
import { ofTwoDistillations } from '../../of-two-distillations.ts';
import { impossible, OWN_FIRST_SINCE, optionOf } from './impossible.ts';
import { alcoholSaid, said } from './quoted.ts';

export default ofTwoDistillations(
  impossible({
    id: 'impossible-in-the-spirit-still',
    title: 'Figures of the spirit run',
    topic: 'distilling',
    level: 2,
    sources: ['carey-lewis-1932', 'nicol-2003', 'derived'],
    scenes: [
      'The stillman’s book of the spirit still is read out.',
      'On a tour the guide tells how a spirit run went.',
      'Figures of the spirit run are checked at the end of the shift.',
    ],
    spans: true,
    claims: (line, chance, mashes) => {
      const { house, charge, heart, foreshots, feints, lowWines } = line;
      const strength = (percent: number) => said(percent, 'strength', 3);
      const volume = (litres: number) => said(litres * mashes, 'volume20');
      const share = (part: { alcohol: number }) => (100 * part.alcohol) / charge.alcohol;
      const printed = (part: { alcohol: number }) => Number(share(part).toFixed(1)); // what is told adds up as it stands
      const first =
        chance.generator < OWN_FIRST_SINCE ? Math.min(heart.strength + 3, 84) : line.round.begins.run;
      const pure = chance.pick([98.2, 98.5, 98.8, 99.1, 99.4]);
      const moreHeart = charge.alcohol * chance.pick([1.02, 1.05, 1.09]);
      const weakHeart = house.heartEnd - chance.pick([1.5, 2.4, 3.1, 4.2]);
      const strongFeints = house.heartEnd + chance.pick([1.4, 2.2, 3.5]);
      const over = chance.pick([4, 6, 9]);
      return [
        {
          alike: {
            can: optionOf(
              `At its best moment the run came over at ${n(first, 1)} % vol, at ordinary pressure.`,
              `It can be: two boilings in pots can gather that much and stay well below the azeotrope, near 97 % vol.`,
            ),
            cannot: optionOf(
              `At its best moment the run came over at ${n(pure, 1)} % vol, at ordinary pressure.`,
              `Near 97 % vol vapour and liquid are alike, at the azeotrope. No boiling at ordinary pressure leads beyond it, and a pot still comes nowhere near.`,
            ),
          },
          can: optionOf(
            `The heart as a whole is at ${strength(heart.strength)}.`,
            'It can be: two boilings in pots can gather that much and stay well below the azeotrope, near 97 % vol.',
          ),
          cannot: [
            optionOf(
              `At its best moment the run came over at ${pure} % vol, at ordinary pressure.`,
              'Near 97 % vol vapour and liquid are alike, at the azeotrope. No boiling at ordinary pressure leads beyond it, and a pot still comes nowhere near.',
            ),
          ],
        },
        {
          alike: {
            can: optionOf(
              `The charges held ${alcoholSaid(charge.alcohol * mashes)} and the hearts took ${volume(heart.alcohol)} of it.`,
              `It can be: the rest goes round again as foreshots and feints.`,
            ),
            cannot: optionOf(
              `The charges held ${alcoholSaid(charge.alcohol * mashes)} and the hearts took ${volume(moreHeart)} of it.`,
              `The heart is a part of what the charge gives and cannot hold more alcohol than it.`,
            ),
          },
          can: optionOf(
            `The charges held ${alcoholSaid(charge.alcohol * mashes)} and the hearts took ${volume(heart.alcohol)} of it.`,
            'It can be: the rest goes round again as foreshots and feints.',
          ),
          cannot: [
            optionOf(
              `The charges held ${alcoholSaid(charge.alcohol * mashes)} and the hearts took ${volume(moreHeart)}.`,
              'The heart is a part of what the charge gives and cannot hold more alcohol than it.',
            ),
          ],
        },
        {
          alike: {
            can: optionOf(
              `The heart was run down to ${strength(house.heartEnd)}, and as a whole it is at ${strength(heart.strength)}.`,
              `It can be: the strength falls all through the run, so the whole is stronger than the last drop.`,
            ),
            cannot: optionOf(
              `The heart was run down to ${strength(house.heartEnd)}, and as a whole it is at ${strength(weakHeart)}.`,
              `The strength falls during the run, so all of the heart came over stronger than its last drop. Its mean cannot lie below it.`,
            ),
          },
          can:
            foreshots.alcohol > 0 &&
            optionOf(
              `The heart was run down to ${strength(house.heartEnd)}, and what had come over before it, the foreshots, is at ${strength(foreshots.strength)}.`,
              'It can be: the strength falls all through the run.',
            ),
          cannot: [
            optionOf(
              `The heart was run down to ${strength(house.heartEnd)}, and as a whole it is at ${strength(weakHeart)}.`,
              'The strength falls during the run, so all of the heart came over stronger than its last drop. Its mean cannot lie below it.',
            ),
          ],
        },
        {
          can: optionOf(
            `The feints, from ${strength(house.heartEnd)} down to ${strength(house.feintsEnd)}, are at ${strength(feints.strength)} as a whole.`,
            'It can be: the whole lies between its first and its last drop.',
          ),
          cannot: [
            optionOf(
              `The feints, from ${strength(house.heartEnd)} down to ${strength(house.feintsEnd)}, are at ${strength(strongFeints)} as a whole.`,
              'They would be stronger than their strongest, first drop.',
            ),
          ],
        },
        {
          can: optionOf(
            `Of the charge’s alcohol the foreshots took ${n(share(foreshots), 1)} %, the heart ${n(share(heart), 1)} % and the feints ${n(share(feints), 1)} %.`,
            'It can be: the three make a hundred, but for a trace left in the lees.',
          ),
          cannot: [
            optionOf(
              `Of the charge’s alcohol the foreshots took ${n(share(foreshots), 1)} %, the heart ${n(share(heart) + over, 1)} % and the feints ${n(share(feints), 1)} %.`,
              `They are parts of one charge, and here they make ${n(printed(foreshots) + printed(heart) + printed(feints) + over, 1)} %.`,
            ),
          ],
        },
        {
          can: optionOf(
            `The low wines brought ${alcoholSaid(lowWines.alcohol * mashes)}, and the charges held ${volume(charge.alcohol)}.`,
            'It can be: the charge also holds the foreshots and feints of the run before.',
          ),
          cannot: [],
        },
      ];
    },
  }),
);
