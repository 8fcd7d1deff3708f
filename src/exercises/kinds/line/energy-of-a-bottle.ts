// The energy of maltings and stills in one bottle.
import { formatNumber as n } from '../../../core/format.ts';
import { sum } from '../../sum.ts';

export default sum({
  id: 'energy-of-a-bottle',
  title: 'The energy of a bottle',
  topic: 'line',
  level: 3,
  sources: ['common-practice', 'derived'],
  of: 'energy',
  to: 2,
  within: 0.01,
  vary: {
    still: ['count', [6, 6.5, 6.66, 7, 8]],
    malting: ['energyPerTonne', [800, 850, 900, 950]],
    spiritYield: ['count', [400, 405, 410, 415]],
    strength: ['strength', [40, 43, 46, 50], 'house.bottlingStrength'],
  },
  answer: (v) => (v.still + v.malting / v.spiritYield) * 0.7 * (v.strength / 100) * 3.6,
  prompt: (show) =>
    `The distillery needs ${show.still} kWh for a litre of pure alcohol, the maltings ${show.malting.replace('/t', '')} for a tonne of malt, which gives ${show.spiritYield} L of pure alcohol. How many megajoules of both are in a bottle of 70 cL at ${show.strength}, with nothing lost on the way? A kWh is 3.6 MJ.`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => v.still * 0.7 * (v.strength / 100) * 3.6,
      say: 'The maltings were left out.',
    },
    {
      family: 'bulkForAlcohol',
      gives: (v) => (v.still + v.malting / v.spiritYield) * 0.7 * 3.6,
      say: 'The bottle was taken as pure alcohol. Only the strength’s part of it is.',
    },
    {
      family: 'otherFigure',
      gives: (_, answer) => answer / 3.6,
      say: 'That is in kWh; each is 3.6 MJ.',
    },
    {
      family: 'forgotten',
      gives: (v) => (v.still + v.malting / v.spiritYield) * 3.6,
      say: 'That is for a litre of pure alcohol and not for a bottle.',
    },
  ],
  working: (v, answer) => {
    const malting = v.malting / v.spiritYield;
    const inBottle = (0.7 * v.strength) / 100;
    return [
      `Maltings, for a litre of pure alcohol: ${v.malting} ÷ ${v.spiritYield} = ${n(malting, 3)} kWh; with the stills ${n(malting + v.still, 3)} kWh`,
      `In a bottle: 0.7 × ${v.strength} ÷ 100 = ${n(inBottle, 3)} L of pure alcohol`,
      `${n(malting + v.still, 3)} × ${n(inBottle, 3)} × 3.6 = ${n(answer, 2)} MJ`,
    ];
  },
});
