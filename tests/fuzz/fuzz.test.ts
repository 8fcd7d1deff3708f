// Anything at all, thrown at every door: no exception, no number that is none, no long wait. `npm run fuzz` throws 100,000 of each.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { line } from '../../src/core/line/line.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { mark } from '../../src/exercises/mark.ts';
import { decodeProgress } from '../../src/exercises/progress.ts';
import type { Question } from '../../src/exercises/question.ts';
import { readResult } from '../../src/exercises/result.ts';
import { readSheetLink } from '../../src/exercises/sheet-link.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { textOfLink } from '../../src/house/link.ts';
import { readScript } from '../../src/talk/script.ts';
import { anyGiven } from '../calculators/any-given.ts';
import { newSeed, withNewDraws } from '../new-draws.ts';

const RUNS = Number(process.env['FUZZ'] ?? 200);
const isLong = process.env['FUZZ'] !== undefined;
const LONGEST = 50; // ms of the processor's time for one answer, which a busy machine does not lengthen; looked at only in the long run
const TRIES = 3; // the collection of garbage does not come three times in a row

/** Does it, and in the long run sees that it does not keep a reader waiting. */
function prompt<T>(what: () => T): T {
  const once = () => {
    const before = isLong ? process.cpuUsage() : undefined;
    const result = what();
    const { user, system } = process.cpuUsage(before);
    return { result, took: (user + system) / 1000 };
  };
  let { result, took } = once();
  for (let i = 1; isLong && took > LONGEST && i < TRIES; i++) ({ result, took } = once());
  if (isLong) expect(took, 'milliseconds').toBeLessThan(LONGEST);
  return result;
}
const sound = /NaN|Infinity|undefined|\[object/;
const NEW = 40; // inputs of each sort that are new every day
function throwAt<T>(input: fc.Arbitrary<T>, check: (given: T) => void): void {
  const property = fc.property(input, check);
  fc.assert(property, { numRuns: RUNS, endOnFailure: true });
  if (!isLong) withNewDraws(() => fc.assert(property, { numRuns: NEW, endOnFailure: true, seed: newSeed }));
}

describe('calculators', () => {
  test.each(calculators.map((calculator) => [calculator.id, calculator] as const))(
    '%s',
    { timeout: 0 },
    (_, calculator) => {
      throwAt(anyGiven(calculator), (given) => {
        const said = prompt(() => {
          const trouble = calculator.refuse?.(given);
          if (trouble !== undefined) return [trouble];
          const result = calculator.compute(given);
          if (isRefusal(result)) return [result.refused];
          for (const name of Object.keys(calculator.outputs))
            if (!Number.isFinite(result[name])) return [`${name} is NaN`];
          const curve = calculator.chart?.(given, result).columns.flatMap(({ values }) => values) ?? [];
          return [
            ...calculator.steps(given, result),
            calculator.remark?.(given, result) ?? '',
            ...(curve.every(Number.isFinite) ? [] : ['a curve of NaN']),
          ];
        });
        for (const each of said) if (sound.test(each)) throw new Error(each);
      });
    },
  );
});

/** A text with some of it cut out, doubled or changed. */
const damaged = (text: string) =>
  fc
    .tuple(fc.nat(text.length), fc.nat(40), fc.string({ unit: 'binary', maxLength: 8 }))
    .map(([at, gone, put]) => text.slice(0, at) + put + text.slice(at + gone));
const nested = fc.nat(5000).map((depth) => `${'['.repeat(depth)}${']'.repeat(depth)}`);
const keys = fc.constantFrom(
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'originalGravity',
  'heartEnd',
  'reflux',
);
const values = fc.oneof(
  fc.double(),
  fc.string(),
  fc.constantFrom('NaN', '1e999', null, true),
  fc.jsonValue(),
);
const anyHouseText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.json(),
  nested,
  damaged(encodeHouse({ name: 'Harrowmere', house: builtInHouse })),
  fc
    .dictionary(keys, values)
    .map((figures) =>
      JSON.stringify({ format: 'malt-spirit-handbook/house', version: 1, name: 'x', figures }),
    ),
);

test('the reading of houses', { timeout: 0 }, () => {
  throwAt(anyHouseText, (text) => {
    const { house, name, problems } = prompt(() => decodeHouse(text));
    expect(typeof name).toBe('string');
    if (isRefusal(line(house))) throw new Error('a house that does not run was let in');
    for (const problem of problems) if (!problem.endsWith('.')) throw new Error(problem);
  });
});

test('the reading of links', { timeout: 0 }, () => {
  throwAt(
    fc.oneof(
      fc.string({ unit: 'binary' }),
      damaged('#sheet=1.0123456789.012345.012.10.first-sheet.12.built-in&version=3'),
      damaged('#house=eyJmb3JtYXQiOiJ4In0'),
    ),
    (hash) => {
      const sheet = prompt(() => readSheetLink(hash));
      if (sheet && 'problem' in sheet) expect(sheet.problem).toMatch(/\.$/);
      expect(['string', 'undefined']).toContain(typeof textOfLink(hash));
    },
  );
});

test('the reading of results and practice', { timeout: 0 }, () => {
  throwAt(
    fc.oneof(
      fc.string({ unit: 'binary' }),
      damaged('1x9nyu4-2-0000000000-xnd-Una_Thornwath'),
      fc.json(),
      nested,
      damaged(
        '{"format":"malt-spirit-handbook/practice","version":1,"standing":{"draff":{"box":1,"due":20000}},"log":[]}',
      ),
    ),
    (text) => {
      const result = prompt(() => readResult(text));
      if (typeof result !== 'string') expect(result.marks.length).toBeGreaterThan(0);
      expect(Array.isArray(prompt(() => decodeProgress(text)).progress.log)).toBe(true);
    },
  );
});

const word = fc.constantFrom('six', 'thousand', 'five and a half', 'litres', 'per cent', 'tonnes', 'a', 'the', 'wash', 'heart', 'cut', 'at', 'degrees', 'hours', 'casks', 'years', 'proof', 'about', 'to', 'and', '63.5', '1,058', '1058', '23 %', '4,000 L', '½', '.', ',', '—', '\n\n', '00:14:32', '<b>', '∞', '-', '1e309', '999999999999999999'); // prettier-ignore
const anyScript = fc.oneof(
  fc.array(word, { maxLength: 120 }).map((words) => words.join(' ')),
  fc.string({ unit: 'binary', maxLength: 400 }),
  fc.string({ unit: 'grapheme', maxLength: 400 }),
);

test('the script reader', { timeout: 0 }, () => {
  throwAt(anyScript, (text) => {
    const found = prompt(() => readScript(text));
    const numbers = JSON.stringify(found, (_, value: unknown) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'NaN' : value,
    );
    expect(numbers.includes('"NaN"')).toBe(false);
  });
});

const questions: readonly Question[] = questionKinds.flatMap(
  (kind) => drawQuestion(kind, 'fuzz', builtInHouse) ?? [],
);
const piece = fc.constantFrom('1', '2', '0', '12', '500', '.', ',', ' ', '\u202f', '/', '-', '−', 'e', '×', '10', '^', '%', 'L', 'kg', '°C', '½', 'A', 'B', 'C', 'abc', '∞', 'NaN', '9'.repeat(30)); // prettier-ignore
const anyAnswer = fc.oneof(
  fc.array(piece, { maxLength: 10 }).map((pieces) => pieces.join('')),
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.double().map(String),
);

test('the marker', { timeout: 0 }, () => {
  expect(questions).toHaveLength(questionKinds.length);
  throwAt(fc.tuple(fc.constantFrom(...questions), anyAnswer), ([question, answer]) => {
    const { verdict, say } = prompt(() => mark(question, answer));
    expect(['unanswered', 'unreadable', 'right', 'rounded', 'unit', 'wrong']).toContain(verdict);
    const ownWords = say.replace(/“[^”]*”/g, ''); // what was typed is quoted back
    if (sound.test(ownWords)) throw new Error(say);
    expect(say.length).toBeLessThan(600);
  });
});
