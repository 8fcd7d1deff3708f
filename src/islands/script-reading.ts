// Asks the worker to read a talk: one text at a time, and of those that came meanwhile only the last.
import type { UnansweredQuestion } from '../talk/unanswered.ts';
import type { TalkAsked, TalkRead } from './script-reading.worker.ts';

/** A reader of talks. `answered` hears what was read last; `failed` that the worker did not come, after which asking tries once more. */
export function talkReader(
  questions: () => readonly UnansweredQuestion[],
  answered: (read: TalkRead) => void,
  failed: () => void,
) {
  let worker: Worker | undefined;
  let isBusy = false;
  let next: TalkAsked | undefined;
  const fail = () => {
    worker?.terminate();
    worker = undefined;
    isBusy = false;
    failed();
  };
  const send = () => {
    if (isBusy || !next || !worker) return;
    isBusy = true;
    worker.postMessage(next);
    next = undefined;
  };
  /** Fetches the worker, before there is anything to read. */
  const wake = () => {
    if (worker) return;
    try {
      worker = new Worker(new URL('./script-reading.worker.ts', import.meta.url), { type: 'module' });
    } catch {
      return fail();
    }
    worker.addEventListener('error', fail);
    worker.addEventListener('messageerror', fail);
    worker.addEventListener('message', ({ data }: MessageEvent<TalkRead>) => {
      isBusy = false;
      if (!next) answered(data); // what has been overtaken is not shown
      send();
    });
    worker.postMessage({ questions: questions() });
  };
  return {
    wake,
    ask(asked: TalkAsked) {
      next = asked;
      wake();
      send();
    },
    /** Nothing that was asked is wanted any more. */
    forget() {
      next = undefined;
      if (!isBusy) return;
      worker?.terminate();
      worker = undefined;
      isBusy = false;
    },
  };
}
