// A cask that gains alcohol, or grows stronger while alcohol leaves faster than volume.
import { celsius, strength as percentVol } from '../../../core/quantity.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { alcoholSaid, many, said } from './quoted.ts';

export default impossible({
  id: 'impossible-in-the-cask',
  title: 'Figures of a cask',
  topic: 'maturing',
  level: 2,
  sources: ['conner-2003', 'oiml-r22', 'derived'],
  scenes: [
    'Regauges are read out in the warehouse office.',
    'The store’s ledger is checked, line by line.',
    'A buyer asks about some figures in a list of casks.',
  ],
  claims: ({ house, casks }, chance) => {
    const [filled, now] = [casks.record[0]!, casks.record.at(-1)!];
    const strength = (percent: number) => said(percent, 'strength', 3);
    const volume = (litres: number) => said(litres, 'volume20', 3);
    const stronger = ((100 * filled.alcohol) / now.volume) * chance.pick([1.02, 1.03, 1.05]);
    const [lost, gone] = chance.pick([
      [8, 11],
      [10, 14],
      [12, 17],
      [15, 20],
    ] as const);
    const risen = filled.strength + chance.pick([0.8, 1.2, 1.7]);
    const left = (filled.strength * (100 - gone)) / (100 - lost);
    const [rate, until] = chance.pick([
      [2, 50],
      [2.5, 40],
      [4, 25],
      [5, 20],
    ] as const);
    const kilogram = densityFromStrength(percentVol(now.strength), celsius(20)) / 1000;
    const cask = chance.pick([190, 200, 225, 250, 500]);
    const inIt = (cask * filled.strength) / 100;
    return [
      {
        alike: now.strength < 95 &&
          stronger < 95 && {
            can: optionOf(
              `Filled with ${volume(filled.volume)} at ${strength(filled.strength)}, a cask now holds ${volume(now.volume)} at ${strength(now.strength)}, with nothing added.`,
              `It can be: ${alcoholSaid(filled.alcohol)} were filled and ${volume(now.alcohol)} are left.`,
            ),
            cannot: optionOf(
              `Filled with ${volume(filled.volume)} at ${strength(filled.strength)}, a cask now holds ${volume(now.volume)} at ${strength(stronger)}, with nothing added.`,
              `It was filled with ${alcoholSaid(filled.alcohol)} and would now hold ${volume((now.volume * stronger) / 100)}. Wood lets alcohol out, and none comes in.`,
            ),
          },
        can:
          now.strength < 95 &&
          optionOf(
            `Filled with ${volume(filled.volume)} at ${strength(filled.strength)}, a cask now holds ${volume(now.volume)} at ${strength(now.strength)}, after ${many(house.yearsInWood, 'year')}.`,
            `It can be: ${alcoholSaid(filled.alcohol)} were filled and ${volume(now.alcohol)} are left.`,
          ),
        cannot:
          stronger < 95
            ? [
                optionOf(
                  `Filled with ${volume(filled.volume)} at ${strength(filled.strength)}, a cask now holds ${volume(now.volume)} at ${strength(stronger)}, with nothing added.`,
                  `It was filled with ${alcoholSaid(filled.alcohol)} and would now hold ${volume((now.volume * stronger) / 100)}. Wood lets alcohol out, and none comes in.`,
                ),
              ]
            : [],
      },
      {
        alike: {
          can: optionOf(
            `Since filling, a cask lost ${lost} % of its volume and ${gone} % of its alcohol, and its strength went from ${strength(filled.strength)} to ${n(left, 1)} % vol.`,
            `It can be: when alcohol goes faster than volume, the strength falls, as it does in damp air.`,
          ),
          cannot: optionOf(
            `Since filling, a cask lost ${lost} % of its volume and ${gone} % of its alcohol, and its strength went from ${strength(filled.strength)} to ${n(risen, 1)} % vol.`,
            `More of the alcohol went than of the volume, so the strength must have fallen: ${n(filled.strength, 1)} × ${100 - gone} ÷ ${100 - lost} = ${n(left, 1)}.`,
          ),
        },
        can: optionOf(
          `Since filling, a cask lost ${lost} % of its volume and ${gone} % of its alcohol, and its strength fell from ${strength(filled.strength)} to ${n(left, 1)} % vol.`,
          'It can be: when alcohol goes faster than volume, the strength falls, as it does in damp air.',
        ),
        cannot: [
          optionOf(
            `Since filling, a cask in a damp store lost ${lost} % of its volume and ${gone} % of its alcohol, and its strength rose from ${strength(filled.strength)} to ${n(risen, 1)} % vol.`,
            `More of the alcohol went than of the volume, so the strength must have fallen: ${n(filled.strength, 1)} × ${100 - gone} ÷ ${100 - lost} = ${n(left, 1)}.`,
          ),
          optionOf(
            `Since filling, a cask in a dry store lost ${gone} % of its volume and ${lost} % of its alcohol, and its strength fell from ${strength(filled.strength)} to ${n(left, 1)} % vol.`,
            'More of the volume went than of the alcohol, so the strength must have risen.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Each year ${rate} % of the alcohol still in the cask leaves; after ${until} years ${n(100 * (1 - rate / 100) ** until, 0)} % is left.`,
            `It can be: each year takes its part of a smaller rest.`,
          ),
          cannot: optionOf(
            `Each year ${rate} % of the alcohol still in the cask leaves; after ${until} years ${n(100 - rate * until, 0)} % is left.`,
            `Each year takes its part of a smaller rest; after ${until} years ${n(100 * (1 - rate / 100) ** until, 0)} % would be left.`,
          ),
        },
        can: optionOf(
          `Each year ${rate} % of the alcohol still in the cask leaves; after ${until} years ${n(100 * (1 - rate / 100) ** until, 0)} % is left.`,
          'It can be: each year takes its part of a smaller rest.',
        ),
        cannot: [
          optionOf(
            `Each year ${rate} % of the alcohol still in the cask leaves, so after ${until} years it was empty.`,
            `Each year takes its part of a smaller rest; after ${until} years ${n(100 * (1 - rate / 100) ** until, 0)} % would be left.`,
          ),
        ],
      },
      {
        can: optionOf(
          `A cask that holds ${cask} L to the brim, filled at ${strength(filled.strength)}, has ${alcoholSaid(inIt)} in it.`,
          'It can be: that is its volume times its strength.',
        ),
        cannot: [
          optionOf(
            `A cask that holds ${cask} L to the brim, filled at ${strength(filled.strength)}, has ${alcoholSaid(inIt * chance.pick([1.05, 1.08, 1.12]))} in it.`,
            `Even brimful it can hold only ${cask} × ${n(filled.strength, 1)} ÷ 100 = ${n(inIt, 1)} L.`,
          ),
        ],
      },
      {
        can:
          now.strength < 95 &&
          optionOf(
            `In a cask lie ${volume(now.volume)} of spirit at ${strength(now.strength)}, and they weigh ${said(now.volume * kilogram, 'mass', 3)} at 20 °C.`,
            'It can be: a litre of spirit weighs less than one of water and more than one of pure alcohol.',
          ),
        cannot: [
          optionOf(
            `In a cask lie ${volume(now.volume)} of spirit at ${strength(now.strength)}, and they weigh ${said(now.volume * 1.03, 'mass', 3)} at 20 °C.`,
            'As much water would weigh less than that, and spirit is lighter than water. The wood may have been weighed too.',
          ),
          optionOf(
            `In a cask lie ${volume(now.volume)} of spirit at ${strength(now.strength)}, and they weigh ${said(now.volume * 0.75, 'mass', 3)} at 20 °C.`,
            'Even pure alcohol weighs 0.789 kg a litre, and this is weaker.',
          ),
        ],
      },
    ];
  },
});
