// The words about each quantity, by where they stand: right beside it, in its sentence, in those before and behind; and its neighbours.
import type { SpokenQuantity } from './quantities.ts';
import { numberOf, signOf, type Show } from './signs.ts';

/** A talk in pieces: words without their endings, marks, and each quantity as one piece. */
interface Pieces {
  /** What each is, as a number. */
  readonly what: Int32Array;
  readonly kind: Uint8Array;
  /** Where each quantity stands among them. */
  readonly place: Int32Array;
}
const [WORD, LITTLE, MARK, PAUSE, END, QUANTITY] = [0, 1, 2, 3, 4, 5];

const little = new Set('the a an of and to in it is that so as on at for by with but or be this'.split(' '));
const ends = new Set(['.', '?', '!', ';', '\n']);
const pauses = new Set([',', '(', ')']);
const piece = /[a-zà-ÿ]+(?:['’][a-z]+)?|\d[\d.,]*|[.?!:;,(—–\-\n)/@=%]/gi;
const ending = /(?:'s|ings?|ed|es|s|e|ly)$/;

const read = new Map<string, readonly [what: number, kind: number]>();
function pieceOf(said: string): readonly [what: number, kind: number] {
  const known = read.get(said);
  if (known) return known;
  const word = said.toLowerCase().replace('’', "'").replace('—', '-').replace('–', '-');
  const stem = word.length > 4 ? word.replace(ending, '') : /\d/.test(word) ? '0' : word;
  const kind = little.has(word) ? LITTLE : ends.has(word) ? END : pauses.has(word) ? PAUSE : /[a-zà-ÿ0]/.test(stem) ? WORD : MARK; // prettier-ignore
  const found = [numberOf(stem), kind!] as const;
  if (read.size < 20_000) read.set(said, found);
  return found;
}

function piecesOf(text: string, quantities: readonly SpokenQuantity[]): Pieces {
  const [what, kind]: [number[], number[]] = [[], []];
  const place = new Int32Array(quantities.length).fill(-1);
  let next = 0;
  const take = (until: number) => {
    for (; next < quantities.length && quantities[next]!.start < until; next++) {
      place[next] = what.length;
      what.push(numberOf(quantities[next]!.dimension));
      kind.push(QUANTITY!);
    }
  };
  for (const { 0: said, index } of text.matchAll(piece)) {
    take(index + said.length);
    if (next > 0 && index < quantities[next - 1]!.end) continue;
    const [of, as] = pieceOf(said);
    what.push(of);
    kind.push(as);
  }
  take(Infinity);
  return { what: Int32Array.from(what), kind: Uint8Array.from(kind), place };
}

const kindNamed = (name: string) => numberOf(`about ${name}`);
const before = [1, 2, 3, 4].map((i) => kindNamed(`before ${i}`));
const behind = [1, 2, 3].map((i) => kindNamed(`behind ${i}`));
const [two, three, twoBehind, threeBehind, both] = ['two', 'three', 'two behind', 'three behind', 'both'].map(kindNamed) as [number, number, number, number, number]; // prettier-ignore
const inSentence = {
  back: kindNamed('back'),
  on: kindNamed('on'),
  own: kindNamed('own'),
  ownOn: kindNamed('own on'),
};
const inOthers = [kindNamed('sentence before'), kindNamed('two before'), kindNamed('sentence behind')];
const FAR = 45; // words before a quantity that are looked at
const FAR_BEHIND = 25;
const FADES = 15; // words over which one fades to a third
const FADES_BEHIND = 10;
const NOTHING = 7; // stands where no piece is

/** The words of its own sentence and of those about it, each by how near it is. */
function sentences({ what, kind }: Pieces, from: number, step: 1 | -1, show: Show): void {
  const back = step < 0;
  const [most, fades] = back ? [FAR, FADES] : [FAR_BEHIND, FADES_BEHIND];
  let [words, crossed, isOwn] = [0, 0, true];
  for (let k = from + step; k >= 0 && k < what.length && words < most; k += step) {
    const as = kind[k]!;
    if (as === END && ++crossed > (back ? 2 : 1)) return;
    if (as === QUANTITY) isOwn = false;
    if (as === PAUSE || as === MARK || as === END) continue;
    words++;
    if (as !== WORD) continue;
    const near = Math.exp(-words / fades);
    if (crossed === 0) {
      show(signOf(back ? inSentence.back : inSentence.on, what[k]!), near);
      if (isOwn) show(signOf(back ? inSentence.own : inSentence.ownOn, what[k]!), 0.5 + 0.5 * near);
    } else if (crossed === 1) show(signOf(inOthers[back ? 0 : 2]!, what[k]!), 0.3 + (back ? 0.5 : 0.4) * near);
    else show(signOf(inOthers[1]!, what[k]!), 0.4);
  }
} // prettier-ignore

/** The pieces right beside it, each by its place, and some together. */
function beside({ what }: Pieces, at: number, show: Show): void {
  const of = (k: number) => what[at + k] ?? NOTHING;
  before.forEach((kind, i) => show(signOf(kind, of(-1 - i)), i < 2 ? 1 : 0.7));
  behind.forEach((kind, i) => show(signOf(kind, of(1 + i)), i < 1 ? 1 : 0.7));
  const last = signOf(of(-2), of(-1));
  const next = signOf(of(1), of(2));
  show(signOf(two, last), 1);
  show(signOf(three, signOf(last, of(-3))), 1);
  show(signOf(twoBehind, next), 1);
  show(signOf(threeBehind, signOf(next, of(3))), 1);
  show(signOf(both, signOf(of(-1), of(1))), 1);
}

const neighbour = [-2, -1, 1, 2].map((i) => [i, kindNamed(`neighbour ${i}`)] as const);
const unitOf = [-1, 1].map((i) => [i, kindNamed(`unit ${i}`)] as const);
const amid = kindNamed('amid');
const times = [-3, -2, -1, 1, 2, 3].map((i) => [i, kindNamed(`times ${Math.sign(i)}`)] as const);
const exact = kindNamed('exact');
const middle = ({ value, range }: SpokenQuantity) => value ?? (range![0] + range![1]) / 2;

/** What the quantities beside it are, and how many times as large. */
function neighbours(quantities: readonly SpokenQuantity[], index: number, show: Show): void {
  const own = quantities[index]!;
  const dimensionAt = (i: number) => numberOf(quantities[index + i]?.dimension ?? 'none');
  for (const [i, kind] of neighbour) show(signOf(kind, dimensionAt(i)), 1);
  for (const [i, kind] of unitOf) if (quantities[index + i]) show(signOf(kind, numberOf(quantities[index + i]!.unit)), 1);
  show(signOf(amid, signOf(signOf(dimensionAt(-1), dimensionAt(0)), dimensionAt(1))), 1);
  for (const [i, kind] of times) {
    const other = quantities[index + i];
    if (!other || other.dimension !== own.dimension || other.unit !== own.unit) continue;
    const steps = Math.round(1.5 * Math.log2(middle(own) / middle(other)));
    if (Number.isFinite(steps)) show(signOf(kind, Math.max(-6, Math.min(6, steps))), 1);
  }
  show(signOf(exact, numberOf(`${middle(own)} ${own.unit}`)), 1);
} // prettier-ignore

/** A function that shows the words about the quantity of an index. */
export function wordsAround(text: string, quantities: readonly SpokenQuantity[]): (index: number, show: Show) => void {
  const pieces = piecesOf(text, quantities);
  return (index, show) => {
    const at = pieces.place[index]!;
    beside(pieces, at, show);
    sentences(pieces, at, -1, show);
    sentences(pieces, at, 1, show);
    neighbours(quantities, index, show);
  };
} // prettier-ignore
