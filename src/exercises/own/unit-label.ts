// How a unit stands in a list of units: by itself where it tells what is meant, else with what it measures.
import { kindMeanings } from '../../core/kind-meanings.ts';
import type { KindName } from '../../core/kinds.ts';
import { unitsRead } from '../../core/units.ts';
import { kindsOffered } from './draft.ts';

const kindsWith = (unit: string) =>
  kindsOffered.filter((kind) => unitsRead(kind).some((each) => each.unit === unit));

/** “kg”, which only a mass has; “plain number: a number of things”, as a gravity and a ratio are plain numbers too. */
export const unitLabel = (kind: KindName, unit: string): string =>
  unit === ''
    ? `plain number: ${kindMeanings[kind]}`
    : kindsWith(unit).length > 1
      ? `${unit}: ${kindMeanings[kind]}`
      : unit;
