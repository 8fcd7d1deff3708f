// The earliest day on which a cask may be sold as whisky.
import { choice, EVEN_WORDING_SINCE } from '../../choice.ts';

const MONTHS = ['February', 'March', 'April', 'May', 'August', 'September', 'October', 'November'] as const;
const LEAST = 3; // years in wood, in every place named here

export default choice({
  id: 'earliest-day',
  title: 'Whisky from which day?',
  topic: 'law',
  form: 'judgement',
  level: 1,
  sources: ['swr-2009', 'eu-2019-787', 'beverages-2024'],
  ask: (chance) => {
    const place = chance.pick([
      'as whisky in the European Union',
      'as Scotch whisky',
      'as Irish whiskey',
      'as Canadian whisky',
    ]);
    const [day, month] = [chance.pick([3, 9, 14, 22, 27]), chance.pick(MONTHS)];
    const year = chance.pick([2018, 2019, 2020, 2021, 2022, 2023]);
    const on = (later: number, by = day) => `On ${by} ${month} ${year + later}.`;
    if (chance.generator >= EVEN_WORDING_SINCE) {
      const made = day - chance.pick([1, 2]);
      return {
        prompt: `Spirit was distilled on ${made} ${month} ${year} and filled into oak of 200 L on ${day} ${month} of the same year. When, at the earliest, may it be sold ${place}?`,
        right: {
          text: on(LEAST),
          why: 'It must lie at least three years in wood, from the day on which it is filled.',
        },
        others: [
          { text: on(LEAST, made), why: 'The days in a steel receiver do not count; those in wood do.' },
          { text: on(2), why: 'Two years make “straight” in the United States, and no whisky here.' },
          { text: on(5), why: 'Longer is allowed, but three years are enough for the law.' },
        ],
      };
    }
    return {
      prompt: `Spirit was distilled on 2 January ${year} and filled into oak of 200 L on ${day} ${month} of the same year. When, at the earliest, may it be sold ${place}?`,
      right: {
        text: on(LEAST),
        why: 'It must lie at least three years in wood, from the day on which it is filled.',
      },
      others: [
        {
          text: `On 1 January ${year + LEAST}.`,
          why: 'Those are calendar years. The three years run from the day of filling.',
        },
        {
          text: `On 2 January ${year + LEAST}.`,
          why: 'The years in a steel receiver do not count; those in wood do.',
        },
        { text: on(2), why: 'Two years make “straight” in the United States, and no whisky here.' },
        { text: on(5), why: 'Longer is allowed, but three years are enough for the law.' },
      ],
    };
  },
});
