// A question of one's own as it stands in its form, all of it text, and the question that it makes or what is amiss.
import type { KindName } from '../../core/kinds.ts';
import { kinds } from '../../core/kinds.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import type { Level, Topic } from '../topics.ts';
import { VALUE_NAME, isFunction } from './formula.ts';
import { oneLine } from './one-line.ts';
import {
  OWN_QUESTION_LIMITS,
  readOwnQuestion,
  type OwnQuestion,
  type Takes,
  type Value,
} from './own-question.ts';

export interface DraftValue {
  readonly name: string;
  /** Kind and unit, as “mass|t”. */
  readonly unit: string;
  /** “4000 to 6000 step 500”, or “390; 402; 411”. */
  readonly takes: string;
}
export interface Draft {
  readonly title: string;
  readonly topic: Topic;
  readonly level: Level;
  readonly wording: string;
  readonly rests: string;
  readonly values: readonly DraftValue[];
  readonly asks: 'number' | 'choice';
  readonly formula: string;
  readonly of: KindName;
  readonly digits: number;
  readonly within: number;
  readonly whole: '' | 'up' | 'down';
  readonly slips: readonly { readonly formula: string; readonly say: string }[];
  readonly options: readonly { readonly text: string; readonly why: string }[];
  readonly right: number;
}

export const freshDraft: Draft = {
  title: '',
  topic: 'mashing',
  level: 1,
  wording: '',
  rests: '',
  values: [{ name: '', unit: 'mass|kg', takes: '' }],
  asks: 'number',
  formula: '',
  of: 'alcohol',
  digits: 0,
  within: 1,
  whole: '',
  slips: [{ formula: '', say: '' }],
  options: [0, 1, 2, 3].map(() => ({ text: '', why: '' })),
  right: 0,
};

const NUMBER = /^[−-]?\d{1,9}(?:\.\d{1,6})?$/;
const numberOf = (text: string) =>
  NUMBER.test(text.trim()) ? Number(text.trim().replace('−', '-')) : undefined;

/** The numbers that a value takes, as typed; undefined when it cannot be read. */
export function readTakenValues(text: string): Takes | undefined {
  const range = /^(\S+) to (\S+) step (\S+)$/.exec(oneLine(text));
  if (range) {
    const [from, to, step] = range.slice(1).map(numberOf);
    return from === undefined || to === undefined || step === undefined || step <= 0
      ? undefined
      : { from, to, step };
  }
  const list = text.split(';').map(numberOf);
  return list.length > OWN_QUESTION_LIMITS.list || list.includes(undefined)
    ? undefined
    : { list: list as number[] };
}
const plain = (value: number) => String(value).replace('-', '−');
const takesText = (takes: Takes) =>
  'list' in takes
    ? takes.list.map(plain).join('; ')
    : `${plain(takes.from)} to ${plain(takes.to)} step ${plain(takes.step)}`;

/** The question that a form makes, with an id; a sentence for the first thing that is amiss. */
export function questionOf(draft: Draft, id: string): OwnQuestion | string {
  if (oneLine(draft.title) === '') return 'Give the question a title, by which you find it again.';
  if (oneLine(draft.wording) === '') return 'Write the question itself.';
  const values: Value[] = [];
  for (const { name, unit, takes } of draft.values) {
    if (name.trim() === '' && takes.trim() === '') continue;
    if (!VALUE_NAME.test(name.trim()) || isFunction(name.trim()))
      return `A value cannot be called “${quotedGiven(name)}”: a letter, then letters, digits or _, and not the name of a function.`;
    const read = readTakenValues(takes);
    if (!read)
      return `${name.trim()} takes “${quotedGiven(takes)}”: write a range as 4000 to 6000 step 500, or a list as 390; 402; 411, without commas.`;
    const [kind, sign] = unit.split('|') as [KindName, string];
    values.push({ name: name.trim(), kind, unit: sign, takes: read });
  }
  const written = {
    id,
    title: oneLine(draft.title),
    topic: draft.topic,
    level: draft.level,
    wording: oneLine(draft.wording),
    values,
    rests: oneLine(draft.rests),
  };
  const slips = draft.slips.filter(({ formula, say }) => formula.trim() !== '' || say.trim() !== '');
  const unsaid = slips.findIndex(({ formula, say }) => formula.trim() === '' || say.trim() === '');
  if (draft.asks === 'number' && unsaid >= 0)
    return `Mistake ${unsaid + 1} needs both its formula and what is said of it.`;
  return readOwnQuestion(
    draft.asks === 'choice'
      ? {
          ...written,
          asks: 'choice',
          options: draft.options
            .map(({ text, why }, i) => ({
              text: oneLine(text),
              why: oneLine(why),
              isRight: i === draft.right,
            }))
            .filter(({ text }) => text !== ''),
        }
      : {
          ...written,
          asks: 'number',
          formula: oneLine(draft.formula),
          of: draft.of,
          digits: draft.digits,
          within: draft.within,
          ...(draft.whole ? { whole: draft.whole } : {}),
          slips: slips.map(({ formula, say }) => ({ formula: oneLine(formula), say: oneLine(say) })),
        },
  );
}

/** A question back in its form. */
export function draftOf(question: OwnQuestion): Draft {
  const { title, topic, level, wording, rests, asks } = question;
  const values = question.values.map(({ name, kind, unit, takes }) => ({ name, unit: `${kind}|${unit}`, takes: takesText(takes) })); // prettier-ignore
  const about = { ...freshDraft, title, topic, level, wording, rests, asks, values };
  if (question.asks === 'choice')
    return {
      ...about,
      options: question.options.map(({ text, why }) => ({ text, why })),
      right: question.options.findIndex(({ isRight }) => isRight),
    };
  const { formula, of, digits, within, whole = '', slips } = question;
  return { ...about, formula, of, digits, within, whole, slips };
}

/** The kinds that a form offers, those of the trade's daily sums. */
export const kindsOffered: readonly KindName[] = (
  [
    'mass', 'volume', 'alcohol', 'strength', 'yield', 'percent', 'gravity', 'plato', 'temperature',
    'temperatureDifference', 'hours', 'minutes', 'days', 'years', 'count', 'ratio', 'density', 'energy', 'power', 'heat',
    'liquorRatio', 'gramsPerLitre', 'perTonne', 'massFlow', 'volumeFlow', 'flow', 'area', 'space', 'length', 'cells',
    'ppm', 'nitrogen', 'massPercent', 'points', 'pressure', 'money',
  ] as const
).filter((kind) => kind in kinds); // prettier-ignore
