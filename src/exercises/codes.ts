// Codes, of which a sheet's link is made: whole numbers from 0, two signs each.

/** How many codes there are. */
export const CODES_COUNT = 4096;
