// The questions that visitors ask, read out of the chapters: what to say, and what to know.
import type { Stage } from './figures.ts';
import type { Pace } from '../core/line/ledger.ts';

/** A piece of an answer: words, or a figure of the house. */
export type Piece = string | { readonly figure: string; readonly per?: Pace; readonly digits?: number };

export interface VisitorQuestion {
  readonly id: string;
  readonly stage: Stage;
  readonly question: string;
  readonly say: readonly Piece[];
  readonly know: readonly Piece[];
}

const FIGURE = /<Figure of="([^"]+)"(?:\s+per="([^"]+)")?(?:\s+digits=\{(\d+)\})?\s*\/>/g;

/** An answer's Markdown as pieces: figures apart, sources and emphasis left out. */
function pieces(markdown: string): Piece[] {
  const plain = markdown
    .replace(/\s*<Source[^>]*\/>/g, '')
    .replace(/<\/?When[^>]*>/g, '')
    .replace(/\*\*?/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  const found: Piece[] = [];
  let from = 0;
  for (const match of plain.matchAll(FIGURE)) {
    const [whole, figure, per, digits] = match;
    if (match.index > from) found.push(plain.slice(from, match.index));
    found.push({
      figure: figure!,
      ...(per && { per: per as Pace }),
      ...(digits && { digits: Number(digits) }),
    });
    from = match.index + whole.length;
  }
  return from < plain.length ? [...found, plain.slice(from)] : found;
}

/** The questions of one chapter. */
export function questionsOf(stage: Stage, body: string): VisitorQuestion[] {
  const section = body.split(/^## /m).find((part) => part.startsWith('What visitors ask')) ?? '';
  return section
    .split(/^### /m)
    .slice(1)
    .flatMap((part) => {
      const [question, ...rest] = part.split('\n');
      const [, say, know] =
        /\*\*To say\.\*\*([^]*?)\*\*To understand\.\*\*([^]*)/.exec(rest.join('\n')) ?? [];
      if (say === undefined || know === undefined) return [];
      const id = question!
        .trim()
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '');
      return [{ id, stage, question: question!.trim(), say: pieces(say), know: pieces(know) }];
    });
}
