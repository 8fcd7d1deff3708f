// The strength of a spirit from its density at a temperature.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { celsius, massPercent } from '../../core/quantity.ts';
import { densityOfSpirit } from '../../core/spirit/density.ts';
import { massPercentFromStrength, strengthFromDensity } from '../../core/spirit/strength.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'strength-from-density',
  stage: 'distilling',
  title: 'Strength from density and temperature',
  purpose: 'The strength at 20 °C from a density at any temperature, both in vacuo.',
  sources: ['oiml-r22'],
  inputs: {
    density: { kind: 'density', label: 'Density', range: [750, 1010], step: 0.1, value: 889.5 },
    temperature: { kind: 'temperature', label: 'Temperature', range: [-20, 40], step: 0.5, value: 22 },
  },
  outputs: {
    strength: { kind: 'strength', label: 'Strength at 20 °C', digits: 2 },
    mass: { kind: 'massPercent', label: 'Alcohol by mass' },
    at20: { kind: 'density', label: 'Density at 20 °C' },
  },
  refuse: ({ density, temperature }) => {
    const [pure, water] = [100, 0].map((mass) => densityOfSpirit(massPercent(mass), temperature));
    return density < pure! || density > water!
      ? `At ${temperature} °C no mixture of alcohol and water has a density of ${density} kg/m³; it can be from ${n(pure!, 2)} to ${n(water!, 2)}.`
      : undefined;
  },
  compute: ({ density, temperature }) => {
    const strength = strengthFromDensity(density, temperature);
    const mass = massPercentFromStrength(strength);
    return { strength, mass, at20: densityOfSpirit(mass, celsius(20)) };
  },
  steps: (given, result) => [
    'Find the share of alcohol by mass whose density at this temperature is the one measured',
    `At ${given.temperature} °C, ${w(result.mass)} % by mass has ${n(given.density, 2)} kg/m³`,
    'Strength at 20 °C = share by mass × density at 20 °C ÷ density of pure alcohol at 20 °C',
    `${w(result.mass)} × ${w(result.at20)} ÷ 789.24 = ${n(result.strength, 2)} % vol`,
  ],
  examples: [
    {
      given: { density: 948.05, temperature: 20 },
      gives: { strength: 40 },
      within: 0.001,
      source: 'memory',
      note: '40 % vol has 948.05 kg/m³ at 20 °C, from memory of the printed table',
    },
    {
      given: { density: 932.26, temperature: 10 },
      gives: { mass: 45 },
      within: 0.002,
      source: 'nbs-1913',
      note: '45 % by mass at 10 °C in the table of 1913, which differs from R 22 by up to 0.12 kg/m³',
    },
    {
      given: { density: 891.13, temperature: 20 },
      gives: { mass: 60, strength: 67.746 },
      within: 0.0005,
      source: 'nbs-1913',
      note: '60 % by mass at 20 °C in the table of 1913; 60 × 891.13 ÷ 789.24 is its strength',
    },
  ],
});
