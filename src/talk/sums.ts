// Sums that hold between the figures of one house: how surely a quantity stands in one with others of its talk, if it is what it is taken for.
import type { TalkFigureId } from './figures.ts';

/** Where a figure may be told: the quantity, its value there, and how likely. */
export interface FigureTelling {
  readonly quantity: number;
  readonly value: number;
  readonly chance: number;
}
export type FigureTellings = ReadonlyMap<string, readonly FigureTelling[]>;

/** A figure and what it is reckoned from, each in its own unit. */
interface Sum {
  readonly result: TalkFigureId;
  readonly from: readonly TalkFigureId[];
  readonly reckon: (...from: number[]) => number;
}
const sum = (result: TalkFigureId, from: string, reckon: Sum['reckon']): Sum => ({
  result,
  from: from.split(' ') as TalkFigureId[],
  reckon,
});
const product = (...from: number[]) => from.reduce((all, each) => all * each, 1);
const whole = (...from: number[]) => from.reduce((all, each) => all + each, 0);
const casks = (alcohol: number, strength: number, size: number) => (100 * alcohol) / strength / size;
const OF_A_FALL = 131; // % vol for a fall of one in gravity: the brewer's rule of thumb, common practice, no source

/** What follows by definition or by balance, as guides reckon it: alcohol by the rule of thumb, one spirit still where all goes into it, a store that is full. A house whose figures break one is only less surely read. */
const sums: readonly Sum[] = [
  sum('mashesPerYear', 'mashesPerWeek weeksPerYear', product),
  sum('maltPerWeek', 'maltPerMash mashesPerWeek', product),
  sum('maltPerYear', 'maltPerMash mashesPerYear', product),
  sum('maltPerYear', 'maltPerWeek weeksPerYear', product),
  sum('alcoholPerWeek', 'heartAlcohol mashesPerWeek', product),
  sum('alcoholPerYear', 'heartAlcohol mashesPerYear', product),
  sum('alcoholPerYear', 'alcoholPerWeek weeksPerYear', product),
  sum('heartAlcohol', 'spiritYield maltPerMash', (yielded, malt) => (yielded * malt) / 1000),
  sum('heartAlcohol', 'heartVolume heartStrength', (volume, strength) => (volume * strength) / 100),
  sum('firstWater', 'liquorRatio maltPerMash', product),
  sum('maltPerMash', 'millRate millingTime', (rate, hours) => 1000 * rate * hours),
  sum('washStrength', 'originalGravity finalGravity', (before, after) => OF_A_FALL * (before - after)),
  sum('washVolume', 'washStillCharge numberOfWashStills', product),
  sum('washVolume', 'lowWinesVolume potAle', whole),
  sum('chargeVolume', 'spiritStillCharge numberOfSpiritStills', product),
  sum('chargeVolume', 'lowWinesVolume feintsVolume', whole),
  sum('chargeVolume', 'heartVolume feintsVolume spentLees', whole),
  sum('spiritStillCharge', 'lowWinesVolume feintsVolume', whole),
  sum('numberOfStills', 'numberOfWashStills numberOfSpiritStills', whole),
  sum('casksPerMash', 'heartAlcohol fillingStrength caskSize', casks),
  sum('casksPerWeek', 'casksPerMash mashesPerWeek', product),
  sum('casksPerWeek', 'alcoholPerWeek fillingStrength caskSize', casks),
  sum('casksPerYear', 'casksPerMash mashesPerYear', product),
  sum('casksPerYear', 'casksPerWeek weeksPerYear', product),
  sum('casksPerYear', 'alcoholPerYear fillingStrength caskSize', casks),
  sum('casksInStore', 'casksPerYear yearsInWood', product),
]; // prettier-ignore

const MOST = 6; // tellings of a figure that are tried, the likeliest
const NEAR = 8; // quantities within which a sum stands together
const EXACT = 0.004; // part of the result within which a sum holds as said
const ROUNDED = 0.012; // within which it may hold by rounding

/** How surely a sum holds of each telling of a figure: of quantities that stand together, and of any. */
export interface Held {
  readonly near: number;
  readonly far: number;
}

/** Every way to take one telling from each list, no quantity twice, and none of the others a one, which multiplies nothing. */
function* choices(lists: readonly (readonly FigureTelling[])[], taken: readonly FigureTelling[] = []): Generator<readonly FigureTelling[]> {
  if (taken.length === lists.length) return yield taken;
  for (const each of lists[taken.length]!) {
    const isFree = taken.every(({ quantity }) => quantity !== each.quantity);
    if (isFree && (taken.length === 0 || each.value !== 1)) yield* choices(lists, [...taken, each]);
  }
} // prettier-ignore

/** The sums in which each telling of each figure stands: by its figure, then by its quantity. */
export function sumsHeld(told: FigureTellings): ReadonlyMap<string, ReadonlyMap<number, Held>> {
  const found = new Map<string, Map<number, Held>>();
  const likeliest = new Map(
    [...told].map(([figure, all]) => [figure, all.toSorted((a, b) => b.chance - a.chance).slice(0, MOST)]),
  );
  const note = (figure: string, quantity: number, sure: number, isNear: boolean) => {
    const own = found.get(figure) ?? new Map<number, Held>();
    const { near, far } = own.get(quantity) ?? { near: 0, far: 0 };
    own.set(quantity, { near: isNear ? Math.max(near, sure) : near, far: Math.max(far, sure) });
    found.set(figure, own);
  };
  for (const { result, from, reckon } of sums) {
    const figures = [result, ...from];
    for (const taken of choices(figures.map((figure) => likeliest.get(figure) ?? []))) {
      const [wanted, ...parts] = taken.map(({ value }) => value) as [number, ...number[]];
      const apart = Math.abs(reckon(...parts) / wanted - 1);
      if (!(apart <= ROUNDED)) continue;
      const places = taken.map(({ quantity }) => quantity);
      const isNear = Math.max(...places) - Math.min(...places) <= NEAR;
      const part = apart <= EXACT ? 1 : 0.5;
      taken.forEach(({ quantity }, i) => {
        const sure = taken.reduce((all, { chance }, k) => (k === i ? all : all * chance), part);
        note(figures[i]!, quantity, sure, isNear);
      });
    }
  }
  return found;
}
