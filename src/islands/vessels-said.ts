// The figures of a talk that a house's own vessels give; a house of another name than the built-in one has only its own.
import { partGiven } from '../house/parts/built-in.ts';
import { readPart, type HouseParts } from '../house/parts/part.ts';
import { plantPart } from '../house/parts/plant.ts';
import { vesselFigures, type OwnVessels } from '../talk/own-vessels.ts';

export const vesselsSaid = (name: string, parts: HouseParts): OwnVessels =>
  vesselFigures(readPart(plantPart, partGiven('plant', name, parts)).value);
