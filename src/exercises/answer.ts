// What a written answer says, by the reader that every other field uses: a number and the unit behind it.
import { gravityFrom } from '../core/reading/gravity.ts';
import { unitTrouble } from '../core/reading/quantity.ts';
import { readWritten } from '../core/reading/written.ts';
import type { KindName } from '../core/kinds.ts';
import type { Unit } from '../core/units.ts';

export interface AnswerRead {
  /** As written, in the unit written. */
  readonly number: number;
  /** Size of its last place: 0.1 for 12.5, 1 for 12, 100 for 1,200. */
  readonly place: number;
  readonly unit: Unit | 'none' | 'other';
  /** The unit as written. */
  readonly unitText: string;
  /** Why the answer needs a country: “50 proof” is one strength in the United States and was another in Britain. */
  readonly unsaid?: string;
}

/** What an answer says for a kind; an answer with ± or “about” by its value. Undefined when it says no one number. */
export function readAnswer(text: string, kind: KindName): AnswerRead | undefined {
  const written = readWritten(text, kind);
  if (!written || written.to || !Number.isFinite(written.number)) return undefined;
  const { place, unit, unitText, either } = written;
  const number = kind === 'gravity' && unit === 'none' ? gravityFrom(written.number) : written.number;
  const inDegrees = number !== written.number;
  const unsaid = either && unitTrouble(written, kind);
  return {
    number,
    place: inDegrees ? Math.min(1, place) / 1000 : place,
    unit,
    unitText,
    ...(unsaid === undefined ? {} : { unsaid }),
  };
}
