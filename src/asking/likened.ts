// “How many Olympic pools is that?”, “how many football pitches of barley?”: an amount likened to a thing whose size everybody knows.
// The sizes are told with the answer, as none of them is exact. Tested in tests/asking/reckoned.test.ts.
import { formatNumber, formatWorking } from '../core/format.ts';
import { figureText, figureValue } from '../house/prose.ts';
import { flowIn, flowsNamed, type AskedFlow } from './flows.ts';
import { vessels } from './named-figures.ts';
import { asGiven, inCore, type Numbered, type Reckoner } from './reckoned.ts';
import { amountOf, flowText, oneIn, valueText } from './scale.ts';

interface KnownThing {
  readonly says: RegExp;
  readonly one: string;
  readonly many: string;
  readonly kind: 'land' | 'volume' | 'mass';
  /** ha, L or kg. */
  readonly size: number;
  readonly said: string;
}
const HECTARE = 10_000; // m²

/** All from memory: nobody sets the size of an elephant. */
const things: readonly KnownThing[] = [
  { says: /\b(?:football|soccer|rugby)\s*(?:pitch(?:es)?|fields?)\b|\bpitch(?:es)?\b(?! (?:the|in|at|yeast|rate|temp))/i, one: 'football pitch', many: 'football pitches', kind: 'land', size: 0.714, said: '105 × 68\u00a0m' },
  { says: /\btennis courts?\b/i, one: 'tennis court', many: 'tennis courts', kind: 'land', size: 260.8 / HECTARE, said: '23.8 × 11\u00a0m' },
  { says: /\bolympic(?:[- ]siz\w+)? (?:swimming )?pools?\b|\bolympic\b.{0,12}\bpools?\b/i, one: 'Olympic pool', many: 'Olympic pools', kind: 'volume', size: 2_500_000, said: '2,500\u00a0m³' },
  { says: /\bswimming (?:pools?|baths?)\b|\bpoolfuls?\b/i, one: 'swimming pool', many: 'swimming pools', kind: 'volume', size: 375_000, said: '25 × 10 × 1.5\u00a0m' },
  { says: /\bbath(?:tub|ful|s)?s?\b(?! (?:house|room))/i, one: 'bath', many: 'baths', kind: 'volume', size: 150, said: '150\u00a0L' },
  { says: /\b(?:milk|road)? ?tankers?(?:[- ]?(?:loads?|fuls?))?\b/i, one: 'road tanker', many: 'road tankers', kind: 'volume', size: 28_000, said: '28,000\u00a0L' },
  { says: /\bbuckets?(?:fuls?)?\b/i, one: 'bucket', many: 'buckets', kind: 'volume', size: 10, said: '10\u00a0L' },
  { says: /\bkettles?(?:fuls?)?\b(?! (?:is|are) )/i, one: 'kettle', many: 'kettles', kind: 'volume', size: 1.7, said: '1.7\u00a0L' },
  { says: /\b(?:cups?|mugs?) of tea\b|\bteacups?\b|\bmugs?(?:fuls?)?\b/i, one: 'mug', many: 'mugs', kind: 'volume', size: 0.3, said: '0.3\u00a0L' },
  { says: /\belephants?\b/i, one: 'elephant', many: 'elephants', kind: 'mass', size: 5000, said: '5\u00a0t' },
  { says: /\b(?:lorr(?:y|ies)|trucks?|artics?|wagons?)(?:[- ]?(?:loads?|fuls?))?\b/i, one: 'lorry load', many: 'lorry loads', kind: 'mass', size: 28_000, said: '28\u00a0t' },
  { says: /\bcars?\b/i, one: 'car', many: 'cars', kind: 'mass', size: 1500, said: '1.5\u00a0t' },
  { says: /\b(?:double[- ]?decker|bus(?:es)?)\b/i, one: 'bus', many: 'buses', kind: 'mass', size: 12_000, said: '12\u00a0t' },
  { says: /\bbags? of sugar\b/i, one: 'bag of sugar', many: 'bags of sugar', kind: 'mass', size: 1, said: '1\u00a0kg' },
  { says: /\bsacks?\b/i, one: 'sack', many: 'sacks', kind: 'mass', size: 25, said: '25\u00a0kg' },
]; // prettier-ignore

const ASKS = /\bhow (?:many|much of an?)\b|\bnumber of\b/i;
const MAKES = /\bmake|\bmade|produc|turn out|\bfill|\bspirit|whisk|output/i;
const USES =
  /\b(?:make|use|need|(?:go|get|going|getting) through|drink|produce|turn out|fill|sell|take|burn|buy|have)\b/i;
const SIZED = /^\s*(?:[a-z]+ )?(?:sacks?|bags?|tankers?|lorr(?:y|ies)|trucks?|baths?|bathtubs?|buckets?|pools?|mugs?|tubs?)\b/i; // prettier-ignore

/** So much of a thing, as told. */
interface Known {
  readonly amount: number;
  readonly said: string;
  readonly sum?: string;
  readonly flows: readonly AskedFlow[];
  readonly path?: string;
}

/** Any flow that can be measured as a thing is: barley as the land it grew on, what is made as new spirit. */
function flowFor({ text }: Numbered, { kind, says }: KnownThing): AskedFlow | undefined {
  const rest = text.replace(says, ' ');
  const from = ASKS.exec(rest)?.index ?? 0;
  const named = flowIn(rest, from)?.flow ?? flowIn(rest)?.flow;
  if (kind === 'land') {
    const grows = named === undefined || /land|barley|malt/.test(named.called);
    return grows ? flowsNamed.find(({ kind: own }) => own === 'land') : undefined;
  }
  const fits = (flow: AskedFlow) => (kind === 'mass' ? flow.kind === 'mass' : flow.kind === 'volume20' || flow.kind === 'volume'); // prettier-ignore
  if (named && fits(named)) return named.path === 'barley.mass' && !/barley/i.test(rest) ? flowsNamed.find(({ path }) => path === 'malt.mass') : named; // prettier-ignore
  if (named?.path === 'heart.alcohol' || (named === undefined && MAKES.test(rest)))
    return kind === 'volume' ? flowsNamed.find(({ path }) => path === 'heart.volume') : undefined;
  if (named?.called === 'mashes' && kind === 'mass')
    return flowsNamed.find(({ path }) => path === 'malt.mass');
  return undefined;
}

function knownOf(asked: Numbered, thing: KnownThing): Known | undefined {
  const { text, quantities, line } = asked;
  const dimension = { land: 'area', volume: 'volume', mass: 'mass' }[thing.kind];
  const rest = text.replace(thing.says, (said) => '\u00a0'.repeat(said.length));
  const given = quantities.find((each) => each.dimension === dimension);
  if (given) {
    if (SIZED.test(text.slice(given.end)) || quantities.length > 1) return undefined;
    const core = inCore(given, thing.kind === 'land' ? 'area' : thing.kind === 'volume' ? 'volume20' : 'mass');
    return core === undefined ? undefined : { amount: thing.kind === 'land' ? core / HECTARE : core, said: asGiven(given), flows: [] };
  }
  const flow = flowFor(asked, thing);
  const vessel = thing.kind === 'volume' ? vessels.find(([says]) => says.test(rest)) : undefined;
  const counted = quantities[0];
  const source = counted
    ? amountOf({ ...asked, text: rest }, counted, rest.length)
    : (oneIn(rest) ?? oneIn(USES.test(rest) ? 'in a year' : 'in a mash'));
  if (quantities.length > 1 || !source) return undefined;
  if (vessel && !counted && !/\b(?:year|month|week|day|hour)s?\b|\bper\b/i.test(rest)) return { amount: figureValue(line, vessel[1]), said: `${figureText(line, vessel[1])}, ${vessel[2]}`, flows: [], path: vessel[1] };
  if (!flow || source.flow === flow) return undefined;
  const amount = (flow.perMash(line) * source.amount) / source.flow.perMash(line);
  return { amount, said: `${valueText(amount, flow)} ${flow.called} for ${source.said}`, sum: `${flowText(flow, asked)} in one mash`, flows: [flow, source.flow] };
} // prettier-ignore

/** An amount in things of a known size. */
export const likened: Reckoner = (asked) => {
  const { text } = asked;
  const ask = ASKS.exec(text);
  const thing = ask && things.find(({ says }) => says.test(text.slice(ask.index)));
  if (!thing) return undefined;
  const known = knownOf(asked, thing);
  if (!known || !(known.amount > 0)) return undefined;
  const count = known.amount / thing.size;
  const shown = formatWorking(Number(count.toPrecision(2)), 7);
  const rests = known.flows.find((flow) => flow.rests)?.rests;
  return {
    says: `About ${count < 1000 ? shown : formatNumber(Number(count.toPrecision(2)), 0)} ${shown === '1' ? thing.one : thing.many} of ${thing.said}: ${known.said}.`,
    ...(known.sum && { sum: known.sum }),
    at: 'maturing/check/#figures-to-know',
    place: 'Maturing: figures to know',
    rests: rests ?? 'memory',
    paths: [...(known.path ? [known.path] : []), ...known.flows.flatMap(({ path }) => path ?? [])],
  };
}; // prettier-ignore
