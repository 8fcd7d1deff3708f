// Mistakes that a reader makes, reckoned here from the numbers of the prompt: each is known for what it is.
import { expect, test } from 'vitest';
import trace from '../../src/exercises/kinds/distilling/trace-left-in-the-pot.ts';
import river from '../../src/exercises/kinds/heat/how-far-the-river-warms.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { mark } from '../../src/exercises/mark.ts';
import type { QuestionKind } from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';

/** Draws a kind twelve times; the numbers of each prompt, and what is said of an answer to it. */
const draws = (kind: QuestionKind) =>
  Array.from({ length: 12 }, (_, seed) => drawQuestion(kind, `mistake/${seed}`, builtInHouse)!).map(
    (question) => ({
      numbers: [...question.prompt.matchAll(/\d+(?:\.\d+)?/g)].map(Number),
      say: (answer: number) => mark(question, answer.toFixed(3)).say,
      question,
    }),
  );

test('the part boiled off, raised to the power in place of the part that is left', () => {
  // Rayleigh's law with a volatility that stays: what is left of the trace is (what is left of the pot)^volatility.
  for (const { numbers, say } of draws(trace)) {
    const [volatility, boiled] = numbers as [number, number];
    expect(say(100 * (boiled / 100) ** volatility)).toContain('The part boiled off was raised to the power');
    expect(say(100 - boiled)).toContain('boils out at its own rate');
  }
});

test('the heat of a river spread over what stayed in it, and the rule that its working begins with', () => {
  for (const { numbers, say, question } of draws(river)) {
    const [brings, drawn, rise] = numbers.filter((n) => n !== 3) as [number, number, number]; // without the 3 of m3
    expect(say((drawn * rise) / (brings - drawn))).toContain('spread over what stayed in the river');
    expect(question.working[0]).toContain('rise of the river = flow drawn × its rise ÷ flow of the river');
    expect(question.working[1]).toContain(`÷ ${brings}`);
  }
});
