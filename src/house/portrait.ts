// What stands on the house's portrait: its rooms in the order of the line, each with a few figures in the house's own reading.
import { pathsOf, type FigureId } from '../core/figures/index.ts';
import type { FigureStanding } from '../core/figures/standing.ts';
import { numberAt } from '../core/line/beside.ts';
import type { Line } from '../core/line/line.ts';
import { UNSEEN } from '../core/quoted-given.ts';
import { builtInLine } from './line-of.ts';
import { secondFigureText, textOfFigure } from './prose.ts';

export const LONGEST_WORDS = 100; // characters of the house's own line under its name

/** A line of own words: on one line, bounded, and nothing in it that cannot be seen. */
export const ownWords = (text: string): string =>
  [...text.replace(/\s+/g, ' ').replace(UNSEEN, '').replace(/ +/g, ' ').trim()]
    .slice(0, LONGEST_WORDS)
    .join('')
    .trim();

/** The figures of each room, by the words under which they hang on the wall. */
export const portraitRooms = {
  malt: { title: 'The malt', figures: { barley: 'Barley for a mash', maltPerYear: 'Malt a year' } },
  mill: { title: 'The mill', figures: { maltPerMash: 'Malt a mash', millingTime: 'Milled in' } },
  mash: {
    title: 'The mash house',
    figures: { mashesPerWeek: 'Mashes a week', wortVolume: 'Wort from a mash', originalGravity: 'Gravity of the wort' },
  },
  wash: {
    title: 'The tun room',
    figures: { fermentationHours: 'In the washback', finalGravity: 'Final gravity', washStrength: 'Strength of the wash' },
  },
  stills: {
    title: 'The still house',
    figures: {
      lowWinesVolume: 'Low wines from a mash',
      lowWinesStrength: 'Strength of the low wines',
      heartBegins: 'The heart begins at',
      heartEnd: 'The heart ends at',
      heartStrength: 'Strength of new spirit',
      heartAlcohol: 'From a mash',
    },
  },
  store: {
    title: 'The store',
    figures: {
      fillingStrength: 'Filled at',
      alcoholLoss: 'Alcohol lost in a year',
      yearsInWood: 'In wood',
      casksPerYear: 'Casks filled a year',
      casksInStore: 'Casks in store',
      bottlesPerYear: 'Bottles a year',
    },
  },
} as const satisfies Record<string, { title: string; figures: Partial<Record<FigureId, string>> }>; // prettier-ignore
export type RoomName = keyof typeof portraitRooms;
export const portraitRoomNames = Object.keys(portraitRooms) as readonly RoomName[];

export interface PortraitFigure {
  readonly id: FigureId;
  readonly words: string;
  readonly text: string;
  readonly standing: FigureStanding;
}

/** How the house knows its figures. */
export interface HowKnown {
  readonly isBuiltIn: boolean;
  readonly standing: (id: FigureId) => FigureStanding;
  readonly counted: (id: FigureId) => number | undefined;
}

/** A figure as it hangs; nothing for one that is not the house's own: not known, or an estimate that is the built-in house's still. */
function figureOf(id: FigureId, words: string, line: Line, known: HowKnown): PortraitFigure | undefined {
  const at = (of: Line) => numberAt(of, pathsOf(id)[0]!);
  const value = known.counted(id) ?? at(line);
  const standing = known.standing(id);
  if (value === undefined || (standing === 'unknown' && !known.isBuiltIn)) return undefined;
  const text = textOfFigure(id, value);
  if (standing === 'estimate' && text === textOfFigure(id, at(builtInLine())!)) return undefined;
  if (id === 'casksInStore' && known.counted(id) === undefined) words = 'Casks in a full store';
  return { id, words, text: text + secondFigureText(line, pathsOf(id)[0]!), standing };
}

/** The figures of a room, without those that are left out. */
export const figuresOfRoom = (
  room: RoomName,
  line: Line,
  known: HowKnown,
  left: ReadonlySet<string>,
): readonly PortraitFigure[] =>
  (Object.entries(portraitRooms[room].figures) as [FigureId, string][])
    .filter(([id]) => !left.has(id))
    .flatMap(([id, words]) => figureOf(id, words, line, known) ?? []);
