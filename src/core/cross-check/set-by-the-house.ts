// Figures that a house sets or counts.
import type { QuotableName } from './quoted.ts';

/** Figures that a house sets or counts, so that no sum can put a better one in their place. */
export const setByTheHouse: readonly QuotableName[] = ['mashesPerWeek', 'weeksPerYear', 'heartBegins', 'heartEnds', 'fillingStrength', 'yearsInWood', 'bottlingStrength', 'bottleSize']; // prettier-ignore
