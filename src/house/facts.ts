// What visitors ask of a house that no figure answers: each fact, how it can be given, and the sentence that a card says.
import { format } from '../core/format.ts';
import type { Stage } from './figures.ts';

/** A fact of a house. Every one can be given in the house's own words; some by a choice or a number as well. */
export interface FactKind {
  readonly label: string;
  /** What visitors ask. */
  readonly asks: string;
  /** The stage or chapter in which it is asked. */
  readonly chapter: Stage | 'ingredients' | 'heat-and-water' | 'law';
  /** Each choice, and the sentence that stands for it where the house has no words of its own. */
  readonly choices?: Readonly<Record<string, readonly [option: string, says: string]>>;
  /** A number in ppm, from and to; and the sentence for it. */
  readonly ppm?: { readonly range: readonly [number, number]; readonly says: (text: string) => string };
}

export const facts = {
  water: { label: 'The water', asks: 'Where does the water come from?', chapter: 'ingredients' },
  hardness: {
    label: 'How hard the water is',
    asks: 'Is the water hard or soft?',
    chapter: 'ingredients',
    choices: {
      soft: ['Soft', 'Our water is soft.'],
      medium: ['In between', 'Our water is neither hard nor soft.'],
      hard: ['Hard', 'Our water is hard.'],
    },
  },
  river: {
    label: 'What goes into the river',
    asks: 'Does anything go into the river?',
    chapter: 'heat-and-water',
  },
  barley: { label: 'The barley', asks: 'What kind of barley is it?', chapter: 'ingredients' },
  grown: { label: 'Where the barley grew', asks: 'Is the barley local?', chapter: 'malting' },
  phenols: {
    label: 'Phenols of the malt',
    asks: 'How smoky is the malt?',
    chapter: 'malting',
    ppm: { range: [0, 400], says: (text) => `Our malt has ${text} of phenols, measured on the malt.` }, // the limits of a malt in a grist
  },
  mill: { label: 'The mill and its age', asks: 'How old is the mill?', chapter: 'milling' },
  mashTun: {
    label: 'The mash tun',
    asks: 'What kind of mash tun is it?',
    chapter: 'mashing',
    choices: {
      rakes: ['With rakes', 'Our mash tun stirs with rakes.'],
      lauter: ['Lauter tun', 'Our mash tun is a lauter tun.'],
      'semi-lauter': ['Semi-lauter tun', 'Our mash tun is a semi-lauter tun.'],
      filter: ['Mash filter', 'We press the mash in a filter.'],
    },
  },
  washbacks: {
    label: 'The washbacks',
    asks: 'Wood or steel?',
    chapter: 'fermenting',
    choices: {
      wood: ['Wood', 'Our washbacks are of wood.'],
      larch: ['Larch', 'Our washbacks are of larch.'],
      fir: ['Douglas fir', 'Our washbacks are of Douglas fir.'],
      oak: ['Oak', 'Our washbacks are of oak.'],
      steel: ['Steel', 'Our washbacks are of steel.'],
      both: ['Wood and steel', 'Some of our washbacks are of wood and some of steel.'],
    },
  },
  stills: {
    label: 'The shape of the stills',
    asks: 'What shape are the stills?',
    chapter: 'distilling',
    choices: {
      plain: ['Plain', 'Our stills have plain necks.'],
      ball: ['Boil ball', 'Our stills have a ball in the neck.'],
      lantern: ['Lantern', 'Our stills have a lantern neck.'],
      several: ['Not all alike', 'Our stills are not all alike.'],
    },
  },
  lyneArm: {
    label: 'The lyne arm',
    asks: 'Which way does the lyne arm run?',
    chapter: 'distilling',
    choices: {
      rising: ['Rising', 'Our lyne arms rise.'],
      level: ['Level', 'Our lyne arms are level.'],
      falling: ['Falling', 'Our lyne arms fall.'],
    },
  },
  condenser: {
    label: 'The condensers',
    asks: 'What turns the vapour back into liquid?',
    chapter: 'distilling',
    choices: {
      'shell-and-tube': ['Shell and tube', 'We condense in a shell full of cold tubes.'],
      'worm-tub': ['Worm tub', 'We condense in a worm that lies in a tub of cold water.'],
      both: ['Both', 'We condense in worm tubs and in shells of tubes.'],
    },
  },
  colouring: {
    label: 'Colouring',
    asks: 'Is colour added?',
    chapter: 'law',
    choices: {
      no: ['No', 'We add no colour.'],
      some: ['To some bottlings', 'We add plain caramel to some bottlings.'],
      yes: ['Yes', 'We add plain caramel for colour.'],
    },
  },
  chillFiltering: {
    label: 'Chill filtering',
    asks: 'Is it chill filtered?',
    chapter: 'maturing',
    choices: {
      no: ['No', 'We do not chill filter.'],
      some: ['Some bottlings', 'We chill filter some bottlings.'],
      yes: ['Yes', 'We chill filter.'],
    },
  },
} as const satisfies Readonly<Record<string, FactKind>>;

export type FactId = keyof typeof facts;
export const factIds = Object.keys(facts) as readonly FactId[];
/** What is asked of a fact, and what it can be. */
export const factKind = (id: FactId): FactKind => facts[id];
/** True of the id of a fact that this handbook keeps. */
export const isFactId = (id: unknown): id is FactId => typeof id === 'string' && Object.hasOwn(facts, id);

/** A fact as it is given: one of its choices or its ppm, the house's own words, or both. */
export interface Fact {
  readonly is?: string | number;
  readonly words?: string;
}
export type Facts = Readonly<Partial<Record<FactId, Fact>>>;

/** What a card says of a fact: the house's own words, else the sentence of what it chose; undefined where it said nothing. */
export function factSays(given: Facts, id: FactId): string | undefined {
  const { is, words } = given[id] ?? {};
  if (words !== undefined) return /[.!?…]["”’)]*$/u.test(words) ? words : `${words}.`;
  if (typeof is === 'number') return factKind(id).ppm?.says(format(is, 'ppm', is % 1 === 0 ? 0 : 1));
  return is === undefined ? undefined : factKind(id).choices?.[is]?.[1];
}
