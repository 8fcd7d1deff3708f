// The line of the built-in house: what every page shows before a reader changes anything.
import { line, type Line } from '../core/line/line.ts';
import { builtInHouse } from './figures.ts';

let known: Line | undefined;

/** The built-in house's line, computed when it is first asked for: a page that only opens does not wait for it. */
export function builtInLine(): Line {
  if (known !== undefined) return known;
  const result = line(builtInHouse);
  if ('refused' in result) throw new Error(`The built-in house does not run: ${result.refused}`);
  return (known = result);
}
