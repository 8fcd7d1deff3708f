// The lists of calculators and kinds of question are what `npm run gather` writes from their folders, in an order that stays.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { gathered, inOrder } from '../../src/build/gather.ts';
import { calculators } from '../../src/calculators/index.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';

const root = join(import.meta.dirname, '..', '..');
const files = gathered();

test.each([...files.keys()])('%s is as the files of its folder make it', (file) => {
  const now = readFileSync(join(root, file), 'utf8');
  expect(now, `${file} is not what its folder holds: npm run gather`).toBe(files.get(file));
});

test('a calculator and a kind of question have the names of their files', () => {
  const named = (file: string) =>
    [...files.get(file)!.matchAll(/^import \w+ from '.*\/([\w-]+)\.ts';$/gm)].map(([, id]) => id!);
  expect(named('src/calculators/index.ts')).toEqual(calculators.map(({ id }) => id));
  expect(named('src/exercises/kinds/index.ts')).toEqual(questionKinds.map(({ id }) => id));
});

test('what is listed keeps its order; a new file is last of its folder, a new folder last of all, and what is gone goes', () => {
  const list = ['malting/kiln', 'malting/ageing', 'milling/mill']
    .map((place) => `import x from './${place}.ts';\n`)
    .join('');
  const found = ['cooling/fan', 'malting/ageing', 'malting/bin', 'malting/kiln', 'milling/sieve'];
  expect(inOrder(found, list)).toEqual([
    'malting/kiln',
    'malting/ageing',
    'malting/bin',
    'milling/sieve',
    'cooling/fan',
  ]);
});
