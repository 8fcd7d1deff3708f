// Every kind of question, over many seeds: sound, finite, told apart from its known mistakes.
import { describe, expect, test } from 'vitest';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { kinds } from '../../src/exercises/kinds/index.ts';
import { isNumberQuestion } from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const SEEDS = 300;

test('ids are unique', () => {
  expect(new Set(kinds.map(({ id }) => id)).size).toBe(kinds.length);
});

describe.each(kinds.map((kind) => [kind.id, kind] as const))('%s', (_, kind) => {
  test('draws a sound question from every seed', () => {
    const prompts = new Set<string>();
    for (let seed = 0; seed < SEEDS; seed++) {
      const question = drawQuestion(kind, String(seed), builtInHouse);
      if (!question) throw new Error(`seed ${seed} draws nothing`);
      prompts.add(
        JSON.stringify([
          question.prompt,
          'items' in question ? question.items : '',
          'options' in question ? question.options : '',
        ]),
      );
      const said = [
        question.prompt,
        ...question.working,
        ...(isNumberQuestion(question) ? question.slips.map(({ say }) => say) : []),
      ].join(' ');
      expect(said).not.toMatch(/NaN|undefined|Infinity|\[object/);
      expect(question.prompt).toMatch(/[.?]$/);
    }
    expect(prompts.size, 'different questions').toBeGreaterThan(10);
  });
});
