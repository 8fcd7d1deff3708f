// What to say to somebody who wants to distil at home.
import { choice } from '../../choice.ts';

export default choice({
  id: 'a-still-at-home',
  title: 'Somebody wants to try it at home',
  topic: 'law',
  form: 'judgement',
  level: 1,
  sources: ['fa-2023', 'uk-technical-guide'],
  ask: (chance) => {
    const who = chance.pick(['A friend', 'A visitor', 'A neighbour', 'A cousin', 'A guest on a tour']);
    const size = chance.pick([1, 2, 3, 5, 10, 20]);
    const plea = chance.pick([
      'only for the family',
      'only to see how it is done',
      'with nothing for sale',
      'as a hobby in winter',
    ]);
    return {
      prompt: `${who} asks how to make malt spirit at home in a still of ${size} L, ${plea}. What do you say?`,
      right: {
        text: 'No: that needs a licence nearly everywhere, in any amount.',
        why: 'In the United Kingdom spirits for one’s own use are not exempt, and few countries are kinder. And the vapour burns.',
      },
      others: [
        {
          text: 'It is allowed as long as nothing is sold.',
          why: 'Making is what the law forbids without a licence, and not only selling.',
        },
        {
          text: `It is allowed, for a still of ${size} L is too small for the law.`,
          why: 'There is no such lower limit: it is the making of spirits that needs approval, in any still.',
        },
        {
          text: 'It is allowed up to the low wines; only the second distilling needs a licence.',
          why: 'Low wines are spirit already: the first distilling makes them.',
        },
        {
          text: 'It is allowed if the spirit is kept for three years.',
          why: 'The three years are for the name of whisky. They make no licence.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'It is forbidden nearly everywhere without a licence, in any amount.',
            why: 'In the United Kingdom spirits for one’s own use are not exempt, and few countries are kinder.',
          },
          {
            text: 'It needs a licence even if nothing is ever sold.',
            why: 'The making is what the law looks at.',
          },
          {
            text: 'It is dangerous as well, for the vapour burns.',
            why: 'Vapour of spirit over a flame in a kitchen is how houses burn.',
          },
          {
            text: 'It is no different with low wines: they are spirit too, as the law has it.',
            why: 'The first distilling makes spirit already.',
          },
        ],
      },
    };
  },
});
