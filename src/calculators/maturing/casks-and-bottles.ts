// Spirit from a cask into bottles.
import { formatNumber as n } from '../../core/format.ts';
import { bottlesFrom } from '../../core/maturing/filling.ts';
import { litresOfAlcohol } from '../../core/quantity.ts';
import { reduce } from '../../core/spirit/mixing.ts';
import { defineCalculator } from '../define.ts';

export default defineCalculator({
  id: 'casks-and-bottles',
  stage: 'maturing',
  title: 'Bottles from old spirit',
  purpose: 'Lets the spirit down to bottling strength and counts the bottles.',
  sources: ['oiml-r22', 'uk-duty-manual'],
  inputs: {
    volume: {
      kind: 'volume20',
      label: 'Old spirit',
      range: [0.1, 300_000],
      step: 10,
      from: 'matured.volume',
    },
    from: { kind: 'strength', label: 'Its strength', range: [1, 97], step: 0.1, from: 'matured.strength' },
    to: {
      kind: 'strength',
      label: 'Bottling strength',
      range: [37, 70],
      step: 0.1,
      house: 'bottlingStrength',
    },
    bottle: { kind: 'bottle', label: 'Bottle', range: [1, 450], step: 5, house: 'bottleSize' },
  },
  outputs: {
    bottles: { kind: 'count', label: 'Bottles', digits: 0 },
    water: { kind: 'volume20', label: 'Water to add', digits: 1 },
    volume: { kind: 'volume20', label: 'Volume to bottle', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol in them' },
  },
  refuse: ({ from, to }) =>
    to > from
      ? `Adding water cannot raise the strength: ${n(to, 1)} % vol was asked for, and the spirit has ${n(from, 1)} % vol or less to give.`
      : undefined,
  compute: ({ volume, from, to, bottle }) => {
    const reduced = reduce({ volume, strength: from }, to);
    return {
      bottles: bottlesFrom(reduced.volume, bottle),
      water: reduced.waterVolume,
      volume: reduced.volume,
      alcohol: litresOfAlcohol((volume * from) / 100),
    };
  },
  steps: (given, result) => [
    'Volume to bottle = pure alcohol ÷ bottling strength × 100',
    `${n(result.alcohol, 1)} ÷ ${given.to} × 100 = ${n(result.volume, 1)} L`,
    'Bottles = volume to bottle ÷ bottle',
    `${n(result.volume, 1)} L ÷ ${n(given.bottle / 100, 2)} L = ${n(result.bottles, 0)}`,
  ],
  examples: [
    {
      given: { volume: 840, from: 40, to: 40, bottle: 70 },
      gives: { bottles: 1200, alcohol: 336 },
      within: 1e-9,
      source: 'uk-duty-manual',
      note: 'a hundred cases of twelve bottles of 70 cL at 40 % vol hold 336 L of pure alcohol',
    },
  ],
});
