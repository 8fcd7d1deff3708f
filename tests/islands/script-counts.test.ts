// What is counted in a talk never says otherwise than its verdict.
import { expect, test } from 'vitest';
import { reconcile } from '../../src/core/cross-check/reconcile.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { countedInTalk, withoutVerdict } from '../../src/islands/script-counts.ts';
import { quotedOf, readLines, takenIn } from '../../src/islands/script-taken.ts';
import { verdictOf } from '../../src/islands/script-verdict.ts';

/** Figures typed by their names, with what they say together and what is counted of them. */
function readOf(text: string) {
  const script = readLines(text, true);
  const { taken } = takenIn(text, script.quantities, {}, true);
  const quoted = quotedOf(taken);
  const answer = Object.keys(quoted).length === 0 ? undefined : reconcile(quoted);
  if (answer && isRefusal(answer)) throw new Error(answer.refused);
  const read = { script, taken, answer };
  return { counts: countedInTalk(read), says: answer ? verdictOf(answer).first : withoutVerdict(read) };
}

test('where the verdict says that none can be checked, so does the count', () => {
  const { counts, says } = readOf('Malt a mash: 9,400\nHours in the washback: 60\nBottling strength: 46');
  expect(says).toContain('None of these figures can be checked against the others');
  expect(counts).toBe('3 quantities found; 3 are taken for figures of the house, of which none can be checked against the others.'); // prettier-ignore
  expect(readOf('Bottling strength: 46').counts).toBe('One quantity found; one is taken for a figure of the house, and nothing checks it.'); // prettier-ignore
});

test('those that a balance ties together are counted, and nothing else', () => {
  // 1,000 L at 70 % vol hold 700 L: these three check each other, and the hours nothing.
  const three = 'New spirit from a mash: 1,000\nHeart strength: 70\nPure alcohol from a mash: 700';
  expect(readOf(`${three}\nHours in the washback: 60`).counts).toMatch(/4 are taken .*, of which 3 can be checked/);
  expect(readOf(three).counts).toMatch(/of which all can be checked/);
}); // prettier-ignore

test('without a figure that is sure, it says so', () => {
  expect(readOf('Welcome to the house.').says).toBe('No figure was found.');
  const text = 'It is 4 of them.';
  const script = readLines(text, false);
  expect(withoutVerdict({ script, taken: {} })).toBe('No figure is sure yet.');
  expect(countedInTalk({ script, taken: {}, answer: undefined })).toBe('One quantity found; none is taken for a figure of the house yet.'); // prettier-ignore
});
