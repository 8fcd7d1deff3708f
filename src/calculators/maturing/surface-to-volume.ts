// How much wood a litre touches, by the size of the cask.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { innerSurface, shapeOf, woodToLitre } from '../../core/maturing/shape.ts';
import { litres, quantity, type Quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const SIZES = [50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 600, 700]; // L, the span of casks in use

interface Given {
  readonly size: Quantity<'volume'>;
  readonly beside: Quantity<'volume'>;
  readonly length: Quantity<'ratio'>;
  readonly head: Quantity<'ratio'>;
}

const shapes = ({ size, beside, length, head }: Given) => ({
  cask: shapeOf(size, { length, head }),
  other: shapeOf(beside, { length, head }),
});

export default defineCalculator({
  id: 'surface-to-volume',
  stage: 'maturing',
  title: 'Wood to a litre',
  purpose: 'How much wood a litre touches, by size of cask.',
  sources: ['derived', 'cask-faq-1995', 'memory'],
  inputs: {
    size: { kind: 'volume', label: 'This cask', range: [1, 700], step: 10, value: 50 },
    beside: { kind: 'volume', label: 'Compared with a cask of', range: [1, 700], step: 10, value: 200 },
    length: {
      kind: 'ratio',
      label: 'Length over bung diameter, inside',
      range: [0.5, 3],
      step: 0.05,
      value: 1.3,
    },
    head: {
      kind: 'ratio',
      label: 'Head over bung diameter, inside',
      range: [0.5, 1],
      step: 0.01,
      value: 0.83,
    },
  },
  outputs: {
    perLitre: { kind: 'woodToLitre', label: 'Wood to a litre' },
    other: { kind: 'woodToLitre', label: 'Wood to a litre in the other' },
    times: { kind: 'ratio', label: 'Times as much', digits: 3 },
    surface: { kind: 'area', label: 'Wood in all' },
    bung: { kind: 'length', label: 'Bung diameter, inside', digits: 0 },
    long: { kind: 'length', label: 'Length, inside', digits: 0 },
  },
  compute: (given) => {
    const { cask, other } = shapes(given);
    return {
      perLitre: woodToLitre(cask),
      other: woodToLitre(other),
      times: quantity('ratio', woodToLitre(cask) / woodToLitre(other)),
      surface: innerSurface(cask),
      bung: cask.bung,
      long: cask.length,
    };
  },
  steps: (given, result) => [
    'Casks of one shape: lengths grow as the cube root of the litres, wood as their square, so wood to a litre falls as the cube root',
    `(${n(given.beside, 0)} ÷ ${n(given.size, 0)}) to the power ⅓ = ${n((given.beside / given.size) ** (1 / 3), 3)}`,
    `At ${n(given.size, 0)} L the staves and both heads are ${w(result.surface)} m²: ${w(result.surface)} × 10,000 ÷ ${w(given.size)} = ${n(result.perLitre, 1)} cm² to a litre`,
  ],
  remark: ({ size, beside }, { times }) =>
    Math.abs(times - 1) < 0.005
      ? 'The two casks give a litre the same wood.'
      : `A litre in ${n(size, 0)} L touches ${n(times, 2)} times the wood that it would in ${n(beside, 0)}: it takes up flavour and evaporates ${times > 1 ? 'faster' : 'slower'} by about as much. Time in wood does other things too, which no size hurries.`,
  chart: (given) => {
    const each = SIZES.map((size) => woodToLitre(shapeOf(litres(size), given)));
    const barrel = woodToLitre(shapeOf(litres(200), given));
    return {
      caption: 'Wood to a litre, by the size of the cask',
      columns: [
        { kind: 'volume', label: 'Size of the cask, L', values: SIZES },
        { kind: 'woodToLitre', label: 'Wood to a litre', values: each },
        { kind: 'ratio', label: 'Over a barrel of 200 L', values: each.map((wood) => wood / barrel) },
      ],
      points: [[given.size, woodToLitre(shapes(given).cask)]],
    };
  },
  examples: [
    {
      given: { size: 200, beside: 200, length: 1.3, head: 1 },
      gives: { perLitre: 95.3653, times: 1 },
      within: 1e-5,
      source: 'derived',
      note: 'as a cylinder of length 1.3 diameters: (2 + 4 × 1.3) ÷ 1.3 over the diameter of 0.5807 m = 9.53653 m²/m³, six figures',
    },
    {
      given: { size: 50, beside: 200, length: 1.3, head: 0.83 },
      gives: { times: 1.5874 },
      within: 1e-5,
      source: 'derived',
      note: 'the cube root of 4, for any shape',
    },
    {
      given: { size: 445.9, beside: 200, length: 1.25, head: 0.75 },
      gives: { bung: 812.8, long: 1016 },
      within: 5e-4,
      source: 'cask-gauging',
      note: 'a cask of 98.136 gallons of 277.274 cubic inches (from memory) has a bung of 32 in and is 40 long, by the table’s 0.0023959 × 32² × 40',
    },
  ],
});
