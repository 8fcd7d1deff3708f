// A cask measured again on scales.
import { formatNumber as n } from '../../core/format.ts';
import { weighSpirit } from '../../core/maturing/weighing.ts';
import { kilograms, litresOfAlcohol, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { against, expectedSteps, filledInputs, meaning } from './regauge-inputs.ts';

interface Given {
  readonly gross: Quantity<'mass'>;
  readonly tare: Quantity<'mass'>;
  readonly strength: Quantity<'strength'>;
  readonly temperature: Quantity<'temperature'>;
}

const weighed = ({ gross, tare, strength, temperature }: Given) =>
  weighSpirit(kilograms(gross - tare), strength, temperature);

export default defineCalculator({
  id: 'regauge-by-weight',
  stage: 'maturing',
  title: 'Regauge by weight',
  purpose: 'Litres from the scales, against what should be there.',
  sources: ['oiml-r22', 'oiml-d28', 'cfr-27-30', 'conner-2003'],
  cautions: ['lifting'],
  readings: ['gross', 'tare', 'strength'],
  inputs: {
    gross: { kind: 'mass', label: 'Cask and spirit', range: [1, 1000], step: 0.5, value: 205.5 },
    tare: { kind: 'mass', label: 'Empty cask', range: [0, 300], step: 0.5, value: 50 },
    strength: { kind: 'strength', label: 'Strength found', range: [20, 97], step: 0.1, value: 59.3 },
    temperature: {
      kind: 'temperature',
      label: 'Temperature of the spirit',
      range: [-5, 35],
      step: 0.5,
      value: 10,
    },
    ...filledInputs,
  },
  main: ['gross', 'tare', 'strength', 'filled', 'years'],
  outputs: {
    found: { kind: 'volume20', label: 'Found, at 20 °C', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol found' },
    expected: { kind: 'alcohol', label: 'Pure alcohol expected' },
    missing: { kind: 'alcohol', label: 'Expected minus found' },
    part: { kind: 'percent', label: 'As a share of what was expected' },
    expectedStrength: { kind: 'strength', label: 'Strength expected', digits: 1 },
    mass: { kind: 'mass', label: 'Mass of the spirit', digits: 2 },
    lies: { kind: 'volume', label: 'Litres as measured', digits: 1 },
  },
  refuse: ({ gross, tare }) =>
    gross < tare
      ? `The empty cask of ${n(tare, 1)} kg is heavier than the ${n(gross, 1)} kg of cask and spirit.`
      : undefined,
  compute: (given) => {
    const { mass, volume, volume20 } = weighed(given);
    const alcohol = litresOfAlcohol((volume20 * given.strength) / 100);
    const { expected, difference } = against(given, alcohol);
    return {
      found: volume20,
      alcohol,
      expected: expected.alcohol,
      missing: difference.missing,
      part: difference.part,
      expectedStrength: expected.strength,
      mass,
      lies: volume,
    };
  },
  steps: (given, result) => [
    'Mass = weight shown × (1 − 1.2 ÷ 8,000) ÷ (1 − 1.2 ÷ density): air of 1.2 kg/m³ carries a little of the spirit, and less of the weights',
    `Weight shown: ${n(given.gross, 2)} − ${n(given.tare, 2)} = ${n(given.gross - given.tare, 2)} kg; mass ${n(result.mass, 2)} kg`,
    'Litres at 20 °C = mass ÷ density at 20 °C; litres as measured = mass ÷ density at its own temperature',
    `${n(result.found, 1)} L at 20 °C, ${n(result.lies, 1)} L at ${n(given.temperature, 1)} °C; ${n(result.alcohol, 2)} L of pure alcohol`,
    ...expectedSteps(given, result.expected, result.missing),
  ],
  remark: (given, { missing, part }) =>
    `${meaning(given, missing, part)} A soaked cask weighs more empty than it did dry: take the tare of an emptied one where you can.`,
  examples: [
    {
      given: {
        gross: 367.4098197,
        tare: 0,
        strength: 95.007,
        temperature: 15.5556,
        filled: 500,
        filledAt: 63.5,
        indrink: 0,
        years: 1,
        loss: 2,
        humidity: 65,
        steady: 65,
        allowed: 3,
      },
      gives: { lies: 451.2818, alcohol: 430.774 },
      within: 1e-4,
      source: 'cfr-27-30',
      note: '30.64: 81,000 lb of 190 proof are 11,921.6 gallons and 22,650.8 proof gallons at 60 °F, here a hundredth of them, with 1.9018 L of pure alcohol to a proof gallon; the table rests on densities of 1913',
    },
  ],
});
