// How a figure of a house is known.
import { figureIds, figureTable, isGiven, type FigureId, type NumberName } from './index.ts';

/** How a house can know a figure that it gives. */
export const waysKnown = {
  measured: 'measured', // read on an instrument or counted
  set: 'set', // what the house decides
} as const;
/** How a figure that a house gave stands; one that gave way to another since was neither measured nor set so. */
export type WayKnown = keyof typeof waysKnown | 'follows';

/** How any figure stands, in the words of a table. */
export const standings = {
  ...waysKnown,
  follows: 'follows from the rest', // given once, and moved since by another
  unknown: 'not known', // the built-in house's until it is given
  counted: 'counted', // or read, though it can be computed
  computed: 'computed',
  estimate: 'our estimate', // computed from something that is not known
} as const;
export type FigureStanding = keyof typeof standings;

/**
 * How a figure is usually known.
 * @example usualWay('heartEnd') // 'set' (a house decides where it cuts)
 */
export const usualWay = (id: NumberName): keyof typeof waysKnown => figureTable[id].is;

/**
 * The ways in which a figure can be known.
 * @example waysToKnow('heartEnd') // ['set'] (nobody measures a decision)
 */
export const waysToKnow = (id: NumberName): readonly (keyof typeof waysKnown)[] =>
  figureTable[id].either ? ['measured', 'set'] : [usualWay(id)];

/**
 * How a figure that was given can stand, in a text.
 * @example waysKept('heartEnd') // ['set', 'follows'] (or moved since by another)
 */
export const waysKept = (id: NumberName): readonly WayKnown[] => [...waysToKnow(id), 'follows'];

/** The computed figures that a house may count or read, in the order of the line. */
export const countedIds: readonly FigureId[] = figureIds.filter((id) => {
  const figure = figureTable[id];
  return figure.is === 'computed' && figure.counted === true;
});

/** The figures that are computed, whether a house may count them or not. */
export const computedIds: readonly FigureId[] = figureIds.filter((id) => figureTable[id].is === 'computed');

/**
 * True for a computed figure that stays an estimate until it is counted.
 * @example isRough('heartEnd') // false (it is given, not computed)
 */
export const isRough = (id: FigureId): boolean => {
  const figure = figureTable[id];
  return !isGiven(figure) && figure.is === 'computed' && figure.rough === true;
};
