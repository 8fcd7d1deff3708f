// A text of the book as plain words, with the figures of the built-in house or with holes for a reader's own.
import type { MdastNode } from 'satteri';
import type { LedgerPace } from '../core/line/ledger.ts';
import { conditions, isCondition } from '../house/conditions.ts';
import { builtInLine } from '../house/line-of.ts';
import { holeFor } from '../house/open-figures.ts';
import { figureText } from '../house/prose.ts';
import { withoutUnit } from '../house/without-unit.ts';
import { childrenOf, componentOf, type Component } from './chapter-text.ts';

type Attributes = Component['attributes'];
const given = (attributes: Attributes, name: string) =>
  typeof attributes[name] === 'string' ? attributes[name] : undefined;

/** A figure as the built-in house has it. */
function figureOf(attributes: Attributes): string {
  const digits = given(attributes, 'digits');
  const per = given(attributes, 'per') as LedgerPace | undefined;
  const text = figureText(builtInLine(), given(attributes, 'of')!, per, digits ? Number(digits) : undefined);
  return 'bare' in attributes ? withoutUnit(text) : text;
}

/** A figure as a hole, which the page fills from the reader’s house. */
function holeOf(attributes: Attributes): string {
  const [of, per = '', digits = ''] = ['of', 'per', 'digits'].map((each) => given(attributes, each));
  return holeFor({ of: of!, per, digits, bare: 'bare' in attributes });
}

/** Whether a sentence that hangs on the house is true of the built-in one. */
function isTrue(attributes: Attributes): boolean {
  const is = given(attributes, 'is');
  return isCondition(is) && conditions[is](builtInLine(), []);
}

/** A row of a table: what it is about, and what is said of it; nothing where it is to be written in. */
function rowOf(cells: readonly string[]): string {
  const [about, ...said] = cells.map((cell) => cell.trim()).filter((cell) => !/^_*$/.test(cell));
  if (about === undefined) return '';
  const told = said.length > 0 ? `${about}: ${said.join('; ')}` : about;
  return /[.?!]$/.test(told) ? told : `${told}.`;
}

function wordsOf(node: MdastNode, isOpen: boolean): string {
  const inside = () => childrenOf(node).map((child) => wordsOf(child, isOpen)).join(''); // prettier-ignore
  const component = componentOf(node);
  if (component) {
    const { name, attributes } = component;
    if (name === 'Figure') return isOpen ? holeOf(attributes) : figureOf(attributes);
    if (name === 'When') return !isOpen && isTrue(attributes) ? inside() : '';
    return name === 'Source' ? '' : ` ${inside()} `;
  }
  switch (node.type) {
    case 'text':
      return node.value;
    case 'inlineMath':
      return /^\w+$/.test(node.value) ? node.value.replaceAll('_', ' ') : ' ';
    case 'table': // its head tells what the columns are, which says nothing in a line
      return node.children.slice(1).map((row) => ` ${rowOf(row.children.map((cell) => wordsOf(cell, isOpen)))} `).join(''); // prettier-ignore
    case 'strong':
    case 'emphasis':
    case 'link':
    case 'tableCell':
      return inside();
    default:
      return ` ${inside()} `;
  }
}

/**
 * Pieces of a text as plain words with the built-in house’s figures, without components, formulas and heads of tables; or open,
 * with holes for the figures and without what is true of some houses only.
 */
export const plainWordsOf = (nodes: readonly MdastNode[], isOpen = false): string =>
  nodes
    .map((node) => ` ${wordsOf(node, isOpen)} `)
    .join('')
    .replace(/\s+/g, ' ')
    .replace(/ (?=[,.;:?!)])/g, '')
    .trim();
