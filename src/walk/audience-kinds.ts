// Who is coming on a walk, in whose units it is said, and which pieces are for whom.

/** Whom a walk may be told to; nothing for the walk as it stands. */
export const comers = {
  children: 'Children',
  chemist: 'A chemist',
  trade: 'Trade visitors',
  us: 'US visitors',
} as const;
export type Coming = keyof typeof comers;

/** Units and ways of writing in which a walk may be said; nothing as the guide says it. */
export const sayings = {
  metric: 'Litres, kilograms and °C',
  American: 'US gallons, pounds, °F and proof',
  imperial: 'Imperial gallons, pounds and °F',
  European: 'Metric, written 1.234,5',
  Japanese: 'Metric, written 1万2345',
} as const;
export type SaidIn = keyof typeof sayings;

/** For whom a piece may be marked; nothing where it is for all. */
export const marks = {
  adults: 'Not for children',
  children: 'Only for children',
  chemist: 'Only for a chemist',
  trade: 'Only for trade visitors',
  us: 'Only for US visitors',
} as const;
export type Mark = keyof typeof marks;

/** Whether a piece is told to those who come. What is only for some is not told where nobody is named. */
export const isFor = (mark: Mark | undefined, coming: Coming | undefined): boolean =>
  mark === undefined || (mark === 'adults' ? coming !== 'children' : mark === coming);

/** How many pieces are left out for their mark, in a sentence; nothing where there are none. */
export function leftOutFor(pieces: readonly { readonly whom?: Mark }[], coming?: Coming): string | undefined {
  const many = pieces.filter(({ whom }) => !isFor(whom, coming)).length;
  if (many === 0) return undefined;
  const whom = coming === undefined ? 'is told only to some' : coming === 'children' ? 'is not for children' : 'is for others'; // prettier-ignore
  return many === 1
    ? `One piece ${whom}, and stays out.`
    : `${many} pieces ${whom.replace(/^is/, 'are')}, and stay out.`;
}
