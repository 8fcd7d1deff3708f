// The pages beside the six chapters, in groups, for the head and the foot of every page.

export interface PageLink {
  readonly href: string;
  readonly text: string;
  /** Shown in the head of a narrow screen as well. */
  readonly first?: boolean;
}
export interface PageGroup {
  readonly name: string;
  readonly inHeader: boolean;
  readonly links: readonly PageLink[];
}

export const pageGroups: readonly PageGroup[] = [
  {
    name: 'Further chapters',
    inHeader: true,
    links: [
      { href: '/safety/', text: 'Safety', first: true },
      { href: '/ingredients/', text: 'Ingredients' },
      { href: '/strength-and-volume/', text: 'Strength and volume' },
      { href: '/heat-and-water/', text: 'Heat and water' },
      { href: '/law/', text: 'Law and labels' },
    ],
  },
  {
    name: 'Your house',
    inHeader: true,
    links: [
      { href: '/house/', text: 'The house', first: true },
      { href: '/cross-check/', text: 'Do your figures agree?' },
      { href: '/script/', text: 'Check your script' },
      { href: '/cards/', text: 'Pocket cards' },
    ],
  },
  {
    name: 'Practice',
    inHeader: true,
    links: [
      { href: '/practice/', text: 'Practice', first: true },
      { href: '/sheets/', text: 'Sheets' },
      { href: '/search/', text: 'Search', first: true },
    ],
  },
  {
    name: 'About the book',
    inHeader: false,
    links: [
      { href: '/using/', text: 'How to use the book' },
      { href: '/glossary/', text: 'Glossary' },
      { href: '/sources/', text: 'Sources' },
      { href: '/accuracy/', text: 'Accuracy' },
    ],
  },
];
