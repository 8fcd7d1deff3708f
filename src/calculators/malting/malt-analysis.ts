// From nitrogen and corn size to the spirit that a malt could give.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import {
  estimatedExtract,
  EXTRACT_FROM_SIZE,
  EXTRACT_LOST_TO_PROTEIN,
  extractAsIs,
  PROTEIN_PER_NITROGEN,
  proteinFromNitrogen,
} from '../../core/malting/analysis.ts';
import {
  fermentableExtract,
  predictedSpiritYield,
  SPIRIT_YIELD_FACTOR,
} from '../../core/malting/spirit-yield.ts';
import { percent, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

const USUAL_NITROGEN = [1.4, 1.65] as const; // % of the dry matter; barley for distilling, from memory

export default defineCalculator({
  id: 'malt-analysis',
  stage: 'malting',
  title: 'From nitrogen to spirit',
  purpose: 'Estimates a malt’s extract from nitrogen and corn size, and sets it beside the measured one.',
  sources: ['bishop-1930', 'memory', 'bringhurst-1996'],
  readings: ['nitrogen', 'thousandCorns'],
  inputs: {
    nitrogen: {
      kind: 'nitrogen',
      label: 'Nitrogen, of the dry matter',
      range: [0.8, 3],
      step: 0.01,
      value: 1.5,
    },
    thousandCorns: {
      kind: 'grams',
      label: 'Thousand-corn weight, dry',
      range: [20, 60],
      step: 0.5,
      value: 38,
    },
    constant: { kind: 'percent', label: 'Constant for the barley', range: [78, 90], step: 0.1, value: 84.5 },
    moisture: { house: 'maltMoisture' },
    fermentability: { house: 'fermentability' },
    measured: { label: 'Soluble extract, measured', house: 'solubleExtract' },
  },
  main: ['nitrogen', 'constant', 'moisture', 'fermentability'],
  outputs: {
    protein: { kind: 'percent', label: 'Protein, of the dry matter', digits: 2 },
    dryExtract: { kind: 'percent', label: 'Extract of the dry matter, estimated' },
    asIs: { kind: 'percent', label: 'Extract of the malt, as is' },
    fermentable: { kind: 'percent', label: 'Fermentable extract' },
    yield: { kind: 'yield', label: 'Predicted spirit yield' },
    over: { kind: 'points', label: 'Measured extract minus the estimate' },
  },
  compute: ({ moisture, fermentability, measured, ...barley }) => {
    const dryExtract = estimatedExtract(barley);
    const asIs = extractAsIs(dryExtract, moisture);
    return {
      protein: proteinFromNitrogen(barley.nitrogen),
      dryExtract,
      asIs,
      fermentable: percent(fermentableExtract(asIs, fermentability)),
      yield: predictedSpiritYield({ extract: asIs, fermentability }),
      over: quantity('points', measured - asIs),
    };
  },
  steps: (given, result) => [
    `Protein = ${PROTEIN_PER_NITROGEN} × nitrogen (from memory) = ${PROTEIN_PER_NITROGEN} × ${given.nitrogen} = ${w(result.protein)} %`,
    `Extract of the dry matter = constant − ${EXTRACT_LOST_TO_PROTEIN} × protein + ${EXTRACT_FROM_SIZE} × weight of a thousand corns: Bishop’s equation, from memory`,
    `${given.constant} − ${EXTRACT_LOST_TO_PROTEIN} × ${w(result.protein)} + ${EXTRACT_FROM_SIZE} × ${given.thousandCorns} = ${w(result.dryExtract, 8)} %`,
    `As it is = that × (100 − moisture) ÷ 100 = ${w(result.dryExtract, 8)} × (100 − ${given.moisture}) ÷ 100 = ${w(result.asIs)} %`,
    `Fermentable extract = ${w(result.asIs)} × ${given.fermentability} ÷ 100 = ${w(result.fermentable)} %`,
    `Yield = ${SPIRIT_YIELD_FACTOR} × ${w(result.fermentable)} = ${n(result.yield, 1)} L of pure alcohol a tonne`,
  ],
  remark: ({ nitrogen }, { over }) => {
    const gap =
      Math.abs(over) < 1
        ? `The measured extract is within a point of the estimate.`
        : `The measured extract is ${n(Math.abs(over), 1)} points ${over > 0 ? 'above' : 'below'} the estimate; the constant goes with the variety and the laboratory’s mash, so fit it to malts you have measured.`;
    return nitrogen > USUAL_NITROGEN[1]
      ? `Barley for distilling usually has 1.40 to 1.65 % nitrogen, from memory; more protein leaves less room for starch. ${gap}`
      : gap;
  },
  examples: [
    {
      given: {
        nitrogen: 1.55,
        thousandCorns: 40,
        constant: 84.5,
        moisture: 5,
        fermentability: 87,
        measured: 77.5,
      },
      gives: { protein: 9.6875, dryExtract: 82.265625, asIs: 78.15234375 },
      within: 1e-9,
      source: 'bishop-1930',
      note: 'the equation by hand: 84.5 − 0.85 × 9.6875 + 0.15 × 40; protein is a worked sum, 6.25 × 1.55',
    },
    {
      given: {
        nitrogen: 1.5,
        thousandCorns: 38,
        constant: 84.5,
        moisture: 4.5,
        fermentability: 87,
        measured: 77.5,
      },
      gives: { asIs: 77.5, yield: 410 },
      within: 0.02,
      source: 'memory',
      note: 'distilling malt is usually at 76 to 79 % and about 410 L a tonne; the middle of both, within two hundredths',
    },
    {
      given: {
        nitrogen: 1,
        thousandCorns: 40,
        constant: 84.5,
        moisture: 5,
        fermentability: 90,
        measured: 77.5,
      },
      gives: { protein: 6.25 },
      within: 1e-9,
      source: 'derived',
      note: 'crude protein is nitrogen × 6.25 by definition; for the protein of wheat and most cereals a dictionary of food prints 5.8',
    },
  ],
});
