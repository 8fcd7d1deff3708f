// Every exported function of the core has an example in its doc comment, `@example call(…) // result (why that is so)`, and each is run.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';

const core = join(import.meta.dirname, '..', '..', 'src', 'core');
const files = readdirSync(core, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
  .sort();

interface Exported {
  readonly name: string;
  /** The text behind each `@example` of its doc comment. */
  readonly examples: readonly string[];
}

/** The functions that a file exports: declared as such, or a constant that is one when the file is loaded. */
function functionsOf(file: string, loaded: Readonly<Record<string, unknown>>): readonly Exported[] {
  const source = ts.createSourceFile(file, readFileSync(join(core, file), 'utf8'), ts.ScriptTarget.Latest, true);
  return source.statements.flatMap((statement): Exported[] => {
    const named = ts.isVariableStatement(statement) ? statement.declarationList.declarations : [statement];
    const examples = ts
      .getJSDocTags(named[0]!)
      .filter(({ tagName }) => tagName.text === 'example')
      .map(({ comment }) => ts.getTextOfJSDocComment(comment)!.replace(/\s+/g, ' ').trim());
    return named.flatMap((each): Exported[] => {
      const name = 'name' in each ? (each.name as ts.Node).getText(source) : '';
      return typeof loaded[name] === 'function' ? [{ name, examples }] : [];
    });
  });
} // prettier-ignore

const modules = new Map<string, Readonly<Record<string, unknown>>>();
for (const file of files)
  modules.set(file, (await import(`../../src/core/${file}`)) as Record<string, unknown>);

/** What an example may name: what its own file exports; the constructors of quantities, the built-in `house` and its `line`; and what one file of the core alone exports by its name. */
const first = { ...modules.get('quantity.ts'), house: builtInHouse, line: builtInLine() };
const exported = [...modules.values()].flatMap((each) => Object.entries(each));
const scope = {
  ...Object.fromEntries(
    exported.filter(([name]) => exported.filter(([other]) => other === name).length === 1),
  ),
  ...first,
};

function run(text: string, loaded: Readonly<Record<string, unknown>>): unknown {
  const names: Readonly<Record<string, unknown>> = { ...scope, ...loaded };
  // The example is a text of our own repository.
  return new Function(...Object.keys(names), `'use strict'; return (${text});`)(...Object.values(names));
}

const NUMBER = /'[^']*'|(?<![\w.])[-−]?\d+(?:\.\d+)?(?:e-?\d+)?(?!\w)/g; // or a text, which is left as it is
/** A number as it is printed: half a unit of its last digit either way, and what the machine rounds. */
function printed(text: string) {
  const value = Number(text.replace('−', '-'));
  const decimals = (/\.(\d+)/.exec(text)?.[1] ?? '').length;
  const power = Number(/e(-?\d+)/.exec(text)?.[1] ?? 0);
  const within = 0.5 * 10 ** (power - decimals) + 1e-9 * Math.abs(value);
  return {
    asymmetricMatch: (got: unknown) => typeof got === 'number' && Math.abs(got - value) <= within,
    toString: () => text,
  };
}
/** What the comment says: numbers to their printed digits, lists whole, objects by the fields that are named, texts as they are. */
function expected(text: string): unknown {
  const shape = text.replace(NUMBER, (found) => (found.startsWith("'") ? found : `N('${found}')`));
  const told: unknown = new Function('N', `return (${shape});`)(printed);
  return matching(told);
}
function matching(told: unknown): unknown {
  if (Array.isArray(told)) return told.map(matching);
  if (typeof told !== 'object' || told === null || 'asymmetricMatch' in told) return told;
  return expect.objectContaining(Object.fromEntries(Object.entries(told).map(([key, value]) => [key, matching(value)]))); // prettier-ignore
}

/** Runs one example; its result is a value, or `refuses` or `throws` with words of the sentence. */
function hold(example: string, loaded: Readonly<Record<string, unknown>>): void {
  const [, call, result, why] = /^(.*?) \/\/ (.*) \(([^()]+(?:\([^()]*\)[^()]*)*)\)$/.exec(example) ?? [];
  if (call === undefined || result === undefined || why === undefined)
    throw new Error(`“${example}” is not “call // result (why that is so)”.`);
  const [, manner, words] = /^(refuses|throws): (.+)$/.exec(result) ?? [];
  if (manner === 'throws') expect(() => run(call, loaded)).toThrow(words);
  else if (manner === 'refuses') expect(run(call, loaded)).toEqual({ refused: expect.stringContaining(words!) });
  else {
    const got = run(call, loaded);
    expect(ArrayBuffer.isView(got) ? [...(got as Float64Array)] : got).toEqual(expected(result));
  }
} // prettier-ignore

const all = files.map((file) => [file, modules.get(file)!] as const);
const found = all.flatMap(([file, loaded]) => functionsOf(file, loaded).map(({ name, examples }) => [`${file}: ${name}`, examples, loaded] as const)); // prettier-ignore

test.each(found)('%s', (_, examples, loaded) => {
  expect(examples, 'it has no @example').not.toEqual([]);
  for (const example of examples) hold(example, loaded);
});

test('all that the core exports is found', () => {
  expect(found.length).toBeGreaterThan(500);
  const functions = all.flatMap(([, loaded]) => Object.values(loaded).filter((value) => typeof value === 'function'));
  expect(found.length).toBeGreaterThanOrEqual(new Set(functions).size);
}); // prettier-ignore

test('an example that is wrong, has no reason or names what is not there falls', () => {
  const loaded = { twice: (n: number) => 2 * n, none: () => ({ refused: 'None is there.' }) };
  hold('twice(2.1) // 4.2 (2 × 2.1)', loaded);
  hold('[twice(2), { a: twice(1), b: 0 }] // [4, { a: 2 }] (a field that is not named may be anything (b))', loaded);
  hold('none() // refuses: None (by definition)', loaded);
  hold('twice(-1.004) // −2.0 (to the digits printed)', loaded);
  for (const wrong of ['twice(2) // 4.1 (wrong)', 'twice(2) // 4', 'thrice(2) // 6 (no such function)', 'twice(2) // refuses: 4 (it does not)', '[twice(1), 1] // [2] (one more)'])
    expect(() => hold(wrong, loaded), wrong).toThrow();
}); // prettier-ignore
