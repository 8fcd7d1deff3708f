// The trade's words in other languages: which languages, the words of a line of content/words-abroad.yaml, and where each was read.
import { stages, type Stage } from '../house/figures.ts';

/** Languages by their tags, each by its name in English and its own. */
export const languages = {
  fr: ['French', 'français'],
  de: ['German', 'Deutsch'],
  es: ['Spanish', 'español'],
  it: ['Italian', 'italiano'],
  ja: ['Japanese', '日本語'],
  zh: ['Chinese', '中文'],
} as const;
export type Language = keyof typeof languages;
export const languageIds = Object.keys(languages) as readonly Language[];
/** The tag of a language as a page marks it: the Chinese words are in simplified signs. */
export const tagOf = (language: Language): string => (language === 'zh' ? 'zh-Hans' : language);

/** What words were read in; a law that was read in another's text is “quoted by others”. */
export const wordSources = {
  'eu-fr': 'Regulation (EU) 2019/787, Annex I, category 2, French text as quoted by others',
  'eu-it-told': 'Regulation (EU) 2019/787, Annex I, category 2, Italian text as quoted by others',
  'ec-de': 'Regulation (EC) 110/2008, Annex II, category 2, German text as quoted by others',
  'ec-es': 'Regulation (EC) 110/2008, Annex II, category 2, Spanish text as quoted by others',
  'ch-fr': 'Swiss ordinance on drinks, SR 817.022.12, article on whisky, French text',
  'ch-it': 'Swiss ordinance on drinks, SR 817.022.12, article on whisky, Italian text',
  'tariff-ja': 'Japanese customs tariff, note to 2208.30, as an importer’s page prints it',
  'gbt-11857': 'GB/T 11857-2000, by its abstract',
  'gbt-15109': 'GB/T 15109-2021, words of the Chinese spirit trade, by its foreword',
  'gbt-17204': 'GB/T 17204, names of drinks, draft of its revision, by its foreword',
} as const;
export type WordSource = keyof typeof wordSources;

export interface WordAbroad {
  readonly word: string;
  /** How it is read: in kana, or in pinyin. */
  readonly reading?: string;
  /** Where it was read; nothing for a word from memory. */
  readonly from?: WordSource;
}
export interface TradeWord {
  readonly english: string;
  /** What is meant of several meanings. */
  readonly means?: string;
  readonly stage: Stage | 'all';
  /** A language is left out where no word is sure. */
  readonly abroad: Readonly<Partial<Record<Language, WordAbroad>>>;
}

type Line = Readonly<Record<string, unknown>>;
const text = (line: Line, key: string) => (typeof line[key] === 'string' ? line[key].trim() : undefined);

/** A line of the list as a word. Throws on what it cannot hold, so that a slip fails the build. */
export function tradeWord(english: string, line: Line): TradeWord {
  const stage = text(line, 'stage') as TradeWord['stage'];
  if (stage !== 'all' && !stages.includes(stage)) throw new RangeError(`${english}: “${stage}” is no stage.`);
  const from = (line['from'] ?? {}) as Readonly<Record<string, string>>;
  const wrong = Object.keys(line).find((key) => ![...languageIds, 'stage', 'means', 'from', 'id'].includes(key)); // prettier-ignore
  if (wrong) throw new RangeError(`${english}: “${wrong}” is nothing that is known of a word.`);
  const abroad = languageIds.flatMap((language) => {
    const [word, reading] = text(line, language)?.split(/\s*\|\s*/) ?? [];
    if (!word) {
      if (from[language]) throw new RangeError(`${english}: a source without a word in ${language}.`);
      return [];
    }
    if ((language === 'ja' || language === 'zh') !== (reading !== undefined))
      throw new RangeError(`${english}: “${word}” needs its reading, or none.`);
    const source = from[language];
    if (source !== undefined && !Object.hasOwn(wordSources, source))
      throw new RangeError(`${english}: “${source}” is no source of words.`);
    return [[language, { word, ...(reading ? { reading } : {}), ...(source ? { from: source } : {}) }]];
  });
  const means = text(line, 'means');
  return { english, stage, ...(means ? { means } : {}), abroad: Object.fromEntries(abroad) };
}
