// What the meters of a house say for each litre of pure alcohol.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { kilograms, litres, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const KWH = 3.6; // MJ; definition of the kilowatt hour

export default defineCalculator({
  id: 'per-litre',
  stage: 'distilling',
  title: 'What the meters say',
  purpose: 'Energy, water and gas for a litre of alcohol.',
  sources: ['derived'],
  readings: ['alcohol', 'fuel', 'power', 'water'],
  inputs: {
    alcohol: {
      kind: 'alcohol',
      label: 'Pure alcohol made in that time',
      range: [1, 1e8],
      step: 100,
      value: 10_000,
    },
    fuel: { kind: 'energy', label: 'Fuel burnt', range: [0, 1e10], step: 1000, value: 216_000 },
    power: { kind: 'energy', label: 'Electricity', range: [0, 1e10], step: 1000, value: 18_000 },
    water: { kind: 'volume', label: 'Water drawn', range: [0, 1e11], step: 1000, value: 1_000_000 },
    factor: {
      kind: 'ratio',
      label: 'Carbon dioxide of the fuel, kg to a kWh',
      range: [0, 1],
      step: 0.01,
      value: 0.18,
    },
  },
  outputs: {
    energy: { kind: 'energy', label: 'Energy, for a litre', digits: 2 },
    fuelOnly: { kind: 'energy', label: 'Of it fuel', digits: 2 },
    water: { kind: 'volume', label: 'Water, for a litre', digits: 1 },
    carbonDioxide: { kind: 'mass', label: 'Carbon dioxide of the fuel, for a litre', digits: 2 },
  },
  compute: ({ alcohol, fuel, power, water, factor }) => ({
    energy: quantity('energy', (fuel + power) / alcohol),
    fuelOnly: quantity('energy', fuel / alcohol),
    water: litres(water / alcohol),
    carbonDioxide: kilograms(((fuel / KWH) * factor) / alcohol),
  }),
  steps: ({ alcohol, fuel, power, water, factor }, result) => [
    'Each meter over the litres of pure alcohol of the same days',
    `(${w(fuel)} + ${w(power)}) ÷ ${w(alcohol)} = ${n(result.energy, 2)} MJ, and 3.6 MJ are a kilowatt hour: ${n(result.energy / KWH, 2)} kWh`,
    `${w(water)} ÷ ${w(alcohol)} = ${n(result.water, 1)} L of water`,
    `${w(fuel)} ÷ 3.6 × ${w(factor)} ÷ ${w(alcohol)} = ${n(result.carbonDioxide, 2)} kg of carbon dioxide; that of the yeast is not in it`,
  ],
  remark: () =>
    'One whole trade told of 6.66 kWh, and of some 190 L of water, for a litre of pure alcohol; its maltings are not in it.',
  examples: [
    {
      given: { alcohol: 1_000_000, fuel: 23_976_000, power: 0, water: 190_000_000, factor: 0.18 },
      gives: { energy: 23.976, fuelOnly: 23.976, water: 190, carbonDioxide: 1.1988 },
      within: 1e-6,
      source: 'derived',
      note: 'a million litres at 6.66 kWh are 6.66 GWh, or 1,198,800 kg of gas at 0.18: the check question of the chapter on heat',
    },
    {
      given: { alcohol: 1, fuel: 3600, power: 0, water: 0, factor: 0.185 },
      gives: { carbonDioxide: 185 },
      within: 1e-9,
      source: 'carbon-trust',
      note: '1,000 kWh of natural gas × 0.185 = 185 kg; the factor is that of 2008',
    },
  ],
});
