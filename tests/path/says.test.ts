// What comes next, in the words that the front page and the first weeks both say.
import { expect, test } from 'vitest';
import { nextSays, type Names, type SaidSentence } from '../../src/islands/path-says.ts';
import { pathStages } from '../../src/path/stages.ts';

const names: Names = {
  kinds: { kiln: 'Water that the kiln drives off', draff: 'Draff' },
  guesses: { 'steep-water': 'Water in the steep' },
  passages: { kiln: 'malting/#heat-stops-it', draff: 'mashing/#what-stays-in-the-draff' },
};
const malting = pathStages[0]!;
const text = ({ pieces }: SaidSentence) =>
  pieces.map((each) => (typeof each === 'string' ? each : 'b' in each ? each.b : each.says)).join('');
const lesson = malting.lessons[0]!;
const step = lesson.steps[0]!;

test('what was missed is named, with its passage, and practice of it leads back to the stage', () => {
  const said = nextSays({ because: 'missed', stage: malting, kinds: ['kiln', 'draff'] }, names);
  expect(text(said)).toBe(
    'Next, because you missed it last time: Water that the kiln drives off; Draff. Read the passage again, then try once more.',
  );
  expect(said.pieces).toContainEqual({ at: 'malting/#heat-stops-it', says: 'the passage' });
  expect(said.go!.at).toBe('practice/#kinds=kiln,draff&stage=malting');
});

test('a stage begins with Begin, and goes on where it was; the link opens the lesson', () => {
  const next = { because: 'step', stage: malting, lesson, step } as const;
  const [fresh, begun] = (['new', 'begun'] as const).map((stands) => nextSays({ ...next, stands }, names));
  expect([fresh!.go!.says, begun!.go!.says]).toEqual(['Begin', 'Go on where you were']);
  expect(begun!.go!.opens).toMatchObject({ stage: 'malting', now: 'guess:steep-water' });
  expect(text(fresh!)).toBe(
    'Next: Malting, Water wakes the grain, heat stops it. Guess: Water in the steep.',
  );
  expect(text(nextSays({ ...next, stands: 'signed' }, names))).toContain(
    'still open in Malting, which is signed',
  );
});

test('staying safe is asked for before the sheet, and the sheet is led to by a name of its own', () => {
  const safe = nextSays({ because: 'safe', stage: malting, lesson, step }, names);
  expect(text(safe)).toContain('nobody is signed off before staying safe');
  const sign = nextSays({ because: 'sign', stage: malting, open: 2 }, names);
  expect(sign.go).toEqual({ at: 'first-weeks/malting/#sign', says: 'To the sheet' });
  expect(text(sign)).toContain('2 steps of its lessons');
});
