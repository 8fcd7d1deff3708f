// How a figure of a house is known.
import { figureIds, figureTable, isGiven, type FigureId, type NumberName } from './index.ts';

/** How a house can know a figure that it gives. */
export const ways = {
  measured: 'measured', // read on an instrument or counted
  set: 'set', // what the house decides
} as const;
export type Way = keyof typeof ways;

/** How any figure stands, in the words of a table. */
export const standings = {
  ...ways,
  unknown: 'not known', // the built-in house's until it is given
  counted: 'counted', // or read, though it can be computed
  computed: 'computed',
  estimate: 'our estimate', // computed from something that is not known
} as const;
export type Standing = keyof typeof standings;

/** How a figure is usually known. */
export const usualWay = (id: NumberName): Way => figureTable[id].is;

/** The ways in which a figure can be known. */
export const waysToKnow = (id: NumberName): readonly Way[] =>
  figureTable[id].either ? ['measured', 'set'] : [usualWay(id)];

/** The computed figures that a house may count or read, in the order of the line. */
export const countedIds: readonly FigureId[] = figureIds.filter((id) => {
  const figure = figureTable[id];
  return figure.is === 'computed' && figure.counted === true;
});

/** The figures that are computed, whether a house may count them or not. */
export const computedIds: readonly FigureId[] = figureIds.filter((id) => figureTable[id].is === 'computed');

/** True for a computed figure that stays an estimate until it is counted. */
export const isRough = (id: FigureId): boolean => {
  const figure = figureTable[id];
  return !isGiven(figure) && figure.is === 'computed' && figure.rough === true;
};
