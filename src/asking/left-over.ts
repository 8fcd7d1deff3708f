// Whether a sum has taken in every number of a question: one that it leaves over tells that something else may be asked.
import { inCore, kindOfDimension, type Numbered, type Reckoned } from './reckoned.ts';

const SEVERAL = 2; // quantities with their units, at least
const NEAR = 0.006; // by which a number may be rounded as it is told
const numbersIn = (text: string): readonly number[] =>
  [...text.matchAll(/\d[\d,]*(?:\.\d+)?/g)].map(([each]) => Number(each.replaceAll(',', '')));
/** “half”, “two” and the like as a sum may tell them. */
const sizes = [1, 10, 100, 1000, 1 / 10, 1 / 100, 1 / 1000];

/** True where a number of the question stands nowhere in what was reckoned, in no unit. */
export function leavesOver({ quantities }: Pick<Numbered, 'quantities'>, { says, sum = '' }: Reckoned): boolean {
  const told = numbersIn(`${says} ${sum}`);
  const isTold = (value: number) => sizes.some((size) => told.some((each) => Math.abs(each - value * size) <= NEAR * Math.abs(value * size)));
  return quantities.some((each) => {
    if (each.number === 1 || each.number === 20) return false;
    const kind = each.dimension && kindOfDimension[each.dimension];
    const core = kind === undefined || each.unit === undefined ? undefined : inCore(each, kind);
    return !isTold(each.number) && !(core !== undefined && isTold(core));
  });
} // prettier-ignore

/** True where an answer that was not reckoned leaves several quantities of a question unsaid: it is then no answer to these numbers. */
export const passesOver = (asked: Pick<Numbered, 'quantities'>, told: { readonly says: string; readonly sum?: string }): boolean =>
  asked.quantities.filter((each) => each.unit !== undefined && leavesOver({ quantities: [each] }, { ...told, at: '', place: '', paths: [] })).length >= SEVERAL; // prettier-ignore
