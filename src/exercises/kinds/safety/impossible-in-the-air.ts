// Gas in the air: parts that make more than the whole, and levels that no fan reaches.
import { gasVolume } from '../../../core/fermenting/gas.ts';
import { celsius } from '../../../core/quantity.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from '../line/impossible.ts';
import { said } from '../line/quoted.ts';

const OXYGEN = 20.9; // % in ordinary air; school physics

export default impossible({
  id: 'impossible-in-the-air',
  title: 'Figures of gas in the air',
  topic: 'safety',
  level: 2,
  sources: ['common-practice', 'niosh-ethanol', 'derived'],
  scenes: [
    'Notes from a safety talk are checked before they are hung up.',
    'Readings and sums about the air of the tun room are read out.',
    'A new notice about gas and vapour lies on the table.',
  ],
  claims: ({ wash }, chance) => {
    const share = chance.pick([4, 5, 6, 8]);
    const much = chance.pick([15, 20, 25, 30]);
    const ppm = chance.pick([5000, 15_000, 30_000, 40_000]);
    const overMillion = chance.pick([1_050_000, 1_200_000, 1_500_000]);
    const gas = gasVolume(wash.carbonDioxide, celsius(20));
    const fans = chance.pick([2, 3, 4]);
    const below = chance.pick([150, 200, 250, 300]);
    const vapour = chance.pick([1.5, 2, 2.5]);
    const oxygen = (carbonDioxide: number) => (OXYGEN * (100 - carbonDioxide)) / 100;
    return [
      {
        can: optionOf(
          `Ordinary air, mixed with carbon dioxide until that is ${share} % of the whole, still holds ${n(oxygen(share), 1)} % oxygen.`,
          'It can be, and that is the danger: an oxygen alarm may stay silent in air that is already harmful.',
        ),
        cannot: [
          optionOf(
            `Ordinary air, mixed with carbon dioxide until that is ${much} % of the whole, still holds ${n(oxygen(much / 10), 1)} % oxygen.`,
            `Only ${100 - much} % of it is still air, of which 20.9 % is oxygen: ${n(oxygen(much), 1)} %.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `At the bottom of a washback a meter shows ${n(20 * ppm, 0)} ppm of carbon dioxide.`,
            `It can be: that is ${n((20 * ppm) / 10_000, 0)} %, and deadly.`,
          ),
          cannot: optionOf(
            `At the bottom of a washback a meter shows ${n(overMillion, 0)} ppm of carbon dioxide.`,
            `Ppm are parts in a million of the air. The pure gas itself has 1,000,000, and nothing has more.`,
          ),
        },
        can: optionOf(
          `A meter shows ${n(ppm, 0)} ppm of carbon dioxide, which is ${n(ppm / 10_000, 1)} %.`,
          'It can be: 10,000 parts in a million are one in a hundred.',
        ),
        cannot: [
          optionOf(
            `At the bottom of a washback a meter shows ${n(overMillion, 0)} ppm of carbon dioxide.`,
            'Ppm are parts in a million of the air. The pure gas itself has 1,000,000, and nothing has more.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `A washback gives off ${said(wash.carbonDioxide, 'mass', 3)} of carbon dioxide, which fill ${said(gas, 'space', 3)} when pure, at 20 °C and ordinary pressure.`,
            `It can be: a cubic metre of the gas weighs about 1.8 kg, and one of air about 1.2.`,
          ),
          cannot: optionOf(
            `A washback gives off ${said(wash.carbonDioxide, 'mass', 3)} of carbon dioxide, which fill ${said(gas * (0.7 + vapour), 'space', 3)} when pure, at 20 °C and ordinary pressure.`,
            `A cubic metre would then weigh less than one of air, about 1.2 kg, and the gas would rise. It weighs about 1.8 kg and lies low.`,
          ),
        },
        can: optionOf(
          `A washback gives off ${said(wash.carbonDioxide, 'mass', 3)} of carbon dioxide: ${said(gas, 'space', 3)} at 20 °C, heavier than as much air.`,
          'It can be: a cubic metre of the gas weighs about 1.8 kg, and one of air about 1.2.',
        ),
        cannot: [
          optionOf(
            `A washback gives off ${said(wash.carbonDioxide, 'mass', 3)} of carbon dioxide, which fill ${said(gas * chance.pick([2.2, 2.5, 3]), 'space', 3)} when pure, at 20 °C and ordinary pressure.`,
            'A cubic metre would then weigh less than one of air, about 1.2 kg, and the gas would rise. It weighs about 1.8 kg and lies low.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Fresh air with 420 ppm, blown in by ${fans} fans, brought a room down to ${420 + below} ppm of carbon dioxide.`,
            `It can be: mixing comes near the 420 of the air blown in, and not below.`,
          ),
          cannot: optionOf(
            `Fresh air with 420 ppm, blown in by ${fans} fans, brought a room down to ${below} ppm of carbon dioxide.`,
            `Mixing with air at 420 ppm never leads below 420. The meter has to be checked.`,
          ),
        },
        can: optionOf(
          `Fresh air with 420 ppm, blown in by ${fans} fans, brings a room down towards 420 ppm.`,
          'It can be: the air blown in is the lowest that mixing can reach.',
        ),
        cannot: [
          optionOf(
            `Fresh air with 420 ppm, blown in by ${fans} fans, brought a room down to ${below} ppm of carbon dioxide.`,
            'Mixing with air at 420 ppm never leads below 420. The meter has to be checked.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Where alcohol vapour burns from 3.3 % of the air, a level of ${n(0.33, 2)} % is a tenth of that limit.`,
            `It can be: 3.3 ÷ 10 are 0.33.`,
          ),
          cannot: optionOf(
            `Where alcohol vapour burns from 3.3 % of the air, a level of ${n(vapour, 2)} % is a tenth of that limit.`,
            `${vapour} ÷ 3.3 is ${n((100 * vapour) / 3.3, 0)} % of the limit. A tenth would be 0.33 %.`,
          ),
        },
        can: optionOf(
          'Where alcohol vapour burns from 3.3 % of the air, 3,300 ppm are a tenth of that limit.',
          'It can be: 3.3 % are 33,000 ppm.',
        ),
        cannot: [
          optionOf(
            `Where alcohol vapour burns from 3.3 % of the air, a level of ${vapour} % is a tenth of that limit.`,
            `${vapour} ÷ 3.3 is ${n((100 * vapour) / 3.3, 0)} % of the limit. A tenth would be 0.33 %.`,
          ),
        ],
      },
    ];
  },
});
