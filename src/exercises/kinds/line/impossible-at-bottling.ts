// More in the bottles than in the vat, and spirit made stronger with water.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { alcoholSaid, said } from './quoted.ts';

export default impossible({
  id: 'impossible-at-bottling',
  title: 'Figures of a bottling',
  topic: 'maturing',
  level: 2,
  sources: ['derived'],
  scenes: [
    'The bottling sheet is checked before it is signed.',
    'Figures of a bottling are read out in the office.',
    'A trainee has reckoned up a bottling.',
  ],
  claims: (line, chance, mashes) => {
    const { house, casks, filling, matured, bottling } = line;
    const strength = (percent: number) => said(percent, 'strength', 3);
    const bottled = strength(bottling.strength);
    const volume = (litres: number) => said(litres * mashes, 'volume20');
    const count = (bottles: number) => n(Math.floor(bottles * mashes), 0);
    const size = said(house.bottleSize, 'bottle');
    const more = chance.pick([1.03, 1.05, 1.08]);
    const weaker = bottling.strength - chance.pick([1.5, 2.1, 2.8]);
    const inBottle = (house.bottleSize * bottling.strength) / 100;
    const filledPerCask = filling.alcohol / casks.perMash;
    const tooMany = ((100 * filledPerCask) / inBottle) * more;
    return [
      {
        alike: {
          can: optionOf(
            `A vat of ${volume(bottling.volume)} at ${bottled} filled ${count(bottling.bottles * 0.995)} full bottles of ${size}.`,
            `It can be: a little stays in filters and pipes.`,
          ),
          cannot: optionOf(
            `A vat of ${volume(bottling.volume)} at ${bottled} filled ${count(bottling.bottles * more)} full bottles of ${size}.`,
            `The vat is enough for ${count(bottling.bottles)} bottles; these would hold more than was in it.`,
          ),
        },
        can: optionOf(
          `A vat of ${volume(bottling.volume)} at ${bottled} filled ${count(bottling.bottles * 0.995)} bottles of ${size}.`,
          'It can be: a little stays in filters and pipes.',
        ),
        cannot: [
          optionOf(
            `A vat of ${volume(bottling.volume)} at ${bottled} filled ${count(bottling.bottles * more)} full bottles of ${size}.`,
            `The vat is enough for ${count(bottling.bottles)} bottles; these would hold more than was in it.`,
          ),
        ],
      },
      {
        can: optionOf(
          `From casks with ${alcoholSaid(matured.alcohol * mashes)} came ${volume(bottling.volume)} at ${bottled}.`,
          'It can be: water changes litres and strength, and the pure alcohol stays.',
        ),
        cannot: [
          optionOf(
            `From casks with ${alcoholSaid(matured.alcohol * mashes)} came ${volume(bottling.volume * more)} at ${bottled}.`,
            `That would be ${alcoholSaid(bottling.alcohol * more * mashes)}. Water adds litres, and no alcohol.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Spirit at ${strength(bottling.strength + 10)} was let down with water to ${bottled}.`,
            `It can be: water brings the strength down.`,
          ),
          cannot: optionOf(
            `Spirit at ${strength(weaker)} was let down with water to ${bottled}.`,
            `Water can only make spirit weaker.`,
          ),
        },
        can: optionOf(
          `Spirit at ${strength(bottling.strength + 10)} was let down with water to ${bottled}.`,
          'It can be: water brings the strength down.',
        ),
        cannot: [
          optionOf(
            `Spirit at ${strength(weaker)} was brought to ${bottled} with water.`,
            'Water can only make spirit weaker.',
          ),
        ],
      },
      {
        can: optionOf(
          `A bottle of ${size} at ${bottled} holds ${n(inBottle, 1)} cL of pure alcohol.`,
          `It can be: ${n(house.bottleSize, 0)} × ${n(bottling.strength, 1)} ÷ 100.`,
        ),
        cannot: [
          optionOf(
            `A bottle of ${size} at ${bottled} holds ${n(inBottle * 1.3, 1)} cL of pure alcohol.`,
            `It holds ${n(house.bottleSize, 0)} × ${n(bottling.strength, 1)} ÷ 100 = ${n(inBottle, 1)} cL.`,
          ),
        ],
      },
      {
        can: optionOf(
          `Casks filled with ${alcoholSaid(filledPerCask)} each gave ${n(Math.floor(bottling.bottlesPerCask), 0)} bottles of ${size} at ${bottled} each.`,
          'It can be: the rest of the alcohol left through the wood.',
        ),
        cannot: [
          optionOf(
            `Casks filled with ${alcoholSaid(filledPerCask)} each gave ${n(Math.ceil(tooMany), 0)} bottles of ${size} at ${bottled} each.`,
            `Those bottles would hold ${said((tooMany * inBottle) / 100, 'volume20')} of pure alcohol, more than was ever filled.`,
          ),
        ],
      },
    ];
  },
});
