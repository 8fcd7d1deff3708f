// Caustic for cleaning: how much stock, and how strong what is there.
import { byTitration, heldBy, stockFor, weakDensity } from '../../core/fermenting/caustic.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { litres, massPercent } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'caustic',
  stage: 'fermenting',
  title: 'Strength of the caustic',
  purpose: 'Litres of stock for a strength, and what a titration says.',
  sources: ['caustic-stock', 'memory', 'derived'],
  cautions: ['caustic'],
  readings: ['acid'],
  inputs: {
    volume: { kind: 'volume', label: 'Cleaning solution', range: [1, 100_000], step: 10, value: 500 },
    wanted: { kind: 'massPercent', label: 'Caustic wanted', range: [0.1, 5], step: 0.1, value: 1.5 },
    stock: { kind: 'massPercent', label: 'Caustic in the stock', range: [10, 52], step: 1, value: 50 },
    density: {
      kind: 'density',
      label: 'A cubic metre of stock weighs',
      range: [1100, 1550],
      step: 5,
      value: 1515,
    },
    sample: { kind: 'millilitres', label: 'Sample titrated', range: [1, 100], step: 1, value: 10 },
    acid: { kind: 'millilitres', label: 'Acid that just turned it', range: [0, 100], step: 0.1, value: 2.6 },
    acidStrength: {
      kind: 'molarity',
      label: 'Strength of that acid',
      range: [0.05, 2],
      step: 0.05,
      value: 1,
    },
  },
  main: ['volume', 'wanted', 'stock', 'acid'],
  outputs: {
    stock: { kind: 'volume', label: 'Stock into clean water', digits: 1 },
    water: { kind: 'volume', label: 'Water, measured first', digits: 0 },
    found: { kind: 'massPercent', label: 'By titration there is' },
    more: { kind: 'volume', label: 'Stock to bring that, cold, to strength', digits: 1 },
    holds: { kind: 'gramsPerLitre', label: 'Caustic in a litre of stock', digits: 1 },
  },
  refuse: ({ sample, acid, acidStrength }) =>
    (acid * acidStrength * 4) / sample > 11
      ? 'That much acid means more than 10 % of caustic; this sum is for weak solutions. Dilute the sample and count it.'
      : undefined,
  compute: ({ volume, wanted, stock, density, sample, acid, acidStrength }) => {
    const store = { stock, density };
    const whole = volume * weakDensity(wanted);
    const added = (whole * wanted) / stock;
    const found = byTitration(sample, acid, acidStrength);
    return {
      stock: litres((1000 * added) / density),
      water: litres((whole - added) / weakDensity(massPercent(0))),
      found,
      more: stockFor(volume, found, wanted, store).litres,
      holds: heldBy(stock, density),
    };
  },
  steps: ({ volume, wanted, stock, density, sample, acid, acidStrength }, result) => {
    const whole = volume * weakDensity(wanted);
    return [
      `A litre of it weighs ${n(weakDensity(wanted), 5)} kg, so in all ${w(volume)} × ${n(weakDensity(wanted), 5)} = ${n(whole, 1)} kg`,
      `Stock = that × wanted ÷ stock ÷ its density: ${w(whole)} × ${w(wanted)} ÷ ${w(stock)} ÷ ${w(density)} × 1,000 = ${n(result.stock, 1)} L`,
      `Titration: a millilitre of hydrochloric acid of 1 mol/L turns 40 mg of caustic, of sulphuric twice that: ${w(acid)} × ${w(acidStrength)} × 40 ÷ ${w(sample)} = ${n((acid * acidStrength * 40) / sample, 2)} g in a litre`,
      `A litre weighs ${n(weakDensity(result.found), 4)} kg, so that is ${n(result.found, 2)} % by mass`,
      result.more > 0
        ? `To mend it: (wanted − found) ÷ (stock − wanted) of its mass, ${n(result.more, 1)} L of stock`
        : 'It is strong enough as it is',
    ];
  },
  remark: (_, { found }) =>
    `Water first and cold, then the stock into it, slowly: it heats as it mixes. Goggles, gauntlets, apron, and the vent open, for the gas of a washback is eaten by caustic and a shut vessel folds. ${found > 0 ? 'Part of what a titration finds may be washing soda, which caustic becomes with carbon dioxide and which cleans less; two indicators tell them apart.' : ''}`.trim(),
  examples: [
    {
      given: { volume: 500, wanted: 1.5, stock: 50, density: 1515, sample: 10, acid: 2.6, acidStrength: 1 },
      gives: { holds: 757.5 },
      within: 1e-9,
      source: 'caustic-stock',
      note: 'stock of 50 % by mass and 1.515 g/mL: 757.5 g of caustic in a litre',
    },
    {
      given: { volume: 1000, wanted: 1, stock: 50, density: 1500, sample: 10, acid: 2.5, acidStrength: 1 },
      gives: { stock: 13.453, found: 0.9911 },
      within: 1e-3,
      source: 'derived',
      note: 'by hand: 1,000 L weigh 998 × 1.011 = 1,008.98 kg, a fiftieth of it stock, ÷ 1.5; 2.5 × 40 ÷ 10 = 10 g/L, ÷ 9.98 ÷ 1.0109',
    },
  ],
});
