// The carbon dioxide that comes with so much pure alcohol, by school chemistry.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'carbon-dioxide-by-mass',
  title: 'Carbon dioxide with the alcohol',
  topic: 'fermenting',
  level: 2,
  sources: ['derived'],
  of: 'mass',
  to: 0,
  vary: {
    volume: ['volume20', [6000, 7500, 8000, 9000, 12_000, 15_000, 18_000, 20_000], 'wash.volume'],
    strength: ['strength', [7, 7.5, 7.8, 8, 8.2, 8.5, 9], 'wash.strength'],
  },
  answer: (v) => (((v.volume * v.strength) / 100) * 0.789 * 44.01) / 46.07,
  prompt: (show) =>
    `A washback has made ${show.volume} of wash at ${show.strength}. Sugar gives one molecule of carbon dioxide with each of alcohol: 44.01 kg with 46.07 kg. If a litre of pure alcohol weighs 0.789 kg, how much carbon dioxide came off?`,
  slips: [
    {
      family: 'otherFigure',
      gives: (v) => ((v.volume * v.strength) / 100) * 0.789,
      say: 'That is the mass of the alcohol. The gas with it is 44.01 kg for every 46.07.',
    },
    {
      family: 'massForVolume',
      gives: (v) => (((v.volume * v.strength) / 100) * 44.01) / 46.07,
      say: 'A litre of alcohol was taken as a kilogram. It weighs only 0.789 kg.',
    },
    {
      family: 'upsideDown',
      gives: (v) => (((v.volume * v.strength) / 100) * 0.789 * 46.07) / 44.01,
      say: 'The molecules are the wrong way round: the gas is the lighter of the two.',
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
      `Pure alcohol = volume × strength ÷ 100: ${w(v.volume)} × ${n(v.strength, 1)} ÷ 100 = ${w(alcohol)} L`,
      `It weighs ${w(alcohol)} × 0.789 = ${w(alcohol * 0.789)} kg`,
      `Carbon dioxide: ${w(alcohol * 0.789)} × 44.01 ÷ 46.07 = ${n(answer, 0)} kg`,
    ];
  },
});
