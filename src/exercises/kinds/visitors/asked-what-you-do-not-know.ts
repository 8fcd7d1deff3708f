// A visitor asks for a figure that the guide does not have.
import { choice } from '../../choice.ts';
import { judging, type JudgedOption } from '../../judged.ts';

const would: readonly JudgedOption[] = [
  [
    'I do not know that one; I will ask and write to you, if you leave an address.',
    'What is not known is said, and found out.',
  ],
  [
    'One trade gives a figure for all its houses, and I cannot say how ours compares.',
    'A figure told with what it counts misleads nobody.',
  ],
  [
    'The manager has that from the records, and I would only be guessing.',
    'It names who knows, and guesses nothing.',
  ],
  [
    'I have a figure in my notes, but it is years old; let me look it up for you.',
    'An old figure is not told as today’s.',
  ],
  [
    'Nobody has measured that here yet, as far as I know, but it is a fair question.',
    'Not measured is an answer, and a true one.',
  ],
];

const wouldNot: readonly JudgedOption[] = [
  [
    'I think it is about what others have, so you may take their figure for ours.',
    'Another house’s figure is not this one’s.',
  ],
  [
    'It is less every year, and that is as much as anybody needs to know.',
    'It tells nothing, and may not be true. Say that you do not know, and ask.',
  ],
  [
    'About a tenth, I would say, and nobody has ever told me otherwise.',
    'A guess with a number is quoted as a fact. Here it does most harm.',
  ],
  [
    'It is within what is allowed, as otherwise we would have heard of it.',
    'Nobody knows that from having heard nothing. The site’s own records say it.',
  ],
  [
    'I have never looked, but for a house of this size it must be next to nothing.',
    'That it must be small is a guess like any other.',
  ],
];

const kind = choice({
  id: 'asked-what-you-do-not-know',
  title: 'Asked what you do not know',
  topic: 'visitors',
  form: 'judgement',
  level: 1,
  sources: ['common-practice'],
  ask: (chance) => {
    const asks = chance.pick([
      'How much of your water goes back into the river?',
      'How much of the copper leaves with what you drain?',
      'How much of your heat do you lose?',
      'How much of your spirit gets spilt?',
      'How much of your smoke comes down on the village?',
    ]);
    const who = chance.pick(['A visitor', 'A teacher with her class', 'A neighbour on the open day']);
    return judging(
      `“${asks}” ${who} asks, and you do not have the figure. What do you say?`,
      would,
      wouldNot,
    );
  },
});

export default { ...kind, since: 7 };
