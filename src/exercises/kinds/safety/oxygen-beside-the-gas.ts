// How far an oxygen alarm is from sounding in air with carbon dioxide in it.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

const OXYGEN = 20.9; // % in ordinary air; school physics

export default sum({
  id: 'oxygen-beside-the-gas',
  title: 'Why the oxygen alarm is silent',
  topic: 'safety',
  level: 2,
  sources: ['memory', 'derived'],
  of: 'points',
  to: 2,
  within: 0.03,
  vary: {
    gas: ['percent', [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6]],
    alarm: ['percent', [18, 18.5, 19, 19.5]],
  },
  answer: (v) => {
    const above = (OXYGEN * (100 - v.gas)) / 100 - v.alarm;
    return above > 0.25 ? above : NaN;
  },
  prompt: (show) =>
    `Carbon dioxide has come into ordinary air, which has ${OXYGEN} % oxygen, until it is ${show.gas} of the mixture. An oxygen alarm is set at ${show.alarm}. How many points above its setting is the oxygen still?`,
  slips: [
    {
      family: 'points',
      gives: (v) => OXYGEN - v.gas - v.alarm,
      say: 'The gas pushes out all of the air and not only its oxygen. A fifth of what is pushed out is oxygen.',
    },
    {
      family: 'otherFigure',
      gives: (v) => (OXYGEN * (100 - v.gas)) / 100,
      say: 'That is the oxygen itself. The question asks how far it lies above the alarm.',
    },
    {
      family: 'forgotten',
      gives: (v) => OXYGEN - v.alarm,
      say: 'That is for air without the gas.',
    },
  ],
  working: (v, answer) => [
    `Air left: 100 − ${v.gas} = ${n(100 - v.gas, 1)} %; oxygen: ${OXYGEN} × ${n(100 - v.gas, 1)} ÷ 100 = ${n((OXYGEN * (100 - v.gas)) / 100, 2)} %`,
    `${n((OXYGEN * (100 - v.gas)) / 100, 2)} − ${v.alarm} = ${n(answer, 2)} points: the alarm is silent`,
    'Carbon dioxide harms long before. It has to be measured as carbon dioxide.',
  ],
});
