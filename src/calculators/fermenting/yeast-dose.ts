// Yeast as pressed cake, as cream or as cells, for one washback.
import { formatNumber as n } from '../../core/format.ts';
import { quantity, type Quantity } from '../../core/quantity.ts';
import {
  cellsFromPressed,
  creamFromPressed,
  DRY_IN_PRESSED,
  pressedFromCells,
  pressedFromCream,
  pressedFromDry,
} from '../../core/fermenting/yeast.ts';
import { defineCalculator } from '../define.ts';

const LEAST_DOSE = 3.3; // g/L pressed yeast: 50 kg in 15,000 L; common practice
const MOST_DOSE = 5; // g/L: 25 kg to a tonne of malt, recalled, in 5,000 L of wort

/** Grams of pressed yeast that a litre of cream is worth, as its maker states it. */
const worth = (holds: Quantity<'gramsPerLitre'>, as: 'pressed' | 'dry') =>
  as === 'dry' ? pressedFromDry(holds) : holds;

export default defineCalculator({
  id: 'yeast-dose',
  stage: 'fermenting',
  title: 'Yeast: pressed, cream or cells',
  purpose: 'Converts a dose of yeast for one washback from the form you have into the others.',
  sources: ['common-practice', 'memory'],
  inputs: {
    wort: { label: 'Wort', house: 'wortVolume' },
    malt: { label: 'Malt', house: 'maltPerMash' },
    given: {
      label: 'The dose is given as',
      options: { pressed: 'pressed yeast', cream: 'cream yeast', cells: 'cells in the wort' },
      value: 'pressed',
    },
    pressed: { house: 'yeast', usedWhen: { choice: 'given', is: ['pressed'] } },
    cream: {
      kind: 'volume',
      label: 'Cream yeast',
      range: [0.05, 5000],
      step: 1,
      value: 50,
      usedWhen: { choice: 'given', is: ['cream'] },
    },
    cells: {
      kind: 'cells',
      label: 'Cells in the wort',
      range: [0.1, 500],
      step: 1,
      value: 15,
      usedWhen: { choice: 'given', is: ['cells'] },
    },
    perGram: {
      kind: 'cellsPerGram',
      label: 'Cells in a gram of pressed yeast',
      range: [1, 30],
      step: 0.5,
      value: 10,
    },
    holds: { kind: 'gramsPerLitre', label: 'Yeast in the cream', range: [20, 1000], step: 10, value: 600 },
    holdsAs: {
      label: 'Measured as',
      options: { pressed: 'pressed yeast', dry: 'dry matter' },
      value: 'pressed',
    },
  },
  main: ['wort', 'given', 'pressed', 'cream', 'cells'],
  outputs: {
    mass: { kind: 'mass', label: 'Pressed yeast', digits: 1 },
    volume: { kind: 'volume', label: 'Cream yeast', digits: 1 },
    count: { kind: 'cells', label: 'Cells in the wort' },
    dose: { kind: 'gramsPerLitre', label: 'Pressed yeast per litre of wort', digits: 1 },
    perTonne: { kind: 'perTonne', label: 'Pressed yeast per tonne of malt' },
  },
  compute: ({ wort, malt, given, pressed, cream, cells, perGram, holds, holdsAs }) => {
    const held = worth(holds, holdsAs);
    const mass = {
      pressed,
      cream: pressedFromCream(cream, held),
      cells: pressedFromCells(cells, wort, perGram),
    }[given];
    return {
      mass,
      volume: creamFromPressed(mass, held),
      count: cellsFromPressed(mass, wort, perGram),
      dose: quantity('gramsPerLitre', (1000 * mass) / wort),
      perTonne: quantity('perTonne', (1000 * mass) / malt),
    };
  },
  steps: ({ wort, malt, perGram, holds, holdsAs }, { mass, volume, count, dose, perTonne }) => [
    holdsAs === 'dry'
      ? `A litre of cream with ${n(holds, 0)} g of dry matter is worth ${n(holds, 0)} ÷ ${DRY_IN_PRESSED} = ${n(worth(holds, holdsAs), 0)} g of pressed yeast`
      : `A litre of cream is worth ${n(holds, 0)} g of pressed yeast`,
    `Cream = pressed ÷ what a litre is worth: 1,000 × ${n(mass, 2)} ÷ ${n(worth(holds, holdsAs), 0)} = ${n(volume, 1)} L`,
    `Cells in a millilitre = grams × cells in a gram ÷ millilitres: ${n(1000 * mass, 0)} × ${n(perGram, 1)} billion ÷ ${n(1000 * wort, 0)} = ${n(count, 1)} million`,
    `To the litre of wort: ${n(1000 * mass, 0)} g ÷ ${n(wort, 0)} = ${n(dose, 2)} g; to the tonne of malt: ${n(mass, 2)} ÷ ${n(malt / 1000, 2)} = ${n(perTonne, 1)} kg`,
  ],
  remark: ({ perGram }, { dose, perTonne }) => {
    const judged =
      dose < LEAST_DOSE
        ? ', less than that, so look for a slow start'
        : dose > MOST_DOSE
          ? ', more than that'
          : '';
    const cells = `${n(LEAST_DOSE * perGram, 0)} to ${n(MOST_DOSE * perGram, 0)}`;
    return `Houses give about ${LEAST_DOSE} to ${MOST_DOSE} g of pressed yeast to the litre: one, 50 kg to 15,000 L (common practice); others, 18 to 25 kg to a tonne of malt (from memory), at five litres of wort to a kilogram. Yours is ${n(dose, 1)} g and ${n(perTonne, 1)} kg${judged}. At ${n(perGram, 1)} billion cells to the gram those doses are ${cells} million to the millilitre; 10 to 20 million are recalled too, perhaps of living ones. Count your own yeast, and above all how much of it lives.`;
  },
  examples: [
    {
      given: {
        wort: 15_000,
        malt: 3000,
        given: 'pressed',
        pressed: 50,
        cream: 50,
        cells: 15,
        perGram: 10,
        holds: 600,
        holdsAs: 'pressed',
      },
      gives: { dose: 3.3333, volume: 83.333, count: 33.333 },
      within: 1e-4,
      source: 'common-practice',
      note: '50 kg in 15,000 L is 3.3 g a litre; the cream and the cells by hand',
    },
    {
      given: {
        wort: 21_000,
        malt: 4200,
        given: 'cells',
        pressed: 50,
        cream: 50,
        cells: 15,
        perGram: 10,
        holds: 180,
        holdsAs: 'dry',
      },
      gives: { mass: 31.5, volume: 52.5 },
      within: 1e-9,
      source: 'derived',
      note: '15 million to the millilitre in 21,000 L are 315 million million cells, 31,500 g at 10 billion each; 180 g dry is 600 g pressed',
    },
  ],
});
