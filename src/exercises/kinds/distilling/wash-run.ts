// How long a wash charge takes when the heat put to the still is known.
import washRun from '../../../calculators/distilling/wash-run.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(washRun, {
  title: 'Hours of a wash charge',
  level: 2,
  ask: 'hours',
  vary: {
    washVolume: [6000, 6500, 7000, 7500, 8000, 9000],
    washStrength: [7.5, 8, 8.5],
    washEnd: [1],
    airPressure: [101.3],
    filledAt: [25, 30, 40, 50],
    efficiency: [80, 85, 90],
    power: [320, 350, 380, 400, 420, 450, 500],
  },
  quotes: {
    heatUp: [0, (_, { heatUp }) => heatUp],
    boilOff: [0, (_, { boilOff }) => boilOff],
  },
  redo: ({ efficiency, power }, { heatUp, boilOff }) => {
    const hours = (heat: number) => (100_000 * heat) / efficiency / power / 3600;
    return {
      energy: (100 * (heatUp + boilOff)) / efficiency,
      hours: hours(heatUp + boilOff),
      boilHours: hours(boilOff),
    };
  },
  prompt: (show, _, { heatUp, boilOff }) =>
    `A charge of ${show.washVolume} of wash wants ${n(heatUp, 0)} MJ to warm it and ${n(boilOff, 0)} MJ to boil off its low wines. The still is given ${show.power}, of which ${show.efficiency} reaches the liquid; a kilowatt is a kilojoule in a second. How many hours does the run take?`,
  slips: [
    {
      family: 'forgotten',
      gives: (_, { boilHours }) => boilHours,
      say: 'The charge must be warmed before it boils. Add both heats.',
    },
    {
      family: 'upsideDown',
      gives: ({ efficiency }, { hours }) => (hours * efficiency * efficiency) / 10_000,
      say: 'The part that reaches the liquid was used the wrong way round. What is lost must be put in as well, so it takes longer.',
    },
    {
      family: 'forgotten',
      gives: ({ efficiency }, { hours }) => (hours * efficiency) / 100,
      say: 'That counts all heat as reaching the liquid. A part of it is lost on the way.',
    },
    {
      family: 'thousand',
      gives: (_, { hours }) => hours * 60,
      say: 'That is in minutes: an hour has 3,600 seconds.',
    },
  ],
  working: ({ efficiency, power }, { heatUp, boilOff, energy, hours }) => [
    `Heat to be put to the still: (${n(heatUp, 0)} + ${n(boilOff, 0)}) × 100 ÷ ${n(efficiency, 0)} = ${n(energy, 0)} MJ`,
    'Hours = MJ × 1,000 ÷ kW ÷ 3,600',
    `${n(energy, 0)} × 1,000 ÷ ${n(power, 0)} ÷ 3,600 = ${n(hours, 1)} h`,
  ],
});
