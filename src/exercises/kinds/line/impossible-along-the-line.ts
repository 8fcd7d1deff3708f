// Pure alcohol that grows on its way from washback to bottle.
import { ledger, mashesIn } from '../../../core/line/ledger.ts';
import { formatNumber } from '../../../core/format.ts';
import { ofTwoDistillations } from '../../of-two-distillations.ts';
import { impossible, optionOf } from './impossible.ts';
import { alcoholSaid, many, quoted, said } from './quoted.ts';

/** The generator from which washes and hearts are told so finely that the loss between them shows. */
const TOLD_APART_SINCE = 7;

export default ofTwoDistillations(
  impossible({
    id: 'impossible-along-the-line',
    title: 'Pure alcohol along the line',
    topic: 'line',
    level: 3,
    sources: ['derived'],
    scenes: [
      'The year’s ledger is read out, in litres of pure alcohol.',
      'The office compares what each part of the house reported for the year.',
      'An officer goes through the year’s account of alcohol with the house.',
    ],
    claims: (line, chance) => {
      const { house, pace, charge, heart, malt } = line;
      const year = ledger(line, 'year');
      const times = mashesIn('year', line);
      const litres = (alcohol: number) => said(alcohol, 'volume20', 3);
      const more = chance.pick([1.04, 1.06, 1.09]);
      const returned = year.charge - year.lowWines;
      const back = quoted(year.charge, 3) - quoted(year.lowWines, 3);
      const mashed = formatNumber(times, 0);
      const digits = chance.generator < TOLD_APART_SINCE ? 3 : 4;
      const washes = quoted(year.wash, digits);
      const isLess = chance.generator < TOLD_APART_SINCE || quoted(year.heart, digits) < washes;
      return [
        {
          can:
            isLess &&
            optionOf(
              `The washes held ${alcoholSaid(washes)} and the hearts ${said(year.heart, 'volume20', digits)}, with as much foreshots and feints in stock at the end as at the start.`,
              'It can be: a little is left in pot ale and lees.',
            ),
          cannot: [
            optionOf(
              `The washes held ${alcoholSaid(washes)} and the hearts ${said(year.wash * more, 'volume20', digits)}, with as much foreshots and feints in stock at the end as at the start.`,
              'Foreshots and feints only go round in a circle. Over a year the hearts cannot hold more than the washes brought.',
            ),
          ],
        },
        {
          can: optionOf(
            `Casks filled with ${alcoholSaid(quoted(year.casks, 3))} gave bottles with ${litres(year.bottles)} after ${many(house.yearsInWood, 'year')}.`,
            'It can be: the air of the store took the rest.',
          ),
          cannot: [
            optionOf(
              `Casks filled with ${alcoholSaid(quoted(year.casks, 3))} gave bottles with ${litres(year.casks * more)} after ${many(house.yearsInWood, 'year')}.`,
              'Alcohol leaves through the wood, and none comes in. The bottles cannot hold more than was filled.',
            ),
          ],
        },
        {
          alike: {
            can: optionOf(
              `Low wines with ${alcoholSaid(quoted(year.lowWines, 3))} and returns with ${said(back, 'volume20', 6)} made charges with ${litres(year.charge)}.`,
              `It can be: alcohol adds up, and the two make the whole.`,
            ),
            cannot: optionOf(
              `Low wines with ${alcoholSaid(quoted(year.lowWines, 3))} and returns with ${said(back, 'volume20', 6)} made charges with ${litres(year.charge * more)}.`,
              `The parts hold ${litres(year.charge)} together. Alcohol adds up, and a whole has no more of it than its parts.`,
            ),
          },
          can: optionOf(
            `Low wines brought ${alcoholSaid(quoted(year.lowWines, 3))}, yet ${litres(year.charge)} were charged into the spirit still.`,
            `It can be: ${litres(returned)} are foreshots and feints that came round again.`,
          ),
          cannot: [
            optionOf(
              `Low wines with ${alcoholSaid(quoted(year.lowWines, 3))} and returns with ${litres(returned)} made charges with ${litres(year.charge * more)}.`,
              `The parts hold ${litres(year.charge)} together. Alcohol adds up, and a whole has no more of it than its parts.`,
            ),
          ],
        },
        {
          alike: {
            can: optionOf(
              `The ${mashed} mashes of the year, each of ${said(malt.mass, 'mass')} of malt, took ${said(pace.maltPerYear / 1000, 'count')} t of malt in all.`,
              `It can be: mashes times malt.`,
            ),
            cannot: optionOf(
              `The ${mashed} mashes of the year, each of ${said(malt.mass, 'mass')} of malt, took ${said((pace.maltPerYear / 1000) * (2 - more), 'count')} t of malt in all.`,
              `${mashed} × ${said(malt.mass, 'mass')} make ${said(pace.maltPerYear / 1000, 'count')} t.`,
            ),
          },
          can: optionOf(
            `The ${mashed} mashes of the year, of ${said(malt.mass, 'mass')} of malt each, took ${said(pace.maltPerYear / 1000, 'count')} t of malt.`,
            'It can be: mashes times malt.',
          ),
          cannot: [
            optionOf(
              `The ${mashed} mashes of the year, each of ${said(malt.mass, 'mass')} of malt, took ${said((pace.maltPerYear / 1000) * chance.pick([0.85, 0.9, 0.93]), 'count', 3)} t of malt in all.`,
              `${mashed} × ${said(malt.mass, 'mass')} make ${said(pace.maltPerYear / 1000, 'count')} t.`,
            ),
          ],
        },
        {
          can: optionOf(
            `The hearts of the year were ${said(heart.volume * times, 'volume20', 3)} and held ${alcoholSaid(quoted(year.heart, 3))}.`,
            'It can be: the pure alcohol is a part of the volume.',
          ),
          cannot: [
            optionOf(
              `The hearts of the year were ${said(heart.volume * times, 'volume20', 3)} and held ${alcoholSaid(quoted(heart.volume * times * chance.pick([1.08, 1.15, 1.2]), 3))}.`,
              'A litre of spirit holds less than a litre of pure alcohol. Bulk litres and litres of pure alcohol were exchanged.',
            ),
          ],
        },
        {
          can: optionOf(
            `The spirit still was charged with ${said(charge.volume * times, 'volume20', 3)}, and ${said(heart.volume * times, 'volume20', 3)} of it became heart.`,
            'It can be: most of a charge is water that stays behind or goes round.',
          ),
          cannot: [],
        },
      ];
    },
  }),
);
