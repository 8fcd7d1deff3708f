// The parts of the built-in house: what a house of its name has until they are changed. They stand in a file of their own, as every page carries the figures and few a part.
import given from '../../../content/houses/harrowmere.parts.json' with { type: 'json' };
import { builtInName } from '../figures.ts';
import type { PartId, HouseParts } from './part.ts';

export const builtInParts: HouseParts = given;

/** A part of a house as it stands, not read yet: its own; else the built-in house’s, if it has that name; else nothing. */
export const partGiven = (id: PartId, name: string, parts: HouseParts): unknown =>
  (Object.hasOwn(parts, id) ? parts : name === builtInName ? builtInParts : {})[id];
