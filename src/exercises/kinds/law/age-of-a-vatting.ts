// The age that a label may state for casks put together.
import { litres20, strength, years } from '../../../core/quantity.ts';
import { vat } from '../../../core/maturing/vatting.ts';
import { sum } from '../../sum.ts';

const MADE = 'April';
/** Part of the vat and month of filling: after the month of emptying the last year is not full. */
const half = { share: 0.5, month: 'June', short: 1 };
const tenth = { share: 0.1, month: 'September', short: 1 };
const rest = { share: 0.4, month: 'February', short: 0 };

const ages = (v: Readonly<Record<'half' | 'tenth' | 'rest', number>>) =>
  [v.half - half.short, v.tenth - tenth.short, v.rest - rest.short] as const;

const vatOf = ({ made, ...v }: Readonly<Record<'made' | 'half' | 'tenth' | 'rest', number>>) =>
  `A vat is made up in ${MADE} ${made}: half of it filled into wood in ${half.month} ${made - v.half}, a tenth in ${tenth.month} ${made - v.tenth}, the rest in ${rest.month} ${made - v.rest}.`;

export default sum({
  id: 'age-of-a-vatting',
  title: 'The age that may be stated',
  topic: 'law',
  level: 2,
  sources: ['swr-2009', 'memory'],
  of: 'years',
  to: 0,
  whole: 'down',
  vary: {
    made: ['count', [2018, 2019, 2020, 2021, 2022, 2023, 2024]],
    half: ['years', [12, 13, 14, 15]],
    tenth: ['years', [6, 7, 8, 9, 10, 11]],
    rest: ['years', [16, 17, 18, 20, 21]],
  },
  answer: (v) =>
    vat(
      ages(v).map((age, i) => ({
        volume: litres20(1000 * [half, tenth, rest][i]!.share),
        strength: strength(60),
        age: years(age),
      })),
    ).age,
  prompt: (_, __, v) => `${vatOf(v)} What is the highest age, in full years, that the label may state?`,
  renewed: 7,
  before: {
    prompt: (_, __, v) => `${vatOf(v)} What age, in full years, may the label state?`,
  },
  working: (v, answer) => {
    const [one, two, three] = ages(v);
    return [
      `Full years in wood by ${MADE} ${v.made}: ${one}, ${two} and ${three}; a part of a year counts for nothing`,
      `The age is that of the youngest part, however small: ${answer} years`,
    ];
  },
  slips: [
    {
      family: 'averaged',
      gives: (v) => {
        const [one, two, three] = ages(v);
        return one * half.share + two * tenth.share + three * rest.share;
      },
      say: 'That is a mean. However small the youngest part is, the whole is as old as that part and no older.',
    },
    {
      family: 'otherFigure',
      gives: (v) => Math.max(...ages(v)),
      say: 'That is the oldest part. The youngest gives its age to all.',
    },
    {
      family: 'wrongWhole',
      gives: (v) => ages(v)[0],
      say: 'That is the age of the largest part. Not the largest counts but the youngest.',
    },
  ],
});
