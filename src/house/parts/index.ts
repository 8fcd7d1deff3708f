// The list of the parts of a house that can be read: each in a file of its own beside this.
import { bottlesPart } from './bottles.ts';
import { datesPart } from './dates.ts';
import { factsPart } from './facts.ts';
import { knownPart } from './known.ts';
import { maltsPart } from './malts.ts';
import { readPart, type HousePart, type HouseParts } from './part.ts';
import { periodsPart } from './periods.ts';
import { plantPart } from './plant.ts';
import { stockPart } from './stock.ts';

export const houseParts: readonly HousePart<unknown>[] = [
  knownPart,
  factsPart,
  datesPart,
  maltsPart,
  periodsPart,
  plantPart,
  stockPart,
  bottlesPart,
];

/** A sentence for each thing in the parts of a house that cannot be used; for a door at which a house comes in whole. */
export const problemsOfParts = (parts: HouseParts): readonly string[] =>
  houseParts.flatMap((part) => readPart(part, parts[part.id]).problems);
