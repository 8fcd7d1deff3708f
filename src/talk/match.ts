// Each quantity of a talk to the figure that it most likely is: a first reading by its own evidence, then again by what all the others are likely to be.
// All is learnt but ties.ts and sums.ts; learnt.ts is written by npm run learn-talk after a change to evidence, figures, words, ties or talks. Below a chance of 0.8 it asks. npm run talk judges authors left out, three at a time, and nothing else may be told of it.
// Numbers and units are grammar (found.ts and what it imports): tests/talk/numbers.test.ts.
import { candidatesOf, isFigure, type Candidate, type Label, type Reason } from './candidates.ts';
import { evidenceIn } from './evidence.ts';
import { talkFigures, type TalkFigureId, type TalkKind } from './figures.ts';
import { firstChances, shortlist, type FirstModel } from './first-reading.ts';
import { weighedChances } from './network.ts';
import type { SpokenQuantity } from './quantities.ts';
import { weighedOf, type Chances } from './second-reading.ts';
import type { Together } from './told-together.ts';
import { unitsBefore } from './units-before.ts';

/** What the reader has learnt from talks. */
export interface Model {
  readonly first: FirstModel;
  /** The network of each further reading, in turn. */
  readonly further: readonly (readonly number[])[];
  /** Which figures are told one after another. */
  readonly together: Together;
}
export interface Likely {
  /** None where the quantity is likely none of the house's figures. */
  readonly figure?: TalkFigureId;
  /** 0 to 1. */
  readonly chance: number;
  /** The unit that the quantity is then in, as said. */
  readonly unit?: string;
  /** In the figure's unit. */
  readonly inFigure: readonly number[];
}
export interface Matched {
  /** What it may be, the likeliest first: figures, and once none of them. */
  readonly likely: readonly Likely[];
  /** Why it is none of the house's, if it is none. */
  readonly because: Reason;
  /** The figure that it is likeliest to be by its own words, before it is held against what else the talk tells. */
  readonly byItself?: Likely;
  /** What it is a measure of, by all that it may be, even when no figure is proposed. */
  readonly kind?: TalkKind;
}

/** The chance from which a figure is proposed; below it the reader is asked. */
export const CERTAIN = 0.8;
const HARDLY = 0.005; // a chance that is not told

/** What every quantity of a talk may be, and the chances of each. */
export function chancesIn(text: string, quantities: readonly SpokenQuantity[], { first, further, together }: Model): { candidates: readonly (readonly Candidate[])[]; alone: Chances; chances: Chances } {
  const before = unitsBefore(text, quantities);
  const all = quantities.map((quantity, i) => candidatesOf(quantity, before[i]!));
  const each = evidenceIn(text, quantities).map((evidence, i) => firstChances(first, evidence, all[i]!));
  const short = each.map(shortlist);
  const candidates = short.map((places, i) => places.map((place) => all[i]![place]!));
  const alone = short.map((places, i) => places.map((place) => each[i]![place]!));
  const reading = { text, quantities, candidates };
  const chances = further.reduce<Chances>(
    (now, network) => weighedOf(reading, alone, now, together).map((rows, i) => weighedChances(rows, candidates[i]!, network)),
    alone,
  );
  return { candidates, alone, chances };
} // prettier-ignore

/** The likeliest of some candidates that are figures. */
function likeliest(candidates: readonly Candidate[], chances: readonly number[]): Likely | undefined {
  let best: Likely | undefined;
  candidates.forEach(({ label, values, unit }, i) => {
    if (isFigure(label) && chances[i]! > (best?.chance ?? HARDLY))
      best = {
        figure: label,
        chance: chances[i]!,
        inFigure: values,
        ...(unit === undefined ? {} : { unit }),
      };
  });
  return best;
}

function matched(candidates: readonly Candidate[], alone: readonly number[], chances: readonly number[]): Matched {
  const figures: Likely[] = [];
  const kinds = new Map<TalkKind, number>();
  let [none, most, because] = [0, 0, 'other' as Reason];
  candidates.forEach(({ label, values, unit }, i) => {
    const chance = chances[i]!;
    if (isFigure(label)) {
      const { kind } = talkFigures[label];
      kinds.set(kind, (kinds.get(kind) ?? 0) + chance);
      if (chance > HARDLY) figures.push({ figure: label, chance, inFigure: values, ...(unit === undefined ? {} : { unit }) });
      return;
    }
    none += chance;
    if (chance > most) [most, because] = [chance, reasonOf(label)];
  });
  const [kind] = [...kinds].sort((a, b) => b[1] - a[1])[0] ?? [];
  const likely = [...figures, { chance: none, inFigure: [] }].sort((a, b) => b.chance - a.chance);
  const byItself = likeliest(candidates, alone);
  return { likely, because, ...(byItself ? { byItself } : {}), ...(kind ? { kind } : {}) };
} // prettier-ignore

const reasonOf = (label: Exclude<Label, TalkFigureId>) => label.slice(1) as Reason;

/** What each quantity of a text is likely to be. */
export function matchFigures(text: string, quantities: readonly SpokenQuantity[], model: Model): Matched[] {
  const { candidates, alone, chances } = chancesIn(text, quantities, model);
  return candidates.map((each, i) => matched(each, alone[i]!, chances[i]!));
}
