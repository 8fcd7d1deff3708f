// What a guide does by hand to the room of a walk that is open, and to its pieces.
import { audienceMarks } from '../walk/audience-kinds.ts';
import { withNewRoom, withOnlyPiece, withoutRoom, withPiece, withPieceMoved, withPieceMovedWithin, withPiecesJoined, withPieceSplit, withRoom, withRoomMoved, type ChangedWalk } from '../walk/change.ts'; // prettier-ignore
import { figuresStillThere } from '../walk/pieces.ts';
import { PUT_IT_BACK, type OpenWalk } from './walk-open.ts';
import type { PieceDoes } from './WalkPieces.tsx';
import type { RoomDoes } from './WalkRoom.tsx';

const toTitle = () => document.getElementById('walk-room-title')?.focus();

export function walkEdits({ walk, open, setOpen, said, take, talk, typing }: OpenWalk): {
  readonly pieces: PieceDoes;
  readonly room: RoomDoes;
} {
  const rooms = () => walk().rooms;
  const room = () => rooms()[open()] ?? rooms()[0]!;
  const done = (changed: ChangedWalk | undefined, says: string, wayBack?: string) => changed && take(changed.walk, says, wayBack); // prettier-ignore
  return {
    pieces: {
      typing,
      write: (piece, text) => {
        const at = { room: open(), piece };
        const old = room().pieces[piece]!;
        const figures = figuresStillThere(old.figures, old.text, text);
        take(withPiece(walk(), at, { text, figures }), said());
        talk.lookAgain();
      },
      move: (piece, by) => {
        const to = rooms()[open() + by]?.name;
        done(withPieceMoved(walk(), { room: open(), piece }, by), `Moved to the ${to}.`, 'Put it back');
      },
      shift: (piece, by) =>
        void done(
          withPieceMovedWithin(walk(), { room: open(), piece }, by),
          `It is piece ${piece + by + 1} of the room now.`,
          'Put it back',
        ),
      split: (piece, place) =>
        void done(withPieceSplit(walk(), { room: open(), piece }, place), 'Split in two.'),
      join: (piece) => void done(withPiecesJoined(walk(), { room: open(), piece }), 'Joined.'),
      long: (piece, long) =>
        void take(
          withPiece(walk(), { room: open(), piece }, { long }),
          long ? 'Only in long walks now.' : 'In every walk now.',
        ),
      whom: (piece, mark) => {
        const at = { room: open(), piece };
        const { whom: _, ...rest } = room().pieces[piece]!;
        take(
          withOnlyPiece(walk(), at, mark ? { ...rest, whom: mark } : rest),
          mark ? `${audienceMarks[mark]} now.` : 'Told to all now.',
        );
      },
    },
    room: {
      change: (change) => {
        take(withRoom(walk(), open(), change), said());
      },
      move: (by) => {
        const { name } = room();
        setOpen(open() + by);
        take(withRoomMoved(walk(), open() - by, by), `${name} is room ${open() + 1} now.`);
      },
      drop: () => {
        const { name } = room();
        take(withoutRoom(walk(), open()), `${name} is taken out; what was said there is said next to it.`, PUT_IT_BACK); // prettier-ignore
        toTitle();
      },
      add: () => {
        take(withNewRoom(walk(), open() + 1, 'New room'), 'A room is put in.');
        setOpen(open() + 1);
        toTitle();
      },
    },
  };
}
