// How near each trade word is to each quantity, 0 to 1: in letters, commas, sentences, and other quantities between.
import type { SpokenQuantity } from './quantities.ts';
import { signNamed, type Show } from './signs.ts';
import { conceptNames, stageOf, type ConceptName, type Mention } from './words.ts';

const REACH = 260; // characters beyond which a word is not near
const linkBefore =
  /^[\s,]*(?:(?:is|are|was|were|be|that['’]?s|that is|which is|['’]?s|at|of|with|has|have|about|around|roughly|some|nearly|almost|just|over|under|near|an?|the|by|amounts?|amounting|lies|comes|it['’]?s|we have|there are|they['’]?re|and|sits|stands|as|only|up|to|like|between|from|goes|go|in|on|strength|content|temperature|volume|reading|@|[:=–—-])[\s,:]*){0,5}$/i;
const linkAfter = /^[\s-]*(?:(?:of|our|the|this|is|are|it|for|as|pure|good|new|lovely)\s+){0,3}$/i;

/** Words that belong to one quantity only, the nearest: rates, and what says that a figure is not the house's own. */
const ofOne = new Set<ConceptName>(['perWeek', 'perYear', 'perMash', 'perCask', 'perTonne', 'perHour', 'law', 'elsewhere', 'delivery', 'capacity', 'weighs', 'thisOne', 'limit', 'built', 'average', 'gas']); // prettier-ignore

/** Places where a sentence ends. A line's end counts before a blank line or a list point, and after a short line unless the next goes on in small letters. */
function sentenceEnds(text: string): number[] {
  const ends: number[] = [];
  let lineStart = 0;
  for (const { 0: found, index } of text.matchAll(
    /[!;]|(?<![\s.][a-z])\.(?=\s+["“‘(]?[A-Z0-9]|\s*$)|\r?\n/g,
  )) {
    if (found.endsWith('\n')) {
      const blank = /^(?:[^\S\n]*\n|[^\S\n]*[-*•])/.test(
        text.slice(index + found.length, index + found.length + 40),
      );
      const goesOn = /^[^\S\n]*[a-zà-ÿ\d]/.test(text.slice(index + found.length, index + found.length + 8));
      const asks = /\?\s*$/.test(text.slice(Math.max(0, index - 3), index));
      if (blank || (index - lineStart < 60 && !goesOn && !asks)) ends.push(index);
      lineStart = index + found.length;
    } else ends.push(index);
  }
  return ends;
}

/** How many of sorted places lie below a place. */
function below(places: readonly number[], at: number): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (places[middle]! < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

const roles = ['', '=', '<', '>', '^', '!'] as const;
const signs = conceptNames.map((concept) => roles.map((role) => signNamed(`${concept}${role}`)));
const numbers = new Map(conceptNames.map((concept, i) => [concept, i]));

/**
 * A function that shows, for the quantity of an index, the trade words near it: each by its nearness alone, and once more by
 * where it stands: linked to it (=), before it (<) or behind it (>) in its sentence, in a sentence before (^), nearest to it of
 * all quantities (!), and the last that names a thing (@).
 */
export function surroundings(
  text: string,
  mentions: readonly Mention[],
  quantities: readonly SpokenQuantity[],
): (index: number, show: Show) => void {
  const sentences = sentenceEnds(text);
  const commas = [...text.matchAll(/[,:()]|\s[–—-]\s/g)].map(({ index }) => index);
  const questions = [...text.matchAll(/\?/g)].map(({ index }) => index);
  const starts = quantities.map(({ start }) => start);
  const mentionStarts = mentions.map(({ start }) => start);
  const crossings = (from: number, to: number) => below(sentences, to) - below(sentences, from);

  /** The quantity that a word stands nearest to, a sentence's end between them counting as 60 letters. */
  function owner({ start, end }: Mention): number {
    const after = below(starts, start);
    const apart = (i: number) => {
      const quantity = quantities[i];
      if (!quantity) return Infinity;
      const [from, to] = quantity.start >= end ? [end, quantity.start] : [quantity.end, start];
      return to - from + 60 * crossings(Math.min(from, to), to);
    };
    return apart(after - 1) <= apart(after) ? after - 1 : after;
  }
  const owners = mentions.map(owner);

  function nearness(mention: Mention, index: number): number {
    const { start, end, dimension } = quantities[index]!;
    const later = mention.start >= end;
    if (!later && mention.end > start) return 1;
    const [from, to] = later ? [end, mention.start] : [mention.end, start];
    const letters = to - from;
    const crossed = crossings(from, to);
    const asked = below(questions, to) - below(questions, from);
    if (later && crossed + asked > 0) return 0;
    if (crossed + asked === 0 && letters <= 40 && (later ? linkAfter : linkBefore).test(text.slice(from, to))) return 1;
    let between = 1;
    for (let i = index + (later ? 1 : -1); later ? i < quantities.length && starts[i]! < to : i >= 0 && quantities[i]!.start >= from; i += later ? 1 : -1)
      between *= quantities[i]!.dimension === dimension ? 0.58 : 0.8;
    const clauses = below(commas, to) - below(commas, from);
    return 0.9 * Math.exp(-letters / 70) * 0.8 ** clauses * between * (letters < 8 ? 0.75 : 0.5) ** crossed * 0.85 ** asked;
  } // prettier-ignore

  const most = new Float64Array(conceptNames.length * roles.length);
  return (index, show) => {
    const quantity = quantities[index]!;
    let [thing, named] = [undefined as ConceptName | undefined, undefined as ConceptName | undefined];
    const seen: number[] = [];
    const see = (concept: number, role: (typeof roles)[number], near: number) => {
      const at = concept * roles.length + roles.indexOf(role);
      if (most[at] === 0) seen.push(at);
      if (near > most[at]!) most[at] = near;
    };
    for (let i = below(mentionStarts, quantity.start - REACH); i < mentions.length; i++) {
      const mention = mentions[i]!;
      const { concept } = mention;
      if (mention.start > quantity.end + REACH) break;
      if (mention.end <= quantity.start && stageOf(concept)) thing = concept;
      if (mention.start >= quantity.end && stageOf(concept)) named ??= concept;
      if (ofOne.has(concept) && owners[i] !== index) continue;
      const near = nearness(mention, index);
      if (near <= 0.02) continue;
      const number = numbers.get(concept)!;
      see(number, '', near);
      const crossed = mention.end <= quantity.start && crossings(mention.end, quantity.start) > 0;
      see(number, near === 1 ? '=' : crossed ? '^' : mention.start < quantity.start ? '<' : '>', near);
      if (owners[i] === index) see(number, '!', 0.5 + near / 2);
    }
    for (const at of seen) {
      show(signs[Math.floor(at / roles.length)]![at % roles.length]!, most[at]!);
      most[at] = 0;
    }
    if (thing) show(signNamed(`${thing}@`), 1);
    if (named) show(signNamed(`@${named}`), 1);
  };
}
