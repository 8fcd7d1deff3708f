// Who is coming on a walk, in whose units it is said, and which pieces are for whom. What they are called: audience-names.ts.

/** Whom a walk may be told to; nothing for the walk as it stands. */
export const comings = ['children', 'chemist', 'trade', 'us'] as const;
export type Coming = (typeof comings)[number];

/** Units and ways of writing in which a walk may be said; nothing as the guide says it. */
export const saidIns = ['metric', 'American', 'imperial', 'European', 'Japanese'] as const;
export type SaidIn = (typeof saidIns)[number];

/** For whom a piece may be marked; nothing where it is for all. */
export const audienceMarks = {
  adults: 'Not for children',
  children: 'Only for children',
  chemist: 'Only for a chemist',
  trade: 'Only for trade visitors',
  us: 'Only for US visitors',
} as const;
export type AudienceMark = keyof typeof audienceMarks;

/** Whether a piece is told to those who come. What is only for some is not told where nobody is named. */
export const isForAudience = (mark: AudienceMark | undefined, coming: Coming | undefined): boolean =>
  mark === undefined || (mark === 'adults' ? coming !== 'children' : mark === coming);
