// What a talk shows of each quantity before any is taken for a figure: what it is said in, how large it is, and which words stand where about it.
import { stages } from '../core/figures/index.ts';
import { surroundings } from './nearby.ts';
import type { Quantity } from './quantities.ts';
import { hats, knotsOf } from './sizes.ts';
import { topics } from './stages.ts';
import { unitsBefore, type UnitsBefore } from './units-before.ts';
import { inUnit } from './units.ts';
import { mentionsIn } from './words.ts';

/** Named signs, each with how strongly it shows. */
export type Evidence = ReadonlyMap<string, number>;

const WORDS_BEFORE = 4;
const WORDS_AFTER = 3;
const REACH = 70; // letters within which such words are looked for

/** Words of a sentence that say whose a figure is, and whether it is so, was so or would be. */
const turns = new Set(
  "i i'm i've he he's she she's they they're they'd their theirs we we're we've we'd our ours you you'd your it's there there's is are was were had has have did used could would should might must may if not don't never no isn't wasn't doesn't only then now when once old before other others another some most every each same more less says said law customs allow permitted own here".split(
    ' ',
  ),
);
/** What takes a figure back at once. */
const takenBack =
  /^[^a-z]{0,4}\s*(?:no\b|wait|sorry|I (?:lie|mean|tell)|well\b|it doesn['’]t|is it|what am)/i;

/** The sentence about a place, as far as it reaches. */
function sentenceAbout(text: string, start: number, end: number): string {
  const before = text
    .slice(Math.max(0, start - 110), start)
    .split(/[.?!;\n](?=\s)/)
    .at(-1)!;
  const after = text.slice(end, end + 60).split(/[.?!;\n](?=\s|$)/)[0]!;
  return `${before} ${after}`;
}

const wordsOf = (text: string) =>
  text.toLowerCase().replaceAll('’', "'").replaceAll('\n', '¶').match(/[a-zà-ÿ]+(?:'[a-z]+)?|[.?!:;(—¶]/g) ?? []; // prettier-ignore

/** The words that stand right about a place. */
function about(text: string, start: number, end: number, show: (name: string, value?: number) => void): void {
  const before = wordsOf(text.slice(Math.max(0, start - REACH), start)).slice(-WORDS_BEFORE);
  const after = wordsOf(text.slice(end, end + REACH)).slice(0, WORDS_AFTER);
  before.reverse().forEach((word, i) => show(`<${word}`, i === 0 ? 1 : 0.6));
  after.forEach((word, i) => show(`>${word}`, i === 0 ? 1 : 0.6));
  if (before.length > 1) show(`<${before[1]} ${before[0]}`);
  if (after.length > 1) show(`>${after[0]} ${after[1]}`);
}

/** How large a quantity is, by what it may be a measure of. */
function sizesOf({ dimension, unit, value, range, degrees }: Quantity, before: UnitsBefore, show: (name: string, value: number) => void): void {
  const said = value ?? (range![0] + range![1]) / 2;
  const put = (what: keyof typeof knotsOf, at: number) =>
    hats(knotsOf[what], at, (knot, part) => show(`${what} ${knot}`, part));
  const bare = dimension === 'bare';
  if (dimension === 'percent' || dimension === 'strength') put('strength', inUnit(said, unit, '% vol'));
  if (dimension === 'share') put('strength', 100 * said);
  if (bare && said > 0 && said <= 200) put('bareStrength', inUnit(said, before.strength, '% vol'));
  if (bare && said > 0 && said <= 215) put('bareHeat', inUnit(said, before.temperature, '°C'));
  if (dimension === 'temperature' && !degrees) put('heat', inUnit(said, unit, '°C'));
  if (degrees) put('degrees', inUnit(said, unit, '°C'));
  if (dimension === 'gravity') put('gravity', inUnit(said, unit, 'gravity'));
  if (bare) put('bareGravity', inUnit(said, '', 'gravity'));
  if (dimension === 'time') put('hours', Math.log10(Math.max(1e-3, inUnit(said, unit, 'h'))));
  if (dimension === 'mass') put('mass', Math.log10(Math.max(1e-3, inUnit(said, unit, 'kg'))));
  if (dimension === 'volume' || dimension === 'alcohol') put('volume', Math.log10(Math.max(1e-3, inUnit(said, unit, 'L'))));
  if (bare || ['casks', 'bottles', 'mashes', 'times', 'stills', 'washbacks'].includes(dimension)) put('count', Math.log10(Math.max(1e-3, said)));
} // prettier-ignore

/** The evidence of every quantity of a text, in order. */
export function evidenceIn(text: string, quantities: readonly Quantity[]): Evidence[] {
  const mentions = mentionsIn(text);
  const topicAt = topics(mentions);
  const nearTo = surroundings(text, mentions, quantities);
  const before = unitsBefore(quantities);
  return quantities.map((quantity, i) => {
    const { start, end, dimension, unit, fall, approximate, range, degrees } = quantity;
    const seen = new Map<string, number>();
    const show = (name: string, value = 1) => {
      if (value > (seen.get(name) ?? 0)) seen.set(name, value);
    };
    show('any');
    show(`is ${dimension}`);
    if (unit !== '') show(`in ${unit}`);
    if (degrees) show('degrees');
    if (fall) show(`fall ${fall}`);
    if (approximate) show('about');
    if (range) show('range');
    if (/^[01][.,]\d{3}$/.test(text.slice(start, end))) show('written as a gravity');
    if (dimension === 'bare') {
      show(`${before[i]!.last} before`);
      show(Number.isInteger(quantity.value) ? 'whole' : 'broken');
    }
    const [last, next] = [quantities[i - 1], quantities[i + 1]];
    if (last && start - last.end < 30) show(`behind ${last.dimension}`);
    if (next && next.start - end < 30) show(`ahead of ${next.dimension}`);
    show(`place ${Math.min(3, Math.floor((4 * start) / (text.length + 1)))}`);
    const topic = topicAt(start);
    for (const stage of stages) if (topic[stage] > 0.1) show(`topic ${stage}`, topic[stage]);
    for (const word of wordsOf(sentenceAbout(text, start, end))) if (turns.has(word)) show(`~${word}`);
    if (takenBack.test(text.slice(end, end + 24))) show('taken back');
    if (/\?/.test(text.slice(end, end + 3))) show('asked');
    nearTo(i, show);
    about(text, start, end, show);
    sizesOf(quantity, before[i]!, show);
    return seen;
  });
}
