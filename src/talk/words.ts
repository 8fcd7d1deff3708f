// The trade's words in a text, with slips of ear and pen: "wart" for wort, "low whines", "cast" for cask.

import type { Stage } from '../core/figures/index.ts';

interface Concept {
  readonly says: string;
  /** The stage that the word speaks of, and how loudly. */
  readonly stage?: Stage;
  readonly loud?: number;
}

const table = {
  barley: { says: 'barley|grain', stage: 'malting', loud: 1 },
  malt: { says: 'malt(?:ed|s)?|molt', stage: 'malting', loud: 0.5 },
  malting: {
    says: 'maltings?|maltster|steep\\w*|germinat\\w*|kiln\\w*|drying|dried|sprout\\w*',
    stage: 'malting',
    loud: 1.5,
  },
  peat: { says: 'peat\\w*|pete|smok[ey]\\w*|phenols?', stage: 'malting', loud: 1 },
  moisture: { says: 'moisture|moist|wet' },
  extract: { says: 'extracts?|dissolv\\w+|soluble', stage: 'malting', loud: 1.5 },
  yields: { says: 'yields?|psy|spirit yield|alcohol yield', stage: 'malting', loud: 0.4 },
  alive: { says: 'alive|germinat\\w*|grow\\w*|nitrogen|protein' },
  mill: { says: 'mills?|milled|milling|rollers?|grinds?|grinding|ground', stage: 'milling', loud: 1.5 },
  grist: { says: 'grist|grists', stage: 'milling', loud: 1.5 },
  husk: { says: 'husks?|shells|hulls?|coarse', stage: 'milling', loud: 1.5 },
  grits: { says: 'grits?|groats|middlings?|gritz', stage: 'milling', loud: 1.5 },
  flour: { says: 'flour|flower|meal|fines', stage: 'milling', loud: 1.5 },
  mash: { says: 'mash(?:es|ed|ing|ings)?|brews?', stage: 'mashing', loud: 1 },
  tun: { says: '(?:mash|mass)[\\s-]?(?:tuns?|tons?|tubs?|tonne)|tun', stage: 'mashing', loud: 3 },
  water: { says: 'waters?|liquors?', stage: 'mashing', loud: 0.5 },
  first: { says: 'first|1st|strikes?|striking|to start with|begin with' },
  second: { says: 'second|2nd|another lot|next lot|next one' },
  last: { says: 'third|3rd|last|finally|final water|fourth|4th|sparges?|sparging' },
  kept: { says: 'save|keep|kept back|next mash|next time|next one' },
  wort: {
    says: 'worts?|warts?|wurts?|werts?|wort’s|sugary|sweet(?:ness)? liquid',
    stage: 'mashing',
    loud: 2,
  },
  collect: { says: 'collect\\w*|draw(?:n)? off|runs? off|comes? away|get out|results?|draws? off' },
  gravity: {
    says: 'gravit(?:y|ies)|saccharometer|density|s\\.g\\.?|og|o\\.g\\.?|plato',
    stage: 'mashing',
    loud: 0.7,
  },
  original: { says: 'original|og|o\\.g\\.?|starting|opening' },
  finalGravity: {
    says: 'final gravity|finishing gravity|end(?:ing)? (?:gravity|density)|fg|f\\.g\\.?|attenuat\\w*|thinner than water|lighter than water|final',
    stage: 'fermenting',
    loud: 0.7,
  },
  draff: { says: 'draff|draft|spent grains?|cows?|cattle|animals?', stage: 'mashing', loud: 1 },
  washback: { says: 'wash[\\s-]?backs?|wash bags|fermenters?|vats?', stage: 'fermenting', loud: 2 },
  yeast: { says: 'yeast|east|yeasts|barm', stage: 'fermenting', loud: 1.5 },
  pitch: { says: 'pitch\\w*' },
  cream: { says: 'cream|slurry|liquid yeast' },
  ferment: {
    says: 'ferment\\w*|bubbl\\w*|froth\\w*|works? away|work(?:s|ing)? (?:\\w+ )?away|foam',
    stage: 'fermenting',
    loud: 2,
  },
  lasts: { says: 'lasts?|takes?|leave it|let her work|time|goes on|away for|duration|we ferment' },
  wash: {
    says: 'wash(?![\\s-]?(?:backs?|bags|stills?|steels?|house|run))|beer|ale',
    stage: 'fermenting',
    loud: 0.8,
  },
  alcoholic: { says: 'alcohol|alcoholic|abv|strength|strong|proof' },
  ours: { says: 'ours|our own|our main|flagship' },
  thisOne: { says: 'this one|that one|this shed' },
  fermentable: { says: 'fermentab\\w+|fermentable' },
  stills: { says: 'stills(?!\\w)|steels|kettles|still house|still room', stage: 'distilling', loud: 2 },
  washStill: {
    says: 'wash (?:still|steel)s?|first (?:still|kettle)|big one|wash charge',
    stage: 'distilling',
    loud: 2.5,
  },
  spiritStill: {
    says: 'spirit (?:still|steel)s?|second (?:still|kettle)|low wines stills?',
    stage: 'distilling',
    loud: 2.5,
  },
  spiritCharge: { says: 'spirit charge|spirit still charge|the charge', stage: 'distilling', loud: 2 },
  lowWines: { says: 'low[\\s-]?wh?ines?|low winds|raw spirit|low vines', stage: 'distilling', loud: 2.5 },
  charge: { says: 'charges?|charged|filled|put in|goes in|takes|mixed|together|added|goes into' },
  foreshots: { says: 'fore?[\\s-]?shots?|for shots?|four shots|heads', stage: 'distilling', loud: 2.5 },
  feints: { says: 'feints?|faints?|fates|tails', stage: 'distilling', loud: 2 },
  heart: { says: 'hearts?|harts?|middle (?:cut|run|bit|part)|heart’s', stage: 'distilling', loud: 2.5 },
  spirit: { says: 'spirits?(?! (?:still|steel|charge|yield|safe))|new make', stage: 'distilling', loud: 0.4 },
  newSpirit: { says: 'new spirit|new make|good spirit|we keep|keep', stage: 'distilling', loud: 0.5 },
  cutOn: {
    says: 'begins?|comes? on|come on|on to|onto|turns? to|heart on|spirit on|on at|go on|starts?|cut to (?:the )?heart|collect(?:ing)?(?: the heart)? from|from',
  },
  cutOff: {
    says: 'ends?|come off|comes off|off at|off|leave it|cut to (?:the )?(?:feints|faints|tails)|down to|cuts again|again at|until|stop(?:s)?',
  },
  comesOff: {
    says: '(?:spirits?|new make) (?:comes?|coming|runs?|running|is|are) off|(?:hearts?|middle (?:cut|run|bit|part)) (?:comes?|coming) (?:off|over) (?:at|the|our|about|around)|(?:they|these|it) (?:comes?|coming|runs?) off at|(?:comes?|coming|runs?) off (?:the|our) (?:spirit |second )?stills?',
  },
  average: { says: "averag\\w+|mean|overall|on average|strength is|heart’s strength|heart's strength" },
  pureAlcohol: { says: '(?:pure|absolute) alcohol|lpa|laa?' },
  residue: { says: 'pot ale|spent lees|lees|residue', stage: 'distilling', loud: 1 },
  condenser: { says: 'condensers?|cooling|river|worm|worms', stage: 'distilling', loud: 0.7 },
  safe: { says: 'spirit safe|safe|stillman|hydrometer', stage: 'distilling', loud: 1.2 },
  fill: {
    says: 'fill(?:s|ed|ing)?|entry (?:proof|strength)|goes in(?:to)? the (?:cask|wood|barrel|cast)|into (?:cask|wood)',
    stage: 'maturing',
    loud: 0.4,
  },
  cask: { says: 'casks?|casts?|barrels?|hogsheads?|butts?|puncheons?|wood', stage: 'maturing', loud: 1.2 },
  store: {
    says: 'where[\\s-]?houses?|ware[\\s-]?houses?|stores?|bond|dunnage|cellars?|storage|racked',
    stage: 'maturing',
    loud: 2,
  },
  inStore: {
    says: 'in store|in the store|in these sheds|in all our|in the bond|in here|in total|total|lying|resting|looking at|right now|at the moment|asleep|maturing here|store holds|altogether|at any time|at present|today',
  },
  humidity: { says: 'humidity|humid|damp|relative humidity|rh|r\\.h\\.', stage: 'maturing', loud: 1 },
  loss: { says: 'loss(?:es)?|los(?:e|es|ing)|evaporat\\w*|disappear\\w*', stage: 'maturing', loud: 0.5 },
  angels: { says: "angel[s’']*(?:[\\s-](?:share|chair|shares))?", stage: 'maturing', loud: 2 },
  age: {
    says: 'ages?|aged|matur\\w*|sleeps?|rests?|lies?|lie|in wood|in there|our spirit|old|wait|main bottling|minimum|done|ready',
    stage: 'maturing',
    loud: 0.3,
  },
  bottling: {
    says: 'bottl(?:ed|ing)|let down|proof(?:ed)? (?:it )?down|went out|goes out|reduced|brought down|for the bottle',
    stage: 'maturing',
    loud: 1,
  },
  bottle: { says: 'bottles?|btls?', stage: 'maturing', loud: 1 },
  sell: { says: 'sell|sold|send|bottle(?! of)' },
  each: { says: 'each|every|apiece|per' },
  perWeek: {
    says: '(?:an?|per|each|every|in the|in a|of the|the|one|/|\\bp)\\s*(?:weeks?|wk)|weekly|/ ?wk|week altogether',
  },
  perYear: {
    says: '(?:an?|per|each|every|in the|in a|of the|over the|over a|whole|the|one|/)\\s*(?:whole |course of a |working )?(?:years?|yr|annum)|yearly|annual(?:ly)?|pa|p\\.a\\.',
  },
  perMash: {
    says: '(?:per|each|every|a|one|the|/)\\s*(?:mash|batch|brew)|at a time|at a go|from each run|mash of',
  },
  perCask: {
    says: '(?:per|each|every|a|one|the|/|from a|from one|out of a)\\s*(?:cask|cast|barrel|hogshead)',
  },
  perTonne: { says: '(?:per|each|every|a|one|to the|/)\\s*(?:tonne|ton|t)' },
  perHour: { says: '(?:an|per|every|each|/)\\s*(?:hour|hr|h)' },
  capacity: { says: 'holds?|holding|capacity|brim|takes up to|up to|can take' },
  delivery: { says: 'lorry|lorries|loads?|truck|tanker|wagon|deliver\\w*|sacks?|driver' },
  weighs: { says: 'weighs?|lid|wide|across|deep|high|tall|thick' },
  law: { says: 'law|legal(?:ly)?|must' },
  built: {
    says: 'built|founded|stood|been here|since|worked here|at it|made by hand|started|mill(?:s)?|shut|wars?',
  },
  elsewhere: {
    says: 'elsewhere|others?|other houses|places|hot countries|some people|used to|in the old days|nowadays',
  },
  gas: { says: 'gas|carbon|co2|carbonic' },
  cooled: { says: 'cool\\w*|plates?|bring it down|all on its own|gets? up|warms?|warmer|pitched|set at' },
  air: { says: 'air' },
  limit: { says: 'below|above|no more than|under|over|within|dangerous' },
  shop: { says: 'shop|children|tours?|bus|groups?|tickets?' },
} as const satisfies Record<string, Concept>;

export type ConceptName = keyof typeof table;
const concepts: Readonly<Record<ConceptName, Concept>> = table;
const names = Object.keys(table) as ConceptName[];

export interface Mention {
  readonly concept: ConceptName;
  readonly start: number;
  readonly end: number;
}

const patterns = names.map((concept) => ({
  concept,
  says: new RegExp(`(?<![a-zà-ÿ])(?:${concepts[concept].says})(?![a-zà-ÿ])`, 'gi'),
}));

/** Every trade word of a text, in order. */
export function mentionsIn(text: string): Mention[] {
  return patterns
    .flatMap(({ concept, says }) =>
      [...text.matchAll(says)].map((found) => ({
        concept,
        start: found.index,
        end: found.index + found[0].length,
      })),
    )
    .sort((a, b) => a.start - b.start);
}

/** The stage that a word speaks of, and how loudly; nothing for words of no stage. */
export function stageOf(concept: ConceptName): { stage: Stage; loud: number } | undefined {
  const { stage, loud } = concepts[concept];
  return stage && { stage, loud: loud ?? 1 };
}
