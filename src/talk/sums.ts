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

/** What follows by definition or balance; nothing here is a model. */
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
  sum('washStrength', 'originalGravity finalGravity', (before, after) => 131 * (before - after)),
  sum('washVolume', 'washStillCharge numberOfWashStills', product),
  sum('washVolume', 'lowWinesVolume potAle', whole),
  sum('chargeVolume', 'spiritStillCharge numberOfSpiritStills', product),
  sum('chargeVolume', 'lowWinesVolume feintsVolume', whole),
  sum('chargeVolume', 'heartVolume feintsVolume spentLees', whole),
  sum('spiritStillCharge', 'lowWinesVolume feintsVolume', whole),
  sum('numberOfStills', 'numberOfWashStills numberOfSpiritStills', whole),
  sum('casksPerMash', 'heartAlcohol fillingStrength caskSize', (alcohol, strength, size) => (100 * alcohol) / strength / size),
  sum('casksPerWeek', 'casksPerMash mashesPerWeek', product),
  sum('casksPerWeek', 'alcoholPerWeek fillingStrength caskSize', (alcohol, strength, size) => (100 * alcohol) / strength / size),
  sum('casksPerYear', 'casksPerMash mashesPerYear', product),
  sum('casksPerYear', 'casksPerWeek weeksPerYear', product),
  sum('casksPerYear', 'alcoholPerYear fillingStrength caskSize', (alcohol, strength, size) => (100 * alcohol) / strength / size),
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

/** The sums in which each telling of each figure stands: by its figure, then by its quantity. */
export function sumsHeld(told: FigureTellings): ReadonlyMap<string, ReadonlyMap<number, Held>> {
  const found = new Map<string, Map<number, { near: number; far: number }>>();
  const likeliest = new Map<string, readonly FigureTelling[]>();
  const of = (figure: string): readonly FigureTelling[] => {
    let own = likeliest.get(figure);
    if (!own) likeliest.set(figure, (own = (told.get(figure) ?? []).toSorted((a, b) => b.chance - a.chance).slice(0, MOST)));
    return own;
  };
  const note = (figure: string, quantity: number, sure: number, isNear: boolean) => {
    let own = found.get(figure);
    if (!own) found.set(figure, (own = new Map()));
    let held = own.get(quantity);
    if (!held) own.set(quantity, (held = { near: 0, far: 0 }));
    held.far = Math.max(held.far, sure);
    if (isNear) held.near = Math.max(held.near, sure);
  };
  for (const { result, from, reckon } of sums) {
    const figures = [result, ...from];
    const lists = figures.map(of);
    if (lists.some((list) => list.length === 0)) continue;
    const taken: FigureTelling[] = [];
    const go = () => {
      if (taken.length < lists.length) {
        for (const each of lists[taken.length]!) {
          if (taken.some(({ quantity }) => quantity === each.quantity) || (each.value === 1 && taken.length > 0)) continue;
          taken.push(each);
          go();
          taken.pop();
        }
        return;
      }
      const [wanted, ...parts] = taken as [FigureTelling, ...FigureTelling[]];
      const apart = Math.abs(reckon(...parts.map(({ value }) => value)) / wanted.value - 1);
      if (!(apart <= ROUNDED)) return;
      const places = taken.map(({ quantity }) => quantity);
      const isNear = Math.max(...places) - Math.min(...places) <= NEAR;
      const part = apart <= EXACT ? 1 : 0.5;
      taken.forEach(({ quantity }, i) => {
        const others = taken.reduce((all, { chance }, k) => (k === i ? all : all * chance), part);
        note(figures[i]!, quantity, others, isNear);
      });
    };
    go();
  }
  return found;
} // prettier-ignore
