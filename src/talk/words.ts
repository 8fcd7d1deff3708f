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
  mash: {
    says: 'mash(?:es|ed|ing|ings)?|brews?|brewings?|cookings?|batch(?:es)?|load',
    stage: 'mashing',
    loud: 1,
  },
  tun: {
    says: '(?:mash|mass)[\\s-]?(?:tuns?|tons?|tubs?|tonne)|tuns?|mash vessel',
    stage: 'mashing',
    loud: 3,
  },
  water: { says: 'waters?|liquors?|rinses?', stage: 'mashing', loud: 0.5 },
  first: { says: 'first|1st|strikes?|striking|to start with|begin with|one goes on' },
  second: { says: 'second|2nd|another lot|next lot|next one' },
  last: { says: 'third|3rd|last|finally|final water|fourth|4th|sparges?|sparging|way up|nearly boiling' },
  kept: { says: 'save|keep|kept back|next mash|next time|next one' },
  wort: {
    says: 'worts?|warts?|wurts?|werts?|wort’s|sugary|must|sweet(?:ness)? (?:liquid|water)',
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
  washback: {
    says: 'wash[\\s-]?backs?|wash bags|ferment(?:er|or)s?|vats?|backs|tubs?|tanks?|dornas?|buckets?',
    stage: 'fermenting',
    loud: 2,
  },
  yeast: { says: 'yeasts?|east|barm|bugs', stage: 'fermenting', loud: 1.5 },
  pitch: { says: 'pitch\\w*|set at|we set|start the yeast|goes? in at' },
  cream: { says: 'cream|slurry|liquid yeast' },
  ferment: {
    says: 'ferment\\w*|bubbl\\w*|froth\\w*|works? away|work(?:s|ing)? (?:\\w+ )?away|foam\\w*|burps?',
    stage: 'fermenting',
    loud: 2,
  },
  lasts: { says: 'lasts?|takes?|leave it|let her work|time|goes on|away for|duration|we ferment' },
  wash: {
    says: 'wash(?![\\s-]?(?:backs?|bags|stills?|steels?|house|run))|beers?|ale|wine(?!maker)',
    stage: 'fermenting',
    loud: 0.8,
  },
  alcoholic: { says: 'alcohol|alcoholic|abv|strength|strong|proof' },
  ours: { says: 'ours|our own|our main|flagship|we|us|here|mine|my' },
  thisOne: { says: 'this one|that one|this shed|this one here' },
  fermentable: { says: 'fermentab\\w+|fermentable' },
  stills: {
    says: 'stills(?!\\w)|steels|kettles?|still[\\s-]?(?:house|room)|pots?|alembics?|necks?',
    stage: 'distilling',
    loud: 2,
  },
  washStill: {
    says: 'wash (?:still|steel|pot)s?|first (?:still|kettle|pot|heat)|(?:the )?(?:big|fat|large) (?:one|un|ones|still|pot)s?|wash charge|strip(?:ping)?(?: (?:still|run))?s?|fat ones?|WS|wash run',
    stage: 'distilling',
    loud: 2.5,
  },
  spiritStill: {
    says: 'spirit (?:still|steel|pot)s?|second (?:still|kettle|pot|run|heat)|low wines stills?|(?:the )?(?:little|wee|small|smaller|thin) (?:one|un|ones|still|pot)s?|good heat|finishing stills?|SS|spirit run|wee one|other one',
    stage: 'distilling',
    loud: 2.5,
  },
  spiritCharge: { says: 'spirit charge|spirit still charge|the charge', stage: 'distilling', loud: 2 },
  lowWines: {
    says: 'low[\\s-]?wh?ines?|low winds|raw spirit|low vines|brouillis|LW|singlings',
    stage: 'distilling',
    loud: 2.5,
  },
  charge: {
    says: 'charges?|charged|filled|put in|goes in|takes|mixed|together|added|goes into|gets?|receives?|loads?|swallows?',
  },
  foreshots: {
    says: 'fore?[\\s-]?shots?|for shots?|four shots|heads?|first bit|throw (?:off|away)',
    stage: 'distilling',
    loud: 2.5,
  },
  feints: {
    says: 'feints?|faints?|fates|tails?|leftovers|rest goes round|bad ends?',
    stage: 'distilling',
    loud: 2,
  },
  heart: {
    says: 'hearts?|harts?|middle (?:cut|run|bit|part)|middle|heart’s|coração',
    stage: 'distilling',
    loud: 2.5,
  },
  spirit: {
    says: 'spirits?(?! (?:still|steel|charge|yield|safe|run))|new make|NMS|new spirit',
    stage: 'distilling',
    loud: 0.4,
  },
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
  potAle: { says: 'pot[\\s-]?ale|evaporators?|syrup|burnt ale', stage: 'distilling', loud: 1 },
  lees: { says: '(?:spent )?lees|residue', stage: 'distilling', loud: 1 },
  run: {
    says: "runs?|running|boil\\w*|works her|drives?|she takes|on for|it's on",
    stage: 'distilling',
    loud: 0.3,
  },
  barrel: { says: 'barrels?|bourbons?|american oak|barrel', stage: 'maturing', loud: 0.5 },
  hogshead: { says: 'hogs?heads?|hoggies|hogs', stage: 'maturing', loud: 0.5 },
  butt: { says: 'butts?|puncheons?|sherry', stage: 'maturing', loud: 0.5 },
  ratio: { says: 'to the kilo|(?:per|each|every|the) (?:kilo|kg)|to one|ratio', stage: 'mashing', loud: 1 },
  stands: { says: 'stands?|sits?|settles?|lands? on|beds?|goods|porridge|once mixed|mix' },
  outOfWood: {
    says: '(?:out|back out) (?:of|from) (?:the )?(?:wood|casks?|barrels?)|(?:comes?|goes|come) (?:back )?out|cask strength|fallen to|dropped to|by then|emptied|disgorge\\w*',
    stage: 'maturing',
    loud: 0.5,
  },
  before: {
    says: 'used to|back then|those days|at one time|(?:grand)?father\\S*|years ago|until|was|were|old|originally|before me|when i (?:started|began|came)',
  },
  neighbour: {
    says: 'neighbou?rs?|up the road|over the (?:hill|ridge)|across|cousins?|theirs?|they|next door|somewhere|most (?:people|places|houses)|common|normal',
  },
  people: {
    says: 'visitors?|you|tours?|bus|tickets?|wife|daughters?|sons?|boys?|girls?|dogs?|fingers?|staff|me|he|she',
  },
  machine: {
    says: 'motors?|pumps?|kilowatts?|valves?|pipes?|plates?|rated|nameplate|weld\\w*|metres?|tall|boilers?|steam|machines?',
  },
  rest: { says: 'the rest|rest of (?:it|them)|the others?|mostly|a few|balance|share|parts?|half and half' },
  hundred: { says: 'per cent|percent|in (?:the|a) hundred' },
  each2: {
    says: 'each|apiece|the two of them|both|pairs?|between them|in all|all told|altogether|one mash|per mash',
  },
  condenser: { says: 'condensers?|cooling|river|worm|worms', stage: 'distilling', loud: 0.7 },
  safe: { says: 'spirit safe|safe|stillman|hydrometer', stage: 'distilling', loud: 1.2 },
  fill: {
    says: 'fill(?:s|ed|ing)?|entry (?:proof|strength)|goes in(?:to)? the (?:cask|wood|barrel|cast)|into (?:cask|wood)',
    stage: 'maturing',
    loud: 0.4,
  },
  cask: {
    says: 'casks?|casts?|barrels?|hogsheads?|butts?|puncheons?|wood|hhds?|bbls?',
    stage: 'maturing',
    loud: 1.2,
  },
  store: {
    says: 'where[\\s-]?houses?|ware[\\s-]?houses?|stores?|bond|dunnage|cellars?|storage|racked|sheds?|lofts?',
    stage: 'maturing',
    loud: 2,
  },
  inStore: {
    says: 'in store|in the store|in these sheds|in all our|in the bond|in here|in total|total|lying|resting|looking at|right now|at the moment|asleep|sleeping|maturing here|store holds|altogether|at any time|at present|today|this morning',
  },
  humidity: { says: 'humidity|humid|damp|relative humidity|rh|r\\.h\\.', stage: 'maturing', loud: 1 },
  loss: {
    says: 'loss(?:es)?|los(?:e|es|ing|t)|evaporat\\w*|disappear\\w*|vanish\\w*|goes away|drinks|walks out|leaks?',
    stage: 'maturing',
    loud: 0.5,
  },
  angels: { says: "angel[s’']*(?:[\\s-](?:share|chair|shares))?|flies off|roof", stage: 'maturing', loud: 2 },
  age: {
    says: 'ages?|aged|matur\\w*|sleeps?|rests?|lies?|lie|lay|in wood|in there|our spirit|old|waits?|main bottling|minimum|done|ready|leave it',
    stage: 'maturing',
    loud: 0.3,
  },
  bottling: {
    says: 'bottl(?:ed|ing|e at)|let down|proof(?:ed)? (?:it )?down|went out|goes out|reduced|brought down|for the bottle|label says|brings it to|on the label',
    stage: 'maturing',
    loud: 1,
  },
  bottle: { says: 'bottles?|btls?', stage: 'maturing', loud: 1 },
  sell: { says: 'sell|sold|send|bottle(?! of)' },
  each: { says: 'each|every|apiece|per' },
  perWeek: {
    says: '(?:an?|per|each|every|in the|in a|of the|the|to the|one|/|\\bp)\\s*(?:weeks?|wk)|weekly|/ ?wk|week altogether',
  },
  perYear: {
    says: '(?:an?|per|each|every|in the|in a|of the|the|to the|by|over the|over a|whole|one|/)\\s*(?:whole |course of a |working )?(?:years?|yr|annum|season)|yearly|annual(?:ly)?|pa|p\\.a\\.|for the year|yr',
  },
  perMash: {
    says: '(?:per|each|every|a|one|the|by|to a|/)\\s*(?:mash|batch|brew|cooking|run)|at a time|at a go|from each run|mash of|of em|each one',
  },
  perCask: {
    says: '(?:per|each|every|a|one|the|/|from a|from one|out of a)\\s*(?:cask|cast|barrel|hogshead)',
  },
  perTonne: { says: '(?:per|each|every|a|one|to the|/)\\s*(?:tonne|ton|t)' },
  perHour: { says: '(?:an|per|every|each|/)\\s*(?:hour|hr|h)' },
  capacity: {
    says: "holds?|holding|capacity|brim\\w*|rim|takes up to|up to|can take|could|would|she'd|they'd|full|gross",
  },
  delivery: { says: 'lorry|lorries|loads?|truck|tanker|wagon|deliver\\w*|sacks?|driver' },
  weighs: { says: 'weighs?|lid|wide|across|deep|high|tall|thick' },
  law: { says: 'law|legal(?:ly)?|must' },
  built: {
    says: 'built|founded|stood|been here|since|worked here|at it|made by hand|started|mills?|shut|wars?',
  },
  elsewhere: {
    says: 'elsewhere|others?|other (?:houses|distiller\\w+|places)|places|hot countries|some (?:people|folks?|houses|stop)|nowadays|proper (?:place|distillery)|big ones',
  },
  gas: { says: 'gas|carbon|co2|carbonic' },
  cooled: { says: 'cool\\w*|plates?|bring it down|all on its own|gets? up|warms?|warmer|pitched|set at' },
  air: { says: 'air' },
  limit: {
    says: 'below|above|no more than|under|over|within|danger\\w*|alarms?|safe|maximum|never|trips?|allow\\w*|lowest|highest|minimum|at most|at least',
  },
  shop: { says: 'shop|children|tours?|bus|groups?|tickets?' },
} as const satisfies Record<string, Concept>;

export type ConceptName = keyof typeof table;
const concepts: Readonly<Record<ConceptName, Concept>> = table;
export const conceptNames = Object.keys(table) as readonly ConceptName[];

export interface Mention {
  readonly concept: ConceptName;
  readonly start: number;
  readonly end: number;
}

const patterns = conceptNames.map((concept) => ({
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
