// Asks the worker that sets a week out; only the last question counts.
import { createSignal, onCleanup } from 'solid-js';
import type { Lack } from '../core/week/lack.ts';
import type { WeekNeeds } from '../core/week/run-weeks.ts';
import type { Timetable } from '../core/week/timetable.ts';
import type { WeekAnswer, WeekQuestion } from './week.worker.ts';

export interface WeekFound {
  readonly needs: WeekNeeds;
  readonly mashes: number;
  readonly week: Timetable | undefined;
  readonly lack: Lack | undefined;
  readonly most?: number;
  readonly next?: Lack;
  /** The week of the most mashes, where those asked for do not fit. */
  readonly fitting?: Timetable | undefined;
}

/** What was found last, whether that is all, and a way to ask. */
export function useWeek() {
  const [found, setFound] = createSignal<WeekFound>();
  const [failed, setFailed] = createSignal(false);
  let worker: Worker | undefined;
  let asked: WeekQuestion | undefined;
  let isBusy = false;
  let id = 0;
  onCleanup(() => worker?.terminate());

  const fail = () => {
    worker?.terminate();
    worker = undefined;
    isBusy = false;
    setFailed(true);
  };
  const begin = (): Worker | undefined => {
    try {
      const made = new Worker(new URL('./week.worker.ts', import.meta.url), { type: 'module' });
      made.addEventListener('error', fail);
      made.addEventListener('messageerror', fail);
      made.addEventListener('message', ({ data }: MessageEvent<WeekAnswer>) => {
        if (data.id === asked?.id)
          setFound((before) =>
            'most' in data
              ? before && { ...before, most: data.most, next: data.next, fitting: data.fitting }
              : { needs: asked!.needs, mashes: asked!.mashes, week: data.week, lack: data.lack },
          );
        if (!('most' in data)) return;
        isBusy = false;
        if (data.id !== asked?.id) send();
      });
      return made;
    } catch {
      return void fail();
    }
  };
  const send = () => {
    worker ??= begin();
    if (!worker || !asked) return;
    isBusy = true;
    worker.postMessage(asked);
  };
  const ask = (needs: WeekNeeds, mashes: number) => {
    setFailed(false);
    asked = { id: ++id, needs, mashes };
    if (!isBusy) send();
  };
  /** Forgets what was found: there is no week to set out. */
  const drop = () => {
    asked = undefined;
    setFound(undefined);
  };
  return { found, failed, ask, drop };
}
