// The licences of what the book ships beside its own work: libraries in its scripts, and its faces.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Packages whose code or faces are in the built site, and what each is here for. */
export const shipped = {
  'solid-js': 'the parts that move',
  minisearch: 'the search',
  fflate: 'the files of exercise sheets, and short links',
  uqr: 'pictures of code',
  psychrolib: 'moist air',
  '@fontsource-variable/alegreya': 'the face of the text',
  '@fontsource/alegreya-sans': 'the face of fields and tables',
  '@fontsource/stix-two-math': 'the face of formulas',
} as const;

function licenceOf(name: string): string {
  const folder = join('node_modules', name);
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  if (!file) throw new Error(`${name} has no licence in its package.`);
  return readFileSync(join(folder, file), 'utf8').trim();
}

export function GET(): Response {
  const parts = Object.entries(shipped).map(([name, use]) => `${name}: ${use}\n\n${licenceOf(name)}`);
  return new Response(`${parts.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`);
}
