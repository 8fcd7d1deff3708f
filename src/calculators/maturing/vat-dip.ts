// From the dip of a straight vat to litres at 20 °C and to pure alcohol.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { volumeAt20 } from '../../core/maturing/weighing.ts';
import { celsius, litres, litresOfAlcohol } from '../../core/quantity.ts';
import { densityFromStrength } from '../../core/spirit/strength.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'vat-dip',
  stage: 'maturing',
  title: 'Dip of a vat',
  purpose: 'Millimetres to litres, and to pure alcohol.',
  sources: ['oiml-r22', 'nbs-1913', 'derived'],
  cautions: ['ethanol-vapour'],
  readings: ['dip', 'temperature', 'strength'],
  inputs: {
    dip: { kind: 'length', label: 'Dip', range: [0, 20_000], step: 1, value: 1450 },
    perMm: {
      kind: 'volume',
      label: 'Litres to a millimetre, by the vat’s table',
      range: [0.01, 200],
      step: 0.1,
      value: 4.5,
    },
    heel: { kind: 'volume', label: 'Litres below the datum', range: [0, 5000], step: 1, value: 0 },
    temperature: {
      kind: 'temperature',
      label: 'Temperature of the spirit',
      range: [-5, 35],
      step: 0.5,
      value: 12,
    },
    strength: { kind: 'strength', label: 'Strength at 20 °C', range: [0, 97], step: 0.1, value: 63.5 },
  },
  outputs: {
    bulk: { kind: 'volume', label: 'As it lies', digits: 1 },
    volume: { kind: 'volume20', label: 'At 20 °C', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol' },
  },
  compute: ({ dip, perMm, heel, temperature, strength }) => {
    const bulk = litres(dip * perMm + heel);
    const volume = volumeAt20(bulk, strength, temperature);
    return { bulk, volume, alcohol: litresOfAlcohol((volume * strength) / 100) };
  },
  steps: (given, { bulk, volume, alcohol }) => {
    const [there, here] = [given.temperature, celsius(20)].map((t) => densityFromStrength(given.strength, t));
    return [
      `${w(given.dip)} × ${w(given.perMm)} + ${w(given.heel)} = ${n(bulk, 1)} L`,
      'Its mass stays when it warms to 20 °C: litres × density there ÷ density at 20 °C',
      `${w(bulk)} × ${n(there!, 3)} ÷ ${n(here!, 3)} = ${n(volume, 1)} L`,
      `${w(volume)} × ${w(given.strength)} ÷ 100 = ${n(alcohol, 1)} L of pure alcohol`,
    ];
  },
  examples: [
    {
      given: { dip: 1000, perMm: 2, heel: 50, temperature: 20, strength: 60 },
      gives: { bulk: 2050, volume: 2050, alcohol: 1230 },
      within: 1e-9,
      source: 'derived',
      note: 'at 20 °C nothing is to be brought anywhere: 1,000 × 2 + 50, times 0.6',
    },
    {
      given: { dip: 1000, perMm: 1, heel: 0, temperature: 10, strength: 67.746 },
      gives: { volume: 1009.13 },
      within: 1e-4,
      source: 'nbs-1913',
      note: 'spirit of 60 % mass, 67.75 % vol, printed at 899.27 kg/m³ for 10 °C and 891.13 for 20: 1,000 × 899.27 ÷ 891.13',
    },
  ],
});
