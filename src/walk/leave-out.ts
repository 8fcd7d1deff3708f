// What a walk may leave out when children come or the time is short: proposals, each taken or refused, and put back together.
import type { TalkFigureId } from '../talk/figures.ts';
import { withOnlyPiece, type PiecePlace } from './change.ts';
import { wordsIn, wordsTold } from './time.ts';
import { isPieceTold, SHORT_WALK, type LeavingOut, type Piece, type Walk } from './walk.ts';

/** A piece that may be left out, and why. */
export interface LeaveOutProposal {
  readonly at: PiecePlace;
  readonly piece: Piece;
  readonly kind: LeavingOut;
  readonly why: string;
}

/** What is usually not for children; common practice of those who show rooms, no source. */
const notForChildren: readonly (readonly [why: string, words: RegExp, figures?: readonly TalkFigureId[]])[] = [
  ['It speaks of prices or costs.', /[£$€]\s?\d|\b(?:prices?|priced|costs?|expensive|auctions?|profits?|salary|wages?|invest\w*)\b/i],
  ['It speaks of tax or duty.', /\b(?:tax|taxes|taxed|duty|duties|excise|customs|revenue|gaugers?|smuggl\w*)\b/i],
  ['It speaks of drinking.', /\b(?:drams?|sips?|nip of|tastings?|drunk|drunken\w*|hangovers?|drinkers?|cocktails?|(?:to|you|we|they|people) drink)\b/i],
  ['It says how strong the drink is.', /\b(?:proof|ABV|cask strength|alcohol by volume)\b/i, ['bottlingStrength', 'strengthOutOfWood']],
]; // prettier-ignore

/** Words by which a piece keeps people safe: such a piece goes last. */
const safety = /\b(?:danger\w*|careful|mind the|do not|don[’']t|never|stay|stand back|keep (?:back|off|away)|carbon dioxide|gas|vapou?rs?|no (?:phones?|flash)|driving)\b/i; // prettier-ignore
const TALK = 0.75; // part of the minutes that may be talk, the rest being for the way and questions; common practice, no source
const SAFE = 10; // figures that words of safety weigh
const OPENS = 1; // and the piece with which a room begins

/** Words that can be said in a walk with time for the way and questions. */
export const wordsThatFit = ({ length, pace }: Pick<Walk, 'length' | 'pace'>): number =>
  Math.floor(TALK * length * pace);

const piecesOf = (walk: Walk): readonly { readonly at: PiecePlace; readonly piece: Piece }[] =>
  walk.rooms.flatMap(({ pieces }, room) =>
    pieces.map((each, piece) => ({ at: { room, piece }, piece: each })),
  );

const isAsked = ({ asked }: Piece, kind: LeavingOut) => asked?.[kind] !== undefined;

function forChildren(walk: Walk): readonly LeaveOutProposal[] {
  if (walk.coming !== 'children') return [];
  return piecesOf(walk).flatMap(({ at, piece }): readonly LeaveOutProposal[] => {
    if (!isPieceTold(piece, walk) || piece.whom || isAsked(piece, 'adults')) return [];
    const why = notForChildren.filter(
      ([, words, figures = []]) =>
        words.test(piece.text) || piece.figures.some(({ figure }) => figures.includes(figure)),
    );
    return why.length > 0 ? [{ at, piece, kind: 'adults', why: why.map(([says]) => says).join(' ') }] : [];
  });
}

/** What a piece weighs: its figures, words of safety, and that a room begins with it. */
const weight = ({ at, piece }: { readonly at: PiecePlace; readonly piece: Piece }) =>
  piece.figures.length + (safety.test(piece.text) ? SAFE : 0) + (at.piece === 0 ? OPENS : 0);

/** Pieces for long walks only, the least first and the longest of those, till the words fit; each room keeps one. `out` are those that others already propose. */
function forTheTime(walk: Walk, out: readonly LeaveOutProposal[]): readonly LeaveOutProposal[] {
  if (walk.length >= SHORT_WALK) return [];
  const told = piecesOf(walk).filter(({ piece }) => isPieceTold(piece, walk) && out.every((each) => each.piece !== piece)); // prettier-ignore
  let over = told.reduce((sum, { piece }) => sum + wordsIn(piece.text), 0) - wordsThatFit(walk);
  const left = walk.rooms.map((_, i) => told.filter(({ at }) => at.room === i).length);
  const order = told
    .filter(({ piece }) => !isAsked(piece, 'long'))
    .sort((a, b) => weight(a) - weight(b) || wordsIn(b.piece.text) - wordsIn(a.piece.text));
  const chosen = order.filter(({ at, piece }) => {
    if (over <= 0 || left[at.room]! < 2) return false;
    over -= wordsIn(piece.text);
    left[at.room]!--;
    return true;
  });
  // What turns out not to be needed, as a longer one goes too, stays: those that weigh most first.
  return chosen.toReversed().flatMap(({ at, piece }): readonly LeaveOutProposal[] => {
    const words = wordsIn(piece.text);
    if (over + words <= 0) return ((over += words), []);
    const figures = piece.figures.length === 0 ? 'no figure' : piece.figures.length === 1 ? 'one figure' : `${piece.figures.length} figures`; // prettier-ignore
    return [{ at, piece, kind: 'long', why: `${words} words, and ${figures} in them.` }];
  });
}

/** What may be left out of a walk for those who come and in its time, in the order of telling. Nothing is left out by itself. */
export function toLeaveOut(walk: Walk): readonly LeaveOutProposal[] {
  const children = forChildren(walk);
  return [...children, ...forTheTime(walk, children)].sort(
    (a, b) => a.at.room - b.at.room || a.at.piece - b.at.piece,
  );
}

/** Words that are still too many for the time once all that is proposed is left out; 0 where they fit, or the walk is long. */
export function wordsStillOver(walk: Walk, proposals: readonly LeaveOutProposal[]): number {
  if (walk.length >= SHORT_WALK) return 0;
  const told = walk.rooms.reduce((sum, room) => sum + wordsTold(room, walk), 0);
  const gone = proposals.reduce((sum, { piece }) => sum + wordsIn(piece.text), 0);
  return Math.max(0, told - gone - wordsThatFit(walk));
}

/** The walk with proposals answered: what is taken is marked, and told no more to children or in short walks; what is refused stays, and is not asked again. */
export const withProposalsAnswered = (walk: Walk, proposals: readonly LeaveOutProposal[], answer: 'out' | 'stays'): Walk =>
  proposals.reduce((now, { at, piece, kind }) => {
    const asked = { ...piece.asked, [kind]: answer };
    const out = kind === 'long' ? { long: true } : ({ whom: 'adults' } as const);
    return withOnlyPiece(now, at, { ...piece, asked, ...(answer === 'out' ? out : {}) });
  }, walk); // prettier-ignore

/** Pieces whose leaving out was proposed and answered so. */
export const answeredSo = (walk: Walk, answer: 'out' | 'stays'): number =>
  piecesOf(walk).filter(({ piece: { asked } }) => Object.values(asked ?? {}).includes(answer)).length;

/** The walk with all that was left out on a proposal put back; what the guide marked by hand stays so. Or, of what was refused, with all of it asked again. */
export function withLeftOutBack(walk: Walk, answer: 'out' | 'stays'): Walk {
  return piecesOf(walk).reduce((now, { at, piece }) => {
    const { asked, ...rest } = piece;
    const kinds = (Object.keys(asked ?? {}) as LeavingOut[]).filter((kind) => asked?.[kind] === answer);
    if (kinds.length === 0) return now;
    const others = Object.entries(asked!).filter(([, each]) => each !== answer);
    const { whom, ...all } = rest;
    const isFree = answer === 'out' && kinds.includes('adults') && whom === 'adults';
    return withOnlyPiece(now, at, {
      ...(isFree || whom === undefined ? all : { ...all, whom }),
      ...(answer === 'out' && kinds.includes('long') ? { long: false } : {}),
      ...(others.length > 0 ? { asked: Object.fromEntries(others) } : {}),
    });
  }, walk);
}
