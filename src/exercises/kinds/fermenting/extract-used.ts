// The extract that went into so much alcohol, by Balling’s split.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'extract-used',
  title: 'Extract that the yeast used',
  topic: 'fermenting',
  level: 2,
  sources: ['balling', 'derived'],
  of: 'mass',
  to: 0,
  vary: {
    volume: ['volume20', [5000, 6000, 7500, 8000, 9000, 12_000, 15_000, 20_000], 'wash.volume'],
    strength: ['strength', [7, 7.5, 7.8, 8, 8.2, 8.5, 9], 'wash.strength'],
  },
  answer: (v) => ((v.volume * v.strength) / 100) * 0.789 * 2.0665,
  prompt: (show) =>
    `A washback ends as ${show.volume} of wash at ${show.strength}. By Balling 2.0665 kg of extract make 1 kg of alcohol, and a litre of pure alcohol weighs 0.789 kg. How much extract has the yeast used?`,
  slips: [
    {
      family: 'massForVolume',
      gives: (v) => ((v.volume * v.strength) / 100) * 2.0665,
      say: 'The litres of alcohol were taken as kilograms. A litre weighs only 0.789 kg.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (((v.volume * v.strength) / 100) * 0.789) / 2.0665,
      say: 'Divided where one multiplies: it takes about two kilograms of extract to make one of alcohol.',
    },
    {
      family: 'otherFigure',
      gives: (v) => ((v.volume * v.strength) / 100) * 0.789,
      say: 'That is the mass of the alcohol. More than as much again became gas and new yeast.',
    },
    {
      family: 'percent',
      gives: (_, answer) => answer * 100,
      say: 'The strength in per cent was not divided by 100.',
    },
  ],
  working: (v, answer) => {
    const alcohol = (v.volume * v.strength) / 100;
    return [
      `Pure alcohol: ${w(v.volume)} × ${n(v.strength, 1)} ÷ 100 = ${w(alcohol)} L, × 0.789 = ${w(alcohol * 0.789)} kg`,
      'Extract used = mass of alcohol × 2.0665',
      `${w(alcohol * 0.789)} × 2.0665 = ${n(answer, 0)} kg`,
    ];
  },
});
