// Whose talks are learnt from, and never told of: the first talks, which the reader was once tuned on, and those put together by recombine.ts.

export const TUNED_ON = 'house';
