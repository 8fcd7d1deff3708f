// Sealing a sheet and opening it again: what is drawn under a name made by chance, what goes out, and what the trainer's key gives back.
import { GENERATOR } from '../exercises/draw.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { lineReady } from '../exercises/own-line.ts';
import { askingOwn, settling, type OwnSheet } from '../exercises/own/own-sheet.ts';
import { pinnedIn } from '../exercises/own/pinned.ts';
import { ownSheetMark, ownSheetText, readOwnSheet } from '../exercises/own/own-text.ts';
import type { Question } from '../exercises/question.ts';
import { aboutSource, askedOnly, readSource, rulesOfSealed, textAsked, sourceText, type SealedRules, type SealedSheet, type SealedSource } from '../exercises/sealed/sealed-sheet.ts'; // prettier-ignore
import { readSheetLink, sheetLink } from '../exercises/sheet-link.ts';
import { askingSheet, sheetMark, fixingSheet, type Worksheet } from '../exercises/worksheet.ts';
import { digestOf, sealedTo, unsealed } from '../handing/sealing.ts';
import { publicOf, type SecretKey } from '../handing/signing.ts';
import { fromBase64url, toBase64url } from '../house/base64url.ts';
import { packedBytes, unpackedBytes } from '../house/packed.ts';
import { randomId } from './class-kept.ts';
import { kindsById } from './own-kinds.ts';
import { drawnInSteps } from './use-kinds.ts';

/** A sheet that can be sealed: of the trainer's own, or one made at once. */
export type Sealable = { readonly own: OwnSheet } | { readonly sheet: Worksheet };
export interface DrawnSeal {
  readonly title: string;
  readonly mark: string;
  readonly passMark: number;
  readonly minutes: number;
  readonly address: string;
  readonly versions: readonly { readonly question: Question; readonly marks: number }[][];
}
const LOST = 'A part of the book did not come; load the page again.';
const SEED_SIGNS = 20; // of a name made by chance: some 100 bits

/** Where a sheet stands at its desk with its answers: an address from the root of the book. */
async function deskOf(source: SealedSource['sheet']): Promise<string> {
  if ('link' in source) return `sheets/${source.link}`;
  const { packed } = await import('../house/packed.ts');
  return `sheets/own/#own=${packed(source.own)}`;
}

/** The questions of all versions of a sheet that is drawn already; a sentence when they cannot be had. */
async function drawn(source: SealedSource['sheet'], list: string): Promise<DrawnSeal | string> {
  if ('own' in source) {
    const own = readOwnSheet(source.own);
    if (typeof own === 'string') return own;
    await lineReady(own.house);
    const kinds = await kindsById(list, own.own).catch(() => undefined);
    if (!kinds) return LOST;
    const versions: { question: Question; marks: number }[][] = [];
    for (let version = 1; version <= own.versions; version++) {
      const asked = await drawnInSteps(askingOwn(own, version, kinds), []);
      if (!asked) return LOST;
      versions.push(asked.map(({ question, item }) => ({ question, marks: item.marks })));
    }
    return { title: own.title || 'A sheet', mark: ownSheetMark(own), passMark: own.passMark, minutes: own.minutes, versions, address: await deskOf(source) }; // prettier-ignore
  }
  const read = readSheetLink(source.link);
  if (!read || 'problem' in read) return read?.problem ?? 'What is in the seal is no sheet.';
  const { sheet } = read;
  await lineReady(sheet.house);
  const versions: { question: Question; marks: number }[][] = [];
  for (let version = 1; version <= sheet.versions; version++) {
    const asked = await drawnInSteps(askingSheet(sheet, version, kindsOf(list)), []);
    if (!asked) return LOST;
    versions.push(asked.map(({ question }) => ({ question, marks: 1 })));
  }
  return { title: 'A sheet', mark: sheetMark(source.link), passMark: 0, minutes: 0, versions, address: await deskOf(source) }; // prettier-ignore
}

/** The sheet drawn anew under a name made by chance, which nobody can guess; one whose questions keep their numbers stays as it is. */
async function anew(from: Sealable, list: string): Promise<SealedSource['sheet'] | string> {
  if ('own' in from) {
    const { notes: _, ...own } = from.own;
    if (pinnedIn(from.own) > 0) return { own: ownSheetText(from.own) };
    await lineReady(own.house);
    const kinds = await kindsById(list, own.own).catch(() => undefined);
    const made = kinds && (await drawnInSteps(settling({ ...own, seed: randomId(SEED_SIGNS), generator: GENERATOR }, kinds), [])); // prettier-ignore
    if (!made) return LOST;
    if (made.evenness.missing.length > 0) return 'One of the questions cannot be drawn for this house: swap it or take it out first.'; // prettier-ignore
    return { own: ownSheetText(made.sheet) };
  }
  const { notes: _, ...sheet } = from.sheet;
  await lineReady(sheet.house);
  const made = await drawnInSteps(fixingSheet({ ...sheet, seed: randomId(SEED_SIGNS), generator: GENERATOR }, kindsOf(list)), []); // prettier-ignore
  return made ? { link: sheetLink(made) } : LOST;
}

/** Seals a sheet to a key, with a time and a pass mark where it has none; a sentence when it cannot be. */
export async function sealSheet(from: Sealable, key: SecretKey, title: string, list: string, set?: SealedRules): Promise<{ readonly sealed: SealedSheet; readonly drawn: DrawnSeal } | string> {
  const sheet = await anew(from, list);
  if (typeof sheet === 'string') return sheet;
  const as = await drawn(sheet, list);
  if (typeof as === 'string') return as;
  const of = { ...as, ...rulesOfSealed(as, set) };
  if (of.versions.some((asked) => asked.length === 0)) return 'This sheet has no questions.';
  const id = randomId();
  const versions = of.versions.map((asked, i) => ({ version: i + 1, questions: asked.map(({ question, marks }) => askedOnly(question, marks)) }));
  const seen: Record<string, string> = {};
  for (const { version, questions } of versions) seen[version] = await digestOf(textAsked(questions));
  const seal = await sealedTo(publicOf(key), aboutSource(id), packedBytes(sourceText({ sheet, seen, ...(set && set.minutes + set.passMark > 0 ? { rules: set } : {}) })));
  return { sealed: { id, title: title || of.title, minutes: of.minutes, to: publicOf(key), versions, seal: toBase64url(seal) }, drawn: of };
} // prettier-ignore

export interface OpenedSeal extends DrawnSeal {
  readonly seen: SealedSource['seen'];
}
/** What a seal holds; a sentence when this key does not open it. */
async function sourceIn(id: string, seal: string, key: SecretKey): Promise<SealedSource | string> {
  const bytes = await unsealed(key, aboutSource(id), fromBase64url(seal) ?? new Uint8Array());
  const text = bytes && unpackedBytes(bytes);
  if (text === undefined)
    return 'This key does not open the sheet: it was sealed to another, or it was changed.';
  return readSource(text);
}

/** Where a sealed sheet stands with its answers; a sentence when this key does not open it. */
export async function deskOfSealed(id: string, seal: string, key: SecretKey): Promise<{ readonly address: string } | string> {
  const source = await sourceIn(id, seal, key);
  return typeof source === 'string' ? source : { address: await deskOf(source.sheet) };
} // prettier-ignore

/** What a seal held, drawn; a sentence when this key does not open it. */
export async function openSheet(
  id: string,
  seal: string,
  key: SecretKey,
  list: string,
): Promise<OpenedSeal | string> {
  const source = await sourceIn(id, seal, key);
  if (typeof source === 'string') return source;
  const of = await drawn(source.sheet, list);
  return typeof of === 'string' ? of : { ...of, ...rulesOfSealed(of, source.rules), seen: source.seen };
}
