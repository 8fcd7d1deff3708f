// The trade's words abroad: every line has six languages or a gap that is known of, each word its standing, and none stands twice.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { languageIds, tradeWord, wordSources, type Language } from '../../src/walk/audience-words.ts';

const text = readFileSync(join(import.meta.dirname, '..', '..', 'content', 'words-abroad.yaml'), 'utf8');
const words = Object.entries(parse(text) as Record<string, Record<string, unknown>>).map(([english, line]) => tradeWord(english, line)); // prettier-ignore
const of = (language: Language) => words.flatMap(({ abroad }) => abroad[language] ?? []);

/** Where no word was sure, looked through by hand. */
const gaps: Readonly<Record<Language, readonly string[]>> = {
  fr: ['underback', 'spirit safe', 'spent lees', 'barrel', 'hogshead', 'butt'],
  de: ['wash still', 'spirit still', 'cut', 'spirit safe', 'barrel', 'hogshead', 'butt'],
  es: ['underback', 'spirit safe', 'spent lees', 'hogshead'],
  it: ['steep', 'husk', 'underback', 'spirit safe', 'spent lees', 'hogshead', 'butt'],
  ja: [],
  zh: ['kiln', 'underback', 'lyne arm', 'low wines', 'cut', 'spent lees', 'barrel', 'butt'],
};

test.each(languageIds)('%s: every word or a known gap, and none twice', (language) => {
  expect(words.filter(({ abroad }) => !abroad[language]).map(({ english }) => english)).toEqual(gaps[language]); // prettier-ignore
  const all = of(language).map(({ word }) => word.toLowerCase());
  expect(all.filter((word, i) => all.indexOf(word) !== i)).toEqual([]);
  for (const { from } of of(language)) if (from) expect(wordSources).toHaveProperty(from);
});

test('there are enough, each of a stage or of all', () => {
  expect(words.length).toBeGreaterThanOrEqual(45);
  expect(words.filter(({ stage }) => stage === 'all').map(({ english }) => english)).toEqual(['Danger: carbon dioxide', 'No phones', 'Mind your step']); // prettier-ignore
});

test('words are in the signs of their language: kana for readings, pinyin with its tones, Latin letters without Cyrillic', () => {
  for (const { word, reading } of of('ja')) {
    expect(word).toMatch(/^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー：]+$/u);
    expect(reading).toMatch(/^[\p{Script=Hiragana}\p{Script=Katakana}ー ]+$/u);
    if (/^[\p{Script=Katakana}ー]+$/u.test(word)) expect(reading).toBe(word);
  }
  for (const { word, reading } of of('zh')) {
    expect(word).toMatch(/^[\p{Script=Han}：]+$/u);
    expect(word).not.toMatch(/[麥釀發銅餾氣壺熱廢臺階爐險強齡蟲樽]/u); // simplified signs only
    expect(reading).toMatch(/^[a-zāáǎàēéěèīíǐìōóǒòūúǔùǖǘǚǜü' ]+$/);
    expect(reading).toMatch(/[āáǎàēéěèīíǐìōóǒòūúǔùǖǘǚǜ]/);
    const syllables = reading!.match(/[aeiouüāáǎàēéěèīíǐìōóǒòūúǔùǖǘǚǜ]+/g)!.length;
    expect(syllables, word).toBeLessThanOrEqual([...word].filter((sign) => sign !== '：').length); // a sign is a syllable
  }
  for (const language of ['fr', 'de', 'es', 'it'] as const)
    for (const { word } of of(language)) expect(word).toMatch(/^[\p{Script=Latin}'’ ,:!-]+$/u);
});

test('a line that cannot be is refused', () => {
  expect(() => tradeWord('x', { stage: 'brewing' })).toThrow(/no stage/);
  expect(() => tradeWord('x', { stage: 'malting', ja: '麦' })).toThrow(/reading/);
  expect(() => tradeWord('x', { stage: 'malting', fr: 'a', from: { fr: 'hearsay' } })).toThrow(/no source/);
  expect(() => tradeWord('x', { stage: 'malting', from: { fr: 'eu-fr' } })).toThrow(/without a word/);
  expect(() => tradeWord('x', { stage: 'malting', nl: 'gerst' })).toThrow(/nothing that is known/);
});
