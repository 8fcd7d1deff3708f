// “Which is stronger, the low wines or the feints?”, “do you use more water or more barley?”: two things of the house beside each other.
// Only what is measured alike is compared. Tested in tests/asking/reckoned.test.ts.
import { formatNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { figureText, figureValue } from '../house/prose.ts';
import { flowIn } from './flows.ts';
import type { Numbered, Reckoner } from './reckoned.ts';
import { flowText } from './scale.ts';

interface Side {
  readonly called: string;
  readonly value: number;
  readonly shown: string;
  readonly path?: string;
}
type Way = 'strength' | 'volume' | 'temperature';

const WAYS: readonly (readonly [RegExp, Way])[] = [
  [/\b(?:stronger|strongest|weaker|higher (?:in )?(?:strength|proof|abv|alcohol)|more alcoholic)\b/i, 'strength'],
  [/\b(?:hotter|warmer|cooler|colder)\b/i, 'temperature'],
  [/\b(?:bigger|larger|smaller|more|less|heavier|lighter|holds? (?:more|less)|fuller)\b/i, 'volume'],
]; // prettier-ignore

/** What has each, by what it is called, the longer names first. */
const named: Readonly<Record<Way, readonly (readonly [RegExp, string, string])[]>> = {
  strength: [
    [/\blow wines\b/i, 'the low wines', 'lowWines.strength'],
    [/\bfeints\b|\btails\b/i, 'the feints', 'feints.strength'],
    [/\bforeshots\b|\bheads\b/i, 'the foreshots', 'foreshots.strength'],
    [/\b(?:charge|into the spirit still)\b/i, 'the charge of the spirit still', 'charge.strength'],
    [/\b(?:heart|new make|new spirit|off the still)\b/i, 'the heart', 'heart.strength'],
    [/\b(?:wash|beer)\b(?! still)/i, 'the wash', 'wash.strength'],
    [/\b(?:fill(?:ed|ing)?|into (?:the )?cask)\b/i, 'what is filled', 'filling.strength'],
    [/\bbottle[ds]?\b|\bbottling\b/i, 'the bottle', 'bottling.strength'],
    [/\b(?:out of the cask|matured?|old)\b/i, 'what leaves the cask', 'matured.strength'],
  ],
  volume: [
    [/\bwash ?backs?\b/i, 'a washback’s filling', 'wash.volume'],
    [/\bwash still\b/i, 'the charge of the wash still', 'wash.volume'],
    [/\bspirit still\b/i, 'the charge of the spirit still', 'charge.volume'],
  ],
  temperature: [
    [/\bfirst water\b|\bstrike\b/i, 'the first water', 'mash.strike'],
    [/\bmash\b/i, 'the mash', 'house.mashTemperature'],
    [/\b(?:wort|washback|ferment|pitching)/i, 'the wort as it is set', 'house.setTemperature'],
  ],
};
const OR = /^(.*?)\b(?:or|than)\b(.*)$/i;

/** A thing of one half of the question. */
function sideOf(asked: Numbered, way: Way, half: string): Side | undefined {
  const { line } = asked;
  const found = named[way].find(([says]) => says.test(half));
  if (found) return { called: found[1], value: figureValue(line, found[2]), shown: figureText(line, found[2]), path: found[2] }; // prettier-ignore
  if (way !== 'volume') return undefined;
  const flow = flowIn(half)?.flow;
  const litres: readonly KindName[] = ['volume', 'volume20', 'mass'];
  if (!flow || !litres.includes(flow.kind)) return undefined;
  return { called: flow.called.replace(/^of /, ''), value: flow.perMash(line), shown: flowText(flow, asked), ...(flow.path && { path: flow.path }) }; // prettier-ignore
}

export const compared: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const [, way] = WAYS.find(([says]) => says.test(text)) ?? [];
  const halves = OR.exec(text);
  if (!way || !halves || quantities.length > 0 || /\bwhy\b|\bif\b|\bhow (?:much|many|long)\b|\bcasks?\b(?! still)|\bbarrel|\byours?\b|\bours?\b|\bmine\b|\bbetter\b/i.test(text)) return undefined;
  const [one, other] = [sideOf(asked, way, halves[1]!), sideOf(asked, way, halves[2]!)];
  if (!one || !other || one.path === other.path || one.called === other.called) return undefined;
  const isLess = /\b(?:weaker|smaller|less|lighter|cooler|colder)\b/i.test(text);
  const [most, least] = one.value >= other.value !== isLess ? [one, other] : [other, one];
  const first = `${most.called[0]!.toUpperCase()}${most.called.slice(1)}`;
  const beside = way === 'strength' || way === 'temperature' ? '' : `, ${isLess ? 'which is ' : ''}${formatNumber(Math.max(most.value / least.value, least.value / most.value), 1)} times as much`;
  return {
    says: `${first}: ${most.shown}${way === 'volume' ? ' a mash' : ''}, and ${least.called} ${least.shown}${beside}.`,
    at: 'house/',
    place: 'The figures of the house',
    paths: [most, least].flatMap(({ path }) => path ?? []),
  };
}; // prettier-ignore
