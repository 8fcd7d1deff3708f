// The questions that visitors ask, read out of the chapters: what to say, and what to know.
import { sources, type SourceId } from '../core/sources.ts';
import type { NumberName } from '../core/figures/index.ts';
import type { Pace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { conditions, isCondition, type Condition } from './conditions.ts';
import { isFactId, type FactId } from './facts.ts';
import { figureText } from './prose.ts';

/** A piece of an answer: words, a figure of the house, words told only where they are true of the house, or a fact of it. */
export type Piece =
  | string
  | { readonly figure: string; readonly per?: Pace; readonly digits?: number }
  | { readonly when: Condition; readonly says: readonly Piece[] }
  | { readonly fact: FactId; readonly otherwise: readonly Piece[] };

export interface VisitorQuestion {
  readonly id: string;
  /** The chapter that asks it, and its title. */
  readonly chapter: string;
  readonly title: string;
  readonly question: string;
  readonly say: readonly Piece[];
  readonly know: readonly Piece[];
}

const FIGURE = /<Figure of="([^"]+)"(?:\s+per="([^"]+)")?(?:\s+digits=\{(-?\d+)\})?\s*\/>/g;
const WHEN = /<When is="([^"]+)">([^]*?)<\/When>/g;
const FACT = /<Fact of="([^"]+)">([^]*?)<\/Fact>/g;
const ORDER = /\b(?:Say|Name) [^.:]*\b(?:yours?|the one)\b[^.]*\./g;

/** A source as it stands in a sentence, in brackets. */
function standing(id: string): string {
  if (!Object.hasOwn(sources, id)) throw new RangeError(`No source is called “${id}”.`);
  return ` (${sources[id as SourceId].short})`;
}

/** Markdown as plain words: emphasis, links and formulas by what they say. */
function plain(markdown: string): string {
  return markdown
    .replace(/\s*<Source of="([^"]+)"\s*\/>/g, (_, id: string) => standing(id))
    .replace(/\[([^\]]+)\]\([^)]*\)/g, '$1')
    .replace(/\*\*?|\$/g, '')
    .replace(/\s+/g, ' ');
}

/** Text cut at each match of a pattern, with what the match stands for between. */
function cut(text: string, pattern: RegExp, meant: (match: RegExpExecArray) => Piece, rest: (text: string) => Piece[]): Piece[] {
  const found: Piece[] = [];
  let from = 0;
  for (const match of text.matchAll(pattern)) {
    if (match.index > from) found.push(...rest(text.slice(from, match.index)));
    found.push(meant(match));
    from = match.index + match[0].length;
  }
  return from < text.length ? [...found, ...rest(text.slice(from))] : found;
} // prettier-ignore

const withFigures = (text: string) =>
  cut(
    text,
    FIGURE,
    ([, figure, per, digits]) => ({
      figure: figure!,
      ...(per && { per: per as Pace }),
      ...(digits && { digits: Number(digits) }),
    }),
    (words) => [words],
  );

const withFacts = (text: string) =>
  cut(
    text,
    FACT,
    ([, fact, asks]) => {
      if (!isFactId(fact)) throw new RangeError(`No fact is called “${fact}”.`);
      return { fact, otherwise: withFigures(asks!) };
    },
    withFigures,
  );

/** An answer's Markdown as pieces. */
function pieces(markdown: string): Piece[] {
  return cut(
    plain(markdown).trim(),
    WHEN,
    ([, when, says]) => {
      if (!isCondition(when)) throw new RangeError(`No condition is called “${when}”.`);
      return { when, says: withFigures(says!) };
    },
    withFacts,
  );
}

/** What a card cannot know is left for the guide to write in. */
const toWriteIn = (markdown: string) => markdown.replace(ORDER, 'Ours: ____________.');

/** The questions of one chapter. */
export function questionsOf(chapter: string, title: string, body: string): VisitorQuestion[] {
  const section = body.split(/^## /m).find((part) => part.startsWith('What visitors ask')) ?? '';
  return section
    .split(/^### /m)
    .slice(1)
    .flatMap((part) => {
      const [question, ...rest] = part.split('\n');
      const [, say, know] =
        /\*\*To say\.\*\*([^]*?)\*\*To understand\.\*\*([^]*)/.exec(rest.join('\n')) ?? [];
      if (say === undefined || know === undefined) return [];
      const slug = question!
        .trim()
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '');
      return [
        {
          id: `${chapter}-${slug}`,
          chapter,
          title,
          question: question!.trim(),
          say: pieces(toWriteIn(say)),
          know: pieces(know),
        },
      ];
    });
}

/** What a house says of a fact; undefined where it has said nothing. */
export type Says = (fact: FactId) => string | undefined;
const saysNothing: Says = () => undefined;

/** An answer as it reads for one house: its figures filled in, each with what is `told` of it, what it `says` of its facts, and only the sentences that are true of it. */
export function answerText(
  answer: readonly Piece[],
  line: Line,
  told: (figure: string) => string = () => '',
  says: Says = saysNothing,
  unknown: readonly NumberName[] = [],
): string {
  const read = (pieces: readonly Piece[]): string =>
    pieces
      .map((piece) => {
        if (typeof piece === 'string') return piece;
        if ('when' in piece) return conditions[piece.when](line, unknown) ? read(piece.says) : '';
        if ('fact' in piece) return says(piece.fact) ?? read(piece.otherwise);
        return figureText(line, piece.figure, piece.per, piece.digits) + told(piece.figure);
      })
      .join('');
  return read(answer).replace(/\s+/g, ' ').trim();
}

/** True when an answer carries a figure of the house, as it reads for that house. */
export function hasFigures(
  answer: readonly Piece[],
  line: Line,
  unknown: readonly NumberName[] = [],
): boolean {
  return answer.some(
    (piece) =>
      typeof piece !== 'string' &&
      !('fact' in piece) &&
      ('figure' in piece || (conditions[piece.when](line, unknown) && hasFigures(piece.says, line, unknown))),
  );
}

/** The facts that an answer asks for and the house does not give. */
export const notSaid = (answer: readonly Piece[], says: Says): readonly FactId[] =>
  answer.flatMap((piece) =>
    typeof piece === 'object' && 'fact' in piece && says(piece.fact) === undefined ? [piece.fact] : [],
  );
