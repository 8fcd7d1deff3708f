// Questions that a guide answers in plain words, in three talks that were written before six of their 35 answers were known; and what those talks do leave open.
import { expect, test } from 'vitest';
import { questionsOfChapter } from '../../src/build/visitor-questions.ts';
import { answeredPlainly } from '../../src/talk/answered-plainly.ts';
import { unanswered } from '../../src/talk/unanswered.ts';
import { chapters } from '../content/read.ts';

const coastal = `
Come in out of the wind. Keep your mobiles in your pockets past this door, if you would.
The barley grows on Hendry's farm, you drove past it; he and his sister have had it for forty years.
We draw our water out of the lochan above the road. It is brown with peat, and no, that isn't what makes it taste of smoke.
There are four backs, all larch. The yeast goes in on a Monday and by Wednesday night there is nothing left for it to eat.
I would not put my nose over the edge, the fumes make you dizzy.
What the cows get is the draff, every afternoon, warm.
Twice through the stills. The first cut goes back in with the next charge, and so do the tails.
No caramel in ours, and it isn't chill-filtered either.
Try it as it comes, then with a drop of water.`;

const town = `
Hello all. Photographs are fine everywhere but the still room.
Our malt is all from this county: six growers, none more than twenty miles off.
Water? Straight out of the mains, I'm afraid.
The fermenters are stainless. Four days in there, and it ends at about eight and a half per cent.
That whole cloud of gas goes out through the fan in the roof.
We run it three times. Copper cleans it: it takes away the eggy sulphur smells.
It sleeps in oak, because oak breathes and does not leak, and every year some two per cent is gone: the angels.
The figure on the front is the youngest whisky in the vat.
Once it is in glass it does not get any older.
A good half of the price is duty.`;

const island = `
You may film, but please no flash.
The grain is shipped in from the mainland; nothing ripens here.
A bore-hole, ninety metres down, gives us all that we use.
The mash goes into six wooden tubs, Douglas fir. Sixty hours, no less.
No peat at all: they dry it with warm air.
Don't ask me to make it in your kitchen, you would need a licence and it is dangerous.
The necks are tall, so only the lightest gets over.
We fill sherry butts, and one gives about six hundred bottles.
Fifty-eight per cent, straight out of the cask: that is what cask strength means.`;

/** The book's questions, without words of their own: what is not told plainly stays open. */
const questions = chapters.flatMap(({ id, body }) =>
  questionsOfChapter(id, id, body).map((each) => ({ ...each, words: [] })),
);

test('every question that is told as answered in plain words is asked in the book', () => {
  const asked = new Set(questions.map(({ id }) => id));
  expect(Object.keys(answeredPlainly).filter((id) => !asked.has(id))).toEqual([]);
});

test.each([
  ['of the coast', coastal,
    ['May I use my phone', 'Is the barley local', 'Where does the water come from', 'Wood or steel', 'Can I lean over', 'Where do the grains go', 'How many times', 'What do you throw away', 'Is colour added', 'Is it chill filtered', 'Should I add water', 'How long does it take?'],
    ['Why copper', 'Why not grind it all', 'How many bottles', 'Is the gas captured', 'What is cask strength', 'Can I do this at home', 'Why is it so dear', 'How big a field']],
  ['of the town', town,
    ['May I use my phone', 'Is the barley local', 'Where does the water come from', 'Wood or steel', 'How strong is the wash', 'Is the gas captured', 'How many times', 'Why copper', 'Why casks', 'What is the angels', 'What does the age', 'Does it go on ageing', 'Why is it so dear'],
    ['Where do the grains go', 'Is it chill filtered', 'Is colour added', 'Why are the stills this shape', 'What is peat for', 'Why not just boil', 'How many bottles', 'How old is the youngest']],
  ['of the island', island,
    ['May I use my phone', 'Is the barley local', 'Where does the water come from', 'Wood or steel', 'How long does it take?', 'What is peat for', 'Can I do this at home', 'Why are the stills this shape', 'How many bottles', 'What is cask strength'],
    ['Where do the grains go', 'How many times', 'Why copper', 'Is colour added', 'What is the angels', 'How strong is the wash', 'Is the gas captured', 'Should I add water']],
] as const)('a talk %s: what it answers is not asked, and what it leaves open is', (_, text, answers, leaves) => {
  const open = unanswered(text, questions).map(({ question }) => question.question);
  for (const begins of leaves) expect(open.some((each) => each.startsWith(begins)), `still asked: ${begins}`).toBe(true);
  expect(open.filter((each) => answers.some((begins) => each.startsWith(begins)))).toEqual([]);
}); // prettier-ignore
