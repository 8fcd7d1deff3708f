// A figure typed into a house of which only a part is known: what is known stays, and what is not known gives way to it.
import { mashReadings, waysOf, type Giving, type MashReading } from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import { line } from '../core/line/line.ts';
import { isRefusal } from '../core/refusal.ts';
import { proposeFigure, proposeExtract, type ProposedHouse } from './propose.ts';
import { numberFigures, type FigureName } from './figures.ts';
import type { LineWay } from './line-of.ts';
import type { Known } from './parts/known.ts';

/** What was proposed, with the yeast in the old measure to the malt where nobody has given the yeast. */
export function withYeast(entered: Entered, before: House, figure: FigureName, { given }: Known): Entered {
  if ('problem' in entered || 'yeast' in given || figure === 'yeast') return entered;
  const { house, gave } = entered;
  const [least, most] = numberFigures.yeast.range;
  const to = Number(((before.yeast * house.maltPerMash) / before.maltPerMash).toPrecision(3));
  if (house.maltPerMash === before.maltPerMash || to < least || to > most) return entered;
  const changed = { ...house, yeast: to as House['yeast'] };
  const line = { ...entered.line, house: changed }; // no figure of the line hangs on it
  return { ...entered, house: changed, line, gave: [...gave, { figure: 'yeast', from: before.yeast, to }] };
}

const isMashReading = (figure: FigureName): figure is MashReading =>
  (mashReadings as readonly string[]).includes(figure);

/** A proposal, and what gave way where it is not the usual. */
export type Entered = ProposedHouse & { readonly gives?: Giving };

/**
 * The house with a figure given for the first time. Where one figure has to give way, one that is not known does, the first
 * with which the house runs; when all are known, their readings stand as given and the mash efficiency follows from them, or,
 * where that would be more than all of an extract that nobody has given, the extract. No figure that is known moves.
 */
export function enterFigure(
  before: House,
  figure: FigureName,
  value: unknown,
  { given }: Known,
  way: LineWay = line,
): Entered {
  const ways = before.holds === 'readings' ? [] : waysOf(figure);
  const free = ways.filter((way) => !(way in given));
  const open: readonly (Giving | undefined)[] =
    free.length > 0 ? free : [ways.length > 0 ? 'efficiency' : undefined];
  const tried = open.map((gives) => ({ proposal: proposeFigure(before, figure, value, gives, way), gives }));
  if (free.length === 0 && !('solubleExtract' in given) && isMashReading(figure))
    tried.push({ proposal: proposeExtract(before, figure, value, way), gives: open[0] });
  const { proposal, gives } = tried.find(({ proposal }) => !('problem' in proposal)) ?? tried[0]!;
  if ('problem' in proposal) return proposal;
  const stays = proposal.gave.filter((each) => each.figure in given);
  const house: House = {
    ...proposal.house,
    ...Object.fromEntries(stays.map((each) => [each.figure, each.from])),
  };
  const result = way(house);
  if (isRefusal(result)) return { problem: result.refused };
  return {
    house,
    gave: proposal.gave.filter((each) => !stays.includes(each)),
    line: result,
    ...(gives && gives !== ways[0] && { gives }),
  };
}
