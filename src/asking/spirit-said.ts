// What a question says of spirit: its litres, those of a cask that is only named, and its strengths, with or without a sign.
import { CASK_SIZES } from '../core/maturing/filling.ts';
import { asGiven, inCore, strengthsIn, type Numbered } from './reckoned.ts';

export interface Volume {
  readonly litres: number;
  readonly said: string;
}
export interface SpiritSaid {
  readonly volumes: readonly Volume[];
  readonly strengths: readonly number[];
  /** The strength of what is named, as the house has it, where the question tells none of it. */
  readonly named?: NamedSpirit | undefined;
}
/** A liquid of the house that has a strength. */
export interface NamedSpirit {
  readonly at: number;
  readonly called: string;
  readonly path: string;
}

/** Liquids of the house by name, the longer before the shorter. */
const liquids: readonly (readonly [RegExp, string, (line: Numbered['line']) => number])[] = [
  [/\blow wines\b/i, 'lowWines.strength', ({ lowWines }) => lowWines.strength],
  [/\bfeints\b/i, 'feints.strength', ({ feints }) => feints.strength],
  [/\bforeshots\b/i, 'foreshots.strength', ({ foreshots }) => foreshots.strength],
  [/\b(?:wash|beer)\b(?! still)/i, 'wash.strength', ({ wash }) => wash.strength],
  [/\b(?:filling strength|filled)\b/i, 'filling.strength', ({ filling }) => filling.strength],
  [/\bnew (?:make|spirit)\b|\bheart\b|off the (?:spirit )?still/i, 'heart.strength', ({ heart }) => heart.strength],
  [/\b(?:of|in|from) (?:one of )?(?:your|this|the|our) (?:bottled |finished )?(?:whisky|whiskey|bottles?)\b/i, 'bottling.strength', ({ bottling }) => bottling.strength],
]; // prettier-ignore

/** The liquid of the house that a question names. */
export function liquidNamed({ text, line }: Pick<Numbered, 'text' | 'line'>): NamedSpirit | undefined {
  const found = liquids.find(([says]) => says.test(text));
  return found && { at: found[2](line), called: found[0].exec(text)![0].toLowerCase(), path: found[1] };
}

/** Casks by name, L: those that the house counts, and the others as the glossary has them. */
const casks: readonly (readonly [RegExp, string, number])[] = [
  [/\bhogs?heads?\b/i, 'hogshead', CASK_SIZES.hogshead],
  [/\bbutts?\b/i, 'butt', CASK_SIZES.butt],
  [/\bpuncheons?\b/i, 'puncheon', 500], // L; cask guides, see the glossary
  [/\bquarter[\s-]casks?\b/i, 'quarter cask', 125], // L; the same
  [/\boctaves?\b/i, 'octave', 50], // L; the same
  [/\bbarrels?\b/i, 'barrel', CASK_SIZES.barrel],
];
const AT = /^\s*(?:of (?:[a-z]+ ){1,3}at|at|of|@)\s+(?:about\s+)?$/i; // between litres and their strength
const CASKS_OF = /^\s*(?:full )?(?:casks|barrels|hogsheads|butts) of\s+(?:about\s+)?$/i;
const MEASURES: readonly number[] = [20, 25, 30, 35, 40, 44, 45, 50, 60, 200, 350, 375, 500, 700, 750, 1000]; // mL of bar measures and bottles
const MOST_LITRES = 700; // of one cask
const MOST_CASKS = 100_000;

/** What stands before a number that is a strength, and what never behind it. */
const BEFORE = /(?:\bat|\bwere|\bwas|\bof|\bfrom|\bto|\bis|\baverag(?:es?|ing)|\bcom(?:es?|ing) (?:over|off|out)(?: at)?|\bit['’]?s|\bwant(?:s|ed)?(?: it at)?|\bget|\bmake|=|\band|\bwith|,|\bor|\bas)\s*(?:about|only|say|around|roughly|just)?\s*$/i; // prettier-ignore
const COUNTED =
  /^\s*(?:of (?:the|our|your|my|those|these) )?(?:(?:more|other|full|big|small|new|old|good|whole) )?(?:bottles?|casks?|barrels?|hogsheads?|butts?|mash(?:es)?|batch(?:es)?|runs?|years?|yrs?|months?|weeks?|days?|hours?|hrs?|minutes?|times|people|men|cows?|kids?|parts?|sacks?|bags?|stills?|washbacks?|tuns?|tanks?|points?|drams?|shots?|glasses|measures?|lots?|steps?|units?|a (?:tonne|bottle|year|week|day|litre|kilo)|per (?:tonne|year|week|day|litre|kilo)|lpa (?:a|per)|ppm|kg|mashings?|o['’]?clock|degrees?|celsius|fahrenheit|deg\b|c\b|f\b|[:/]\s*\d)/i; // what a number counts that is no strength

/** The volume of a cask that is named and whose litres are not told; several of them where they are counted. */
export function namedCask({ text, quantities }: Pick<Numbered, 'text' | 'quantities'>): Volume | undefined {
  if (quantities.some(({ dimension, unit }) => dimension === 'volume' && unit !== 'pints')) return undefined;
  for (const [says, name, size] of casks) {
    const at = says.exec(text)?.index;
    if (at === undefined) continue;
    const counted = quantities.find(
      ({ unit, end }) => unit === undefined && end <= at && /^\s*$/.test(text.slice(end, at)),
    );
    const count = counted?.number ?? 1;
    if (!(count > 0 && count <= MOST_CASKS)) return undefined;
    return {
      litres: count * size,
      said: counted && count !== 1 ? `${asGiven(counted)} ${name}s` : `A ${name}`.replace(/^A (?=o)/, 'An '),
    };
  }
  return undefined;
}

/** Litres and strengths of a question about spirit. */
export function spiritSaid(asked: Numbered): SpiritSaid {
  const { text, quantities } = asked;
  const measured = quantities.find(({ dimension }) => dimension === 'volume');
  // “1 litre 63.5”: right behind litres a number is a strength, without a word between.
  const isAt = (i: number) => {
    const between = i > 0 ? text.slice(quantities[i - 1]!.end, quantities[i]?.start ?? 0) : '-';
    return (
      AT.test(between) || (i > 0 && quantities[i - 1]!.dimension === 'volume' && /^[\s,]+$/.test(between))
    );
  };
  const isAlone = (i: number) => quantities[i]!.unit === undefined && isAt(i + 1) && !isAt(i);
  // “6,000 litres at 23 and 1,000 at 30”: what has a strength behind it is of the same unit.
  const given = quantities.flatMap((each, i): Volume[] => {
    const isAlike = measured !== undefined && isAlone(i);
    const alike = isAlike ? { ...each, unit: measured.unit!, dimension: 'volume' as const } : each;
    const litres = alike.dimension === 'volume' ? inCore(alike, 'volume20') : undefined;
    if (litres === undefined || !(litres > 0)) return [];
    const before = quantities[i - 1];
    const isCounted =
      before?.unit === undefined &&
      before !== undefined &&
      before.number > 1 &&
      CASKS_OF.test(text.slice(before.end, each.start));
    return isCounted ? [{ litres: litres * before.number, said: `${asGiven(before)} times ${asGiven(alike)}` }] : [{ litres, said: asGiven(alike) }]; // prettier-ignore
  });
  // “three casks of 190 at 61.4”: litres, by where they stand.
  for (const [i, each] of quantities.entries()) {
    const isOf = each.unit === undefined && /\b(?:casks?|barrels?|hogsheads?|butts?)\s+of\s+(?:about\s+)?$/i.test(text.slice(0, each.start)); // prettier-ignore
    if (!isOf || given.length > 0 || !(each.number >= 20 && each.number <= MOST_LITRES)) continue;
    const before = quantities[i - 1];
    const count = before?.unit === undefined && before !== undefined ? before.number : 1;
    given.push({ litres: count * each.number, said: `${count === 1 ? '' : `${asGiven(before!)} times `}${asGiven({ ...each, unit: 'L' })}` }); // prettier-ignore
  }
  // “in a 750”, “a 25 of 46 %”: bottles and bar measures that are called by their millilitres or centilitres.
  for (const each of quantities) {
    if (each.unit !== undefined || given.length > 1) continue;
    const isMeasure = /\b(?:an?|the)\s+$/i.test(text.slice(0, each.start)) && MEASURES.includes(each.number) && /^\s*(?:$|[?!.,]|of\b|at\b|bottle|measure)/i.test(text.slice(each.end));
    if (isMeasure) given.push({ litres: each.number / 1000, said: asGiven({ ...each, unit: 'mL' }) });
  } // prettier-ignore
  const named = given.length === 0 ? namedCask(asked) : undefined;
  const strengths = quantities.flatMap((each, i) => {
    if (each.unit !== undefined) return strengthsIn([each]);
    const isBehindLitres = isAt(i) && (quantities[i - 1]!.dimension === 'volume' || (measured !== undefined && isAlone(i - 1))) && each.number >= 1 && each.number <= 100; // prettier-ignore
    if (isBehindLitres) return [each.number];
    const isStrength = each.number >= 1 && each.number <= 100 && BEFORE.test(text.slice(0, each.start)) && !COUNTED.test(text.slice(each.end)); // prettier-ignore
    return isStrength ? [each.number] : [];
  });
  return { volumes: named ? [named] : given, strengths, named: liquidNamed(asked) };
}
