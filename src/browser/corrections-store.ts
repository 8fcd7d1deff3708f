// Where it is kept what the book last told of the reader's houses, and how a page knows that nothing is new.
import { createEffect, createRoot, on } from 'solid-js';
import { bookStamp } from '../house/book.ts';
import { keepText, keptText, storageKey } from './browser-store.ts';
import { encodeHouse } from '../house/codec.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { liveHouse, liveName } from './house-store.ts';

export const REMEMBERED_KEY = storageKey('told');
const ALL_TOLD = storageKey('told-by'); // the book and the house of which nothing is left to tell
export const BUILT_IN_HOUSE = 'built in'; // whatever figures the book gives it

/** The house of the page as a text; the built-in one by its name alone. */
export const textOfPageHouse = (): string =>
  liveHouse() === builtInHouse && liveName() === builtInName
    ? BUILT_IN_HOUSE
    : encodeHouse({ name: liveName(), house: liveHouse() });

/** True when this book has told of this house before, and the reader knows all of it. */
export const areCorrectionsTold = (): boolean => keptText(ALL_TOLD) === `${bookStamp} ${textOfPageHouse()}`;

/** Says whether the reader knows all that this book tells of the house. */
export const setCorrectionsTold = (isSo: boolean): boolean =>
  keepText(ALL_TOLD, isSo ? `${bookStamp} ${textOfPageHouse()}` : '');

/** Does something whenever the house of the page becomes another. */
export const onHouseChange = (work: () => void): void =>
  createRoot(() => createEffect(on(liveHouse, work, { defer: true })));
