// A sheet on the desk, drawn as its trainer chooses: the version that is shown at once, what all versions draw when there is time.
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import { whenIdle } from '../browser/defer.ts';
import { GENERATOR } from '../exercises/draw.ts';
import type { InSteps } from '../exercises/in-steps.ts';
import type { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { lineReady } from '../exercises/own-line.ts';
import { sheetLink } from '../exercises/sheet-link.ts';
import { askingSheet, sheetMark, firstKinds, fixingSheet, poolOf, type AskedQuestion, type Worksheet } from '../exercises/worksheet.ts'; // prettier-ignore
import { nextTask } from '../house/next-task.ts';
import { drawnInSteps, versionsInTurn } from './use-kinds.ts';

/** The sheet, how it is changed, and what it draws; nothing is drawn before `begin`. */
export function useDrawnSheet(first: Worksheet, kinds: ReturnType<typeof kindsOf>) {
  const [sheet, setSheet] = createSignal<Worksheet>(first);
  const [shown, setShown] = createSignal(1);
  const [ready, setReady] = createSignal(false);
  const [drawn, setDrawn] = createSignal<{
    readonly of: Worksheet;
    readonly asked: readonly AskedQuestion[];
  }>();
  const [laid, setLaid] = createSignal(0); // questions of it that are on the page: one more in each task
  const [whole, setWhole] = createSignal<Worksheet>(); // the sheet with what all its versions draw: a piece of work of its own
  const [settings, setSettings] = createSignal<Worksheet>(); // of which that was made

  const change = (part: Partial<Worksheet>) => {
    const { notes: _, ...now } = sheet();
    setSheet({ ...now, ...part, generator: GENERATOR });
    setShown(Math.min(shown(), sheet().versions));
  };
  /** Draws from a sheet, once its kinds of question are here. */
  const drawing = async <T>(of: Worksheet, work: InSteps<T>) => {
    await lineReady(of.house);
    return drawnInSteps(work, firstKinds(of, kinds));
  };
  const versionOf = (of: Worksheet, version: number) => drawing(of, askingSheet(of, version, kinds));
  /** The sheet with what all its versions draw. */
  const settle = async (): Promise<Worksheet | undefined> => {
    const now = sheet();
    if (settings() === now) return whole();
    const made = await drawing(now, fixingSheet(now, kinds));
    if (made && sheet() === now) {
      setSettings(now);
      setWhole(made);
    }
    return made;
  };
  const versionsOf = (of: Worksheet, wanted: readonly number[]) =>
    versionsInTurn(wanted, (version) => versionOf(of, version));
  const lay = async (asked: readonly AskedQuestion[]) => {
    for (let each = 0; each <= asked.length && drawn()?.asked === asked; each++) {
      setLaid(each);
      await nextTask();
    }
  };
  /** The version shown, drawn anew when something else is chosen. */
  createEffect(
    on([sheet, shown, ready], async ([now, version, isReady]) => {
      const asked = isReady && (await versionOf(now, version));
      if (!asked || sheet() !== now || shown() !== version) return;
      setDrawn({ of: now, asked });
      await lay(asked);
    }),
  );
  const seen = () => drawn() !== undefined && laid() >= drawn()!.asked.length;
  createEffect(on([sheet, seen], () => void (seen() && whenIdle(() => void settle()))));

  return {
    sheet,
    open: setSheet,
    change,
    shown,
    show: setShown,
    begin: () => setReady(true),
    drawn,
    laid,
    asked: () => drawn()?.asked ?? [],
    questions: () => (drawn()?.asked ?? []).map(({ question }) => question),
    pool: createMemo(() => poolOf(sheet(), kinds)),
    whole,
    isSettled: () => settings() === sheet(),
    settle,
    versionsOf,
    mark: createMemo(() => (whole() ? sheetMark(sheetLink(whole()!)) : '')),
    numbers: () => Array.from({ length: sheet().versions }, (_, i) => i + 1),
  };
}
export type DrawnSheet = ReturnType<typeof useDrawnSheet>;
