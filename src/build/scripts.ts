// How the scripts are cut into files: what every page runs is one, what every field runs another, and a page asks for no more than it uses.
import type { Plugin, Rolldown } from 'vite';

const HELPER = '\0vite/preload-helper.js'; // Vite’s, around every import that comes later
const src = new URL('..', import.meta.url).pathname;

/** Files of scripts, each with the modules whose imports go into it unless they are in one before it. */
const files: Readonly<Record<string, readonly string[]>> = {
  first: [],
  book: [
    'islands/Visit.tsx',
    'components/page-script.ts',
    'build/island.ts',
    'islands/house-when-idle.ts',
    'islands/plot.ts',
    'core/keep-together.ts',
  ],
  ledger: ['islands/Ledger.tsx'],
  change: ['browser/change-figure.ts', 'browser/shelf-store.ts'],
  back: ['islands/use-way-back.tsx'],
  file: [
    'house/parts/rows.ts',
    'islands/TextFileField.tsx',
    'islands/open-file.ts',
    'islands/save-file.ts',
    'islands/file-name.ts',
    'islands/today.ts',
    'islands/copy-address.ts',
  ],
  chart: ['islands/Chart.tsx', 'calculators/define.ts'],
  units: ['browser/units-store.ts'],
  field: ['islands/NumberField.tsx', 'islands/ChoiceField.tsx'],
  calculator: ['islands/declared-island.tsx'],
  plain: ['core/reading/plain.ts'],
  // What kinds of question draw with is here before the first of them: each is then one file more.
  kinds: [
    'exercises/draw.ts',
    'exercises/sum.ts',
    'exercises/choice.ts',
    'exercises/of-two-distillations.ts',
  ],
  reading: ['core/reading/quantity.ts', 'core/reading/vague.ts'],
};

/** What each built script imports at once, by file: made as the scripts are written, for `finish.ts`. */
export const importsOf = new Map<string, readonly string[]>();

type Graph = (id: string) => { readonly importedIds: readonly string[] } | null;

/** The file of each module that has one of these. */
function cut(graph: Graph): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const add = (id: string, file: string): void => {
    if (found.has(id)) return;
    found.set(id, file);
    for (const imported of [...(graph(id)?.importedIds ?? [])]) add(imported, file);
  };
  add(HELPER, 'first');
  for (const [file, roots] of Object.entries(files)) for (const root of roots) add(src + root, file);
  return found;
}

export const scripts = (): Plugin => {
  let found: ReadonlyMap<string, string> | undefined;
  return {
    name: 'scripts',
    enforce: 'pre',
    configEnvironment: (name) => ({
      build: {
        // Scripts that come later fetch what they need by themselves. Vite would fetch it ahead, from the root of the server, with a link for each file, which takes longer than it gains.
        modulePreload: false,
        ...(name === 'client' && {
          rolldownOptions: {
            output: {
              codeSplitting: {
                groups: Object.keys(files).map((file, place) => ({
                  name: (id: string, all: Pick<Rolldown.PluginContext, 'getModuleInfo'>) =>
                    (found ??= cut((each) => all.getModuleInfo(each))).get(id) === file ? file : null,
                  priority: Object.keys(files).length - place,
                })),
              },
            },
          },
        }),
      },
    }),
    generateBundle: (_, bundle) => {
      for (const each of Object.values(bundle))
        if (each.type === 'chunk') importsOf.set(each.fileName, each.imports);
    },
    // All styles are in the page's own sheet, so a script that comes later brings none.
    load: (id) => (id === HELPER ? 'export const __vitePreload = (load) => load();' : null),
  };
};
