// More grist than malt, more past the fine sieve than past the coarse one, and a mill faster than itself.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { quoted, said } from './quoted.ts';

export default impossible({
  id: 'impossible-in-the-mill',
  title: 'Figures of the mill',
  topic: 'milling',
  level: 1,
  sources: ['derived', 'memory'],
  scenes: [
    'The mill’s day book is read out at the change of shift.',
    'Figures from the mill room are checked before they go into the record.',
    'A trainee has noted what the miller said.',
  ],
  spans: true,
  claims: (line, chance, mashes) => {
    const { house, grist } = line;
    const malt = house.maltPerMash * mashes;
    const over = chance.pick([3, 5, 8]);
    const hours = malt / 1000 / house.millRate;
    const more = chance.pick([1.02, 1.03, 1.05]);
    const sample = chance.pick([100, 125, 150, 200]);
    const found = [0.2, 0.69, 0.09].map((part) => quoted(part * sample, 3));
    const total = found.reduce((sum, part) => sum + part, 0);
    const finer = chance.pick([8, 9, 10, 11]);
    const coarser = chance.pick([30, 32, 34, 37]);
    return [
      {
        can: optionOf(
          `The grist is ${said(house.husk, 'percent')} husk, ${said(grist.gritsPercent, 'percent')} grits and ${said(house.flour, 'percent')} flour.`,
          'It can be: the three make a hundred.',
        ),
        cannot: [
          optionOf(
            `The grist is ${said(house.husk, 'percent')} husk, ${said(grist.gritsPercent + over, 'percent')} grits and ${said(house.flour, 'percent')} flour.`,
            `The three are parts of one grist, and here they make ${100 + over} %.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `${said(malt, 'mass')} of malt went in and ${said(malt * 0.998, 'mass')} of grist came out, with nothing added.`,
            `It can be: a little is taken off as dust and stones.`,
          ),
          cannot: optionOf(
            `${said(malt, 'mass')} of malt went in and ${said(malt * more, 'mass')} of grist came out, with nothing added.`,
            `A mill breaks grain; it makes none. More came out than went in.`,
          ),
        },
        can: optionOf(
          `${said(malt, 'mass')} of malt went in and ${said(malt * 0.998, 'mass')} of grist came out.`,
          'It can be: a little is taken off as dust and stones.',
        ),
        cannot: [
          optionOf(
            `${said(malt, 'mass')} of malt went in and ${said(malt * more, 'mass')} of grist came out, with nothing added.`,
            'A mill breaks grain; it makes none. More came out than went in.',
          ),
        ],
      },
      {
        can: optionOf(
          `At no more than ${said(house.millRate, 'milling')}, ${said(malt, 'mass')} took ${said(hours * 1.1, 'hours', 3)}.`,
          `It can be: at the full rate it is ${said(hours, 'hours', 3)}, and the mill may run slower or stand a while.`,
        ),
        cannot: [
          optionOf(
            `At no more than ${said(house.millRate, 'milling')}, ${said(malt, 'mass')} took ${said(hours * 0.8, 'hours', 3)}.`,
            `At the full rate it takes ${said(hours, 'hours', 3)}. No mill is quicker than its own greatest rate.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `A sieve test began with ${sample} g on clean sieves, and ${n(total, 1)} g were found on them and in the pan.`,
            `It can be: a little sticks to the sieves.`,
          ),
          cannot: optionOf(
            `A sieve test began with ${sample} g on clean sieves, and ${n(sample + over, 1)} g were found on them and in the pan.`,
            `More was found than was put in. The scale, or what stuck from the last test, has to be looked at.`,
          ),
        },
        can: optionOf(
          `A sieve test began with ${sample} g, and ${n(total, 1)} g were found on the sieves and in the pan.`,
          'It can be: a little sticks to the sieves.',
        ),
        cannot: [
          optionOf(
            `A sieve test began with ${sample} g, and ${n(sample + over, 0)} g were found on clean sieves and in the pan.`,
            'More was found than was put in. The scale, or what stuck from the last test, has to be looked at.',
          ),
        ],
      },
      {
        can: optionOf(
          `Of the grist ${coarser} % passes the sieve of 0.547 mm, and ${finer} % passes that of 0.253 mm.`,
          'It can be: what passes the fine sieve is a part of what passes the coarse one.',
        ),
        cannot: [
          optionOf(
            `Of the grist ${finer} % passes the sieve of 0.547 mm, and ${coarser} % passes that of 0.253 mm.`,
            'Whatever passes the finer sieve passes the coarser one as well. The two figures were exchanged.',
          ),
        ],
      },
    ];
  },
});
