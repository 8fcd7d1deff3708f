// Finishes the built site: no inline script or style, every address relative so that any folder can hold the site, and the offline worker.
import { createHash } from 'node:crypto';
import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { workerOf } from './offline.ts';
import { importsOf } from './scripts.ts';

const ASSETS = '_astro';
const POLICY = /<meta http-equiv="content-security-policy"[^>]*>/;
/** What Astro writes into every page with islands; `base.css` says it too, so that no second style sheet keeps a reader waiting. */
const ISLANDS = 'astro-island,astro-slot,astro-static-slot{display:contents}';
const hashOf = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 12);

/** A page whose policy stands before all that it governs. */
function policyFirst(page: string): string {
  const policy = POLICY.exec(page)?.[0] ?? '';
  return page.replace(policy, '').replace('<meta charset="utf-8">', `<meta charset="utf-8">${policy}`);
}

/** A page without inline scripts and styles, and what must stand in files instead, by file name. */
export function withoutInline(page: string): {
  readonly page: string;
  readonly files: Readonly<Record<string, string>>;
} {
  const scripts = [...page.matchAll(/<script>([^]*?)<\/script>/g)].map((found) => found[1]!);
  const styles = [...page.matchAll(/<style>([^]*?)<\/style>/g)]
    .map((found) => found[1]!)
    .filter((style) => style !== ISLANDS);
  // The script that Solid's islands hydrate with comes last on the page and must run first.
  const inOrder = scripts.sort((a, b) => Number(b.includes('_$HY')) - Number(a.includes('_$HY'))).join('\n');
  // An island's address is relative to this script, also when it is asked for a second time.
  const script =
    inOrder &&
    `const islandsAt = document.currentScript.src;\n${inOrder.replaceAll('document.baseURI', 'islandsAt')}`;
  const style = styles.join('\n');
  const [scriptFile, styleFile] = [
    `${ASSETS}/islands.${hashOf(script)}.js`,
    `${ASSETS}/islands.${hashOf(style)}.css`,
  ];
  const tags = `${style && `<link rel="stylesheet" href="/${styleFile}">`}${script && `<script defer src="/${scriptFile}"></script>`}`;
  return {
    page: page
      .replace(/<(script|style)>[^]*?<\/\1>/g, '')
      .replace('</head>', `${tags}</head>`)
      .replace(/ 'sha256-[^']+'/g, ''),
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
  for (const [, file] of page.matchAll(/ (?:component|renderer)-url="\/([^"]+)"/g)) add(file!);
  const links = [...ahead].map((file) => `<link rel="modulepreload" href="/${file}" fetchpriority="low">`);
  return page.replace('</body>', `${links.join('')}</body>`);
}

/** A page whose addresses are relative to where it stands, `depth` folders down; islands look from the folder of their script. */
export function relative(page: string, depth: number): string {
  const up = '../'.repeat(depth) || './';
  return page
    .replace(new RegExp(`(component-url|renderer-url|before-hydration-url)="/${ASSETS}/`, 'g'), '$1="./')
    .replace(/ (href|src)="\/(?!\/)/g, ` $1="${up}`);
}

/** A style sheet in the folder of assets whose addresses are relative. */
const relativeStyle = (style: string) =>
  style.replace(new RegExp(`url\\((["']?)/${ASSETS}/`, 'g'), 'url($1./');

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
          relative(fetchedAhead(policyFirst(finished.page), importsOf), file.split('/').length - 1),
        );
      }
      for (const file of files.filter((each) => each.endsWith('.css'))) {
        await writeFile(join(root, file), relativeStyle(await readFile(join(root, file), 'utf8')));
      }
      await writeWorker(root, files);
    },
  },
});
