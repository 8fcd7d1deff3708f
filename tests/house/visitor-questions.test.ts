// What the pocket cards say: only what is true of the house, in plain words, with its standing.
import { describe, expect, test } from 'vitest';
import { line, type Line } from '../../src/core/line/line.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { cardFigures, saidOnCard } from '../../src/house/card-figures.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { figureValue } from '../../src/house/prose.ts';
import { chapters } from '../content/read.ts';
import { factsPart } from '../../src/house/parts/facts.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { readPart } from '../../src/house/parts/part.ts';
import { facts, factSays, type FactId } from '../../src/house/facts.ts';
import { questionsOfChapter } from '../../src/build/visitor-questions.ts';
import { answerText, hasFigures, notSaid } from '../../src/house/visitor-questions.ts';

const questions = chapters.flatMap(({ id, body }) => questionsOfChapter(id, id, body));
function changed(figures: object): Line {
  const found = line({ ...builtInHouse, ...figures });
  if ('refused' in found) throw new Error(found.refused);
  return found;
}
const damp = changed({ storeHumidity: 95, yearsInWood: 40 });
const dry = changed({ storeHumidity: 45 });
const cards = (of: Line) =>
  questions.map(({ question, say, know }) => `${question} ${answerText(say, of)} ${answerText(know, of)}`);

test('the houses of this test differ: one spirit falls below 40 % vol, one grows stronger', () => {
  expect(damp.matured.strength).toBeLessThan(40);
  expect(dry.matured.strength).toBeGreaterThan(dry.filling.strength);
  expect(builtInLine().matured.strength).toBeGreaterThan(40);
});

describe.each([
  ['built in', builtInLine()],
  ['damp', damp],
  ['dry', dry],
])('cards of a house: %s', (_, of) => {
  test('a card says that the spirit is below 40 % vol only where it is', () => {
    const says = cards(of).some((text) => /below the 40/.test(text));
    expect(says).toBe(of.matured.strength < 40);
  });
  test('no card carries marks of the page', () => {
    for (const text of cards(of)) {
      expect(text).not.toMatch(/[<>{}$\\*]|\]\(|undefined|NaN/);
      expect(text).not.toMatch(/ {2}| [.,;]/);
    }
  });
  test('every figure of a card is said, and close to what it is', () => {
    for (const figure of cardFigures) {
      const text = saidOnCard(figure, of);
      expect(text, figure.label).toMatch(/\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve/);
      expect(text, figure.label).not.toMatch(/NaN|undefined| $/);
      expect(figureValue(of, figure.path)).toBeGreaterThanOrEqual(0);
    }
  });
});

test('questions of the later chapters are there, each with an id of its own', () => {
  const asked = questions.map(({ question }) => question);
  for (const wanted of ['How much water does it take?', 'What makes it single malt?', 'What does 40 % mean?'])
    expect(asked).toContain(wanted);
  expect(new Set(questions.map(({ id }) => id)).size).toBe(questions.length);
});

const read = (say: string, know = 'Nothing.') =>
  questionsOfChapter(
    'here',
    'Here',
    `## What visitors ask\n\n### Why?\n\n**To say.** ${say}\n\n**To understand.** ${know}\n`,
  )[0]!;
const said = (markdown: string, of: Line = builtInLine()) => answerText(read(markdown).say, of);

test('a condition keeps its words for the houses of which they are true', () => {
  const text = 'It ages. <When is="strength-rises">It grows stronger.</When><When is="strength-falls">It grows weaker.</When>';
  expect(said(text, dry)).toBe('It ages. It grows stronger.');
  expect(said(text, damp)).toBe('It ages. It grows weaker.');
  expect(() => said('<When is="moonlight">It shines.</When>')).toThrow('moonlight');
}); // prettier-ignore

test('the standing of a figure stays, formulas and links become words, and an order becomes a blank', () => {
  expect(said('About 4 % <Source of="memory" />.')).toBe('About 4 % (from memory).');
  expect(said('So $6 \u00d7 7 = 42$, see [milling](/milling/), *really*.')).toBe('So 6 \u00d7 7 = 42, see milling, really.'); // prettier-ignore
  expect(said('Say the age of yours. Many are old.')).toBe('Ours: ____________. Many are old.');
});

test('a card without a figure of the house does not claim one', () => {
  expect(hasFigures(read('Because it takes sulphur.').say, builtInLine())).toBe(false);
  expect(hasFigures(read('It is <Figure of="wash.strength" /> here.').say, builtInLine())).toBe(true);
  const only = read('<When is="below-forty"><Figure of="matured.strength" /></When>').say;
  expect(hasFigures(only, builtInLine())).toBe(false);
  expect(hasFigures(only, damp)).toBe(true);
});

test('a fact is told in the words of the house, and the sentence that asks for it stays where there are none', () => {
  const markdown = '<Fact of="colouring">Say what your house does.</Fact> It is allowed.';
  const answer = read(markdown, markdown);
  const says = (fact: FactId) => (fact === 'colouring' ? 'Never.' : undefined);
  expect(answerText(answer.say, builtInLine(), undefined, says)).toBe('Never. It is allowed.');
  expect(answerText(answer.say, builtInLine())).toBe('Ours: ____________. It is allowed.');
  expect(answerText(answer.know, builtInLine())).toBe('Say what your house does. It is allowed.');
  expect(notSaid(answer.say, says)).toEqual([]);
  expect(notSaid(answer.say, () => undefined)).toEqual(['colouring']);
  expect(hasFigures(answer.say, builtInLine())).toBe(false);
  expect(() => said('<Fact of="ghosts">Say so.</Fact>')).toThrow('ghosts');
});

test('no answer asks the guide for what is not on the fact sheet, and the built-in house’s cards have no blank', () => {
  const given = readPart(factsPart, builtInParts.facts).value;
  const says = (fact: FactId) => factSays(given, fact);
  for (const { question, say, know } of questions) {
    const all = `${answerText(say, builtInLine(), undefined, says)} ${answerText(know, builtInLine(), undefined, says)}`;
    expect(all, question).not.toMatch(/____|\b(yours|your house) (does|came)/);
  }
  const asked = questions.flatMap(({ say, know }) => notSaid([...say, ...know], () => undefined));
  for (const fact of ['water', 'barley', 'grown', 'mill', 'washbacks', 'colouring'] as const) {
    expect(asked).toContain(fact);
    expect(questions.map(({ question }) => question)).toContain(facts[fact].asks);
  }
});

test('a space before what is said only of some houses stays', () => {
  expect(said('A bottle<When is="one-bottle"> of <Figure of="house.bottleSize" /></When>.')).toBe('A bottle of 70 cL.');
}); // prettier-ignore
