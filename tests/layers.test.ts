// Who may import whom, read from the imports of every file under src.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

interface Layer {
  /** Which files under src belong to it; the first layer that matches counts. */
  readonly files: RegExp;
  /** Layers it may import. */
  readonly imports: readonly string[];
  /** Layers of which it may import types only. */
  readonly types?: readonly string[];
  /** Packages it may import. */
  readonly packages: RegExp;
}
const none = /^$/;
const below = [
  'core',
  'house',
  'calculators',
  'exercises',
  'talk',
  'asking',
  'handing',
  'walk',
  'shift',
  'fault',
  'predict',
  'path',
];

const layers: Readonly<Record<string, Layer>> = {
  core: { files: /^core\//, imports: ['core'], packages: /^psychrolib$/ },
  browser: { files: /^browser\//, imports: [...below, 'browser'], packages: /^solid-js/ },
  house: { files: /^house\//, imports: ['core', 'house', 'content'], packages: /^fflate$/ },
  handing: { files: /^handing\//, imports: ['core', 'house', 'handing'], packages: none },
  calculators: { files: /^calculators\//, imports: ['core', 'calculators'], types: ['house'], packages: none },
  exercises: { files: /^exercises\//, imports: ['core', 'house', 'calculators', 'exercises'], packages: none },
  talk: { files: /^talk\//, imports: ['core', 'calculators', 'talk'], types: ['house'], packages: none },
  asking: { files: /^asking\//, imports: ['core', 'house', 'asking'], packages: none },
  walk: { files: /^walk\//, imports: ['core', 'house', 'talk', 'walk'], packages: none },
  predict: { files: /^predict\//, imports: ['core', 'house', 'predict'], packages: none },
  path: { files: /^path\//, imports: ['core', 'house', 'exercises', 'path'], packages: none },
  shift: { files: /^shift\//, imports: ['core', 'house', 'shift'], packages: none },
  fault: { files: /^fault\//, imports: ['core', 'house', 'shift', 'fault'], packages: none },
  islands: { files: /^islands\//, imports: [...below, 'browser', 'islands'], packages: /^(solid-js|fflate|minisearch|uqr)/ },
  components: { files: /^components\//, imports: [...below, 'browser', 'islands', 'components', 'build', 'content'], packages: /^astro/ },
  pages: { files: /^(pages|layouts)\/|^(content\.config|env\.d)\.ts$/, imports: [...below, 'browser', 'islands', 'components', 'pages', 'build', 'styles', 'content', 'published'], packages: /./ },
  published: { files: /^published\//, imports: ['core', 'published'], packages: none },
  build: { files: /^build\//, imports: [...below, 'browser', 'build'], packages: /./ },
}; // prettier-ignore

const src = join(import.meta.dirname, '..', 'src');
const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(ts|tsx|astro)$/.test(file))
  .map((file) => file.replaceAll('\\', '/'));
const withoutComments = (text: string) => text.replace(/\/\*[^]*?\*\/|(?<=^|\s)\/\/.*$/gm, '');
const code = new Map(files.map((file) => [file, withoutComments(readFileSync(join(src, file), 'utf8'))]));

function layerOf(path: string): string {
  if (path.startsWith('../content/')) return 'content';
  if (path.startsWith('../tests/')) return 'tests';
  if (/^styles\/|\.css$/.test(path)) return 'styles';
  return Object.keys(layers).find((name) => layers[name]!.files.test(path)) ?? 'nothing';
}

interface Import {
  readonly from: string;
  readonly typesOnly: boolean;
}
function importsOf(text: string): Import[] {
  const found = [
    ...text.matchAll(/\b(?:import|export)\s+(type\s)?([^'"();=]*?)\bfrom\s*['"]([^'"]+)['"]/g),
  ].map(([, type, names, from]) => ({
    from: from!,
    typesOnly: type !== undefined || /^\{(\s*type\s[^,]*,?)+\s*\}$/.test(names!.trim()),
  }));
  const bare = [...text.matchAll(/\bimport\s*\(?\s*['"]([^'"]+)['"]/g)].map(([, from]) => ({
    from: from!,
    typesOnly: false,
  }));
  return [...found, ...bare];
}

/** What is wrong with one import of a file, or nothing. */
function objection(file: string, { from, typesOnly }: Import): string | undefined {
  const own = layers[layerOf(file)]!;
  if (!from.startsWith('.'))
    return own.packages.test(from) ? undefined : `${file} imports the package ${from}`;
  const target = layerOf(
    relative(src, join(src, dirname(file), from.replace(/\?.*$/, ''))).replaceAll('\\', '/'),
  );
  if (own.imports.includes(target) || (typesOnly && own.types?.includes(target))) return undefined;
  return `${file} imports ${from} (${layerOf(file)} may not import ${target}${own.types?.includes(target) ? ' but its types' : ''})`;
}

test('every file belongs to a layer', () => {
  expect(files.length).toBeGreaterThan(40);
  expect(files.filter((file) => layerOf(file) === 'nothing')).toEqual([]);
});

test('imports point downwards only', () => {
  const broken = files.flatMap((file) => importsOf(code.get(file)!).map((each) => objection(file, each)));
  expect(broken.filter((each) => each !== undefined)).toEqual([]);
});

test('no file reaches itself by its imports', () => {
  const atOnce = (file: string) => code.get(file)!.replace(/\bimport\s*\(/g, 'later('); // what is fetched later may know who fetches it
  const targets = (file: string) =>
    importsOf(atOnce(file))
      .filter(({ from, typesOnly }) => from.startsWith('.') && !typesOnly)
      .map(({ from }) =>
        relative(src, join(src, dirname(file), from.replace(/\?.*$/, ''))).replaceAll('\\', '/'),
      )
      .filter((target) => code.has(target));
  const [onTheWay, done, circles] = [new Set<string>(), new Set<string>(), [] as string[]];
  const visit = (file: string): void => {
    if (onTheWay.has(file)) return void circles.push([...onTheWay, file].slice([...onTheWay].indexOf(file)).join(' → ')); // prettier-ignore
    if (done.has(file)) return;
    onTheWay.add(file);
    for (const target of targets(file)) visit(target);
    onTheWay.delete(file);
    done.add(file);
  };
  for (const file of files) visit(file);
  expect(done.size).toBe(files.length);
  expect(circles).toEqual([]);
});

test('imports of code that plain Node runs name their file with its ending', () => {
  const plain = files.filter((file) =>
    /^(core|house|calculators|exercises|talk|asking|handing|walk|shift|fault|predict|path)\//.test(file),
  );
  const vague = plain.flatMap((file) =>
    importsOf(code.get(file)!)
      .filter(({ from }) => from.startsWith('.') && !/\.(tsx?|json)$/.test(from))
      .map(({ from }) => `${file}: ${from}`),
  );
  expect(vague).toEqual([]);
});

test('the core knows no page, no clock and no chance', () => {
  const worldly =
    /\b(document|window|localStorage|sessionStorage|navigator|fetch|process|Date|performance)\b(?!:)|Math\.random|console\./;
  const broken = files.filter(
    (file) => file.startsWith('core/') && worldly.test(code.get(file)!.replace(/'[^'\n]*'|`[^`]*`/g, '')),
  );
  expect(broken).toEqual([]);
});

test('what is kept in the browser is reached through one door', () => {
  const others = files.filter((file) => file !== 'browser/browser-store.ts');
  expect(others.filter((file) => /\b(local|session)Storage\b/.test(code.get(file)!))).toEqual([]);
});

test('a number is branded, and a refusal told from an answer, in one file each', () => {
  const holds = (own: string, manner: RegExp) =>
    files.filter((file) => file !== own && manner.test(code.get(file)!));
  expect(holds('core/quantity.ts', /\bas Quantity</)).toEqual([]);
  expect(holds('core/refusal.ts', /'refused' in /)).toEqual([]);
});

/** What a file does as soon as it is imported, beside declaring things. */
const doneAtImport = (text: string) =>
  ts
    .createSourceFile('core.ts', text, ts.ScriptTarget.Latest)
    .statements.filter((each) => ts.isExpressionStatement(each) || ts.isIterationStatement(each, false) || ts.isIfStatement(each) || ts.isTryStatement(each) || (ts.isImportDeclaration(each) && !each.importClause))
    .map((each) => text.slice(each.pos, each.end).trim()); // prettier-ignore

test('to import the core does nothing but declare', () => {
  const done = files
    .filter((file) => file.startsWith('core/'))
    .flatMap((file) => doneAtImport(code.get(file)!).map((what) => `${file}: ${what}`));
  expect(done).toEqual([]);
  expect(doneAtImport("import './a.ts';\nconst b = 1;\nb.set(2);\nfor (;;) c();")).toHaveLength(3);
});

test('the reading of imports is awake', () => {
  const text =
    "import { a } from './a.ts';\nimport type { B } from '../b.ts';\nimport { type C, type D } from './c.ts';\nimport { type E, f } from './e.ts';\nimport './g.css';\nconst h = await import('./h.ts');\nexport { i } from './i.ts';";
  expect(importsOf(text).map(({ from, typesOnly }) => `${from}${typesOnly ? ' types' : ''}`)).toEqual([
    './a.ts',
    '../b.ts types',
    './c.ts types',
    './e.ts',
    './i.ts',
    './g.css',
    './h.ts',
  ]);
  expect(objection('core/spirit/density.ts', { from: '../../house/figures.ts', typesOnly: true })).toContain(
    'core may not import house',
  );
  expect(
    objection('calculators/malting/x.ts', { from: '../../house/figures.ts', typesOnly: false }),
  ).toContain('but its types');
  expect(objection('house/figures.ts', { from: '../browser/house-store.ts', typesOnly: false })).toContain(
    'house may not import browser',
  );
  expect(objection('core/x.ts', { from: 'solid-js', typesOnly: false })).toContain('package');
  expect(
    objection('pages/accuracy.astro', { from: '../../tests/accuracy-table.ts', typesOnly: true }),
  ).toContain('pages may not import tests');
});
