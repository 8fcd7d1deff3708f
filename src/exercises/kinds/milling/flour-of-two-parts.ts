// The flour of a grist that was milled in two settings.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'flour-of-two-parts',
  title: 'Flour of a mash milled in two settings',
  topic: 'milling',
  level: 2,
  sources: ['derived'],
  of: 'percent',
  to: 1,
  vary: {
    first: ['mass', [300, 350, 400, 450, 500]],
    firstFlour: ['percent', [13, 14, 15, 16, 17]],
    second: ['mass', [1000, 1100, 1200, 1300, 1500]],
    secondFlour: ['percent', [8, 9, 10, 11]],
  },
  answer: ({ first, firstFlour, second, secondFlour }) =>
    (first * firstFlour + second * secondFlour) / (first + second),
  prompt: (show) =>
    `The first ${show.first} of a mash were milled with ${show.firstFlour} flour. Then the gap was moved, and the other ${show.second} have ${show.secondFlour}. How much flour has the whole grist, in per cent?`,
  working: ({ first, firstFlour, second, secondFlour }, answer) => [
    `Flour: ${n(first, 0)} × ${firstFlour} ÷ 100 + ${n(second, 0)} × ${secondFlour} ÷ 100 = ${n((first * firstFlour + second * secondFlour) / 100, 1)} kg`,
    `In ${n(first + second, 0)} kg of grist that is ${n(answer, 1)} %`,
  ],
  slips: [
    {
      family: 'averaged',
      gives: ({ firstFlour, secondFlour }) => (firstFlour + secondFlour) / 2,
      say: 'The two percentages were averaged as if both parts weighed the same; weigh each by its kilograms.',
    },
    {
      family: 'order',
      gives: ({ first, firstFlour, second, secondFlour }) =>
        (first * secondFlour + second * firstFlour) / (first + second),
      say: 'Each percentage was put to the other part’s weight.',
    },
  ],
});
