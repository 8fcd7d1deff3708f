// Protein of a barley from its nitrogen.
import { formatNumber as n } from '../../../core/format.ts';
import { PROTEIN_PER_NITROGEN, proteinFromNitrogen } from '../../../core/malting/analysis.ts';
import { quantity } from '../../../core/quantity.ts';
import { sum } from '../../sum.ts';

const WHEAT = 5.7; // the factor for wheat, from memory

export default sum({
  id: 'protein-from-nitrogen',
  title: 'Protein from nitrogen',
  topic: 'malting',
  level: 1,
  sources: ['memory'],
  of: 'percent',
  to: 2,
  vary: { nitrogen: ['nitrogen', Array.from({ length: 71 }, (_, i) => (130 + i) / 100)] },
  answer: ({ nitrogen }) => proteinFromNitrogen(quantity('nitrogen', nitrogen)),
  prompt: ({ nitrogen }) =>
    `The analysis of a barley gives ${nitrogen} nitrogen in the dry matter. One part of nitrogen is taken to stand for ${PROTEIN_PER_NITROGEN} parts of protein in barley. How much protein is in the dry matter?`,
  working: ({ nitrogen }, protein) => [
    `Protein = ${PROTEIN_PER_NITROGEN} × nitrogen`,
    `${PROTEIN_PER_NITROGEN} × ${nitrogen} = ${n(protein, 2)} %`,
  ],
  slips: [
    {
      family: 'upsideDown',
      gives: ({ nitrogen }) => nitrogen / PROTEIN_PER_NITROGEN,
      say: 'The factor was divided by; protein holds more than its nitrogen, so multiply.',
    },
    {
      family: 'wrongConstant',
      gives: ({ nitrogen }) => WHEAT * nitrogen,
      say: `That is the factor for wheat, ${WHEAT}; for barley it is ${PROTEIN_PER_NITROGEN}.`,
    },
  ],
});
