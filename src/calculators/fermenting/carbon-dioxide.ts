// How much carbon dioxide a washback gives off, and how fast at its height.
import { gasVolume } from '../../core/fermenting/gas.ts';
import { releaseRate } from '../../core/fermenting/release.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const CHART_STEPS = 48;

export default defineCalculator({
  id: 'carbon-dioxide',
  stage: 'fermenting',
  title: 'Gas from a washback',
  purpose:
    'Turns the carbon dioxide of one washback into a volume of gas, and finds how fast it comes off at its peak.',
  sources: ['balling', 'reid-2021', 'derived'],
  cautions: ['carbon-dioxide', 'confined-space'],
  inputs: {
    gas: {
      kind: 'mass',
      label: 'Carbon dioxide from one washback',
      range: [0.01, 60_000],
      step: 10,
      from: 'wash.carbonDioxide',
    },
    temperature: { kind: 'temperature', label: 'Temperature of the gas', range: [0, 40], step: 1, value: 20 },
    half: { kind: 'hours', label: 'Half the fall reached at', range: [4, 60], step: 1, value: 16 },
    steepness: { kind: 'perHour', label: 'Steepness of the fall', range: [0.05, 1], step: 0.01, value: 0.2 },
  },
  outputs: {
    volume: { kind: 'space', label: 'As gas' },
    peak: { kind: 'massFlow', label: 'At its peak' },
    peakFlow: { kind: 'flow', label: 'Gas an hour at its peak', digits: 1 },
    perWeight: { kind: 'space', label: 'One kilogram as gas', digits: 3 },
  },
  compute: ({ gas, temperature, half, steepness }) => {
    const peak = gas * releaseRate({ half, steepness }, half);
    return {
      volume: gasVolume(gas, temperature),
      peak: quantity('massFlow', peak),
      peakFlow: quantity('flow', gasVolume(peak, temperature)),
      perWeight: gasVolume(1, temperature),
    };
  },
  steps: ({ gas, temperature, half, steepness }, result) => [
    'Volume = mass ÷ 44.01 × 8.314463 × (273.15 + temperature) ÷ 101.325, at one atmosphere',
    `${w(gas)} ÷ 44.01 × 8.314463 × ${n(273.15 + temperature, 2)} ÷ 101.325 = ${n(result.volume, 1)} m³`,
    'The gas comes as the extract falls: fastest at half the fall, a quarter of the steepness in an hour',
    `At ${n(half, 1)} h: ${w(gas)} × ${steepness} ÷ 4 = ${n((gas * steepness) / 4, 2)} kg/h; scaled so that the whole of the gas comes after the start, ${n(result.peak, 2)} kg/h, or ${n(result.peakFlow, 1)} m³/h`,
  ],
  remark: ({ half }, { volume, peakFlow }) =>
    `At about ${n(half, 0)} h this washback pours out ${n(peakFlow, 1)} m³ in an hour, and ${n(volume, 0)} m³ in all, unseen and heavier than air. Know where it goes: to the lowest place it can reach.`,
  chart: ({ gas, half, steepness }) => {
    const end = half + 8 / steepness;
    const hours = Array.from({ length: CHART_STEPS + 1 }, (_, i) => (i * end) / CHART_STEPS);
    return {
      caption: 'Carbon dioxide given off',
      columns: [
        { kind: 'hours', label: 'Hours', values: hours },
        {
          kind: 'massFlow',
          label: 'Carbon dioxide per hour',
          values: hours.map((hour) => gas * releaseRate({ half, steepness }, hour)),
        },
      ],
    };
  },
  examples: [
    {
      given: { gas: 1281.71, temperature: 20, half: 60, steepness: 0.2 },
      gives: { volume: 700.56, peak: 64.086 },
      within: 1e-4,
      source: 'derived',
      note: 'the gas with 1,700 L of pure alcohol, 1,700 × 0.78924 × 44.01 ÷ 46.07 kg, by 0.082057 × 293.15 m³ to the kilomole; 1,281.71 × 0.2 ÷ 4 kg/h',
    },
    {
      given: { gas: 0.754, temperature: 20, half: 16, steepness: 0.2 },
      gives: { volume: 0.413 },
      within: 0.003,
      source: 'derived',
      note: '0.754 kg with a litre of pure alcohol are 413 L at 20 °C and one atmosphere, three figures',
    },
    {
      given: { gas: 10, temperature: 20, half: 16, steepness: 0.2 },
      gives: { volume: 5.4 },
      within: 0.015,
      source: 'york-dry-ice',
      note: '10 kg of dry ice give about 5.4 m³ of gas; it names no temperature, and 20 °C is taken',
    },
  ],
});
