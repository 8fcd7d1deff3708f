// What is known of a house: which figures its reader has given, and how each is known; and what was counted beside what is computed.
import { isData } from '../../core/reading/data.ts';
import { canRead, number } from '../../core/reading/given.ts';
import { foreshotsCount } from '../../core/distilling/foreshots.ts';
import { figureTable, headOf, type FigureId } from '../../core/figures/index.ts';
import { countedIds, usualWay, waysKept, waysToKnow, type WayKnown } from '../../core/figures/standing.ts';
import { rangeProblem } from '../../core/format.ts';
import type { House } from '../../core/line/house.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import { fewProblems } from '../few-problems.ts';
import { builtInHouse, isNumberName, numberFigures, type NumberName } from '../figures.ts';
import { readPart, type HousePart, type HouseParts } from './part.ts';

export interface Known {
  /** The figures that the reader has given, and how each is known. */
  readonly given: Readonly<Partial<Record<NumberName, WayKnown>>>;
  /** What was counted or read of a computed figure, in the unit of its kind. */
  readonly counted: Readonly<Partial<Record<FigureId, number>>>;
}

export const nothingKnown: Known = { given: {}, counted: {} };

/** The entries of a record in a text; of anything else none. */
const entriesOf = (data: unknown): readonly (readonly [string, unknown])[] =>
  isData(data) ? Object.entries(data) : [];

const isCounted = (id: string): id is FigureId => (countedIds as readonly string[]).includes(id);

/** What is wrong with what was counted, or nothing: in the sentence of a field. */
export function countedProblem(id: FigureId, value: unknown): string | undefined {
  const { limits, kind } = figureTable[id];
  return canRead(number(...limits), value) ? undefined : rangeProblem(`${headOf(id)}, as counted`, value, kind, limits); // prettier-ignore
}

function givenProblem(name: string, way: unknown): string | undefined {
  if (!isNumberName(name)) return `“${quotedGiven(name)}” is not a figure that a house gives.`;
  const allowed = waysKept(name);
  return allowed.some((each) => each === way)
    ? undefined
    : `${numberFigures[name].label}: “${quotedGiven(way)}” is not how it is known; it can be ${allowed.join(' or ')}.`;
}

const countProblem = (id: string, value: unknown) =>
  isCounted(id) ? countedProblem(id, value) : `“${quotedGiven(id)}” is not a figure that a house counts.`;

export const knownPart: HousePart<Known> = {
  id: 'known',
  title: 'What is known',
  empty: nothingKnown,
  read(data) {
    if (!isData(data))
      return { value: nothingKnown, problems: ['What is known of the house cannot be read.'] };
    const { given, counted, ...others } = data;
    const problems: string[] = Object.keys(others).map((key) => `What is known: “${quotedGiven(key)}” is nothing that it holds.`); // prettier-ignore
    const sound = (entries: readonly (readonly [string, unknown])[], problemOf: typeof countProblem) =>
      Object.fromEntries(
        entries.filter(([name, value]) => {
          const problem = problemOf(name, value);
          if (problem !== undefined) problems.push(problem);
          return problem === undefined;
        }),
      );
    const value = {
      given: sound(entriesOf(given), givenProblem),
      counted: sound(entriesOf(counted), countProblem),
    };
    return { value, problems: fewProblems(problems) };
  },
};

const SAME = 1e-9; // of a figure: what rounding alone can move

/** What is known of a house that says nothing of it, as older builds kept them: what differs from the built-in house. */
function knownByDiffering(house: House): Known {
  const own = (Object.keys(numberFigures) as NumberName[]).filter(
    (name) => Math.abs(house[name] - builtInHouse[name]) > SAME * Math.abs(builtInHouse[name]),
  );
  return { given: Object.fromEntries(own.map((name) => [name, usualWay(name)])), counted: {} };
}

/** What is known of a house. */
export const knownOf = ({ house, parts }: { readonly house: House; readonly parts: HouseParts }): Known =>
  parts.known === undefined ? knownByDiffering(house) : readPart(knownPart, parts.known).value;

/** The figures that a house gives, as it ends its foreshots. */
export const figuresThatCount = ({ foreshotsBy }: House): readonly NumberName[] =>
  (Object.keys(numberFigures) as NumberName[]).filter((name) => foreshotsCount(name, foreshotsBy));

/** What is known, with one figure known, in the usual way if none is named; or, with nothing, not known. */
export function withGiven(known: Known, name: NumberName, way: WayKnown | undefined): Known {
  const { [name]: _, ...others } = known.given;
  return { ...known, given: way === undefined ? others : { ...others, [name]: way } };
}

/** How a figure is known that was moved and not typed: nobody has read it anywhere, so it is set where it can be. */
const wayMoved = (name: NumberName): WayKnown => (waysToKnow(name).includes('set') ? 'set' : usualWay(name));

/** What is known once a figure was typed, or moved: it is the reader’s, and those given before that gave way to it follow. */
export function afterTyping(known: Known, name: NumberName, gave: readonly string[], isMoved = false): Known {
  const before = known.given[name];
  const usual = before === undefined || before === 'follows' ? usualWay(name) : before;
  const typed = withGiven(known, name, isMoved ? wayMoved(name) : usual);
  const followed = (Object.keys(typed.given) as NumberName[]).filter((each) => gave.includes(each));
  return followed.reduce((now, each) => withGiven(now, each, 'follows'), typed);
}

/** What is known, with what was counted of one figure; or, with nothing, not counted. */
export function withCounted(known: Known, id: FigureId, value: number | undefined): Known {
  const { [id]: _, ...others } = known.counted;
  return { ...known, counted: value === undefined ? others : { ...others, [id]: value } };
}
