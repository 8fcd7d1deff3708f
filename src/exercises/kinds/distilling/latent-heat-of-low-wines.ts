// The heat that boils off low wines: alcohol and water each with its own.
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { celsius, strength } from '../../../core/quantity.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';
import { LATENT_HEAT } from '../../../core/vapour/latent-heat.ts';
import { sum } from '../../sum.ts';

const { ethanol: ALCOHOL, water: WATER } = LATENT_HEAT;
const density = (percentVol: number) => densityFromStrength(strength(percentVol), celsius(20)) / 1000;

/** Kilograms of alcohol and of water. */
function masses(v: Readonly<Record<'volume' | 'strength' | 'litre', number>>) {
  const ethanol = (v.volume * v.strength * 0.789) / 100;
  return { ethanol, water: v.volume * v.litre - ethanol };
}

export default sum({
  id: 'latent-heat-of-low-wines',
  title: 'Heat to boil off the low wines',
  topic: 'distilling',
  level: 3,
  sources: ['perry-heat', 'oiml-r22'],
  of: 'energy',
  to: 0,
  within: 0.005,
  vary: {
    volume: ['volume20', [2000, 2200, 2400, 2600, 2800, 3000, 3500, 4000], 'lowWines.volume'],
    strength: ['strength', [20, 21, 22, 22.5, 23, 24, 25], 'lowWines.strength'],
  },
  quotes: { litre: [4, (v) => density(v.strength)] },
  answer: (v) => masses(v).ethanol * ALCOHOL + masses(v).water * WATER,
  prompt: (show, _, v) =>
    `A wash run has given ${show.volume} of low wines at ${show.strength}, which weigh ${n(v.litre, 4)} kg to the litre; pure alcohol weighs 0.789. To boil off a kilogram takes ${ALCOHOL} MJ for alcohol and ${WATER} MJ for water. How much heat did it take to boil them off, once the wash was hot and without losses?`,
  slips: [
    {
      family: 'forgotten',
      gives: (v) => masses(v).ethanol * ALCOHOL,
      say: 'That boils off the alcohol only. Most of the low wines is water, and it takes most of the heat.',
    },
    {
      family: 'forgotten',
      gives: (v) => v.volume * v.litre * WATER,
      say: 'All was reckoned as water. A kilogram of alcohol takes far less heat.',
    },
    {
      family: 'massForVolume',
      gives: (v) => {
        const mass = v.volume * v.litre;
        return (mass * (v.strength * ALCOHOL + (100 - v.strength) * WATER)) / 100;
      },
      say: 'The strength by volume was used as a part of the mass. Alcohol is light, so by mass there is less of it and more water.',
    },
  ],
  working: (v, answer) => {
    const { ethanol, water } = masses(v);
    return [
      `They weigh ${w(v.volume)} × ${w(v.litre)} = ${w(ethanol + water)} kg`,
      `Alcohol: ${w(v.volume)} × ${n(v.strength, 1)} ÷ 100 × 0.789 = ${w(ethanol)} kg; the other ${w(water)} kg are water`,
      'Heat = kg of alcohol × its latent heat + kg of water × its own',
      `${w(ethanol)} × ${ALCOHOL} + ${w(water)} × ${WATER} = ${n(answer, 0)} MJ`,
    ];
  },
});
