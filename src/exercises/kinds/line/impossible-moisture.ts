// Moisture on the whole and on the dry basis, and weights that no water can explain.
import { formatNumber as n } from '../../../core/format.ts';
import { impossible, optionOf } from './impossible.ts';
import { said } from './quoted.ts';

export default impossible({
  id: 'impossible-moisture',
  title: 'Figures of moisture',
  topic: 'malting',
  level: 2,
  sources: ['derived', 'oxford-beer'],
  scenes: [
    'Moistures and weights from a week in the maltings are read out.',
    'A trainee has worked through the moisture book and shows some lines of it.',
    'Some lines on moisture stand on the board by the kiln.',
  ],
  claims: ({ house, malt }, chance) => {
    const steeped = chance.pick([43, 44, 45, 46, 47]);
    const { barleyMoisture: barley, maltMoisture: kilned } = house;
    const tonne = (1000 * (100 - barley)) / (100 - steeped);
    const points = 1000 * (1 + (steeped - barley) / 100);
    const driedOff = 100 - (100 * (100 - steeped)) / (100 - kilned);
    const moreOff = steeped + chance.pick([2, 3, 5]);
    const drier = (steeped / (100 + steeped)) * 100;
    const soaked = chance.pick([52, 53, 54, 55]);
    const over = chance.pick([102, 104, 107]);
    const damp = kilned + chance.pick([0.8, 1, 1.5]);
    const heavier = (malt.mass * (100 - kilned)) / (100 - damp);
    const onDry = (wet: number) => n(wet / (100 - wet), 2);
    return [
      {
        can: optionOf(
          `Steeped grain with ${steeped} % of its whole mass as water has ${onDry(steeped)} kg of water to a kilogram of dry matter.`,
          `It can be: ${steeped} kg of water lie with ${100 - steeped} kg of dry matter.`,
        ),
        cannot: [
          optionOf(
            `Steeped grain with ${steeped} % of its whole mass as water has ${n(drier / 100, 2)} kg of water to a kilogram of dry matter.`,
            `${steeped} kg of water lie with ${100 - steeped} kg of dry matter, which is ${onDry(steeped)} to one. Counted on dry matter, moisture is always the larger number.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `A tonne of barley at ${said(barley, 'percent')} weighs ${said(tonne, 'mass')} at ${steeped} %, with no dry matter lost.`,
            `It can be: both hold ${n(10 * (100 - barley), 0)} kg of dry matter.`,
          ),
          cannot: optionOf(
            `A tonne of barley at ${said(barley, 'percent')} weighs ${said(points, 'mass')} at ${steeped} %, with no dry matter lost.`,
            `It holds ${n(10 * (100 - barley), 0)} kg of dry matter, which must be ${100 - steeped} % of the new mass. Points of moisture cannot be taken as parts of the old mass.`,
          ),
        },
        can: optionOf(
          `A tonne of barley at ${said(barley, 'percent')} weighs ${said(tonne, 'mass')} at ${steeped} %, if no dry matter is lost.`,
          `It can be: both hold ${n(10 * (100 - barley), 0)} kg of dry matter.`,
        ),
        cannot: [
          optionOf(
            `A tonne of barley at ${said(barley, 'percent')} weighs ${said(points, 'mass')} at ${steeped} %, with no dry matter lost.`,
            `It holds ${n(10 * (100 - barley), 0)} kg of dry matter, which must be ${100 - steeped} % of the new mass. Points of moisture cannot be taken as parts of the old mass.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `From 100 kg of green malt at ${steeped} % the kiln drives off ${n(driedOff, 1)} kg of water.`,
            `It can be: ${n(100 - driedOff, 1)} kg stay, and some of that is water still.`,
          ),
          cannot: optionOf(
            `From 100 kg of green malt at ${steeped} % the kiln drives off ${n(moreOff, 1)} kg of water.`,
            `There are only ${steeped} kg of water in it.`,
          ),
        },
        can: optionOf(
          `From 100 kg of green malt at ${steeped} % the kiln drives off ${n(driedOff, 1)} kg of water and leaves malt at ${said(kilned, 'percent')}.`,
          `It can be: ${n(100 - driedOff, 1)} kg stay, and ${said(kilned, 'percent')} of that is water.`,
        ),
        cannot: [
          optionOf(
            `From 100 kg of green malt at ${steeped} % the kiln drives off ${moreOff} kg of water.`,
            `There are only ${steeped} kg of water in it.`,
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Grain that was left too long in the steep has ${soaked} % of its whole mass as water.`,
            `It can be: ${soaked} kg of water lie with ${100 - soaked} kg of dry matter.`,
          ),
          cannot: optionOf(
            `Grain that was left too long in the steep has ${over} % of its whole mass as water.`,
            `Water that is a part of the whole mass cannot pass 100 % of it. On the dry basis it may.`,
          ),
        },
        can: optionOf(
          `Grain at ${soaked} % on the whole mass has more than 100 % on the dry basis.`,
          `It can be: ${soaked} kg of water to ${100 - soaked} kg of dry matter is ${n((100 * soaked) / (100 - soaked), 0)} %.`,
        ),
        cannot: [
          optionOf(
            `Grain that was left too long in the steep has ${over} % of its whole mass as water.`,
            'Water that is a part of the whole mass cannot pass 100 % of it. On the dry basis it may.',
          ),
        ],
      },
      {
        alike: {
          can: optionOf(
            `Malt went from ${said(kilned, 'percent')} to ${n(damp, 1)} % moisture in the store, nothing was taken out, and ${said(malt.mass, 'mass')} became ${said(heavier, 'mass')}.`,
            `It can be: the dry matter is the same, and the water taken from the air has its weight.`,
          ),
          cannot: optionOf(
            `Malt went from ${said(kilned, 'percent')} to ${n(damp, 1)} % moisture in the store, nothing was taken out, and ${said(malt.mass, 'mass')} became ${said(malt.mass * 0.99, 'mass')}.`,
            `The same dry matter with more water weighs more, not less.`,
          ),
        },
        can: optionOf(
          `Malt went from ${said(kilned, 'percent')} to ${n(damp, 1)} % moisture in the store: ${said(malt.mass, 'mass')} became ${said(heavier, 'mass')}.`,
          'It can be: the dry matter is the same, and the water taken from the air has its weight.',
        ),
        cannot: [
          optionOf(
            `Malt went from ${said(kilned, 'percent')} to ${n(damp, 1)} % moisture in the store, nothing was taken out, and ${said(malt.mass, 'mass')} became ${said(malt.mass * 0.99, 'mass')}.`,
            'The same dry matter with more water weighs more, not less.',
          ),
        ],
      },
    ];
  },
});
