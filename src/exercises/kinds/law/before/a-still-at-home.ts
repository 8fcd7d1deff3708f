// What sheets of generators before 7 show for “Somebody wants to try it at home”, of a still of some litres.
import type { Before } from '../../../judged.ts';

export default (litres: number): Before => ({
  right: [
    'No: that needs a licence nearly everywhere, in any amount.',
    'In the United Kingdom spirits for one’s own use are not exempt, and few countries are kinder. And the vapour burns.',
  ],
  others: [
    [
      'It is allowed as long as nothing is sold.',
      'Making is what the law forbids without a licence, and not only selling.',
    ],
    [
      `It is allowed, for a still of ${litres} L is too small for the law.`,
      'There is no such lower limit: it is the making of spirits that needs approval, in any still.',
    ],
    [
      'It is allowed up to the low wines; only the second distilling needs a licence.',
      'Low wines are spirit already: the first distilling makes them.',
    ],
    [
      'It is allowed if the spirit is kept for three years.',
      'The three years are for the name of whisky. They make no licence.',
    ],
  ],
  would: [
    [
      'It is forbidden nearly everywhere without a licence, in any amount.',
      'In the United Kingdom spirits for one’s own use are not exempt, and few countries are kinder.',
    ],
    ['It needs a licence even if nothing is ever sold.', 'The making is what the law looks at.'],
    [
      'It is dangerous as well, for the vapour burns.',
      'Vapour of spirit over a flame in a kitchen is how houses burn.',
    ],
    [
      'It is no different with low wines: they are spirit too, as the law has it.',
      'The first distilling makes spirit already.',
    ],
  ],
});
