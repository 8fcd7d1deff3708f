// The questions that visitors ask, read out of the chapters.
import type { MdastNode } from 'satteri';
import type { LedgerPace } from '../core/line/ledger.ts';
import { sources, type SourceId } from '../core/sources.ts';
import { isCondition } from '../house/conditions.ts';
import { isFactId } from '../house/facts.ts';
import type { AnswerPiece, VisitorQuestion } from '../house/visitor-questions.ts';
import { chapterText, childrenOf, componentOf, type Component } from './chapter-text.ts';

const ORDER = /\b(?:Say|Name) [^.:]*\b(?:yours?|the one)\b[^.]*\./g;

/** A source as it stands in a sentence, in brackets. */
function standing(id: string): string {
  if (!Object.hasOwn(sources, id)) throw new RangeError(`No source is called “${id}”.`);
  return ` (${sources[id as SourceId].short})`;
}

/** A component of an answer as its piece: a source in brackets, a figure, words under a condition, a fact. */
function meant({ name, attributes }: Component, inside: readonly MdastNode[]): readonly AnswerPiece[] {
  const given = (attribute: string) => attributes[attribute] as string | undefined;
  const of = given('of') ?? '';
  switch (name) {
    case 'Source':
      return [standing(of)];
    case 'Figure': {
      const [per, digits] = [given('per') as LedgerPace | undefined, given('digits')];
      return [{ figure: of, ...(per && { per }), ...(digits && { digits: Number(digits) }) }];
    }
    case 'When': {
      const is = given('is');
      if (!isCondition(is)) throw new RangeError(`No condition is called “${is}”.`);
      return [{ when: is, says: pieces(inside) }];
    }
    case 'Fact':
      if (!isFactId(of)) throw new RangeError(`No fact is called “${of}”.`);
      return [{ fact: of, otherwise: pieces(inside) }];
    default:
      return pieces(inside);
  }
}

/** Markdown as pieces: emphasis, links and formulas by what they say. */
function pieces(nodes: readonly MdastNode[]): readonly AnswerPiece[] {
  const found: AnswerPiece[] = [];
  for (const node of nodes) {
    const component = componentOf(node);
    const next = component ? meant(component, childrenOf(node)) : 'value' in node ? [node.value] : pieces(childrenOf(node)); // prettier-ignore
    for (const piece of next) {
      const last = found.at(-1);
      if (typeof piece !== 'string' || typeof last !== 'string') found.push(piece);
      else found[found.length - 1] = (component?.name === 'Source' ? last.trimEnd() : last) + piece;
    }
  }
  return found.map((piece) => (typeof piece === 'string' ? piece.replace(/\s+/g, ' ') : piece));
}

/** An answer without the spaces about it. */
function trimmed(answer: readonly AnswerPiece[]): readonly AnswerPiece[] {
  const ends = { 0: /^\s+/, [answer.length - 1]: /\s+$/ };
  const only = answer.length === 1 ? /^\s+|\s+$/g : undefined;
  return answer
    .map((piece, i) => (typeof piece === 'string' ? piece.replace(only ?? ends[i] ?? /$^/, '') : piece))
    .filter((piece) => piece !== '');
}

/** What a card cannot know is left for the guide to write in. */
function toWriteIn(piece: AnswerPiece): AnswerPiece {
  if (typeof piece === 'string') return piece.replace(ORDER, 'Ours: ____________.');
  if ('when' in piece) return { ...piece, says: piece.says.map(toWriteIn) };
  return 'fact' in piece ? { ...piece, otherwise: piece.otherwise.map(toWriteIn) } : piece;
}

const isLabel = (label: string) => (node: MdastNode) =>
  node.type === 'strong' && node.children.some((child) => child.type === 'text' && child.value === label);

/** The questions of one chapter. */
export function questionsOfChapter(chapter: string, title: string, body: string): VisitorQuestion[] {
  const { sections } = chapterText(body);
  const first = sections.findIndex(({ heading }) => heading?.depth === 2 && heading.text.startsWith('What visitors ask')); // prettier-ignore
  if (first < 0) return [];
  const end = sections.findIndex(({ heading }, i) => i > first && heading?.depth === 2);
  return sections.slice(first + 1, end < 0 ? undefined : end).flatMap(({ heading, nodes }) => {
    const words = nodes.flatMap((node): readonly MdastNode[] => [
      ...childrenOf(node),
      { type: 'text', value: ' ' },
    ]);
    const [say, know] = ['To say.', 'To understand.'].map((label) => words.findIndex(isLabel(label)));
    if (say! < 0 || know! < say!) return [];
    const question = heading!.text;
    const slug = question
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
    return [
      {
        id: `${chapter}-${slug}`,
        chapter,
        title,
        question,
        say: trimmed(pieces(words.slice(say! + 1, know))).map(toWriteIn),
        know: trimmed(pieces(words.slice(know! + 1))),
      },
    ];
  });
}
