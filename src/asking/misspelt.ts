// A word misspelt, taken for its like in a list: by its groups of three letters, and by a letter left out, added, changed or swapped.

const ALIKE = 0.55; // from here a word is taken for the other
const SLIP = 0.3; // what one slip of the finger is worth on top
const LONGER = 2; // letters by which the two may differ
const SHORTEST = 4; // letters of a word that is mended

const trigrams = (word: string): ReadonlySet<string> => {
  const padded = `^${word}$`;
  return new Set([...padded].slice(2).map((_, i) => padded.slice(i, i + 3)));
};

/** How alike two words are by their groups of three letters, 0–1. */
function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let shared = 0;
  for (const gram of a) if (b.has(gram)) shared++;
  return (2 * shared) / (a.size + b.size);
}

/** True when a letter was left out, added, changed or swapped with its neighbour, once. */
function isSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  const [restA, restB] = [a.slice(i), b.slice(i)];
  return (
    restA.slice(1) === restB ||
    restA === restB.slice(1) ||
    restA.slice(1) === restB.slice(1) ||
    (restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2))
  );
}

/** Finds the word of a list that a word not in it is taken for; the first letter is never mistaken. */
export function wordMender(words: Iterable<string>): (word: string) => string | undefined {
  const byLetter = new Map<string, { readonly word: string; readonly grams: ReadonlySet<string> }[]>();
  for (const word of words) {
    if (word.length < SHORTEST || /[\d~]/.test(word)) continue;
    const list = byLetter.get(word[0]!) ?? [];
    byLetter.set(word[0]!, [...list, { word, grams: trigrams(word) }]);
  }
  return (word) => {
    if (word.length < SHORTEST || /[\d~]/.test(word)) return undefined;
    const grams = trigrams(word);
    let best: string | undefined;
    let most = ALIKE;
    for (const each of byLetter.get(word[0]!) ?? []) {
      if (Math.abs(each.word.length - word.length) > LONGER) continue;
      const alike = likeness(grams, each.grams) + (isSlip(word, each.word) ? SLIP : 0);
      if (alike > most) [best, most] = [each.word, alike];
    }
    return best;
  };
}
