// Which figures are told one after another, learnt from labelled talks: how much more often a figure stands behind another than by chance.
import { isFigure, labels, type Label } from './candidates.ts';

/** What a label counts as here: none of the house’s figures is one, whatever the reason. */
const kinds: readonly string[] = [...labels.filter(isFigure), '-'];
const place = new Map(kinds.map((kind, i) => [kind, i]));
const placeOf = (label: Label) => place.get(isFigure(label) ? label : '-')!;
const size = kinds.length;

/** For each pair, first and then behind it, the logarithm of how much more often; none where it is unknown. */
export type ToldTogether = Int8Array;
export const STEP = 0.25; // of a logarithm: what is kept is rounded to it

/** How much more often one label stands behind another than by chance, in logarithms. */
export const gainOf = (told: ToldTogether | undefined, first: Label, behind: Label): number =>
  told === undefined ? 0 : STEP * told[placeOf(first) * size + placeOf(behind)]!;

const SMOOTH = 6; // pairs that are taken to be as chance would have them
const MOST = 12; // steps

/** Counts the pairs of talks, each its labels in order. */
function countTogether(talks: readonly (readonly Label[])[]): ToldTogether {
  const pairs = new Float64Array(size * size);
  const [first, behind] = [new Float64Array(size), new Float64Array(size)];
  let all = 0;
  for (const talk of talks)
    for (let i = 1; i < talk.length; i++) {
      const [a, b] = [placeOf(talk[i - 1]!), placeOf(talk[i]!)];
      pairs[a * size + b]!++;
      first[a]!++;
      behind[b]!++;
      all++;
    }
  const found = new Int8Array(size * size);
  for (let a = 0; a < size; a++)
    for (let b = 0; b < size; b++) {
      const chance = (behind[b]! + 0.5) / (all + 0.5 * size);
      const part = (pairs[a * size + b]! + SMOOTH * chance) / (first[a]! + SMOOTH);
      found[a * size + b] = Math.max(-MOST, Math.min(MOST, Math.round(Math.log(part / chance) / STEP)));
    }
  return found;
}

/** Both: of all quantities, and of the figures alone. */
export interface Together {
  readonly all: ToldTogether;
  readonly figures: ToldTogether;
}
export const countBoth = (talks: readonly (readonly Label[])[]): Together => ({
  all: countTogether(talks),
  figures: countTogether(talks.map((talk) => talk.filter(isFigure))),
});

const LETTERS = 'abcdefghijklABCDEFGHIJKL'; // one step more, two …; then one step less, two …

/** As text: a letter for each pair, with the number of pairs of no gain before it. */
function asText(told: ToldTogether): string {
  let text = '';
  let apart = 0;
  for (const steps of told) {
    if (steps === 0) apart++;
    else {
      text += `${apart === 0 ? '' : apart}${LETTERS[steps > 0 ? steps - 1 : MOST - 1 - steps]!}`;
      apart = 0;
    }
  }
  return text;
}

/** The pairs of a text. */
function ofText(text: string): ToldTogether {
  const told = new Int8Array(size * size);
  let at = 0;
  for (const [, apart, letter] of text.matchAll(/(\d*)([a-zA-Z])/g)) {
    at += apart === '' ? 0 : Number(apart);
    const steps = LETTERS.indexOf(letter!);
    told[at++] = steps < MOST ? steps + 1 : MOST - 1 - steps;
  }
  return told;
}

export const togetherAsText = ({ all, figures }: Together): string => `${asText(all)} ${asText(figures)}`;
export function togetherOf(text: string): Together {
  const [all, figures] = text.split(' ') as [string, string];
  return { all: ofText(all), figures: ofText(figures) };
}
