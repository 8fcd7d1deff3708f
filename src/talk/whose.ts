// Whose figures are spoken of at a place: the person last spoken of, the time that the verbs stand in, and names of places or people.
import { signNamed, type Show } from './signs.ts';

const persons = /\b(we|us|our|ours|i|my|me|mine|they|them|their|theirs|he|his|him|she|her|you|your|yours|one's|somebody|people|others)\b/gi; // prettier-ignore
const times = /\b(is|are|am|does|do|takes?|has|have|goes|was|were|did|had|used|would|could|should|can|might|will|wants?|allowed|must)\b/gi; // prettier-ignore
const named = /(?<=[a-zà-ÿ,;:–—]\s)(?!I\b|I['’])[A-Z][a-zà-ÿ]{2,}/g;
const sentenceEnd = /[.?!]\s|\n/g;
const FAR = 400; // letters beyond which a person is forgotten

interface Said {
  readonly at: number;
  readonly word: string;
}
const all = (text: string, pattern: RegExp): readonly Said[] =>
  [...text.matchAll(pattern)].map(({ 0: word, index }) => ({ at: index, word: word.toLowerCase() }));

/** A function that shows whose a quantity at a place is, for places in rising order. */
export function whose(text: string): (start: number, show: Show) => void {
  const [people, verbs, names, ends] = [all(text, persons), all(text, times), all(text, named), all(text, sentenceEnd)];
  const next = [0, 0, 0, 0];
  const before = (list: readonly Said[], which: number, at: number) => {
    while (next[which]! < list.length && list[next[which]!]!.at < at) next[which]!++;
    return next[which]!;
  };
  return (start, show) => {
    const [p, v, n, e] = [before(people, 0, start), before(verbs, 1, start), before(names, 2, start), before(ends, 3, start)];
    const from = ends[e - 1]?.at ?? 0;
    const put = (name: string, strength = 1) => show(signNamed(name), strength);
    const [last, last2] = [people[p - 1], people[p - 2]];
    if (last && start - last.at < FAR) put(`whose ${last.word}${last.at < from ? ' before' : ''}`);
    if (last && last2 && start - last2.at < FAR) put(`whose ${last2.word} ${last.word}`, 0.7);
    const verb = verbs[v - 1];
    if (verb && verb.at >= from) put(`time ${verb.word}`);
    if (verb && verb.at >= from && last && last.at >= from) put(`time ${last.word} ${verb.word}`);
    const name = names[n - 1];
    if (name && name.at >= from) put('named here');
    else if (name && start - name.at < 200) put('named before');
  };
} // prettier-ignore
