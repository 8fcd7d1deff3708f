// What share of a file of questions is answered with the right entry: node tests/asking/measure.ts <file.yaml>
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { answerer, isAnswer } from '../../src/asking/answer.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { list } from './list.ts';

console.log(typeof parse, typeof readFileSync, list.entries.length);
const answer = answerer(list);
for (const question of process.argv.slice(2)) {
  const from = performance.now();
  const found = answer({ question, house: builtInHouse });
  console.log(question, '→', isAnswer(found) ? `[${found.id ?? 'reckoned'}] ${found.says} (${found.sum ?? ''})` : `?? ${found.nearest.map(({ id }) => id).join(', ')}`, `${(performance.now() - from).toFixed(1)} ms`); // prettier-ignore
}
