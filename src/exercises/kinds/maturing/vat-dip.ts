// Litres of pure alcohol in a vat, from its dip.
import vatDip from '../../../calculators/maturing/vat-dip.ts';
import { formatNumber as n } from '../../../core/format.ts';
import { celsius, litresOfAlcohol } from '../../../core/quantity.ts';
import { densityFromStrength } from '../../../core/spirit/strength.ts';
import { exercise } from '../../exercise.ts';

const density = (strength: number, temperature: number) =>
  densityFromStrength(strength as never, celsius(temperature));

const kind = exercise(vatDip, {
  level: 3,
  ask: 'alcohol',
  within: 0.002,
  vary: {
    dip: [850, 940, 1120, 1260, 1430, 1580],
    perMm: [3.2, 4.5, 5, 6.4],
    heel: [20, 35, 50],
    temperature: [4, 6, 8, 28, 30, 32],
    strength: [58, 60, 61, 63.5],
  },
  quotes: {
    there: [2, ({ strength, temperature }) => density(strength, temperature)],
    here: [2, ({ strength }) => density(strength, 20)],
  },
  redo: ({ dip, perMm, heel, strength }, { there, here }) => ({
    alcohol: litresOfAlcohol((((dip * perMm + heel) * there) / here) * (strength / 100)),
  }),
  prompt: (show, _, { there, here }) =>
    `The dip of a straight vat is ${show.dip}; its table gives ${show.perMm} to a millimetre and ${show.heel} below the datum. The spirit is at ${show.temperature} and of ${show.strength} at 20 °C; it weighs ${n(there, 2)} kg/m³ as it lies and ${n(here, 2)} at 20 °C. How much pure alcohol is in it?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ dip, perMm, heel, strength }) => ((dip * perMm + heel) * strength) / 100,
      say: 'The litres were not brought to 20 °C, where the strength is told.',
    },
    {
      family: 'upsideDown',
      gives: ({ dip, perMm, heel, strength }, { there, here }) =>
        (((dip * perMm + heel) * here) / there) * (strength / 100),
      say: 'Brought to 20 °C the wrong way round: the mass stays, so multiply by the density as it lies and divide by that at 20 °C.',
    },
    {
      family: 'bulkForAlcohol',
      gives: ({ dip, perMm, heel }, { there, here }) => ((dip * perMm + heel) * there) / here,
      say: 'Those are bulk litres at 20 °C: the alcohol is the strength’s part of them.',
    },
  ],
});

export default { ...kind, since: 4 };
