// Yeast to pitch, from a count of the living and the dead.
import { pressedFromCells } from '../../core/fermenting/yeast.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { kilograms, percent, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const LEAST_ALIVE = 80; // %, below which a house sends yeast back; from memory

export default defineCalculator({
  id: 'yeast-pitch',
  stage: 'fermenting',
  title: 'Living yeast to pitch',
  purpose: 'Kilograms of a yeast of which some is dead.',
  sources: ['memory', 'derived'],
  cautions: ['glass-and-samples'],
  readings: ['alive', 'dead'],
  inputs: {
    wort: { house: 'wortVolume', staysHere: true },
    cells: { kind: 'cells', label: 'Living cells wanted', range: [0.1, 200], step: 1, value: 15 },
    perGram: {
      kind: 'cellsPerGram',
      label: 'Cells in a gram of yeast, all',
      range: [1, 30],
      step: 0.5,
      value: 10,
    },
    alive: { kind: 'count', label: 'Living cells counted', range: [1, 5000], step: 1, value: 276 },
    dead: { kind: 'count', label: 'Dead cells counted', range: [0, 5000], step: 1, value: 24 },
  },
  outputs: {
    mass: { kind: 'mass', label: 'Yeast to pitch', digits: 1 },
    viability: { kind: 'percent', label: 'Living part, the viability' },
    extra: { kind: 'mass', label: 'Of it, for the dead', digits: 1 },
    count: { kind: 'cells', label: 'A count of all cells would show' },
  },
  compute: ({ wort, cells, perGram, alive, dead }) => {
    const part = alive / (alive + dead);
    const allAlive = pressedFromCells(cells, wort, perGram);
    return {
      mass: kilograms(allAlive / part),
      viability: percent(100 * part),
      extra: kilograms(allAlive / part - allAlive),
      count: quantity('cells', cells / part),
    };
  },
  steps: ({ wort, cells, perGram, alive, dead }, { mass, viability, extra, count }) => [
    `Living part = living ÷ (living + dead): ${w(alive)} ÷ (${w(alive)} + ${w(dead)}) × 100 = ${n(viability, 1)} %`,
    `Were all alive: ${w(cells)} × ${w(wort)} ÷ (1,000 × ${w(perGram)}) = ${n(mass - extra, 1)} kg; a million to the millilitre is a billion to the litre`,
    `As they are: ${w(mass - extra)} ÷ ${w(alive)} × (${w(alive)} + ${w(dead)}) = ${n(mass, 1)} kg`,
    `In the wort all cells would then count ${w(cells)} ÷ ${w(alive)} × (${w(alive)} + ${w(dead)}) = ${n(count, 1)} million to the millilitre`,
  ],
  remark: ({ alive, dead }, { viability }) =>
    viability < LEAST_ALIVE
      ? `Below ${LEAST_ALIVE} % alive many would not use it at all (from memory): the dead feed what should not grow. More of it does not mend that.`
      : `Doses of 10 to 20 million are recalled, and doses by weight come to two or three times that: ask your house. So small a count is known to about ${n(196 * Math.sqrt((alive * dead) / (alive + dead) ** 3), 0)} points either way; count some hundreds. Which stain shows the dead, and how it is handled, your laboratory’s method says.`,
  examples: [
    {
      given: { wort: 20_000, cells: 15, perGram: 10, alive: 240, dead: 60 },
      gives: { mass: 37.5, viability: 80, extra: 7.5, count: 18.75 },
      within: 1e-12,
      source: 'derived',
      note: 'by hand: 15 × 20,000 ÷ 10,000 = 30 kg, and four fifths alive: 30 ÷ 0.8',
    },
  ],
});
