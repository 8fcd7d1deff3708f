// What several questions say of a fall of gravity.
import { strengthByExciseFactor, type Gravities } from '../../../core/wort/attenuation.ts';

/** Degrees of gravity between the two, a degree being 0.001. */
export const degreesFallen = ({ original, final }: Gravities): number => 1000 * (original - final);

/** The excise table's factor for the fall, % vol to a degree. */
export const factorFor = (gravities: Gravities): number =>
  strengthByExciseFactor({ original: gravities.original, present: gravities.final }) /
  degreesFallen(gravities);
