// Filling bottles on scales.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { litresOfFill, weightOfFill } from '../../core/maturing/fill-by-mass.ts';
import { litres20, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'fill-by-mass',
  stage: 'maturing',
  title: 'Filling by mass',
  purpose: 'What a full bottle weighs, and what one holds.',
  sources: ['oiml-r22', 'oiml-d28', 'nbs-1913'],
  cautions: ['ethanol-vapour'],
  readings: ['empty', 'full'],
  inputs: {
    bottle: { house: 'bottleSize', staysHere: true },
    strength: { house: 'bottlingStrength', staysHere: true },
    empty: { kind: 'grams', label: 'Empty bottle and its cap', range: [0, 5000], step: 1, value: 480 },
    full: { kind: 'grams', label: 'Full, on the scales', range: [1, 15_000], step: 1, value: 1138 },
  },
  outputs: {
    target: { kind: 'grams', label: 'Scales should show' },
    shown: { kind: 'grams', label: 'Of that, the spirit' },
    mass: { kind: 'grams', label: 'Its true mass' },
    holds: { kind: 'bottle', label: 'This bottle holds', digits: 2 },
    over: { kind: 'millilitres', label: 'More than its label says' },
  },
  refuse: ({ empty, full }) =>
    full <= empty
      ? `Full it shows ${n(full, 0)} g and empty ${n(empty, 0)}: a full bottle weighs more.`
      : undefined,
  compute: ({ bottle, strength, empty, full }) => {
    const { mass, shown } = weightOfFill(litres20(bottle / 100), strength);
    const holds = 100 * litresOfFill(quantity('grams', full - empty), strength);
    return {
      target: quantity('grams', empty + shown),
      shown,
      mass,
      holds: quantity('bottle', holds),
      over: quantity('millilitres', 10 * (holds - bottle)),
    };
  },
  steps: ({ bottle, empty, full }, { target, shown, mass, holds, over }) => [
    `A litre at 20 °C weighs ${n((100 * mass) / bottle, 2)} g, and scales show ${n((100 * shown) / bottle, 2)}: air carries about a gram`,
    `Spirit on the scales: ${w(bottle)} ÷ 100 × ${n((100 * shown) / bottle, 2)} = ${n(shown, 1)} g; with the bottle ${w(empty)} + ${n(shown, 1)} = ${n(empty + Number(shown.toFixed(1)), 1)} g`,
    `Found: (${w(full)} − ${w(empty)}) ÷ ${n((100 * shown) / bottle, 2)} × 100 = ${n(holds, 2)} cL, ${n(Math.abs(over), 1)} mL ${over < 0 ? 'short' : 'over'}; the scales should show ${n(target, 1)} g`,
  ],
  remark: (_, { over }) =>
    over < 0
      ? 'This bottle is short. How far one bottle may be short, and how many of a batch, your weights and measures law says.'
      : 'Litres grow with warmth, grams do not: so this holds however warm the room is.',
  examples: [
    {
      given: { bottle: 70, strength: 67.746, empty: 480, full: 1103 },
      gives: { mass: 623.79 },
      within: 1e-4,
      source: 'nbs-1913',
      note: 'spirit of 60 % mass, 67.75 % vol, weighs 891.13 kg/m³ at 20 °C: × 0.7 L',
    },
    {
      given: { bottle: 70, strength: 67.746, empty: 480, full: 1103.046 },
      gives: { target: 1103.046, shown: 623.046, holds: 70 },
      within: 1e-4,
      source: 'derived',
      note: 'by hand: (891.13 − 1.2) ÷ (1 − 1.2 ÷ 8,000) = 890.06 g to the litre on the scales',
    },
  ],
});
