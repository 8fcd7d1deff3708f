// The foot of the house's portrait: how its figures are known, and whether they agree, in plain sentences.
import { pathsOf, type FigureId } from '../core/figures/index.ts';
import { standings, type FigureStanding } from '../core/figures/standing.ts';
import { numberAt } from '../core/line/beside.ts';
import { cautions } from '../core/line/cautions.ts';
import { computedBeside } from '../core/line/counted-beside.ts';
import { withinReading } from '../core/line/within-reading.ts';
import type { Line } from '../core/line/line.ts';
import type { HowKnown, PortraitFigure } from './portrait.ts';

export const STANDING_MARKS: Partial<Readonly<Record<FigureStanding, string>>> = {
  counted: '●',
  estimate: '○',
};
const told: readonly FigureStanding[] = ['measured', 'set', 'follows', 'computed', 'counted', 'estimate'];
const list = (all: readonly string[]) =>
  all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;

/** How many figures hang there, and how many are known in which way. */
function howMany(figures: readonly PortraitFigure[], isBuiltIn: boolean): string {
  if (figures.length === 0) return 'No figure of the house is told here.';
  const ways = told.flatMap((way) => {
    const many = figures.filter(({ standing }) => standing === way || (isBuiltIn && way === 'set' && standing === 'unknown')).length; // prettier-ignore
    return many === 0
      ? []
      : [`${many} ${STANDING_MARKS[way] ? `(${STANDING_MARKS[way]}) ` : ''}${standings[way]}`];
  });
  return `${figures.length} ${figures.length === 1 ? 'figure' : 'figures'}: ${list(ways)}.`;
}

/**
 * Whether the figures agree. What is given is held against what cannot be; what was counted, against what is computed from
 * all else, as far as that hangs on nothing that is not known.
 */
function whetherTheyAgree(
  figures: readonly PortraitFigure[],
  line: Line,
  known: HowKnown,
  hangs: (id: FigureId) => boolean,
): readonly string[] {
  const broken = [...new Set(cautions(line).flatMap(({ weight, stage }) => (weight === 'impossible' ? [stage] : [])))];
  const counted = figures.filter(({ standing }) => standing === 'counted');
  const judged = counted.filter(({ id }) => !hangs(id));
  const apart = judged.flatMap(({ id, words }) => {
    const [own, computed] = [known.counted(id)!, numberAt(line, pathsOf(id)[0]!)!];
    return withinReading(id, own, computed) ? [] : [`${words.toLowerCase()}, computed ${computedBeside(id, own, computed)}`];
  });
  const has = (way: FigureStanding) => figures.some(({ standing }) => standing === way);
  const open = counted.length - judged.length;
  return [
    ...(broken.length > 0 ? [`Those of the ${list(broken)} do not agree with each other.`] : []),
    ...(apart.length > 0 ? [`What was counted does not all agree: ${apart.join('; ')}.`] : []),
    ...(judged.length > 0 && apart.length === 0 ? [judged.length === 1 ? 'What was counted agrees with the rest.' : `All ${judged.length} that were counted agree with the rest.`] : []),
    ...(open > 0 ? [`${open} that ${open === 1 ? 'was' : 'were'} counted cannot be held against the rest, as not all of that is known.`] : []),
    ...(broken.length + counted.length === 0 && has('computed') ? ['What is computed follows from what is given; nothing was counted to hold against it.'] : []),
    ...(has('estimate') ? ['An estimate hangs on what the house has not given.'] : []),
  ];
} // prettier-ignore

/** The foot, sentence by sentence; `hangs` says whether a computed figure hangs on what is not known. */
export const portraitFoot = (
  figures: readonly PortraitFigure[],
  line: Line,
  known: HowKnown,
  hangs: (id: FigureId) => boolean,
  hasSigns: boolean,
): readonly string[] => [
  howMany(figures, known.isBuiltIn),
  ...whetherTheyAgree(figures, line, known, hangs),
  ...(hasSigns ? ['Where the house has named no vessel, one stands as a sign.'] : []),
];
