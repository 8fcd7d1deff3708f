// No island spreads properties onto an element or draws one by its name: what Solid needs for either, every page would fetch.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const src = join(import.meta.dirname, '..', '..', 'src');
const islands = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.tsx'),
);
/** The elements, whose names begin with a small letter, that take properties as a whole. */
function spreadOnto(text: string): readonly string[] {
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isJsxSpreadAttribute(node)) found.push(node.parent.parent.tagName.getText());
    ts.forEachChild(node, look);
  };
  look(ts.createSourceFile('island.tsx', text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX));
  return found.filter((tag) => /^[a-z]\w*$/.test(tag));
}

test('no element is spread onto, and none is drawn by its name', () => {
  expect(islands.length).toBeGreaterThan(100);
  const wrong = islands.filter((file) => {
    const text = readFileSync(join(src, file), 'utf8');
    return spreadOnto(text).length > 0 || /\bDynamic\b.*solid-js\/web/.test(text);
  });
  expect(wrong).toEqual([]);
});

test('a spread onto an element is seen, one onto a component is not', () => {
  expect(spreadOnto('<rect class={`box ${mark}`} {...at()} />')).toEqual(['rect']);
  expect(spreadOnto('<One {...props} />; <now.as {...props} />')).toEqual([]);
});
