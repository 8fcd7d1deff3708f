// Figures said aloud, each with the figure of a house and what a listener who knows it would call it: right, near or wrong. Made by hand.
import type { KindName } from '../../src/core/kinds.ts';
import type { SaidVerdict } from '../../src/walk/guide-file-judge.ts';

export const sayings: readonly (readonly [KindName, number, string, SaidVerdict | 'unread'])[] = [
  // Two figures are enough, however far that rounds; three parts in a hundred as well.
  ['volume20', 5450, 'just under five and a half thousand litres', 'right'],
  ['volume20', 5450, 'five and a half thousand', 'right'],
  ['volume20', 5450, '5,400 L', 'right'],
  ['volume20', 5450, '5.6 thousand litres', 'right'], // 2.75 % off
  ['volume20', 5450, 'about six thousand', 'wrong'], // 10.1 % off
  ['volume20', 5450, 'five thousand', 'near'], // 8.3 % off
  ['volume20', 5450, '54.5 hL', 'right'],
  ['volume20', 5450, 'fifty-four thousand', 'wrong'],
  ['volume20', 1050, 'eleven hundred litres', 'right'], // to two figures 1,000 or 1,100, 4.8 % off
  ['volume20', 846, 'eight hundred and fifty', 'right'],
  ['volume20', 846, '900', 'near'],
  ['volume20', 846, '950', 'wrong'],
  ['volume20', 846, '846 kilos', 'unread'],
  // “just under” and “just over” are a side.
  ['volume20', 5600, 'just under five and a half thousand', 'near'],
  ['volume20', 5600, 'just over five and a half thousand', 'right'],
  ['volume20', 5450, 'over five and a half thousand', 'near'],
  ['volume20', 7500, 'just under seven and a half thousand', 'right'], // on the figure itself
  // A mash is said in tonnes, with the word or without.
  ['mass', 1500, 'one and a half tonnes', 'right'],
  ['mass', 1500, 'one and a half', 'right'],
  ['mass', 1500, 'fifteen hundred kilos', 'right'],
  ['mass', 1500, '1,400', 'near'],
  ['mass', 9000, 'nine tonnes a week', 'right'],
  ['mass', 449, 'about four hundred and fifty kilos', 'right'],
  // Strengths and temperatures by the degree.
  ['strength', 63.5, 'sixty-three and a half', 'right'],
  ['strength', 63.5, '63', 'right'],
  ['strength', 63.5, '64 %', 'right'],
  ['strength', 63.5, '62', 'near'],
  ['strength', 63.5, '61', 'wrong'], // 3.9 % off, and another spirit
  ['strength', 8.0, 'about eight per cent', 'right'],
  ['strength', 8.0, 'eight and a half', 'right'], // half a degree off
  ['strength', 8.28, 'eight per cent', 'right'], // 0.28 off, though that is 3.4 %
  ['strength', 8.0, 'nine per cent', 'near'],
  ['strength', 8.0, 'ten and a half', 'wrong'], // 2.5 off
  ['temperature', 68.4, 'sixty-eight degrees', 'right'],
  ['temperature', 68.4, 'seventy', 'near'],
  ['temperature', 68.4, '75', 'wrong'],
  // Gravities by the degree.
  ['gravity', 1.058, 'ten fifty-eight', 'right'],
  ['gravity', 1.058, '1.058', 'right'],
  ['gravity', 1.058, '1060', 'near'],
  ['gravity', 1.058, '1.064', 'wrong'], // 0.6 % off
  ['gravity', 0.998, 'nine nine eight', 'right'],
  // Things, hours, years, per cent.
  ['count', 25, 'about twenty-five casks a week', 'right'],
  ['count', 25, 'we fill about twenty-five casks every week', 'right'],
  ['count', 25, '27', 'near'],
  ['count', 25, '30', 'wrong'],
  ['count', 25, 'between 24 and 26', 'right'],
  ['count', 25, '26 to 28', 'near'],
  ['count', 25, 'ten to forty', 'near'],
  ['count', 400_911, 'four hundred thousand', 'right'],
  ['hours', 60, 'two and a half days', 'right'],
  ['hours', 62, 'a bit over two and a half days', 'right'], // 60 h: 3.2 % below, and said so
  ['hours', 62, 'two and a half days', 'near'], // the same, and not said so
  ['hours', 62, 'a bit over two days', 'wrong'], // 48 h
  ['years', 10, 'ten years', 'right'],
  ['years', 10, 'twelve', 'wrong'],
  ['percent', 2, 'two per cent', 'right'],
  ['yield', 408.6, 'some 410 litres a tonne', 'right'],
  ['alcohol', 592.5, 'nearly six hundred litres of pure alcohol', 'right'],
  // What is no number of it.
  ['volume20', 846, '', 'unread'],
  ['volume20', 846, 'plenty', 'unread'],
  ['volume20', 846, '<b>846</b> and 900', 'unread'],
  ['strength', 63.5, '3 litres', 'unread'],
];
