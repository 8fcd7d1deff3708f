// The heat of both stills for a litre of pure alcohol in the heart.
import spiritRunEnergy from '../../../calculators/distilling/spirit-run-energy.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';
import { ofTwoDistillations } from '../../of-two-distillations.ts';

export default ofTwoDistillations(
  exercise(spiritRunEnergy, {
    title: 'Heat of both stills to a litre',
    level: 2,
    ask: 'perAlcohol',
    vary: {
      volume: [4000, 4200, 4400, 4600],
      strength: [24, 25, 26],
      heart: [540, 550, 560, 575, 580, 590, 600, 610],
      feintsEnd: [1],
      spiritReflux: [0.1],
      washVolume: [7200, 7400, 7600, 7800],
      washStrength: [8],
      airPressure: [101.3],
      washEnd: [1],
    },
    within: 0.006,
    quotes: {
      washEnergy: [0, (_, { washEnergy }) => washEnergy],
      energy: [0, (_, { energy }) => energy],
    },
    redo: ({ heart }, { washEnergy, energy }) => ({ perAlcohol: (washEnergy + energy) / heart }),
    prompt: (show, given, { washEnergy, energy }) =>
      `One wash charge took ${n(washEnergy, 0)} MJ, and the spirit charge made from it ${n(energy, 0)} MJ. That charge was ${show.volume} at ${show.strength}, and its heart holds ${n(given.heart, 0)} L of pure alcohol. How much heat is that for each litre of pure alcohol in the heart?`,
    slips: [
      {
        family: 'forgotten',
        gives: ({ heart }, { energy }) => energy / heart,
        say: 'Only the spirit still was counted. The wash still had to boil first.',
      },
      {
        family: 'wrongWhole',
        gives: ({ volume, strength }, { energy, washEnergy }) =>
          (100 * (energy + washEnergy)) / (volume * strength),
        say: 'That is for a litre of alcohol in the charge. Foreshots and feints come back to be boiled again; only the heart leaves to be sold.',
      },
      {
        family: 'otherFigure',
        gives: (_, { perAlcohol }) => perAlcohol / 3.6,
        say: 'That is in kilowatt-hours. A kilowatt-hour is 3.6 MJ.',
      },
      {
        family: 'upsideDown',
        gives: (_, { perAlcohol }) => 1 / perAlcohol,
        say: 'The division is upside down: the question asks for the heat for a litre.',
      },
    ],
    working: ({ heart }, { washEnergy, energy, perAlcohol }) => [
      'For a litre = (heat of the wash still + heat of the spirit still) ÷ pure alcohol in the heart',
      `(${n(washEnergy, 0)} + ${n(energy, 0)}) ÷ ${n(heart, 0)} = ${n(perAlcohol, 1)} MJ`,
      `That is ${n(perAlcohol, 1)} ÷ 3.6 = ${n(perAlcohol / 3.6, 1)} kWh`,
    ],
  }),
);
