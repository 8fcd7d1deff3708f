// Which of four labels breaks the rules for Scotch whisky.
import { formatNumber as n } from '../../../core/format.ts';
import { choice } from '../../choice.ts';

export default choice({
  id: 'label-that-cannot-be',
  title: 'Which label cannot be?',
  topic: 'law',
  form: 'impossible',
  level: 1,
  sources: ['swr-2009', 'memory'],
  ask: (chance) => {
    const age = () => chance.pick([8, 10, 12, 14, 15, 16, 18, 21]);
    const vol = () => n(chance.pick([40, 43, 46, 48, 51.3, 54.8, 57.1]), 1);
    const distilled = chance.pick([2004, 2006, 2008, 2009, 2011]);
    const bottled = distilled + chance.pick([10, 11, 12, 13, 14]);
    const wrong = [
      {
        text: `Pure malt Scotch whisky, aged ${age()} years, ${vol()} % vol.`,
        why: 'The words “pure malt” may not be used.',
      },
      {
        text: `Single malt Scotch whisky, aged 2 years, ${vol()} % vol.`,
        why: 'It must lie at least three years in oak before it is whisky at all.',
      },
      {
        text: `Single malt Scotch whisky, aged ${age()} years, ${n(chance.pick([37.5, 38, 39, 39.5, 39.9]), 1)} % vol.`,
        why: 'It must have 40 % vol at least, and its years do not make up for a weakness.',
      },
      {
        text: `Single malt Scotch whisky sweetened with honey, ${vol()} % vol.`,
        why: 'Nothing but water and plain caramel may be added.',
      },
      {
        text: `Blended malt Scotch whisky, mean age ${age()} years, ${vol()} % vol.`,
        why: 'An age means the youngest part; a mean is for one’s own books.',
      },
      {
        text: `Single malt Scotch whisky, distilled in ${distilled}, ${vol()} % vol, and no other year or age.`,
        why: 'The year of distilling needs the year of bottling, the age or the time in wood beside it.',
      },
      {
        text: `Single malt Scotch whisky from two distilleries, aged ${age()} years, ${vol()} % vol.`,
        why: '“Single” counts distilleries. From two it is a blended malt.',
      },
    ];
    const others = [
      {
        text: `Single malt Scotch whisky, aged ${age()} years, ${vol()} % vol.`,
        why: 'Nothing here is against the rules.',
      },
      {
        text: `Blended malt Scotch whisky, ${vol()} % vol, no age stated.`,
        why: 'An age may be left out; the three years must have passed all the same.',
      },
      {
        text: `Single malt Scotch whisky, distilled in ${distilled}, bottled in ${bottled}, ${vol()} % vol.`,
        why: 'The year of distilling stands with that of bottling, as it must.',
      },
      {
        text: `Single grain Scotch whisky, aged ${age()} years, coloured with plain caramel, ${vol()} % vol.`,
        why: 'Plain caramel may be added.',
      },
      {
        text: 'Single malt Scotch whisky from two hundred casks, 40.0 % vol.',
        why: '“Single” counts distilleries and not casks, and 40 % vol is just enough.',
      },
    ];
    return {
      prompt: 'Four labels lie on the desk. Which cannot be right by the rules for Scotch whisky?',
      right: chance.pick(wrong),
      others,
      bothWays: {
        would: others,
        wouldNot: wrong,
        asks: [
          'Which of them may stand, by the rules for Scotch whisky?',
          'Which of them may not stand, by the rules for Scotch whisky?',
        ],
      },
    };
  },
});
