// A gravity read in warm wort, brought to 20 °C.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { quantity } from '../../core/quantity.ts';
import { platoFromGravity } from '../../core/wort/extract.ts';
import { gravityAt20, WARMEST_READING, waterAt } from '../../core/wort/warm-reading.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'gravity-read-warm',
  stage: 'mashing',
  title: 'A gravity read warm',
  purpose: 'From a warm reading to the gravity at 20 °C.',
  sources: ['oiml-r22', 'oiml-r44', 'sugar-tables'],
  readings: ['reading', 'temperature'],
  inputs: {
    reading: {
      kind: 'gravity',
      label: 'The hydrometer shows',
      range: [0.99, 1.1],
      step: 0.001,
      value: 1.054,
    },
    temperature: {
      kind: 'temperature',
      label: 'The wort is at',
      range: [1, WARMEST_READING],
      step: 0.5,
      value: 40,
    },
  },
  outputs: {
    gravity: { kind: 'gravity', label: 'Gravity at 20 °C', digits: 4 },
    plato: { kind: 'plato', label: 'Extract' },
  },
  compute: ({ reading, temperature }) => {
    const gravity = gravityAt20(reading, temperature);
    return { gravity, plato: platoFromGravity(gravity) };
  },
  steps: ({ reading, temperature }, { gravity }) => [
    'Gravity at 20 °C = reading × water’s density at 20 °C ÷ (1 + 0.000025 × (t − 20)) ÷ water’s density at t; the middle part is the glass, which swells too',
    `${w(reading)} × ${n(waterAt(quantity('temperature', 20)), 2)} ÷ ${n(1 + 25e-6 * (temperature - 20), 5)} ÷ ${n(waterAt(temperature), 2)} = ${n(gravity, 4)}`,
  ],
  remark: ({ temperature }) =>
    temperature > 30
      ? 'Wort swells a little more than the water that stands for it here: cool the sample nearer to 20 °C where it matters.'
      : undefined,
  examples: [
    {
      given: { reading: 1, temperature: 20 },
      gives: { gravity: 1 },
      within: 1e-6,
      source: 'derived',
      note: 'water at the temperature for which the hydrometer is made',
    },
    {
      given: { reading: 1.054, temperature: 40 },
      gives: { gravity: 1.05984 },
      within: 2e-5,
      source: 'derived',
      note: 'by hand with water’s density of 998.20 at 20 °C and 992.22 at 40: 1.054 × 998.20 ÷ 1.0005 ÷ 992.22',
    },
  ],
});
