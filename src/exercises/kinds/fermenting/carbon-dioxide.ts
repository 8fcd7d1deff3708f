// The volume that the gas of a washback fills.
import carbonDioxide from '../../../calculators/fermenting/carbon-dioxide.ts';
import { formatNumber as n, formatWorking as w } from '../../../core/format.ts';
import { exercise } from '../../exercise.ts';

export default exercise(carbonDioxide, {
  level: 2,
  ask: 'volume',
  vary: {
    gas: [300, 360, 440, 450, 480, 600, 750, 900, 1200, 1280],
    temperature: [12, 14, 15, 16, 18, 20, 22, 24, 25],
  },
  prompt: (show) =>
    `One washback gives off ${show.gas} of carbon dioxide. At 0 °C and one atmosphere 44.01 kg of it fill 22.41 m³, and gas grows in step with its temperature above −273.15 °C. What volume is it at ${show.temperature}?`,
  slips: [
    {
      family: 'temperature',
      gives: ({ gas }) => (gas / 44.01) * 22.414,
      say: 'That is its volume at 0 °C. Warmed, it fills more: multiply by (273.15 + temperature) ÷ 273.15.',
    },
    {
      family: 'upsideDown',
      gives: ({ gas, temperature }) => ((gas / 44.01) * 22.414 * 273.15) / (273.15 + temperature),
      say: 'The temperatures were divided the wrong way round: warm gas takes more room than cold, not less.',
    },
    {
      family: 'wrongConstant',
      gives: ({ gas }) => gas / 1.2,
      say: 'That is the volume of so much air. Carbon dioxide is about half as heavy again, so it fills less, and it lies low.',
    },
  ],
  working: ({ gas, temperature }, { volume }) => [
    'Volume = mass ÷ 44.01 × 22.41 × (273.15 + temperature) ÷ 273.15',
    `${w(gas)} ÷ 44.01 × 22.41 × ${w(273.15 + temperature)} ÷ 273.15 = ${n(volume, 0)} m³`,
    'It cannot be seen and is heavier than air: know where it goes.',
  ],
});
