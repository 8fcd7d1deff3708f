// What to say to somebody who wants to distil at home.
import { choice } from '../../choice.ts';
import { judgedBefore, judging, ONE_TONE_SINCE, type JudgedOption } from '../../judged.ts';
import before from './before/a-still-at-home.ts';

const would: readonly JudgedOption[] = [
  [
    'You need a licence as soon as you begin, nearly everywhere.',
    'Spirits for one’s own use are not exempt in the United Kingdom, and few countries are kinder.',
  ],
  [
    'Leave it alone: the vapour burns, and a kitchen has flames.',
    'Vapour of spirit over a flame in a kitchen is how houses burn.',
  ],
  [
    'The law looks at the making, even if nothing is sold.',
    'Making without a licence is what it forbids, and not only selling.',
  ],
  [
    'Come and see it made first, in a house that has a licence.',
    'A licensed house may make spirit, and a visitor may look on.',
  ],
  [
    'Stop at low wines, and you have made spirit all the same.',
    'The first distilling makes spirit already, as the law has it.',
  ],
];
const wouldNot: readonly JudgedOption[] = [
  [
    'You need a licence as soon as it is sold, and not before.',
    'Making is what the law forbids without a licence, and not only selling.',
  ],
  [
    'The law looks at the size, and leaves a small still alone.',
    'There is no such lower limit: it is the making of spirits that needs approval, in any still.',
  ],
  [
    'Keep to low wines, and then you need no licence.',
    'Low wines are spirit already: the first distilling makes them.',
  ],
  [
    'Leave it in wood for three years, so that it is within the law.',
    'The three years are for the name of whisky. They make no licence.',
  ],
  [
    'Report it when it is made, and a licence will follow.',
    'Leave comes before the making. No report afterwards puts it right.',
  ],
];

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
    const asks = `asks how to make malt spirit at home in a still of ${size} L, ${plea}. What do you say?`;
    return chance.generator < ONE_TONE_SINCE
      ? judgedBefore(`${who} ${asks}`, before(size))
      : judging(`${who} in the United Kingdom ${asks}`, would, wouldNot);
  },
});
