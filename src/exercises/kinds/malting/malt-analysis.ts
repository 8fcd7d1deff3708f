// A malt's extract as it is, from nitrogen and the size of the corn.
import maltAnalysis from '../../../calculators/malting/malt-analysis.ts';
import { formatNumber as n } from '../../../core/format.ts';
import {
  EXTRACT_FROM_SIZE,
  EXTRACT_LOST_TO_PROTEIN,
  PROTEIN_PER_NITROGEN,
} from '../../../core/malting/analysis.ts';
import { exercise } from '../../exercise.ts';

export default exercise(maltAnalysis, {
  title: 'Extract from nitrogen and corn size',
  level: 2,
  ask: 'asIs',
  vary: {
    nitrogen: [1.4, 1.44, 1.48, 1.5, 1.52, 1.56, 1.6, 1.64],
    thousandCorns: [35, 36, 37, 38, 39, 40, 41, 42],
    constant: [84, 84.5, 85],
    moisture: [4, 4.5, 5, 5.5],
  },
  within: 0.005,
  prompt: (show, { constant }) =>
    `A barley has ${show.nitrogen} nitrogen in the dry matter, and a thousand of its corns weigh ${show.thousandCorns} dry. Its extract, in % of the dry matter, is estimated at ${constant} − ${EXTRACT_LOST_TO_PROTEIN} × protein + ${EXTRACT_FROM_SIZE} × the grams of a thousand corns, and protein is ${PROTEIN_PER_NITROGEN} × nitrogen. What extract would the malt have as it is, at ${show.moisture} moisture?`,
  slips: [
    {
      family: 'wetForDry',
      gives: (_, { dryExtract }) => dryExtract,
      say: 'That is the extract of the dry matter; the malt as it is holds water too, so its extract is lower.',
    },
    {
      family: 'forgotten',
      gives: ({ nitrogen, thousandCorns, constant, moisture }) =>
        (constant - EXTRACT_LOST_TO_PROTEIN * nitrogen + EXTRACT_FROM_SIZE * thousandCorns) *
        (1 - moisture / 100),
      say: `The nitrogen was put in for the protein; multiply it by ${PROTEIN_PER_NITROGEN} first.`,
    },
    {
      family: 'upsideDown',
      gives: ({ moisture }, { dryExtract }) => dryExtract / (1 - moisture / 100),
      say: 'The dry matter’s share was divided by instead of multiplied with; water can only thin the extract.',
    },
  ],
  working: (given, { protein, dryExtract, asIs }) => [
    `Protein: ${PROTEIN_PER_NITROGEN} × ${given.nitrogen} = ${n(protein, 2)} %`,
    `Extract of the dry matter: ${given.constant} − ${EXTRACT_LOST_TO_PROTEIN} × ${n(protein, 2)} + ${EXTRACT_FROM_SIZE} × ${given.thousandCorns} = ${n(dryExtract, 2)} %`,
    `As it is: ${n(dryExtract, 2)} × (100 − ${given.moisture}) ÷ 100 = ${n(asIs, 1)} %`,
  ],
});
