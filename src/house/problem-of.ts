// What is wrong with one value of a figure, at every door alike.
import { rangeProblem } from '../core/format.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { canRead, number, oneOf } from '../core/reading/given.ts';
import { choiceFigures, isChoiceName, numberFigures, type FigureName } from './figures.ts';

/** What is wrong with one value of a figure on its own, or nothing: names the figure, what was given, what is allowed. */
export function problemOf(name: FigureName, value: unknown): string | undefined {
  if (isChoiceName(name)) {
    const { label, options } = choiceFigures[name];
    if (canRead(oneOf(Object.keys(options)), value)) return undefined;
    return `${label}: “${quotedGiven(value)}” is not one of ${Object.keys(options).join(', ')}.`;
  }
  const { label, range, kind } = numberFigures[name];
  return canRead(number(...range), value) ? undefined : rangeProblem(label, value, kind, range);
}
