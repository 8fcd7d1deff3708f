// Turns the first bold use of a trade term in a chapter into a term with its meaning at hand, from content/glossary.yaml.
import { readFileSync } from 'node:fs';
import { defineMdastPlugin } from 'satteri';
import { parse } from 'yaml';

interface Entry {
  readonly term: string;
  readonly says: string;
  readonly forms?: readonly string[];
}

const file = new URL('../../content/glossary.yaml', import.meta.url);
const glossary = parse(readFileSync(file, 'utf8')) as Readonly<Record<string, Entry>>;

/** Id of each way of writing a term. */
const idOf = new Map(
  Object.entries(glossary).flatMap(([id, { term, forms = [] }]) =>
    [term, ...forms].map((form) => [form.toLowerCase(), id] as const),
  ),
);

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** A fresh plugin for each chapter, which remembers the terms already met. */
export const terms = () => {
  const met = new Set<string>();
  return defineMdastPlugin({
    name: 'terms',
    strong(node, context) {
      const [only, more] = node.children;
      if (only?.type !== 'text' || more) return;
      const id = idOf.get(only.value.toLowerCase());
      if (id === undefined || met.has(id)) return;
      met.add(id);
      const says = escaped(glossary[id]!.says);
      context.replaceNode(node, {
        rawHtml:
          `<span class="term"><dfn class="term-name" tabindex="0" aria-describedby="term-${id}">${escaped(only.value)}</dfn>` +
          `<span class="term-says" id="term-${id}">${says} <a href="/glossary/#${id}">Glossary</a></span></span>`,
      });
    },
  });
};
