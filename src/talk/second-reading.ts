// The second reading: what speaks for each candidate of a quantity, in the light of what all the others are likely to be.
import { figureIds, talkFigures, type TalkFigureId } from './figures.ts';
import { stages } from '../core/figures/index.ts';
import { isFigure, reasons, type Candidate, type Reason } from './candidates.ts';
import { inOneHouse, type TakenFigure } from './one-house.ts';
import type { SpokenQuantity } from './quantities.ts';
import { sumsHeld, type FigureTelling } from './sums.ts';
import { gainOf, type Together } from './told-together.ts';

/** A talk between two readings. */
export interface TalkReading {
  readonly text: string;
  readonly quantities: readonly SpokenQuantity[];
  readonly candidates: readonly (readonly Candidate[])[];
}
/** The chances of each quantity's candidates, in their order. */
export type Chances = readonly (readonly number[])[];

const FIGURES_APART = 5; // quantities between two figures that are told one after another
const LEAST = 1e-6; // a chance whose logarithm is still told apart
const LEAST_SIZE = -5;
const LIKELY = 1e-3; // a chance below which a candidate does not speak to the others
const AROUND = 6; // quantities before and behind that count as near
const SAME = 0.004; // part of a value within which two tellings are the same
const DIFFERS = 0.03;

/** How far apart two figures stand in the order of telling, in steps that are learnt apart. */
const steps = [-10, -5, -3, -2, -1, 0, 1, 2, 3, 5, 10] as const;
const stepOf = (apart: number): number => {
  if (apart <= -10) return 0;
  if (apart >= 10) return 10;
  const size = Math.abs(apart) >= 5 ? 5 : Math.abs(apart) >= 3 ? 3 : Math.abs(apart);
  return steps.indexOf((Math.sign(apart) * size) as (typeof steps)[number]);
};

/** What is weighed of each candidate, by name. */
export const weighed = [
  'first', 'figure', 'fits', 'misfits', 'same near', 'same far', 'differs near', 'differs far', 'stage', 'a hundred', 'none before', 'none behind', 'none of none before', 'none of none behind', 'reason near', 'said again', 'no number', 'none in the talk', 'not told', 'told twice', 'differs next', 'differs last', 'differs next at once', 'differs last at once', 'follows', 'leads', 'follows figure', 'leads figure', 'first of bare', 'figure of bare', 'all of one', 'all of many', 'each of one', 'each of many', 'wash of one', 'wash of many', 'each wash of one', 'each wash of many', 'behind the likeliest', 'is the likeliest', 'rank', 'now', 'now behind the likeliest', 'size', 'stage in the sentence', 'reason around', 'sum near', 'sum far',
  ...stages.map((stage) => `at ${stage}` as const),
  ...reasons.map((reason) => `is ${reason}` as const),
  ...steps.map((step) => `before ${step}` as const),
  ...steps.map((step) => `behind ${step}` as const),
] as const; // prettier-ignore
const at = Object.fromEntries(weighed.map((name, i) => [name, i])) as Readonly<
  Record<(typeof weighed)[number], number>
>;
const beforeAt = at['before -10'];
const behindAt = at['behind -10'];

const order = new Map(figureIds.map((id, i) => [id, i]));

/** "Which is", "that's", "or", between two ways of saying one figure. */
const again =
  /^[\s,(—-]*(?:which|that|or|i\.e|in (?:other|new)|so|call it|=|it['’]?s|no|sorry|I mean|about|say)?\b[^.!?\n]{0,30}$/i;

const middle = ([low, high = low]: readonly number[]) => (low! + high!) / 2;

/** How well each quantity goes with each figure in the one house of the talk, beyond any house. */
function inTheHouse({ candidates }: TalkReading, chances: Chances): ReadonlyMap<Candidate, number> {
  const taken: TakenFigure[] = [];
  const of: Candidate[] = [];
  candidates.forEach((all, quantity) =>
    all.forEach((each, k) => {
      if (each.log === undefined) return;
      taken.push({
        quantity,
        figure: each.label as TalkFigureId,
        chance: chances[quantity]![k]!,
        log: each.log,
      });
      of.push(each);
    }),
  );
  return new Map(inOneHouse(taken).map((fit, i) => [of[i]!, fit - of[i]!.size]));
}

/** Where each figure may be told: the quantity, its value there, and how likely. */
function tellings({ candidates }: TalkReading, chances: Chances) {
  const told = new Map<string, FigureTelling[]>();
  candidates.forEach((all, quantity) =>
    all.forEach(({ label, values }, k) => {
      const chance = chances[quantity]![k]!;
      if (!isFigure(label) || chance < 0.02) return;
      const one = { quantity, value: middle(values), chance };
      const there = told.get(label);
      if (there) there.push(one);
      else told.set(label, [one]);
    }),
  );
  return told;
}

/** Three neighbours that make a hundred, the places of whose middle ones are given. */
function hundreds({ quantities }: TalkReading): ReadonlySet<number> {
  const found = new Set<number>();
  for (let i = 1; i + 1 < quantities.length; i++) {
    const three = quantities.slice(i - 1, i + 2).map(({ value, dimension }) => (dimension === 'share' ? 100 : 1) * (value ?? Infinity));
    if (Math.abs(three[0]! + three[1]! + three[2]! - 100) <= 1 && three[1]! > three[0]! && three[1]! > three[2]!) found.add(i);
  }
  return found;
} // prettier-ignore

const sides = ['one', 'many'] as const;
/** How likely a talk tells of one still, or of several, for the spirit and for the wash. */
function stillsTold({ candidates }: TalkReading, chances: Chances) {
  const found = { spirit: { one: 0, many: 0 }, wash: { one: 0, many: 0 } };
  candidates.forEach((all, i) =>
    all.forEach(({ label, values }, k) => {
      const of = label === 'numberOfSpiritStills' ? ['spirit'] : label === 'numberOfWashStills' ? ['wash'] : label === 'numberOfStills' ? ['spirit', 'wash'] : [];
      const side = middle(values) <= (label === 'numberOfStills' ? 2 : 1) ? 'one' : 'many';
      for (const each of of as ('spirit' | 'wash')[]) found[each][side] = Math.max(found[each][side], chances[i]![k]!);
    }),
  );
  return found;
} // prettier-ignore

const grist = new Set<string>(['husk', 'grits', 'flour']);

/** The number of the sentence that each quantity stands in. */
function sentencesOf({ text, quantities }: TalkReading): number[] {
  let [sentence, last] = [0, 0];
  return quantities.map(({ start, end }) => {
    if (/[.?!]\s|\n/.test(text.slice(last, start))) sentence++;
    last = end;
    return sentence;
  });
}

const logOf = (chance: number) => Math.log(Math.max(LEAST, chance));
/** How far each of some chances lies from the likeliest other, in logarithms. */
function behindLikeliest(chances: readonly number[]): number[] {
  const [most = 1, next = 0] = [...chances].sort((a, b) => b - a);
  return chances.map((chance) => logOf(chance) - logOf(chance === most ? next : most));
}

/** What is weighed of every candidate of each quantity, one candidate after another. */
export function weighedOf(
  reading: TalkReading,
  first: Chances,
  chances: Chances,
  together?: Together,
): Float64Array[] {
  const { text, quantities, candidates } = reading;
  const stills = stillsTold(reading, chances);
  const fit = inTheHouse(reading, chances);
  const told = tellings(reading, chances);
  const sums = hundreds(reading);
  const held = sumsHeld(told);
  const stageAt = candidates.map((all, i) => {
    const stages: Record<string, number> = {};
    all.forEach(({ label }, k) => {
      if (isFigure(label)) stages[talkFigures[label].stage] = (stages[talkFigures[label].stage] ?? 0) + chances[i]![k]!;
    });
    return stages;
  }); // prettier-ignore
  const noneAt = candidates.map((all, i) => all.reduce((sum, { label }, k) => sum + (isFigure(label) ? 0 : chances[i]![k]!), 0)); // prettier-ignore
  const noneInAll = noneAt.reduce((sum, none) => sum + none, 0) / Math.max(1, noneAt.length);
  const spoken = candidates.map((all, i) => all.flatMap(({ label }, k) => (chances[i]![k]! > LIKELY ? [{ label, chance: chances[i]![k]! }] : []))); // prettier-ignore
  const near = candidates.map((_, i) => {
    const shares: Record<string, number> = {};
    let whole = 0;
    for (let j = Math.max(0, i - 4); j <= Math.min(candidates.length - 1, i + 4); j++) {
      if (j === i) continue;
      const weight = 0.7 ** Math.abs(i - j);
      whole += weight;
      for (const stage in stageAt[j]) shares[stage] = (shares[stage] ?? 0) + weight * stageAt[j]![stage]!;
    }
    return (stage: string) => (whole === 0 ? 0 : (shares[stage] ?? 0) / whole);
  });
  const sentence = sentencesOf(reading);
  const inSentence = candidates.map((_, i) => {
    const shares: Record<string, number> = {};
    let count = 0;
    for (const step of [-1, 1])
      for (let j = i + step; sentence[j] === sentence[i]; j += step) {
        count++;
        for (const stage in stageAt[j]) shares[stage] = (shares[stage] ?? 0) + stageAt[j]![stage]!;
      }
    return (stage: string) => (count === 0 ? 0 : (shares[stage] ?? 0) / count);
  });
  /** How likely the quantities around one are none for a reason, the nearest counting most. */
  const reasonAround = (reason: string, i: number) => {
    let [sum, whole] = [0, 0];
    for (let j = Math.max(0, i - AROUND); j <= Math.min(candidates.length - 1, i + AROUND); j++) {
      if (j === i) continue;
      const weight = 0.75 ** Math.abs(i - j);
      whole += weight;
      sum += weight * (spoken[j]!.find(({ label }) => label === reason)?.chance ?? 0);
    }
    return whole === 0 ? 0 : sum / whole;
  };
  return candidates.map((all, i) => {
    const [behindFirst, behindNow] = [behindLikeliest(first[i]!), behindLikeliest(chances[i]!)];
    const resaid =
      i > 0 && quantities[i]!.start - quantities[i - 1]!.end < 45 && again.test(text.slice(quantities[i - 1]!.end, quantities[i]!.start)); // prettier-ignore
    const rows = new Float64Array(weighed.length * all.length);
    all.forEach((candidate, k) => {
      const from = k * weighed.length;
      const put = (name: keyof typeof at, value: number) => (rows[from + at[name]]! += value);
      const alone = logOf(first[i]![k]!);
      put('first', alone);
      put('behind the likeliest', behindFirst[k]!);
      if (behindFirst[k]! >= 0) put('is the likeliest', 1);
      put('rank', Math.log(1 + first[i]!.filter((chance) => chance > first[i]![k]!).length));
      put('now', logOf(chances[i]![k]!));
      put('now behind the likeliest', behindNow[k]!);
      put('size', Math.max(LEAST_SIZE, candidate.size));
      const { label, values } = candidate;
      if (quantities[i]!.dimension === 'bare') put('first of bare', alone);
      for (const { label: other, chance } of spoken[i - 1] ?? []) put('follows', chance * gainOf(together?.all, other, label));
      for (const { label: other, chance } of spoken[i + 1] ?? []) put('leads', chance * gainOf(together?.all, label, other));
      if (!isFigure(label)) {
        put('none of none before', noneAt[i - 1] ?? 0.3);
        put('none of none behind', noneAt[i + 1] ?? 0.3);
        for (const j of [i - 1, i + 1]) put('reason near', spoken[j]?.find((each) => each.label === label)?.chance ?? 0);
        put('reason around', reasonAround(label, i));
        put(`is ${label.slice(1) as Reason}`, 1);
        return;
      }
      put('figure', 1);
      for (const [step, name] of [[-1, 'follows figure'], [1, 'leads figure']] as const) {
        let stillNone = 1;
        for (let j = i + step; spoken[j] && Math.abs(j - i) <= FIGURES_APART && stillNone > 0.05; j += step) {
          for (const { label: other, chance } of spoken[j]!)
            if (isFigure(other)) put(name, stillNone * chance * (step < 0 ? gainOf(together?.figures, other, label) : gainOf(together?.figures, label, other)));
          stillNone *= noneAt[j]!;
        }
      }
      if (quantities[i]!.dimension === 'bare') put('figure of bare', 1);
      const { spirit, wash } = stills;
      if (label === 'chargeVolume') for (const side of sides) put(`all of ${side}`, spirit[side]);
      if (label === 'spiritStillCharge') for (const side of sides) put(`each of ${side}`, spirit[side]);
      if (label === 'washVolume') for (const side of sides) put(`wash of ${side}`, wash[side]);
      if (label === 'washStillCharge') for (const side of sides) put(`each wash of ${side}`, wash[side]);
      put('none in the talk', noneInAll);
      const gain = fit.get(candidate);
      if (gain !== undefined) put(gain > 0 ? 'fits' : 'misfits', Math.max(-6, gain));
      else put('no number', 1);
      const value = middle(values);
      const most = { same: [0, 0], differs: [0, 0] };
      let untold = 1;
      const beside = { next: 0, last: 0 };
      const atOnce = { next: 0, last: 0 };
      for (const other of told.get(label) ?? []) {
        if (other.quantity === i) continue;
        untold *= 1 - other.chance;
        const apart = Math.abs(other.value / value - 1);
        const side = apart <= SAME ? most.same : apart >= DIFFERS ? most.differs : undefined;
        const far = Math.abs(other.quantity - i) <= AROUND ? 0 : 1;
        if (side) side[far] = Math.max(side[far]!, other.chance);
        if (side === most.differs && far === 0) {
          const order = other.quantity > i ? 'next' : 'last';
          beside[order] = Math.max(beside[order], other.chance);
          if (Math.abs(other.quantity - i) <= 2) atOnce[order] = Math.max(atOnce[order], other.chance);
        }
      }
      const ofSum = held.get(label)?.get(i);
      if (ofSum) {
        put('sum near', ofSum.near);
        put('sum far', ofSum.far);
      }
      put('not told', untold);
      put('told twice', Math.max(...most.same) * Math.max(...most.differs));
      put('same near', most.same[0]!);
      put('same far', most.same[1]!);
      put('differs near', most.differs[0]!);
      put('differs next', beside.next);
      put('differs last', beside.last);
      put('differs next at once', atOnce.next);
      put('differs last at once', atOnce.last);
      put('differs far', most.differs[1]!);
      const { stage } = talkFigures[label];
      put('stage', near[i]!(stage));
      put('stage in the sentence', inSentence[i]!(stage));
      put(`at ${stage}`, 1);
      if (grist.has(label)) {
        const middleAt = i + (label === 'husk' ? 1 : label === 'flour' ? -1 : 0);
        if (sums.has(middleAt)) put('a hundred', 1);
      }
      const place = order.get(label)!;
      for (const { label: other, chance } of spoken[i - 1] ?? []) {
        if (!isFigure(other)) put('none before', chance);
        else {
          rows[from + beforeAt + stepOf(place - order.get(other)!)]! += chance;
          if (other === label && resaid) put('said again', chance * (most.same[0]! > 0 ? 1 : 0));
        }
      }
      for (const { label: other, chance } of spoken[i + 1] ?? []) {
        if (!isFigure(other)) put('none behind', chance);
        else rows[from + behindAt + stepOf(order.get(other)! - place)]! += chance;
      }
    });
    return rows;
  }); // prettier-ignore
}
