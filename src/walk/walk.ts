// A guided walk: rooms in order, what is said in each, and how long it may take. Lists and limits of what a walk can be.
import { cardFigures } from '../house/card-figures.ts';
import { stages, type Stage } from '../house/figures.ts';
import type { FigureId as CardFigureId } from '../core/figures/index.ts';
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { isForAudience, type Coming, type AudienceMark, type SaidIn } from './audience-kinds.ts';

/** A figure that the guide says in a piece, as the reader of talks matched it. */
export interface SaidHere {
  /** Its place in the piece, in UTF-16 units. */
  readonly at: number;
  readonly words: string;
  readonly figure: TalkFigureId;
  /** What it was taken to say, in the figure's own unit; the middle of a range. */
  readonly value: number;
}
/** In what a piece may be proposed to stay out: walks for children, and short walks. */
export type LeavingOut = 'adults' | 'long';
/** Some of the guide's own words, all said in one room. */
export interface Piece {
  readonly text: string;
  /** True when it stays out of a short walk. */
  readonly long: boolean;
  /** For whom it is; nothing where it is for all. */
  readonly whom?: AudienceMark;
  /** What the guide answered when it was proposed to leave it out. */
  readonly asked?: Readonly<Partial<Record<LeavingOut, 'out' | 'stays'>>>;
  readonly figures: readonly SaidHere[];
}

/** What a room may forbid; usual in the trade, and decided by the site. */
export const roomBans = {
  phones: 'No phones or cameras',
  flash: 'No flash',
  leaning: 'No leaning in',
  children: 'No children past the line',
} as const;
export type Ban = keyof typeof roomBans;

export interface Room {
  readonly name: string;
  readonly stages: readonly Stage[];
  /** Whole minutes, the way into the room with them. */
  readonly minutes: number;
  /** What is shown there. */
  readonly shows: string;
  /** The one line of its card. */
  readonly line: string;
  /** Questions on its card, by their names. */
  readonly asks: readonly string[];
  /** Figures on its card; nothing where the walk chooses. */
  readonly figures?: readonly CardFigureId[];
  readonly bans: readonly Ban[];
  /** What else it forbids. */
  readonly rule: string;
  readonly pieces: readonly Piece[];
}

/** A sentence that the guide leaves as it is, and what the house had then of the figures that are wrong in it. */
export interface LeftAsIs {
  readonly words: string;
  readonly house: readonly { readonly figure: TalkFigureId; readonly value: number }[];
}

/** A figure of the house as a printed card has it. */
export interface PrintedFigure {
  readonly figure: CardFigureId;
  /** In the figure's own unit. */
  readonly value: number;
  /** As it stands on the paper, and what stands beside it: as counted, or that it is an estimate. */
  readonly says: string;
  readonly mark?: string;
}
/** A card that was printed: of which room, when, of which house, in whose units, and what it says of that house. */
export interface PrintedCard {
  readonly room: string;
  /** The day, as 2026-05-14. */
  readonly on: string;
  readonly house: string;
  readonly saidIn?: SaidIn;
  readonly figures: readonly PrintedFigure[];
  /** Its questions by their names, with the answers of its back. */
  readonly answers: readonly { readonly ask: string; readonly says: string }[];
}

export interface Walk {
  readonly name: string;
  /** The name of the house that it was written for; nothing where that is not known. */
  readonly house?: string;
  /** Minutes of the whole. */
  readonly length: number;
  /** The fewest minutes of a room. */
  readonly least: number;
  /** When it begins, as 10:30. */
  readonly begins: string;
  /** Where the party has to be by when, as the number of the room in order. */
  readonly due?: { readonly room: number; readonly by: string };
  /** Who is coming; nothing for the walk as it stands. */
  readonly coming?: Coming;
  /** The units and the way of writing in which it is said; nothing as the guide says it. */
  readonly saidIn?: SaidIn;
  /** Words that the guide says in a minute. */
  readonly pace: number;
  /** Sentences left as they are; nothing where there are none. */
  readonly left?: readonly LeftAsIs[];
  /** Cards that were printed, the last of each room; nothing where there are none. */
  readonly printed?: readonly PrintedCard[];
  readonly rooms: readonly Room[];
}

export const walkLengths = [15, 30, 60, 90] as const;
export const SHORT_WALK = 45; // minutes: a shorter walk leaves out what is only for long ones
export const USUAL_PACE = 130; // words a minute until it is set; common practice of speaking to a party
export const walkLimits = {
  length: [5, 600],
  least: [0, 60],
  minutes: [0, 600],
  pace: [50, 300],
} as const satisfies Record<string, readonly [number, number]>;
export const mostInWalk = {
  rooms: 20,
  pieces: 500, // of all rooms together
  figures: 200, // of a piece
  text: 100_000, // characters of all pieces; the longest talk that is read
  words: 300, // characters of a line or a rule
  asks: 3, // questions on a card
  cardFigures: 6,
  left: 100, // sentences left as they are
  leftWords: 500, // characters of one, by which it is known again
  leftFigures: 20, // of one
  printed: 40, // cards: of the rooms that are, and of some that were
  says: 2000, // characters of an answer on a card
} as const;

const usual: readonly (readonly [string, readonly Stage[], readonly Ban[]])[] = [
  ['Malt barn', ['malting'], ['phones', 'leaning']],
  ['Mill', ['milling'], ['phones']],
  ['Mash house', ['mashing'], ['leaning']],
  ['Tun room', ['fermenting'], ['leaning']],
  ['Still house', ['distilling'], ['phones', 'flash', 'children']],
  ['Filling store and warehouse', ['maturing'], ['phones', 'flash']],
];

/** A room that nothing is known of but its name, its stages and what it usually forbids. */
export const emptyRoom = (name: string, of: readonly Stage[] = [], usualBans: readonly Ban[] = []): Room => ({
  name,
  stages: of,
  minutes: 10,
  shows: '',
  line: '',
  asks: [],
  bans: usualBans,
  rule: '',
  pieces: [],
});

/** The walk that a guide begins with: the usual rooms, ten minutes in each. */
export const firstWalk = (name: string): Walk => ({
  name,
  length: 60,
  least: 2,
  begins: '10:30',
  pace: USUAL_PACE,
  rooms: usual.map((room) => emptyRoom(...room)),
});

/** How long a walk is, and for whom. */
export type WalkFor = Pick<Walk, 'length' | 'coming'>;

/** True for a piece that a walk is too short for. */
export const isPieceTooLong = ({ long }: Piece, { length }: WalkFor): boolean => long && length < SHORT_WALK;

/** True when a piece is told in a walk of this length, to those who come. */
export const isPieceTold = (piece: Piece, of: WalkFor): boolean =>
  !isPieceTooLong(piece, of) && isForAudience(piece.whom, of.coming);

/** All that is said, in the order of the walk. */
export const textOfWalk = ({ rooms }: Walk): string =>
  rooms.flatMap(({ pieces }) => pieces.map(({ text }) => text)).join('\n\n');

const ids = new Set(cardFigures.map(({ id }) => id));

/** The figures of a room's card: those that the guide ticked; else what is told there first, then the others of its stages. */
export function figuresOfCard({ stages: of, figures, pieces }: Room): readonly CardFigureId[] {
  if (figures) return figures;
  const told = pieces.flatMap((piece) =>
    piece.figures.flatMap(({ figure }) => talkFigures[figure].inTable ?? []),
  );
  const own = cardFigures.filter(({ stage }) => of.includes(stage)).map(({ id }) => id);
  return [...new Set([...told.filter((id) => ids.has(id) && own.includes(id)), ...own])].slice(
    0,
    mostInWalk.cardFigures,
  );
}

/** The figures that a room's card may carry. */
export const figuresForCard = ({ stages: of }: Room) => cardFigures.filter(({ stage }) => of.includes(stage));

export { stages, type Stage };
