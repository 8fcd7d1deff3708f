// A cut talk as the pieces of a walk, with the figures that are said in them; and figures found anew after an edit.
import { figureIds, type TalkFigureId } from '../talk/figures.ts';
import type { Cut } from './cut.ts';
import { mostInWalk, type Piece, type SaidHere, type Walk } from './walk.ts';

/** A figure found in a talk: its place there, its words, and what they say of which figure. */
export interface FoundFigure extends SaidHere {
  readonly figure: TalkFigureId;
}

/** The figures found within a part of a talk, by their places in it. */
const within = (found: readonly FoundFigure[], from: number, to: number): readonly SaidHere[] =>
  found
    .filter(({ at, words }) => at >= from && at + words.length <= to)
    .slice(0, mostInWalk.figures)
    .map((each) => ({ ...each, at: each.at - from }));

/** The walk with a talk in its rooms as it was cut; what was said in them before gives way. */
export function withTalk(
  walk: Walk,
  text: string,
  cuts: readonly Cut[],
  found: readonly FoundFigure[],
): Walk {
  const pieces = cuts.slice(0, mostInWalk.pieces).map(({ from, to, room }, i, all) => {
    const end = i === mostInWalk.pieces - 1 ? (cuts.at(-1)?.to ?? to) : to; // a talk of more pieces ends in one long one
    const words = text.slice(from, end);
    const begins = from + (words.length - words.trimStart().length);
    const told = words.trim();
    const piece: Piece = { text: told, long: false, figures: within(found, begins, begins + told.length) };
    return { room: i === all.length - 1 ? cuts.at(-1)!.room : room, piece };
  });
  return {
    ...walk,
    rooms: walk.rooms.map((room, i) => ({
      ...room,
      pieces: pieces.filter((each) => each.room === i).map(({ piece }) => piece),
    })),
  };
}

/** Figures of a piece whose words still stand in a text that was changed, each nearest to where it stood. */
export function figuresStillThere(
  figures: readonly SaidHere[],
  before: string,
  after: string,
): readonly SaidHere[] {
  let from = 0;
  return figures.flatMap((each) => {
    const drift = after.length - before.length;
    const places: number[] = [];
    for (let at = after.indexOf(each.words, from); at >= 0; at = after.indexOf(each.words, at + 1))
      places.push(at);
    const away = (at: number) => Math.min(Math.abs(at - each.at), Math.abs(at - each.at - drift));
    const at = places.sort((a, b) => away(a) - away(b))[0];
    if (at === undefined) return [];
    from = at + each.words.length;
    return [{ ...each, at }];
  });
}

/** The walk with figures found anew in all that is said (`textOfWalk`); where one stood already it stays. */
export function withFiguresFound(walk: Walk, found: readonly FoundFigure[]): Walk {
  let at = 0;
  const rooms = walk.rooms.map((room) => ({
    ...room,
    pieces: room.pieces.map((piece): Piece => {
      const here = within(found, at, at + piece.text.length);
      at += piece.text.length + 2;
      const isFree = ({ at, words }: SaidHere) =>
        piece.figures.every((old) => at + words.length <= old.at || at >= old.at + old.words.length);
      const figures = [...piece.figures, ...here.filter(isFree)].sort((a, b) => a.at - b.at);
      return { ...piece, figures: figures.slice(0, mostInWalk.figures) };
    }),
  }));
  return { ...walk, rooms };
}

export const isTalkFigure = (id: unknown): id is TalkFigureId => figureIds.includes(id as TalkFigureId);
