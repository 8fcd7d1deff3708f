// Gathers the lists of calculators and kinds of question, and the ways by which a page fetches one of them, from the files of their folders: at each build, and by `npm run gather`.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';

const root = join(import.meta.dirname, '..', '..');
const WRITTEN = 'Written by `npm run gather`';

/** What each folder of things holds, and where the book has them. */
const things = [
  { folder: 'src/calculators', all: 'calculators', of: 'calculator', type: 'AnyCalculator', from: './define.ts' },
  { folder: 'src/exercises/kinds', all: 'questionKinds', of: 'kind of question', type: 'QuestionKind', from: '../question.ts' },
] as const; // prettier-ignore

/** A thing's file within its folder, without its ending: malting/kiln. */
type Place = string;
const idOf = (place: Place) => place.split('/')[1]!;
const groupOf = (place: Place) => place.split('/')[0]!;
const nameOf = (place: Place) => idOf(place).replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

/** The files one folder down that declare a thing: those with a default export. Any other file there helps them. */
function placesIn(folder: string): readonly Place[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) => readdirSync(join(folder, name)).map((file) => `${name}/${file}`))
    .filter((file) => file.endsWith('.ts') && /^export default /m.test(readFileSync(join(folder, file), 'utf8')))
    .map((file) => file.slice(0, -'.ts'.length))
    .sort(); // prettier-ignore
}

/** The order of the book: as the list has it, a new thing last of its group, a new group last of all. */
export function inOrder(found: readonly Place[], list: string): readonly Place[] {
  const listed = [...list.matchAll(/^import \w+ from '\.\/(\w+\/[\w-]+)\.ts';$/gm)].map(([, place]) => place!);
  const all = [...new Set([...listed, ...found])];
  const groups = [...new Set(all.map(groupOf))];
  return groups.flatMap((group) => all.filter((place) => groupOf(place) === group && found.includes(place)));
} // prettier-ignore

/** An object of ways to files: each fetched when it is asked for. */
const waysTo = (places: readonly Place[], folder: string) =>
  `{\n${places.map((place) => `  ${/^\w+$/.test(idOf(place)) ? idOf(place) : `'${idOf(place)}'`}: () => import('${folder}/${place}.ts'),\n`).join('')}}`;

/** Every file that is gathered, by its path, with its text. `base` is the folder of the project. */
export function gathered(base = root): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const { folder, all, of, type, from } of things) {
    const list = `${folder}/index.ts`;
    const before = existsSync(join(base, list)) ? readFileSync(join(base, list), 'utf8') : '';
    const places = inOrder(placesIn(join(base, folder)), before);
    const imports = places.map((place) => `import ${nameOf(place)} from './${place}.ts';\n`).join('');
    files.set(
      list,
      `// Every ${of}, in the order of the book. ${WRITTEN}, which puts a new one last of its folder; to move one, move its import.\nimport type { ${type} } from '${from}';\n${imports}\nexport const ${all}: readonly ${type}[] = [\n${places.map((place) => `  ${nameOf(place)},\n`).join('')}];\n`,
    );
    if (all === 'questionKinds')
      files.set(
        `${folder}/ways.ts`,
        `// The way to each kind of question, by its id. ${WRITTEN}.\nimport type { ${type} } from '${from}';\n\nexport const waysToKinds: Readonly<Record<string, () => Promise<{ readonly default: ${type} }>>> = ${waysTo(places, '.')};\n`,
      );
    else
      for (const group of new Set(places.map(groupOf)))
        files.set(
          `src/islands/${group[0]!.toUpperCase()}${group.slice(1)}Calculator.tsx`,
          `// A calculator of ${group}, by its id. ${WRITTEN}.\nimport { declaredIsland } from './declared-island.tsx';\n\nexport default declaredIsland(${waysTo(
            places.filter((place) => groupOf(place) === group),
            '../calculators',
          )});\n`,
        );
  }
  return files;
}

/** Writes what is gathered, where it is not so already. */
export function writeGathered(base = root): void {
  for (const [file, text] of gathered(base)) {
    const path = join(base, file);
    if (!existsSync(path) || readFileSync(path, 'utf8') !== text) writeFileSync(path, text);
  }
}

/** Gathers before a build, and while one writes whenever a file comes or goes. */
export const gathering = (): AstroIntegration => ({
  name: 'gathering',
  hooks: {
    'astro:config:setup': () => writeGathered(),
    'astro:server:setup': ({ server }) => {
      for (const event of ['add', 'unlink'] as const) server.watcher.on(event, () => writeGathered());
    },
  },
});

if (process.argv[1] === import.meta.filename) writeGathered();
