// A walk that another tab of the browser has written, taken here with what is being typed at that moment.
import { pieceAt, withPiece, withRoom, type PiecePlace } from './change.ts';
import { figuresStillThere } from './pieces.ts';
import { mostInWalk, type Walk } from './walk.ts';

/** What is being typed in the field of a piece, and not yet taken. */
export interface Typing extends PiecePlace {
  readonly text: string;
}

const places = (walk: Walk, text: string): readonly PiecePlace[] =>
  walk.rooms.flatMap(({ pieces }, room) =>
    pieces.flatMap((each, piece) => (each.text === text ? [{ room, piece }] : [])),
  );

/** The walk with the words that are being typed in place of the piece as it stood in `before`, wherever that is now. Of a piece that is there no more, or that has changed too, the words are kept as one beside it. */
export function withTyping(walk: Walk, before: Walk, { text, ...at }: Typing): Walk {
  const stood = pieceAt(before, at);
  if (!stood || text.trim() === '' || text === stood.text) return walk;
  const all = places(walk, stood.text);
  const here = all.find(({ room, piece }) => room === at.room && piece === at.piece) ?? all[0];
  if (here) {
    const { figures } = pieceAt(walk, here)!;
    return withPiece(walk, here, { text, figures: figuresStillThere(figures, stood.text, text) });
  }
  const room = Math.min(at.room, walk.rooms.length - 1);
  const { pieces } = walk.rooms[room]!;
  const many = walk.rooms.reduce((sum, each) => sum + each.pieces.length, 0);
  const own = { ...stood, text, figures: figuresStillThere(stood.figures, stood.text, text) };
  if (many < mostInWalk.pieces)
    return withRoom(walk, room, { pieces: pieces.toSpliced(at.piece + 1, 0, own) });
  const last = pieces.at(-1);
  return last ? withPiece(walk, { room, piece: pieces.length - 1 }, { text: `${last.text}\n${text}` }) : walk;
}

/** The number of the room that was open, by its name; the number as it was where there is none of that name. */
export function roomOpen(walk: Walk, before: Walk, open: number): number {
  const name = before.rooms[open]?.name;
  const there = walk.rooms[open]?.name === name ? open : walk.rooms.findIndex((room) => room.name === name);
  return Math.min(there < 0 ? open : there, walk.rooms.length - 1);
}
