// A trainer's own sheet on the desk: its questions by id, how it is changed, and what each version draws.
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import { GENERATOR } from '../exercises/draw.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { lineReady } from '../exercises/own-line.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import { askingOwn, settling, type Drawings, type Evenness, type Item, type OwnAsked, type OwnSheet } from '../exercises/own/own-sheet.ts'; // prettier-ignore
import { ownSheetMark } from '../exercises/own/own-text.ts';
import { keepDraft } from './own-kept.ts';
import { kindsById, type KindsById } from './own-kinds.ts';
import { drawnInSteps, versionsInTurn } from './use-kinds.ts';

/** A blank sheet. */
export const blankSheet = (seed: string): OwnSheet => ({
  generator: GENERATOR,
  title: '',
  minutes: 0,
  passMark: 0,
  shows: 'at the end',
  seed,
  versions: 6,
  house: 'built-in',
  items: [],
  own: [],
});

/** A sheet with what all its versions draw, and how even they are. */
interface SettledSheet {
  readonly of: OwnSheet;
  readonly sheet: OwnSheet;
  readonly evenness: Evenness | undefined;
}

/** The sheet, how it is changed, and what it draws; nothing is drawn before `begin`. `say` tells what went wrong. */
export function useDrawnOwnSheet(list: string, say: (sentence: string) => void) {
  const [sheet, setSheet] = createSignal<OwnSheet>(blankSheet('own'));
  const [bank, setBank] = createSignal<readonly OwnQuestion[]>([]);
  const [shown, setShown] = createSignal(1);
  const [settled, setSettled] = createSignal<SettledSheet>();
  const [asked, setAsked] = createSignal<readonly OwnAsked[]>();
  const [ready, setReady] = createSignal(false);
  let drawings: Drawings = new Map();

  /** Those that the sheet carries count before those of the bank: a sheet asks what it was made with. */
  const own = createMemo(
    () =>
      [...sheet().own, ...bank().filter(({ id }) => !sheet().own.some((each) => each.id === id))].sort(
        (a, b) => (a.id < b.id ? -1 : 1),
      ),
    undefined,
    { equals: (a, b) => a.length === b.length && a.every((each, i) => each === b[i]) }, // or every change would draw the list of kinds anew
  );
  const [kinds, setKinds] = createSignal<KindsById>(new Map(kindsOf(list).map((kind) => [kind.id, kind])));
  createEffect(
    on(own, (now) => {
      kindsById(list, now).then(
        (made) => own() === now && setKinds(made),
        () =>
          say(
            'A part of the book did not come, and questions of your own cannot be drawn; load the page again.',
          ),
      );
    }),
  );

  const change = (part: Partial<OwnSheet>) => {
    const { notes: _, ...now } = sheet();
    const items = part.items ?? now.items;
    if (part.house !== undefined) drawings = new Map();
    setSheet({ ...now, ...part, generator: GENERATOR, own: own().filter(({ id }) => items.some(({ kind }) => kind === id)) }); // prettier-ignore
    setShown(Math.min(shown(), sheet().versions));
    if (!keepDraft(sheet())) say('This browser does not keep the sheet: save it to a file.');
  };
  const changeItem = (place: number, part: Partial<Item>) =>
    change({ items: sheet().items.map((item, i) => (i === place ? { ...item, ...part } : item)) });

  /** Draws every version anew when something else is chosen; a sheet that was opened keeps its draws. */
  createEffect(
    on([sheet, ready, kinds], async ([now, isReady]) => {
      if (!isReady) return;
      if (now.own.some(({ id }) => !kinds().has(id))) return; // they are on their way
      if (now.items.length === 0) return void setSettled(undefined);
      await lineReady(now.house);
      const begins = now.items.flatMap(({ kind }) => (kind.startsWith('own-') || !kinds().has(kind) ? [] : [{ id: kind }])); // prettier-ignore
      const made = now.notes
        ? { sheet: now, evenness: undefined }
        : await drawnInSteps(settling(now, kinds(), drawings), begins);
      if (made && sheet() === now) setSettled({ of: now, ...made });
    }),
  );
  const versionOf = (of: OwnSheet, version: number) => drawnInSteps(askingOwn(of, version, kinds()), []);
  createEffect(
    on([settled, shown], async ([now, version]) => {
      const drawn = now && (await versionOf(now.sheet, version));
      if (settled() === now && shown() === version) setAsked(drawn);
    }),
  );
  const versionsOf = (of: OwnSheet, wanted: readonly number[]) =>
    versionsInTurn(wanted, (version) => versionOf(of, version));
  /** Puts another sheet on the desk, with the draws that it brings. */
  const open = (read: OwnSheet) => {
    drawings = new Map();
    setShown(1);
    setSheet(read);
    keepDraft(read);
  };
  const isSettled = () => settled()?.of === sheet();

  return {
    sheet,
    /** Takes a sheet that is kept already: a draft of this browser, or of another tab. */
    take: setSheet,
    open,
    change,
    changeItem,
    shown,
    show: setShown,
    begin: () => setReady(true),
    setBank,
    own,
    kinds,
    choosable: createMemo(() =>
      [...kinds().values()].filter(({ since, until }) => since <= GENERATOR && until === undefined),
    ),
    settled,
    isSettled,
    asked,
    versionsOf,
    mark: createMemo(() => (isSettled() ? ownSheetMark(settled()!.sheet) : '')),
    numbers: () => Array.from({ length: sheet().versions }, (_, i) => i + 1),
  };
}
export type DrawnOwnSheet = ReturnType<typeof useDrawnOwnSheet>;
