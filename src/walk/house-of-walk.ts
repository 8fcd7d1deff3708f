// Which house a walk was written for: its figures are held only against that one, until the guide says otherwise.
import { textOfWalk, type Walk } from './walk.ts';

/** The other house that a walk was written for; nothing where it is the one that stands here, or where the walk does not say. */
export const otherHouse = (walk: Walk, here: string): string | undefined =>
  walk.house === here ? undefined : walk.house;

/** The walk as one of a house. */
export const forHouse = (walk: Walk, house: string): Walk => ({ ...walk, house });

/** The walk with the house that stands where something is first said in it; one that has its house keeps it. */
export const withHouseOf = (walk: Walk, here: string): Walk =>
  walk.house !== undefined || textOfWalk(walk) === '' ? walk : forHouse(walk, here);

/** What is to be said of a walk that was written for another house. */
export const notOfHere = (other: string, here: string): string =>
  `This walk was written for ${other}; the house here is ${here}.`;
