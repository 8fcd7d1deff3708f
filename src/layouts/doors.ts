// The four doors into the book, and the pages behind each: the head of every page is made from them.
import { stages, type Stage } from '../house/figures.ts';

export interface PageLink {
  readonly href: string;
  readonly text: string;
  /** What a reader finds there, in a few words. */
  readonly says?: string;
}
export interface Door {
  readonly id: 'learn' | 'quote' | 'teach' | 'look-up';
  readonly name: string;
  /** Whom it is for, in a few words. */
  readonly says: string;
  readonly groups: readonly { readonly name?: string; readonly links: readonly PageLink[] }[];
}

/** A stage's name at the head of a line. */
export const stageHeading = (stage: Stage) => stage[0]!.toUpperCase() + stage.slice(1);

export const doors: readonly Door[] = [
  {
    id: 'learn',
    name: 'Learn',
    says: 'new to the work',
    groups: [
      { links: stages.map((stage) => ({ href: `/${stage}/`, text: stageHeading(stage) })) },
      {
        links: [
          { href: '/first-weeks/', text: 'Your first weeks', says: 'from day one to signed off' },
          { href: '/safety/', text: 'Safety', says: 'read this first' },
          { href: '/practice/', text: 'Practice', says: 'questions, marked at once' },
          { href: '/shift/', text: 'A shift', says: 'tun, washback, still, casks' },
          { href: '/faults/', text: 'The fault desk', says: 'find what is wrong' },
          { href: '/plant/', text: 'Plant and faults' },
          { href: '/nose/', text: 'The nose' },
          { href: '/using/', text: 'How to use the book' },
        ],
      },
    ],
  },
  {
    id: 'quote',
    name: 'Quote',
    says: 'showing visitors round',
    groups: [
      {
        links: [
          { href: '/house/', text: 'Your house', says: 'put in its figures' },
          { href: '/script/', text: 'Check a talk', says: 'paste what you say' },
          { href: '/cross-check/', text: 'Check a few figures', says: 'do they agree?' },
          { href: '/walk/', text: 'A walk, room by room', says: 'said where, how long' },
          { href: '/cards/', text: 'Pocket cards', says: 'for rooms without phones' },
        ],
      },
      {
        links: [
          { href: '/house/plant/', text: 'Stills and vessels' },
          { href: '/house/week/', text: 'The week' },
          { href: '/house/period/', text: 'The stillhouse balance' },
          { href: '/house/stock/', text: 'Casks in store' },
          { href: '/house/malts/', text: 'Malts and bottles' },
          { href: '/house/facts/', text: 'Fact sheet' },
          { href: '/house/portrait/', text: 'The house’s portrait' },
          { href: '/house/changes/', text: 'What changed' },
          { href: '/house/hand-on/', text: 'Hand your house on' },
        ],
      },
    ],
  },
  {
    id: 'teach',
    name: 'Teach',
    says: 'training others',
    groups: [
      {
        links: [
          { href: '/sheets/', text: 'Exercise sheets', says: 'set, print, mark' },
          { href: '/sheets/own/', text: 'Your own sheet' },
          { href: '/sheets/sealed/', text: 'Sealed sheets' },
          { href: '/class/', text: 'Class book', says: 'results, competence' },
          { href: '/tasks/', text: 'Tasks and oral questions' },
          { href: '/lessons/', text: 'Lesson plans', says: 'a stage, an hour' },
          { href: '/faults/', text: 'The fault desk', says: 'one for the class' },
          { href: '/practice/', text: 'Practice', says: 'try the questions' },
          { href: '/house/', text: 'A house for an exercise', says: 'keep several' },
          { href: '/sums/', text: 'Calculators', says: 'for the board' },
          { href: '/guide-file/', text: 'A new guide’s file' },
          { href: '/visitors/', text: 'Twenty-five questions' },
        ],
      },
    ],
  },
  {
    id: 'look-up',
    name: 'Look up',
    says: 'a term, a rule, a figure',
    groups: [
      {
        links: [
          { href: '/sums/', text: 'Every calculator' },
          { href: '/glossary/', text: 'Glossary' },
          { href: '/words/', text: 'Trade words abroad' },
          { href: '/strength-and-volume/', text: 'Strength and volume' },
          { href: '/heat-and-water/', text: 'Heat and water' },
          { href: '/ingredients/', text: 'Ingredients' },
          { href: '/law/', text: 'Law and labels' },
          { href: '/running/', text: 'Running a house' },
        ],
      },
      {
        links: [
          { href: '/sources/', text: 'Sources' },
          { href: '/accuracy/', text: 'Accuracy' },
        ],
      },
    ],
  },
];

/** The door that a page stands behind: the first that has it; calculators are looked up. */
export function doorOf(address: string): Door['id'] | undefined {
  const isBehind = (href: string) => (href === '/' ? address === '/' : address.startsWith(href));
  if (isBehind('/sums/')) return 'look-up';
  return doors.find(({ groups }) => groups.some(({ links }) => links.some(({ href }) => isBehind(href))))?.id;
}
