// A figure of the house by any of its names, at any pace and in any unit: every one that the table has can be asked for.
// Tested in tests/asking/figures.test.ts.
import { format } from '../core/format.ts';
import { figureTable, headOf } from '../core/figures/index.ts';
import { mashesIn, paces } from '../core/line/ledger.ts';
import { figureText, figureValue, kindOfFigure, wholeCountOf } from '../house/prose.ts';
import { whereFrom } from '../house/where-from.ts';
import { workedSum } from '../house/hand-sum.ts';
import type { AskedList } from './entry.ts';
import { figuresNamed, stageWords, withoutPace, type NamedOfTable } from './figure-names.ts';
import { inOtherUnit, unitMeant } from './holes.ts';
import { unitsRead } from '../core/units.ts';
import { resultInWords, type Numbered, type Reckoned } from './reckoned.ts';
import { GAS_CARE, GAS_SAFE } from './scale.ts';
import { plainQuestion, wordReader } from './words.ts';

const NO_FIGURE =
  /\b(?:why|how come|what if|what happens|what would|if|where|who|when|should|(?:can|could) (?:i|you|we|they|it)|may|true|instead|difference|more|less|than|compare|cost|price|worth|not|never|wrong|bad|dangerous|safe)\b|\bmeans?$/i;
const AMOUNT =
  /\bhow (?:much|many|big|heavy|large)\b|\b(?:quantity|quantities|amount|volume|litres?|liters?|kilos?|kg|tonnes?|gallons?|pints?|weight|mass|number|total|output)\b|\b(?:a|per|each|every|one|in a|from a|this) (?:mash|batch|brew|week|year|day|month|bottle|cask|tonne|run)\b|\b(?:weekly|daily|yearly|annual|annually|monthly)\b/i;
const OF_LEDGER =
  /\b(?:in |from |of |for |to |into |over |by )?(?:a |an |per |each |every |one |single )+(?:mash|batch|brew|week|year)\b/gi;
const EACH =
  /\b(?:in |from |of |for |to |into |over |by )?(?:the |a |an |per |each |every |one |single |whole |full |this )+(?:mash|batch|brew|week|year|day|month|annum|bottle|cask|tonne|ton|twelvemonth)\b|\b(?:weekly|daily|yearly|annual|annually|monthly)\b/gi;
/** What is said of any figure. */
const GENERAL =
  'how amount quantity quantities volume number numbers total figure figures house place harrowmere usual usually normal normally average typical typically altogether roughly approximately exact exactly collect collected produce produces produced make made come comes reading level rate declared stated size big hold holds go goes give gives day visitor guest customer today value overall single quick question amounts distillery site know remind work works run litre litres liter liters gallon gallons pint pints kilo kilos kilogram kilograms kg gram grams tonne tonnes ton tons pound pounds lb lbs stone stones us uk american imperial british proof fahrenheit celsius centigrade degree degrees hectolitre hectolitres hl cubic metre metres acres hectares kwh mj measure measured hours hour percent percentage abv year week month';
const NAMED_BY_KIND = {
  mass: 'weight heavy weigh weighs mass', strength: 'strength', gravity: 'gravity', temperature: 'temperature hot warm cold heat', hours: 'time long hour hours', years: 'years old age long', percent: 'share percent percentage proportion part fraction', alcohol: 'alcohol lpa pure' } as const; // prettier-ignore
/** Words that say little elsewhere, and tell one figure from another here. */
const TELLING = /^~(?:first|second|last|starts?|started|begins?|ends?|ended|left|off|into|out|share|size)$/;
const DAYS = 7;
const MONTHS = 12;
const FITTING = 0.5; // words for which it counts that an amount is asked, and the figure is one
const AMOUNTS = /^(?:volume|volume20|mass|alcohol|count|energy)$/;

type Spans = readonly (readonly [says: RegExp, called: string, of: (asked: Numbered) => number])[];
/** Spans of which an amount is told, as so many mashes. */
const spans: Spans = [
  [/\b(?:bottle)\b/i, 'a bottle', ({ line }) => 1 / line.bottling.bottles],
  [/\b(?:casks?)\b/i, 'a cask', ({ line }) => 1 / line.casks.perMash],
  [/\b(?:day|daily)\b/i, 'a day of seven', ({ house }) => house.mashesPerWeek / DAYS],
  [/\b(?:month|monthly)\b/i, 'a month of twelve', ({ line }) => line.pace.mashesPerYear / MONTHS],
  [/\btwelvemonth\b/i, 'a year', ({ line }) => line.pace.mashesPerYear],
];

interface Reading extends NamedOfTable {
  readonly words: readonly string[];
}

/** A figure as it is told, and its number alone. */
export interface NamedTold extends Reckoned {
  readonly shown: string;
}

/** Makes one who tells a figure by its name; nothing where a question asks for none, or for more than its figure. */
export function figureTeller({ words, passages = [] }: AskedList): (asked: Numbered) => NamedTold | undefined {
  const { read } = wordReader(words);
  const heeded = (text: string) => read(text).filter((word) => !word.startsWith('~') || TELLING.test(word)).map((word) => (/^~(?:first|second|last|left|off)/.test(word) ? word : word.replace(/^~(?:starts?|started|begins?)$/, 'start').replace(/^~(?:ends?|ended)$/, 'end').replace(/^~/, '')));
  const general = new Set(heeded(GENERAL));
  const places = new Map<string, { readonly at: string; readonly place: string }>();
  for (const { text, at, place } of passages)
    for (const [, path] of text.matchAll(/\{([\w.]+);/g)) if (!places.has(path!)) places.set(path!, { at, place });
  const readings = figuresNamed.flatMap((figure) => figure.names.map((name): Reading => ({ ...figure, words: heeded(name) })).filter((each) => each.words.length > 0));
  const byKind = new Map(Object.entries(NAMED_BY_KIND).map(([kind, said]) => [kind, new Set(heeded(said))]));

  /** The figure whose name the question says, and says no more: the longest name. */
  function figureIn({ text, telling: { pace }, wanted }: Numbered): Reading | undefined {
    const isAmountAsked = AMOUNT.test(text);
    let best: { reading: Reading; words: number } | undefined;
    for (const said of [text.replace(EACH, ' '), text.replace(OF_LEDGER, ' '), text].map(heeded))
      for (const reading of readings) {
        if (reading.pace && reading.pace !== pace) continue;
        const { kind } = figureTable[reading.id];
        if (wanted !== undefined && unitMeant(kind, wanted.unit) === undefined) continue;
        const own = byKind.get(kind);
        const isOwn = (word: string) => kind === 'alcohol' && own!.has(word);
        const name = reading.words;
        const holds = (word: string) => said.includes(word) || (isOwn(word) && said.some(isOwn));
        if (!name.every(holds)) continue;
        const stage = heeded(stageWords(reading.id));
        const left = said.filter((word) => !name.includes(word) && !general.has(word) && !own?.has(word) && !stage.includes(word) && !/^\d/.test(word));
        // A strength that is asked of a volume is another figure.
        const strange = said.some((word) => !name.includes(word) && [...byKind].some(([other, says]) => other !== kind && /strength|gravity|temperature|alcohol/.test(other) && says.has(word) && !own?.has(word)));
        if (left.length > 0 || strange) continue;
        const fits = name.length + (isAmountAsked === AMOUNTS.test(kind) ? FITTING : 0) + (reading.pace ? FITTING / 2 : 0);
        if (!best || fits > best.words) best = { reading, words: fits };
      }
    return best?.reading;
  }

  /** That figure at the pace and in the unit that are asked for. */
  function tell(asked: Numbered, { id, path }: Reading): NamedTold {
    const { line, text, telling } = asked;
    const { kind, amount } = kindOfFigure(path)!;
    const span = amount && !telling.pace ? spans.find(([says]) => (text.match(EACH) ?? []).some((each) => says.test(each))) : undefined;
    const pace = (amount && telling.pace) || 'mash';
    const mashes = span ? span[2](asked) : mashesIn(pace, line);
    const value = figureValue(line, path) * (amount ? mashes : 1);
    const own = span ? (kind === 'count' ? format(value, kind, 1) : resultInWords(value, kind)) : figureText(line, path, pace);
    const unit = unitMeant(kind, asked.wanted?.unit) ?? telling.likes?.(kind);
    const shown = unit && unit !== unitsRead(kind)[0] ? inOtherUnit(span ? value : wholeCountOf(path, value), unit) : own;
    const isMash = pace === 'mash' && !span;
    const worked = id in whereFrom && isMash ? workedSum(whereFrom[id as keyof typeof whereFrom]!, line)?.says : undefined;
    const sum = worked ?? (amount && !isMash ? `${figureText(line, path)} a mash` : undefined);
    const isGas = id === 'carbonDioxide';
    return {
      says: `${withoutPace(headOf(id))}: ${shown}${amount ? ` ${span ? span[1] : paces[pace]}` : ''}.${isGas ? GAS_CARE : ''}`,
      ...(sum && { sum }),
      ...(isGas ? GAS_SAFE : (places.get(path) ?? { at: 'house/', place: 'The figures of the house' })),
      paths: [path],
      shown,
    };
  }

  return (asked) => {
    const { text, quantities } = asked;
    if (quantities.some(({ number }) => number !== 1) || NO_FIGURE.test(plainQuestion(text))) return undefined;
    const reading = figureIn(asked);
    if (!reading) return undefined;
    const isAmount = AMOUNTS.test(figureTable[reading.id].kind);
    if (isAmount && !AMOUNT.test(text) && asked.wanted === undefined) return undefined;
    return tell(asked, reading);
  };
} // prettier-ignore
