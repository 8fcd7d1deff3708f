// “What if you bottled at 40 %?”: one figure of the house moved, as a reader would move it, and what became of what was asked.
import { format } from '../core/format.ts';
import type { GaveWay } from '../core/line/change.ts';
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import { figureText, kindOfFigure, textOfFigure } from '../house/prose.ts';
import { numberFigures, type NumberName } from '../house/figures.ts';
import { proposeFigure } from '../house/propose.ts';
import { isMade, madeFigure } from './made.ts';
import { isRelative } from './relative.ts';
import type { AskedQuantity } from './quantities.ts';
import { inCore, type Reckoner } from './reckoned.ts';

/** Words for a figure that may be moved, and what its number must look like. */
const moved: readonly { readonly says: RegExp; readonly name: NumberName; readonly as: 'percent' | 'years' | 'count' | 'mass' | 'gravity' | 'volume' | 'hours' | 'bottle' | 'temperature' }[] = [
  { says: /bottl(?:ed?|ing)\b.{0,20}\bat\b|bottling strength|cask strength/i, name: 'bottlingStrength', as: 'percent' },
  { says: /\b(?:fill(?:ed|ing)?)\b.{0,24}\bat\b|filling strength|go(?:es|ing)? in(?:to)? (?:the )?casks?.{0,12}\bat\b|\bput(?:ting)? (?:it|them|the spirit) in(?:to)?\b.{0,20}\bat\b|into (?:the )?(?:casks?|wood) at\b/i, name: 'fillingStrength', as: 'percent' },
  { says: /\bcut(?:ting|s)?\b|\b(?:stop|end|finish|clos)\w* (?:the |your )?heart\b|\bheart\b.{0,16}\b(?:ended|ends|stopped|stops|until|down to)|collect(?:ed|ing)? (?:down )?to|\b(?:hung|hang|held|hold|carr(?:y|ied)|stay(?:ed)?|r[ua]n|kept|keep|went|go)(?: it| going)? on (?:down )?(?:to|until|till|past|below)\b|(?:kept|keep) going/i, name: 'heartEnd', as: 'percent' },
  { says: /angels?|evaporat|loss|lost|loses/i, name: 'alcoholLoss', as: 'percent' },
  { says: /\bfg\b|final gravity|finish(?:ed|es)? (?:off )?at|(?:stop(?:ped|s)?|end(?:ed|s)?|stuck) at/i, name: 'finalGravity', as: 'gravity' },
  { says: /fermentab/i, name: 'fermentability', as: 'percent' },
  { says: /\bextract\b/i, name: 'solubleExtract', as: 'percent' },
  { says: /humid|damp/i, name: 'storeHumidity', as: 'percent' },
  { says: /years?/i, name: 'yearsInWood', as: 'years' },
  { says: /\d\s+(?:more |fewer )?mash(?:es|ings)\b|\bmash(?:ed|es)?\b.{0,20}\d+ (?:times|a week)/i, name: 'mashesPerWeek', as: 'count' },
  { says: /weeks?/i, name: 'weeksPerYear', as: 'count' },
  { says: /\bmalt\b|\bmash(?:es)?\b/i, name: 'maltPerMash', as: 'mass' },
  { says: /gravity|\bog\b/i, name: 'originalGravity', as: 'gravity' },
  { says: /bottles?/i, name: 'bottleSize', as: 'bottle' },
]; // prettier-ignore

/** What may be asked of the moved house, the first that is named. */
const asked: readonly (readonly [RegExp, string, string])[] = [
  [/how many (?:more |fewer |less )?bottles (?!.{0,24}\bcask)/i, 'bottling.bottlesPerYear', 'bottles in a year'],
  [/bottles?\b.{0,24}\bcask|per cask|from a cask|each cask|one cask/i, 'bottling.bottlesPerCask', 'bottles from a cask'],
  [/how (?:many|much).{0,12}casks?|casks? (?:a|per) year/i, 'casks.perYear', 'casks in a year'],
  [/how strong|what strength|\babv\b|strength (?:would|be)|out of the cask/i, 'matured.strength', 'out of the cask'],
  [/how much.{0,30}(?:left|remain)|what(?: i)?s left|how (?:full|many litres)/i, 'made.outOfCask', 'left in a cask'],
  [/evaporat|angels?|lost|lose/i, 'made.lostInWood', 'of the alcohol gone from the cask'],
  [/pure alcohol|\blpa\b|spirit|alcohol/i, 'heart.alcohol', 'in the heart of one mash'],
  [/barley/i, 'barley.perBottle', 'of barley for a bottle'],
]; // prettier-ignore
const OTHERWISE: Readonly<Partial<Record<NumberName, readonly [string, string]>>> = {
  heartEnd: ['heart.strength', 'for the heart'],
  fillingStrength: ['casks.perYear', 'casks in a year'],
  originalGravity: ['wash.strength', 'in the wash'],
  finalGravity: ['wash.strength', 'in the wash'],
  storeHumidity: ['matured.strength', 'out of the cask'],
};
const BOTTLES = ['bottling.bottlesPerYear', 'bottles in a year'] as const;

const LEAST = 40; // % vol in the bottle, by all the names of the chapter on law

/** Somebody’s own casks: what becomes of them is no figure of the house. */
const COUNTED = /\b(?:\d+|two|three|ten|a hundred)\s+(?:casks|barrels|hogsheads|butts)\b/i;
const IF = /\b(?:if|suppose|say you|instead of|what happens (?:if|when)|after|for|left|would)\b/i;

function valueFor(quantity: AskedQuantity, { as }: (typeof moved)[number]): number | undefined {
  const { number, unit, dimension } = quantity;
  switch (as) {
    case 'percent':
      if (dimension === 'percent') return number;
      return dimension === 'strength'
        ? inCore(quantity, 'strength')
        : dimension === undefined
          ? number
          : undefined;
    case 'years':
      return unit === 'years' ? number : undefined;
    case 'count':
      return unit === undefined || unit === 'weeks' ? number : undefined;
    case 'mass':
      return dimension === 'mass' ? inCore(quantity, 'mass') : undefined;
    case 'gravity':
      return unit === undefined && ((number > 900 && number < 1200) || (number > 0.95 && number < 1.2)) ? (number > 900 ? number / 1000 : number) : undefined; // prettier-ignore
    case 'bottle':
      return dimension === 'volume' ? inCore(quantity, 'volume20')! * 100 : undefined;
    default:
      return undefined;
  }
}

/** “Five more years” is more than the house has. */
function valueMeant(text: string, quantity: AskedQuantity, change: (typeof moved)[number], house: House): number {
  const amount = valueFor(quantity, change)!;
  const isLess = /^\s*(?:of )?(?:\w+ )?(?:fewer|less|shorter|lower)\b/i.test(text.slice(quantity.end));
  return isRelative(text, quantity) ? Number(house[change.name]) + (isLess ? -amount : amount) : amount;
} // prettier-ignore

/** How many times as much, in words. */
const FACTORS: readonly (readonly [RegExp, number])[] = [
  [/\bhalf as (?:much|many|long)\b|\bhalf (?:the|of|your|our|what)\b|\bhalved?\b|\bby half\b/i, 0.5],
  [/\btwice\b|\bdoubled?\b/i, 2],
  [/\bthree times\b|\btripled?\b/i, 3],
];
/** What may be so many times as much; malt and mashes are told in proportion elsewhere. */
const timed: readonly { readonly says: RegExp; readonly name: NumberName }[] = [
  { says: /\bangels?\b|evaporat/i, name: 'alcoholLoss' },
  {
    says: /\b(?:years?|long)\b.{0,24}\b(?:cask|wood|store)s?\b|\b(?:cask|wood|store)s?\b.{0,24}\b(?:years|long)\b/i,
    name: 'yearsInWood',
  },
  {
    says: /\bbottles? (?:were |was )?(?:half|twice|double)|(?:half|twice|double) (?:the )?(?:size|bottle)/i,
    name: 'bottleSize',
  },
];

const textAt = (line: Line, path: string): string => {
  const name = path.replace('made.', '');
  if (!path.startsWith('made.') || !isMade(name)) return figureText(line, path);
  const { kind, of, digits } = madeFigure(name);
  return format(of(line), kind, digits);
};

/** What moved with the figure, as the end of a sentence. */
function gaveText(gave: readonly GaveWay[]): string {
  const told = gave.flatMap(({ figure, from, to }) => {
    const { kind, label } = numberFigures[figure];
    const [was, now] = [format(from, kind), format(to, kind)];
    return was === now ? [] : [`${label.toLowerCase()} goes from ${was} to ${now}`];
  });
  return told.length === 0 ? '' : `; with it ${told.join(', ')}`;
}

/** What a later or an earlier end of the heart brings with it. */
const laterCut = (value: number, now: number): string =>
  value === now
    ? ''
    : value < now
      ? ' A longer heart and more of it, heavier, with more of what the feints hold.'
      : ' A shorter heart and less of it, lighter and cleaner.';

/** What to say before, where the spirit is weaker than the strength that is wanted. */
function asItComes(name: NumberName, value: number, { heart, matured }: Line): string {
  if (name === 'bottlingStrength' && value < LEAST) return `Below ${LEAST} % vol it may not be sold as whisky in most places. `; // prettier-ignore
  const most =
    name === 'fillingStrength' ? heart.strength : name === 'bottlingStrength' ? matured.strength : value;
  return value > most ? `Water cannot make it stronger, so it would go as it comes, at ${format(most, 'strength')}. ` : ''; // prettier-ignore
}

/** The house with one figure moved. */
export const whatIf: Reckoner = ({ text, quantities: said, house, line }) => {
  // “Five more years” is so many years.
  const quantities = said.map((each): AskedQuantity => (each.unit === undefined && /^\s*(?:more|extra|further)\s+years?\b/i.test(text.slice(each.end)) ? { ...each, unit: 'years', dimension: 'time' } : each));
  if (quantities.length > 0 && quantities.every(({ unit }) => unit === 'years') && (!/cask|barrel|wood|store|\bage|matur|keep|kept|leave|left/i.test(text) || /\bbottle\b/i.test(text))) return undefined; // prettier-ignore
  const supposes = /\bif\b|suppose|instead of|\bwere\b|would/i.test(text);
  if (quantities.length > 2 || !IF.test(text)) return undefined;
  if (COUNTED.test(text) || /\bhow long\b.{0,40}\blasts?\b/i.test(text)) return undefined;
  const times = quantities.length === 0 ? FACTORS.find(([says]) => says.test(text))?.[1] : undefined;
  const multiplied = times === undefined || !supposes ? undefined : timed.find(({ says }) => says.test(text));
  if (quantities.length === 0 && !multiplied) return undefined;
  const ways: readonly (AskedQuantity | undefined)[] = multiplied ? [undefined] : quantities;
  for (const quantity of ways) {
    const change = quantity === undefined ? moved.find(({ name }) => name === multiplied!.name) : moved.find((each) => each.says.test(text) && valueFor(quantity, each) !== undefined);
    if (!change || (!supposes && change.name !== 'yearsInWood')) continue;
    const value = quantity === undefined ? times! * Number(house[change.name]) : valueMeant(text, quantity, change, house as House);
    // What is lost by another cut does not go to the air.
    const found = asked.find(([says, path]) => says.test(text) && !(path === 'made.lostInWood' && change.name === 'heartEnd'));
    if (!supposes && (!found || !/\bhow\b|what(?: i)?s left|what would/i.test(text))) return undefined;
    const isCutAlone = change.name === 'heartEnd' && found?.[1] === 'heart.alcohol' && !/alcohol|\blpa\b/i.test(text);
    const [path, called] = found && !isCutAlone ? [found[1], found[2]] : (OTHERWISE[change.name] ?? BOTTLES);
    const proposal = proposeFigure(house as House, change.name, value);
    const label = numberFigures[change.name].label;
    const place = { at: 'house/', place: 'The house’s figures' };
    if ('problem' in proposal && change.name === 'yearsInWood') return undefined;
    if ('problem' in proposal && change.name === 'bottleSize') continue; // litres of a cask or a tank are no bottle
    if ('problem' in proposal) return { says: proposal.problem, ...place, paths: [] };
    const [was, now] = [textAt(line, path), textAt(proposal.line, path)];
    const gave = gaveText(proposal.gave); // prettier-ignore
    return {
      says:
        asItComes(change.name, value, line) +
        (was === now
          ? `Nothing would change in that: still ${now} ${called}.`
          : `Then about ${now} ${called}; now it is ${was}.`) +
        (change.name === 'heartEnd' ? laterCut(value, house.heartEnd) : ''),
      sum: `${label}: ${textOfFigure(change.name, house[change.name])} → ${textOfFigure(change.name, value)}${gave}`,
      ...place,
      paths: kindOfFigure(path) ? [path] : [],
    };
  }
  return undefined;
}; // prettier-ignore
