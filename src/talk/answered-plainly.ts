// The visitors' questions of the book that a guide answers in plain words, none of which need be the question's: by what each such answer is known.
// Common practice of speech, no source; tests/talk/answered-plainly.test.ts holds it by whole talks. Read in small letters.

const AGE_ON_LABEL = [/\byoungest\b/, /\b(?:number|age|years?|bottle|label|whisk)/];
const GRAINS = [/\bdraff\b|\b(?:spent|wet|left-?over|used) grains?\b|\bgrains? (?:left|that is left)\b|\bhusks? (?:left|that are left)\b/, /\b(?:farm|cattle|cows?|sheep|pigs?|beasts?|fed|feed|digester|bio-?gas)/]; // prettier-ignore
const GAS = [/\b(?:gas|carbon dioxide|co2|bubbles)\b/, /\b(?:captur|collect|roof|vent|let (?:it|all of it|all that)|blows? (?:off|out)|goes (?:off|out|up)|just let|into the (?:air|open|sky)|out of the window|fans?|piped? (?:out|away))/]; // prettier-ignore
const WATER_DAY = [/\b(?:water|burn|loch|spring|river|cooling|condensers?)\b/, /\b(?:lit(?:re|er)s|gallons|cubic met\w+|tonnes) (?:of (?:it|water) )?(?:a|every|each|per) (?:day|mash|week|hour|bottle)/]; // prettier-ignore
const LOCAL =
  /\b(?:brothers?|neighbours?|family|cousins?|farms?|farmers?|fields?|growers?|grown|grows|grow)\b/;
const NEAR = /\b(?:down|up|along|over|across) the (?:road|lane|hill|valley|glen)\b|\bnext door\b|\bround (?:here|about)\b|\bwithin (?:\S+ ){1,3}(?:miles?|kilomet\w+)|\b(?:miles?|kilomet\w+|minutes) (?:away|off|from here)\b|\bneighbours?\b|\blocal|\byou (?:drove|came|passed|see|saw|walked)\b|\b(?:county|parish|valley|island|own (?:farm|fields?|land))\b|\bfrom (?:here|abroad|further|the (?:east|south|west|north))\b/; // prettier-ignore
const BARLEY = /\b(?:barley|malt|grain|variety|everything)\b/;

/** Of each question: ways of answering it, each of which is said when all of its words stand in two sentences that follow each other. */
export const answeredPlainly: Readonly<Record<string, readonly (readonly RegExp[])[]>> = {
  'malting-is-the-barley-local': [[BARLEY, LOCAL, NEAR], [/\b(?:barley|malt)\b/, /\b(?:import|shipped|comes? (?:in )?from|bought in from|grown (?:in|on|by|at))/], [/\bgrain\b/, /\b(?:import\w*|shipped in)\b/]], // prettier-ignore
  'malting-what-is-peat-for': [[/\bun-?peated\b|\bno (?:peat|smoke)\b/], [/\bpeat\w*\b/, /\b(?:smok\w*|dried|dry|kiln|burn\w*|fire|ppm|taste)\b/]], // prettier-ignore
  'malting-what-happens-to-the-roots': [[/\b(?:roots?|rootlets?|culms?|combings?)\b/, /\b(?:cattle|cows?|fed|feed|rubbed|knocked|come off|taken off|sieved)/]], // prettier-ignore
  'milling-why-are-there-three-sizes': [[/\bhusks?\b/, /\bgrits?\b/, /\bflour\b/]],
  'milling-why-not-grind-it-all-to-flour': [[/\b(?:all|only|just|too much) (?:of it )?(?:to |into )?flour\b|\b(?:too fine|finer)\b/, /\b(?:porridge|block|stick|stuck|clog|glue|dough|set|drain|filter)/]], // prettier-ignore
  'milling-why-is-the-mill-closed-up-and-why-so-loud': [[/\b(?:mill|dust)\b/, /\b(?:explo|spark|dust|blow)/, /\b(?:clos|shut|seal|box|lid|cover|explo)/]], // prettier-ignore
  'mashing-why-not-just-boil-it': [
    [/\b(?:boil|too hot|hotter)/, /\b(?:kill|enzyme|dead|destroy|spoil|starch)/],
  ],
  'mashing-where-do-the-grains-go': [GRAINS],
  'heat-and-water-what-happens-to-the-grains': [GRAINS],
  'mashing-what-is-in-the-wort': [[/\bworts?\b|\bsweet (?:water|liquid)\b/, /\b(?:sugar|sweet|maltose)/]],
  'mashing-how-much-water-does-a-mash-take': [[/\bwater\b/, /\b(?:lit(?:re|er)s|gallons)\b/, /\b(?:first|second|mash|malt)\b/]], // prettier-ignore
  'heat-and-water-how-much-water-does-it-take': [WATER_DAY],
  'heat-and-water-how-much-energy': [[/\b(?:energy|fuel|oil|wood ?chips?|steam|electric\w*|heat)\b/, /\b(?:kilowatt\w*|kwh|megawatt\w*|mwh|(?:tonnes?|lit(?:re|er)s) of (?:oil|fuel|wood|chips?))\b/]], // prettier-ignore
  'heat-and-water-is-it-getting-better': [[/\b(?:energy|fuel|oil|carbon|electric\w*)\b/, /\b(?:less|half|saves?|saved|down by|cut)\b/, /\b(?:than|since|used to|before|now|year)\b/]], // prettier-ignore
  'heat-and-water-does-anything-go-into-the-river': [[/\b(?:river|burn|loch|sea|stream|beck)\b/, /\b(?:nothing|only|but|clean|warm|treat|cool)/, /\b(?:goes?|back|into|in)\b/]], // prettier-ignore
  'heat-and-water-is-the-carbon-dioxide-captured': [GAS],
  'fermenting-is-the-gas-captured': [GAS],
  'fermenting-how-strong-is-the-wash': [[/\b(?:wash|beer|ferment\w*|washbacks?)\b/, /\S+ (?:and a half )?(?:per ?cent|%)|\d ?%/]], // prettier-ignore
  'fermenting-how-long-does-it-take': [[/\b(?:wash|washbacks?|ferment\w*|yeast|beer|tuns?|tubs?)\b/, /\b(?:hours?|days?|nights?|weekend)\b/]], // prettier-ignore
  'fermenting-can-i-lean-over-and-smell-it': [[/\b(?:heads?|lean|nose|sniff|breathe)\b/, /\b(?:gas|fumes?|carbon dioxide|co2|knock\w*|choke|faint|dizzy)\b/, /\b(?:don.t|do not|never|not|no|careful|if you)\b/]], // prettier-ignore
  'fermenting-wood-or-steel': [[/\b(?:washbacks?|tuns?|tubs?|vats?|vessels|fermenters?|backs)\b/, /\b(?:oregon|pine|larch|fir|wood(?:en)?|timber|steel|stainless|cypress)\b/]], // prettier-ignore
  'fermenting-why-does-it-smell-of-fruit-or-of-vinegar': [[/\b(?:fruit\w*|pears?|pear drops|banana|apples?|pineapple|vinegar|sour)\b/, /\b(?:yeast|bug|bacteri|ferment|wash|hours|days|that.s where)/]], // prettier-ignore
  'distilling-how-many-times-is-it-distilled': [[/\b(?:twice|two times|double|three times|thrice|triple|two and a half times)\b/, /\b(?:distil\w*|stills?|run|through|pots?|boil\w*)\b/]], // prettier-ignore
  'distilling-how-strong-is-it-off-the-still': [[/\b(?:spirit|still|heart|middle|comes? off)\b/, /\b(?:6\d|7\d|sixty(?:-\w+)?|seventy(?:-\w+)?)(?:\.\d)? ?(?:%|per ?cent|abv|at the (?:still|safe|spirit safe))/]], // prettier-ignore
  'distilling-why-copper': [[/\bcopper\b/, /\b(?:sulphur\w*|sulfur\w*|clean\w*|cabbage\w*|eggy|meaty|strips?|takes? (?:up|out|away))\b/]], // prettier-ignore
  'distilling-what-do-you-throw-away': [[/\b(?:heads?|foreshots?|first (?:bit|part|run|cut))\b/, /\b(?:tails?|feints?|last (?:bit|part))\b|\bagain\b/, /\b(?:again|back|next|round|saved?|throw|nothing|never)\b/]], // prettier-ignore
  'distilling-is-the-first-part-poisonous': [[/\b(?:heads?|foreshots?|first (?:bit|part|of the run))\b/, /\b(?:poison\w*|blind|methanol|nasty|harm\w*|safe to)\b/]], // prettier-ignore
  'distilling-can-i-do-this-at-home': [[/\bat home\b|\bkitchen\b|\bgarage\b/, /\b(?:licen[cs]e|law|illegal|danger\w*|don.t|do not|never|try)\b/]], // prettier-ignore
  'distilling-what-is-left-in-the-first-still': [[/\bpot ale\b|\b(?:left|stays|remains)\b.{0,25}\b(?:still|pot)\b/, /\b(?:field|feed|cattle|syrup|digester|fertili|plant|yeast|tanker|land)/]], // prettier-ignore
  'maturing-why-casks-and-why-oak': [[/\boak\b/, /\b(?:law|breathe|tight|leak|vanill|colour|flavour|sweet)/]],
  'maturing-what-is-the-angels-share': [
    [/\bangels?\b|\bevaporat\w*|\blose\b|\bloss\b/, /\b(?:per ?cent|%|every year|a year)/],
  ],
  'maturing-does-it-get-stronger-or-weaker': [[/\b(?:strength|stronger|weaker)\b/, /\b(?:loses?|drops?|falls?|goes down|weaker|damp|dry|years?|cask|sleep\w*)\b/, /\b(?:loses?|drops?|falls?|down|weaker|stronger|rises?|climbs?)\b/]], // prettier-ignore
  'maturing-how-many-bottles-come-from-a-cask': [[/\bbottles\b/, /\b(?:cask|barrel|hogshead|butt)s?\b/, /\d|\b(?:hundred|dozen)\b/]], // prettier-ignore
  'maturing-what-does-the-age-on-the-label-mean': [AGE_ON_LABEL],
  'law-is-a-number-on-the-label-an-average': [AGE_ON_LABEL],
  'maturing-does-it-go-on-ageing-in-the-bottle': [[/\b(?:in|into) (?:the |a )?(?:bottles?|glass)\b/, /\b(?:chang|stop|no older|stays|age|ageing|older)/]], // prettier-ignore
  'ingredients-where-does-the-water-come-from': [[/\bwater\b|\b(?:feeds?|supplies)\b|\bgives us\b|\ball (?:that )?we use\b/, /\b(?:springs?|loch|lochan|lough|lake|burn|stream|beck|well(?!,)|bore-?hole|river|mains?|tap|reservoir|hill|snow|moor)\b/]], // prettier-ignore
  'ingredients-does-the-water-make-the-flavour': [[/\bwater\b/, /\b(?:flavour|taste)/, /\b(?:makes?|matters?|little|hardly|nothing|no|less|more)\b/]], // prettier-ignore
  'ingredients-what-kind-of-barley-is-it': [[/\b(?:variety|called|kind|sort|two-row|six-row|spring barley|winter barley|laureate|concerto|bere|heritage)\b/, /\b(?:barley|grows?|grown|malt)/]], // prettier-ignore
  'ingredients-how-big-a-field-does-that-take': [[/\b(?:acres?|hectares?)\b/]],
  'ingredients-is-it-the-same-yeast-as-for-bread': [[/\byeast\b/, /\b(?:bread|baker\w*|distiller.?s|brewer.?s|dried yeast|cream yeast|yeast cream|pressed yeast)\b/]], // prettier-ignore
  'ingredients-is-anything-else-added': [[/\bnothing (?:else )?(?:is |gets )?(?:added|goes in)\b|\bnothing but (?:barley|malt|water)\b|\bonly (?:barley|malt|three things)\b|\bbarley, (?:water|yeast)\b/]], // prettier-ignore
  'law-is-colour-added': [
    [/\b(?:colour|color|caramel)\b/, /\b(?:no|not|don.t|never|add\w*|natural|without|touch|bit)\b/],
  ],
  'visitors-is-it-chill-filtered': [[/\bchill.?filter\w*|\bfilter\w* cold\b|\bcold.?filter\w*/]],
  'law-why-three-years': [[/\bthree years\b/, /\b(?:law|whisk|legal|called?|allowed)/]],
  'law-what-makes-it-single-malt': [[/\bsingle malts?\b/, /\b(?:means?|only|one|barley|all)\b/]],
  'law-does-the-barley-have-to-be-from-here': [[/\bbarley\b/, /\b(?:have to|has to|need not|must|law|allowed)\b/, /\b(?:here|country|abroad|anywhere)\b/]], // prettier-ignore
  'strength-and-volume-what-does-40-mean': [[/\b(?:forty|40)(?: ?%| per ?cent)? (?:means?|parts?|is)\b/, /\b(?:alcohol|water)\b/]], // prettier-ignore
  'strength-and-volume-why-do-some-labels-say-proof': [[/\b(?:degrees )?proof\b/, /\b(?:gunpowder|american|old|means?|twice|double|half)\b/]], // prettier-ignore
  'strength-and-volume-how-do-you-know-how-strong-it-is': [[/\b(?:hydrometers?|density meter|spirit safe|float|glass bulb)\b/, /\b(?:strength|strong|measur\w*|read\w*|tells?|how)\b/]], // prettier-ignore
  'visitors-may-i-use-my-phone-or-take-photographs': [[/\b(?:phones?|mobiles?|cameras?|photo\w*|pictures?|film(?:ing)?|flash|selfies?)\b/, /\b(?:off|away|pockets?|no|don.t|do not|not|please|welcome|as many|take|fine|allowed)\b/]], // prettier-ignore
  'visitors-why-are-the-stills-this-shape': [[/\b(?:necks?|lyne arms?|stills?|pots?|shape\w*|boil.?balls?|lantern|onion)\b/, /\b(?:tall|short|squat|fat|slender|boil.?ball\w*|bulge|waist|shape\w*)\b/, /\b(?:light\w*|heav\w*|falls? back|reflux|runs? back|gets? over|rich\w*)\b/]], // prettier-ignore
  'visitors-what-is-cask-strength': [
    [/\bcask strength\b|\b(?:straight|right|just) (?:from|out of) the cask\b/],
  ],
  'visitors-should-i-add-water-or-ice': [[/\b(?:drop|splash|dash|spot|little|bit) of water\b|\b(?:ice|neat)\b/, /\b(?:taste|dram|opens?|try|first|nose|glass|add|numbs?)\b/]], // prettier-ignore
  'visitors-why-is-it-so-dear-and-where-does-the-tax-go': [[/\b(?:tax\w*|duty|excise|revenue|vat)\b/, /\b(?:pay|price|bottle|pounds?|half|treasury|government|goes)\b/]], // prettier-ignore
  'visitors-how-old-is-the-youngest-drop-in-here': [[/\bours is (?:three|four|five|six|seven|eight|nine|ten|twelve|fifteen|eighteen|\d{1,2})\b(?! ?(?:%|per))/], [/\b(?:whisky|bottle|dram|glass|oldest|youngest|this one)\b/, /\b(?:years old|aged (?:for )?\w+ years)\b/]], // prettier-ignore
  'visitors-how-many-units-are-in-these-tastes': [
    [/\bunits?\b/, /\b(?:tast\w*|drams?|glass\w*|nips?|alcohol)\b/],
  ],
  'visitors-may-i-taste-the-new-spirit': [[/\b(?:new make|new spirit|clear stuff|straight off the still)\b/, /\b(?:taste|sip|try|nose|drop|sniff)\b/]], // prettier-ignore
};
