// What a full cask weighs, before anyone thinks of moving it.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { fullCask, WOOD } from '../../core/maturing/full-cask.ts';
import { kilograms, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

interface Given {
  readonly cask: 'barrel' | 'hogshead' | 'butt' | 'other';
  readonly size: Quantity<'volume'>;
  readonly wood: Quantity<'mass'>;
}

const caskOf = ({ cask, size, wood }: Given) => (cask === 'other' ? { size, wood } : WOOD[cask]);

export default defineCalculator({
  id: 'lifting',
  stage: 'maturing',
  title: 'What a full cask weighs',
  purpose: 'Spirit and wood together, before you move one.',
  sources: ['oiml-r22', 'memory', 'cask-faq-1995'],
  cautions: ['lifting'],
  inputs: {
    cask: {
      label: 'Cask',
      options: {
        barrel: 'barrel, 200 L, wood about 50 kg',
        hogshead: 'hogshead, 250 L, wood about 60 kg',
        butt: 'butt, 500 L, wood about 125 kg',
        other: 'another size, given below',
      },
      value: 'barrel',
    },
    size: {
      kind: 'volume',
      label: 'Size of the cask',
      range: [1, 700],
      step: 5,
      value: 125,
      usedWhen: { choice: 'cask', is: ['other'] },
    },
    wood: {
      kind: 'mass',
      label: 'Weight of its wood',
      range: [0, 400],
      step: 1,
      value: 35,
      usedWhen: { choice: 'cask', is: ['other'] },
    },
    strength: {
      kind: 'strength',
      label: 'Strength of the spirit',
      range: [20, 97],
      step: 0.1,
      from: 'filling.strength',
    },
    temperature: { kind: 'temperature', label: 'Its temperature', range: [-5, 35], step: 1, value: 15 },
    casks: { kind: 'count', label: 'Casks moved at once', range: [1, 100], step: 1, value: 1 },
  },
  main: ['cask', 'size', 'wood', 'strength', 'casks'],
  outputs: {
    total: { kind: 'mass', label: 'One full cask' },
    spirit: { kind: 'mass', label: 'Spirit in it' },
    wood: { kind: 'mass', label: 'Its wood' },
    together: { kind: 'mass', label: 'All that are moved' },
  },
  compute: (given) => {
    const cask = caskOf(given);
    const { spirit, total } = fullCask(cask, given.strength, given.temperature);
    return { total, spirit, wood: cask.wood, together: kilograms(total * Math.floor(given.casks)) };
  },
  steps: (given, result) => {
    const { size, wood } = caskOf(given);
    return [
      'Full cask = litres × density + wood',
      `${n(size, 0)} L × ${n(result.spirit / size, 4)} kg/L + ${n(wood, 0)} kg = ${n(result.total, 0)} kg`,
      `${w(result.total)} kg × ${n(Math.floor(given.casks), 0)} = ${n(result.together, 0)} kg`,
    ];
  },
  remark: (_, { total, together }) =>
    `Allow at least ${n(Math.ceil(total / 10) * 10, 0)} kg a cask${together > total ? `, ${n(Math.ceil(together / 10) * 10, 0)} kg in all` : ''}: the weight of wood is from memory, and soaked wood is heavier. Cask, gear and people must be fit for it under your site’s procedures and local code; no hand or foot stops a rolling cask.`,
  examples: [
    {
      given: { cask: 'hogshead', size: 125, wood: 35, strength: 63.5, temperature: 20, casks: 1 },
      gives: { total: 285.25 },
      within: 2e-4,
      source: 'derived',
      note: '250 L × 0.901 kg/L + 60 kg; the density is printed to three decimals',
    },
    {
      given: { cask: 'barrel', size: 125, wood: 35, strength: 63.5, temperature: 20, casks: 1 },
      gives: { total: 230 },
      within: 0.01,
      source: 'memory',
      note: '“about 230 kg”, to the nearest five',
    },
    {
      given: { cask: 'butt', size: 125, wood: 35, strength: 63.5, temperature: 20, casks: 1 },
      gives: { total: 575 },
      within: 0.045,
      source: 'memory',
      note: '“about 550 to 600 kg”, its middle and half its width',
    },
    {
      given: { cask: 'other', size: 100, wood: 20, strength: 63.5, temperature: 20, casks: 3 },
      gives: { total: 110.115, together: 330.345 },
      within: 2e-5,
      source: 'derived',
      note: '100 L × 0.90115 kg/L + 20 kg, three times',
    },
    {
      given: { cask: 'other', size: 100, wood: 20, strength: 67.746, temperature: 10, casks: 1 },
      gives: { spirit: 89.927 },
      within: 1e-4,
      source: 'nbs-1913',
      note: '60 % by mass weighs 899.27 kg/m³ at 10 °C; it is 60 × 891.13 ÷ 789.24 % vol, by its density at 20 °C',
    },
  ],
});
