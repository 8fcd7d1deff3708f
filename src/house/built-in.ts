// The line of the built-in house: what every page shows before a reader changes anything.
import { line, type Line } from '../core/line/line.ts';
import { builtInHouse } from './figures.ts';

const result = line(builtInHouse);
if ('refused' in result) throw new Error(`The built-in house does not run: ${result.refused}`);

export const builtInLine: Line = result;
