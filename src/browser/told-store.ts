// Where it is kept what the book last told of the reader's houses, and how a page knows that nothing is new.
import { createEffect, createRoot, on } from 'solid-js';
import { book } from '../house/book.ts';
import { keepText, keptText, keyOf } from './browser-store.ts';
import { encode } from '../house/codec.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { liveHouse, liveName } from './house-store.ts';

export const TOLD = keyOf('told');
const ALL_TOLD = keyOf('told-by'); // the book and the house of which nothing is left to tell
export const BUILT_IN = 'built in'; // whatever figures the book gives it

/** The house of the page as a text; the built-in one by its name alone. */
export const ownText = (): string =>
  liveHouse() === builtInHouse && liveName() === builtInName
    ? BUILT_IN
    : encode({ name: liveName(), house: liveHouse() });

/** True when this book has told of this house before, and the reader knows all of it. */
export const isAllTold = (): boolean => keptText(ALL_TOLD) === `${book} ${ownText()}`;

/** Says whether the reader knows all that this book tells of the house. */
export const setAllTold = (isSo: boolean): boolean => keepText(ALL_TOLD, isSo ? `${book} ${ownText()}` : '');

/** Does something whenever the house of the page becomes another. */
export const onChange = (work: () => void): void =>
  createRoot(() => createEffect(on(liveHouse, work, { defer: true })));
