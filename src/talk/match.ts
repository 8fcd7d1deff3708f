// Each quantity of a text to the figure that it most likely is: by its unit, the words about it, the stage and the order of telling.
import { figureIds, talkFigures, type FigureId, type TalkFigure, type TalkKind } from './figures.ts';
import { surroundings } from './nearby.ts';
import type { Quantity } from './quantities.ts';
import { topics } from './stages.ts';
import { inUnit, type Dimension } from './units.ts';
import { mentionsIn, type ConceptName } from './words.ts';

export interface Proposal {
  readonly figure: FigureId;
  readonly score: number;
}
export interface Matched {
  /** Figures that its unit and size allow, the likeliest first, at most four; the first is proposed when `certain`. */
  readonly proposals: readonly Proposal[];
  readonly certain: boolean;
  /** What it is a measure of, by the words about it, even when no figure is proposed. */
  readonly kind?: TalkKind;
  /** The unit that a bare number takes from those before it. */
  readonly unit: string;
}

const ENOUGH = 2.2; // a score from which a figure is proposed
const BEYOND = 2; // times a figure's limits at which it may still be meant: said, and not possible
const OUT_OF_REACH = 1.5; // that the words must outweigh then
const LEAD = 0.25; // how far it must lead the next
const figures: Readonly<Record<FigureId, TalkFigure>> = talkFigures;
const takenBy = new Map<Dimension, readonly FigureId[]>();
for (const dimension of new Set(figureIds.flatMap((id) => figures[id].takes)))
  takenBy.set(
    dimension,
    figureIds.filter((id) => figures[id].takes.includes(dimension)),
  );

/** Words that a figure is somebody else's: they forbid a proposal, but not its kind. */
const othersOwn: readonly ConceptName[] = ['elsewhere', 'law', 'built', 'limit'];

/** The ends of a quantity in a figure's unit. */
export function valuesFor(quantity: Quantity, figure: FigureId, said = quantity.unit): readonly number[] {
  const { unit } = figures[figure];
  const ends = quantity.range ?? [quantity.value ?? 0];
  if (quantity.dimension === 'share') return ends.map((value) => 100 * value);
  if (said === '' && unit !== 'gravity') return ends;
  return ends.map((value) => inUnit(value, said, unit));
}

/** The units of strength and temperature last said before each quantity: what a bare "off at 107" is in. */
function unitsBefore(quantities: readonly Quantity[]): Record<'strength' | 'temperature', string>[] {
  const last = { strength: '% vol', temperature: '°C' };
  return quantities.map(({ dimension, unit }) => {
    if (dimension === 'temperature') last.temperature = unit;
    if (dimension === 'strength' || dimension === 'percent') last.strength = unit === '%' ? '% vol' : unit;
    return { ...last };
  });
}

/** Three numbers in a row that make a hundred are husk, grits and flour: the first, second and third. */
function gristOrder(text: string, quantities: readonly Quantity[]): Map<Quantity, FigureId> {
  const order = new Map<Quantity, FigureId>();
  const parts = ['percent', 'share', 'bare'];
  for (let i = 0; i + 2 < quantities.length; i++) {
    const three = quantities.slice(i, i + 3);
    const sum = three.reduce((total, { value }) => total + (value ?? Infinity), 0);
    const [a, b, c] = three;
    const [first, second] = [text.slice(a!.end, b!.start), text.slice(b!.end, c!.start)];
    const listed = [first, second].every(
      (gap) => gap.length < 9 && /^\s*(?:[,/:–—-]|and|, ?and)?\s*$/.test(gap),
    );
    if (listed && Math.abs(sum - 100) <= 1 && three.every(({ dimension }) => parts.includes(dimension)))
      three.forEach((each, place) => order.set(each, (['husk', 'grits', 'flour'] as const)[place]!));
  }
  return order;
}

/** "Which is", "that's", "or", between two ways of saying one figure. */
const again = /^[\s,(]*(?:which|that|or|i\.e|in (?:other|new)|so|call it|=|it['’]?s)\b[^.!?\n]{0,30}$/i;

/** After a bare number: it counts something else, or a part of the whole. */
const apart = /^\s+(?:pairs?\b|of\s+(?!them|those|these|it\b))/i;

/** A bare number before another noun counts that: "nine warehouses". */
const otherThings =
  /^\s+(?!(?:of|in|and|or|a|an|at|to|is|was|per|each|every|times)\b)(?:[a-z]+\s)?(?!(?:is|was|this|has|its|as|across|times)\b)[a-z]{2,}s\b/i;

interface Told {
  readonly figure: FigureId;
  readonly end: number;
  readonly values: readonly number[];
}

const differ = (a: readonly number[], b: readonly number[]) =>
  Math.abs(a[0]! - b[0]!) > 0.03 * Math.abs(a[0]!);

/** Proposes a figure for each quantity of a text. */
export function matchFigures(text: string, quantities: readonly Quantity[]): Matched[] {
  const mentions = mentionsIn(text);
  const topicAt = topics(mentions);
  const nearTo = surroundings(text, mentions, quantities);
  const units = unitsBefore(quantities);
  const grist = gristOrder(text, quantities);
  const told = new Map<FigureId, Told>();
  let before: Told | undefined;

  return quantities.map((quantity, i) => {
    const { dimension, start, end } = quantity;
    const bare = dimension === 'bare';
    const unitFor = (kind: TalkKind) =>
      bare && (kind === 'strength' || kind === 'temperature') ? units[i]![kind] : quantity.unit;
    const near = nearTo(i);
    if (bare && near.size === 0) return { proposals: [], certain: false, unit: quantity.unit };
    const topic = topicAt(start);
    const resaid =
      before !== undefined && start - before.end < 45 && again.test(text.slice(before.end, start));
    const led = bare && /\b(?:the|those|these|other)\s+$/i.test(text.slice(Math.max(0, start - 8), start));

    const scored = (takenBy.get(dimension) ?? []).flatMap((figure) => {
      const { range, heard, kind, cues, after, fall, stage, also, unit } = figures[figure];
      const values = valuesFor(quantity, figure, unitFor(kind));
      const beyond = !values.every((value) => value >= range[0] && value <= range[1]);
      if (beyond && (bare || !values.every((value) => value >= range[0] / BEYOND && value <= range[1] * BEYOND))) return [];
      const here = Math.max(topic[stage], ...(also ?? []).map((other) => topic[other]));
      let score = 1.5 * here - (here < 0.15 ? 1.2 : 0) - (beyond ? OUT_OF_REACH : 0);
      let others = 0;
      for (const concept in cues) {
        const name = concept as ConceptName;
        const part = (near.get(name) ?? 0) * cues[name]!;
        if (part < 0 && othersOwn.includes(name)) others += part;
        score += part;
      }
      score += values[0]! >= heard[0] && values[0]! <= heard[1] ? 0.5 : -1;
      if (kind === 'gravity') score += /^[01]\.\d{3}$/.test(text.slice(start, end)) ? 2 : 0;
      else if (bare && kind !== 'count') score -= 0.6;
      if (kind === 'alcohol' && dimension === 'volume') score -= 1.5;
      if (bare && kind === 'count' && (led || apart.test(text.slice(end, end + 12)))) score -= 2;
      if (bare && kind === 'count' && otherThings.test(text.slice(end, end + 40))) score -= 2;
      if (dimension === 'yield') score += 2;
      if (figure === 'bottlesPerCask' && bare && !near.has('bottle')) score -= 4;
      if (figure === 'bottleSize' && /^[cm]L$/.test(quantity.unit)) score += 1;
      if (((cues.perWeek ?? 0) >= 4 && !near.has('perWeek')) || ((cues.perYear ?? 0) >= 4 && unit !== 'weeks' && !near.has('perYear'))) score -= 1.2;
      if (before && start - before.end < 220 && after?.includes(before.figure)) score += 1.1;
      if (before?.figure === figure && resaid && !differ(before.values, values)) score += 2.5;
      const earlier = told.get(figure);
      if (earlier && differ(earlier.values, values)) score -= bare ? 2 : 0.6;
      if (quantity.fall) score += fall === quantity.fall ? 2 : -1.5;
      if (grist.get(quantity) === figure) score += 2.5;
      return [{ figure, score, others, values }];
    }); // prettier-ignore

    scored.sort((a, b) => b.score - a.score);
    const [best, next] = scored;
    const certain = best !== undefined && best.score >= ENOUGH && best.score - (next?.score ?? 0) >= LEAD;
    if (certain) {
      before = { figure: best.figure, end, values: best.values };
      if (!told.has(best.figure)) told.set(best.figure, before);
    }
    const likely = [...scored].sort((a, b) => b.score - b.others - (a.score - a.others))[0];
    const kind = certain ? figures[best.figure].kind : likely && likely.score - likely.others > 2 ? figures[likely.figure].kind : undefined; // prettier-ignore
    return {
      proposals: scored.slice(0, 4).map(({ figure, score }) => ({ figure, score })),
      certain,
      ...(kind ? { kind } : {}),
      unit: kind ? unitFor(kind) : quantity.unit,
    };
  });
}
