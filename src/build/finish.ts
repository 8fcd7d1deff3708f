// Finishes the built site: no inline script or style, every address relative so that any folder can hold the site, and the offline worker.
import { createHash } from 'node:crypto';
import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { workerOf } from './offline.ts';
import { refuseUnfound, rewriting } from './rewriting.ts';
import { importsOf } from './scripts.ts';

const ASSETS = '_astro';
/** What Astro writes into every page with islands; `base.css` says it too, so that no second style sheet keeps a reader waiting. */
const ISLANDS = 'astro-island,astro-slot,astro-static-slot{display:contents}';
const hashOf = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 12);

/** All that is rewritten here. Each must be found somewhere in a site. */
const all = {
  policy: rewriting('policy of a page', /<meta http-equiv="content-security-policy"[^>]*>/g),
  hash: rewriting('hash in a policy', / 'sha256-[^']+'/g),
  letters: rewriting('set of letters of a page', /<meta charset="utf-8">/g),
  inline: rewriting('inline script or style', /<(script|style)>([^]*?)<\/\1>/g),
  islands: rewriting('style of islands', new RegExp(`^${ISLANDS.replace(/[{}]/g, '\\$&')}$`, 'g')),
  base: rewriting('address that an island’s script is looked for from', /document\.baseURI/g),
  head: rewriting('end of a head', /<\/head>/g),
  body: rewriting('end of a tool’s body', /<\/body>/g),
  script: rewriting('script of an island on a tool’s page', / (?:component|renderer)-url="\/([^"]+)"/g),
  island: rewriting('island', new RegExp(`((?:component|renderer|before-hydration)-url)="/${ASSETS}/`, 'g')),
  address: rewriting('address from the root', / (href|src)="\/(?!\/)/g),
  style: rewriting('address in a style sheet', new RegExp(`url\\((["']?)/${ASSETS}/`, 'g')),
};

/** A page whose policy stands before all that it governs. */
export function policyFirst(page: string): string {
  let policy = '';
  const rest = all.policy.in(page, (found) => {
    policy = found;
    return '';
  });
  return all.letters.in(rest, (found) => found + policy);
}

/** A page without inline scripts and styles, and what must stand in files instead, by file name. */
export function withoutInline(page: string): {
  readonly page: string;
  readonly files: Readonly<Record<string, string>>;
} {
  const inline = { script: [] as string[], style: [] as string[] };
  const bare = all.inline.in(page, (_, tag, text) => {
    inline[tag as 'script' | 'style'].push(text!);
    return '';
  });
  // The script that Solid's islands hydrate with comes last on the page and must run first.
  const inOrder = inline.script
    .sort((a, b) => Number(b.includes('_$HY')) - Number(a.includes('_$HY')))
    .join('\n');
  // An island's address is relative to this script, also when it is asked for a second time.
  const script =
    inOrder && `const islandsAt = document.currentScript.src;\n${all.base.in(inOrder, () => 'islandsAt')}`;
  const style = inline.style
    .map((each) => all.islands.in(each, () => ''))
    .filter((each) => each !== '')
    .join('\n');
  const [scriptFile, styleFile] = [
    `${ASSETS}/islands.${hashOf(script)}.js`,
    `${ASSETS}/islands.${hashOf(style)}.css`,
  ];
  const tags = `${style && `<link rel="stylesheet" href="/${styleFile}">`}${script && `<script defer src="/${scriptFile}"></script>`}`;
  return {
    page: all.hash.in(
      all.head.in(bare, (end) => tags + end),
      () => '',
    ),
    files: { ...(script && { [scriptFile]: script }), ...(style && { [styleFile]: style }) },
  };
}

/** A tool’s page that asks at once for all that its islands’ scripts import, so that no file waits for another to name it. A page to read is read before they come. */
export function fetchedAhead(page: string, imports: ReadonlyMap<string, readonly string[]>): string {
  if (!page.includes('<body data-tool')) return page;
  const ahead = new Set<string>();
  const add = (file: string): void => {
    if (ahead.has(file)) return;
    ahead.add(file);
    imports.get(file)?.forEach(add);
  };
  all.script.in(page, (found, file) => {
    add(file!);
    return found;
  });
  const links = [...ahead].map((file) => `<link rel="modulepreload" href="/${file}" fetchpriority="low">`);
  return all.body.in(page, (end) => links.join('') + end);
}

/** A page whose addresses are relative to where it stands, `depth` folders down; islands look from the folder of their script. */
export function relativePage(page: string, depth: number): string {
  const up = '../'.repeat(depth) || './';
  const islands = all.island.in(page, (_, name) => `${name}="./`);
  return all.address.in(islands, (_, name) => ` ${name}="${up}`);
}

/** A style sheet in the folder of assets whose addresses are relative. */
export const relativeStyle = (style: string): string => all.style.in(style, (_, quote) => `url(${quote}./`);

/** Writes the offline worker of a site with the list of its files. */
export async function writeWorker(root: string, files: readonly string[]): Promise<void> {
  const contents = await Promise.all(
    [...files]
      .sort()
      .map(async (file) => [file, hashOf((await readFile(join(root, file))).toString('base64'))] as const),
  );
  await writeFile(join(root, 'offline.js'), workerOf(contents));
}

export const finish = (): AstroIntegration => ({
  name: 'finish',
  hooks: {
    'astro:build:done': async ({ dir }) => {
      const root = fileURLToPath(dir);
      const files = (await readdir(root, { recursive: true, withFileTypes: true }))
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll('\\', '/'));
      for (const file of files.filter((each) => each.endsWith('.html'))) {
        const finished = withoutInline(await readFile(join(root, file), 'utf8'));
        for (const [name, content] of Object.entries(finished.files)) {
          await writeFile(join(root, name), content);
          if (!files.includes(name)) files.push(name);
        }
        await writeFile(
          join(root, file),
          relativePage(fetchedAhead(policyFirst(finished.page), importsOf), file.split('/').length - 1),
        );
      }
      for (const file of files.filter((each) => each.endsWith('.css'))) {
        await writeFile(join(root, file), relativeStyle(await readFile(join(root, file), 'utf8')));
      }
      refuseUnfound(Object.values(all));
      await writeWorker(root, files);
    },
  },
});
