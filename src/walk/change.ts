// What a guide does to a walk: pieces moved, split, joined; rooms put in, taken out and put in another order. Nothing that is said is lost.
import type { Stage } from '../house/figures.ts';
import { emptyRoom, type Piece, type Room, type Walk } from './walk.ts';

/** A piece by the number of its room and its own number there. */
export interface PiecePlace {
  readonly room: number;
  readonly piece: number;
}
/** A walk as it has become, and where the piece is that was changed. */
export interface ChangedWalk {
  readonly walk: Walk;
  readonly at: PiecePlace;
}

/** The walk with one room as it has become. */
export const withRoom = (walk: Walk, room: number, change: Partial<Room>): Walk => ({
  ...walk,
  rooms: walk.rooms.map((each, i) => (i === room ? { ...each, ...change } : each)),
});

export const pieceAt = (walk: Walk, { room, piece }: PiecePlace): Piece | undefined =>
  walk.rooms[room]?.pieces[piece];

/** The walk with one piece as it has become. */
export const withPiece = (walk: Walk, { room, piece }: PiecePlace, change: Partial<Piece>): Walk =>
  withRoom(walk, room, {
    pieces: walk.rooms[room]!.pieces.map((each, i) => (i === piece ? { ...each, ...change } : each)),
  });

/** The walk with a piece in the place of another, whole. */
export const withOnlyPiece = (walk: Walk, { room, piece }: PiecePlace, next: Piece): Walk =>
  withRoom(walk, room, { pieces: walk.rooms[room]!.pieces.map((each, i) => (i === piece ? next : each)) });

/** Moves a piece to the end of the room before (-1) or after (1), so that pieces moved one after another keep their order. Nothing where there is none. */
export function withPieceMoved(walk: Walk, { room, piece }: PiecePlace, by: -1 | 1): ChangedWalk | undefined {
  const [from, to] = [walk.rooms[room], walk.rooms[room + by]];
  const moving = from?.pieces[piece];
  if (!moving || !to) return undefined;
  const left = withRoom(walk, room, { pieces: from.pieces.filter((_, i) => i !== piece) });
  return {
    walk: withRoom(left, room + by, { pieces: [...to.pieces, moving] }),
    at: { room: room + by, piece: to.pieces.length },
  };
}

/** Puts a piece before the one before it (-1) or behind the one after it (1) in its room; nothing where there is none. */
export function withPieceMovedWithin(
  walk: Walk,
  { room, piece }: PiecePlace,
  by: -1 | 1,
): ChangedWalk | undefined {
  const to = piece + by;
  const pieces = [...(walk.rooms[room]?.pieces ?? [])];
  if (!pieces[piece] || !pieces[to]) return undefined;
  [pieces[piece], pieces[to]] = [pieces[to], pieces[piece]];
  return { walk: withRoom(walk, room, { pieces }), at: { room, piece: to } };
}

const isWithin = (at: number, words: string, from: number, to: number) =>
  at >= from && at + words.length <= to;

/** A part of a piece, from one place of its text to another. */
function partOf({ text, figures, ...rest }: Piece, from: number, to: number): Piece {
  const part = text.slice(from, to);
  const begins = from + (part.length - part.trimStart().length);
  const ends = begins + part.trim().length;
  return {
    ...rest,
    text: part.trim(),
    figures: figures
      .filter(({ at, words }) => isWithin(at, words, begins, ends))
      .map((each) => ({ ...each, at: each.at - begins })),
  };
}

/** Splits a piece at a place of its text; nothing where a part would have no words. */
export function withPieceSplit(walk: Walk, at: PiecePlace, place: number): ChangedWalk | undefined {
  const piece = pieceAt(walk, at);
  if (
    !piece ||
    place <= 0 ||
    piece.text.slice(0, place).trim() === '' ||
    piece.text.slice(place).trim() === ''
  )
    return undefined;
  const parts = [partOf(piece, 0, place), partOf(piece, place, piece.text.length)];
  const pieces = walk.rooms[at.room]!.pieces.flatMap((each, i) => (i === at.piece ? parts : [each]));
  return { walk: withRoom(walk, at.room, { pieces }), at };
}

/** Joins a piece to the next of its room. Both were only for long walks, or only for some, or the whole is told always. Nothing where there is none. */
export function withPiecesJoined(walk: Walk, at: PiecePlace): ChangedWalk | undefined {
  const [one, next] = [pieceAt(walk, at), pieceAt(walk, { ...at, piece: at.piece + 1 })];
  if (!one || !next) return undefined;
  const gap = one.text.length + 1;
  const whole: Piece = {
    text: `${one.text} ${next.text}`,
    long: one.long && next.long,
    ...(one.whom !== undefined && one.whom === next.whom ? { whom: one.whom } : {}),
    figures: [...one.figures, ...next.figures.map((each) => ({ ...each, at: each.at + gap }))],
  };
  const pieces = walk.rooms[at.room]!.pieces.flatMap((each, i) =>
    i === at.piece ? [whole] : i === at.piece + 1 ? [] : [each],
  );
  return { walk: withRoom(walk, at.room, { pieces }), at };
}

/** Where the party has to be by when, once rooms have other numbers; given up when its room is gone. */
function dueAt(walk: Walk, numberOf: (room: number) => number | undefined): Pick<Walk, 'due'> {
  const room = walk.due && numberOf(walk.due.room);
  return room === undefined ? {} : { due: { ...walk.due!, room } };
}
const withoutDue = ({ due: _, ...walk }: Walk): Walk => walk;

/** Puts a room in at a place. */
export function withNewRoom(walk: Walk, place: number, name: string, of: readonly Stage[] = []): Walk {
  const rooms = [...walk.rooms.slice(0, place), emptyRoom(name, of), ...walk.rooms.slice(place)];
  return { ...withoutDue(walk), rooms, ...dueAt(walk, (room) => (room >= place ? room + 1 : room)) };
}

/** Takes a room out; what is said there is said in the room before, or, of the first, in the one after. The last room stays. */
export function withoutRoom(walk: Walk, room: number): Walk {
  if (walk.rooms.length < 2 || !walk.rooms[room]) return walk;
  const { pieces } = walk.rooms[room];
  const heir = room === 0 ? 1 : room - 1;
  const heirs = walk.rooms[heir]!.pieces;
  const kept = withRoom(walk, heir, { pieces: room === 0 ? [...pieces, ...heirs] : [...heirs, ...pieces] });
  return {
    ...withoutDue(kept),
    rooms: kept.rooms.filter((_, i) => i !== room),
    ...dueAt(walk, (each) => (each === room ? undefined : each > room ? each - 1 : each)),
  };
}

/** Puts a room, with all that is in it, before the one before it (-1) or behind the one after it (1). */
export function withRoomMoved(walk: Walk, room: number, by: -1 | 1): Walk {
  const to = room + by;
  if (!walk.rooms[room] || !walk.rooms[to]) return walk;
  const rooms = [...walk.rooms];
  [rooms[room], rooms[to]] = [rooms[to]!, rooms[room]!];
  return { ...withoutDue(walk), rooms, ...dueAt(walk, (each) => (each === room ? to : each === to ? room : each)) };
} // prettier-ignore
