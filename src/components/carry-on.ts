// Where the book leads a reader on who comes back to the first weeks: it says what they say, by the same function.
import { decodeProgress } from '../exercises/progress.ts';
import { keptText, storageKey } from '../browser/browser-store.ts';
import { keptGuesses } from '../islands/guesses-kept.ts';
import { keepLesson, keptLesson } from '../islands/lesson-kept.ts';
import { ticks } from '../islands/path-kept.ts';
import { nextSays, type Names, type PathLink } from '../islands/path-says.ts';
import { today } from '../islands/today.ts';
import { hasSetOut, nextOnPath, type PathDone } from '../path/next-on-path.ts';
import { pathStages } from '../path/stages.ts';
import { linkTo, bookRoot } from './book-root.ts';

function kept(): PathDone {
  const open = keptLesson();
  return {
    log: decodeProgress(keptText(storageKey('practice')) ?? '').progress.log,
    ticked: Object.keys(ticks()),
    guessed: Object.keys(keptGuesses()),
    ...(open ? { open: open.stage } : {}),
  };
}

async function carryOn(): Promise<void> {
  const done = kept();
  const next = nextOnPath(pathStages, done, today());
  if (!hasSetOut(done) || location.pathname.startsWith(new URL(`${bookRoot}first-weeks/`).pathname)) return;
  for (const begin of document.querySelectorAll<HTMLElement>('[data-new-starter]')) begin.hidden = true;
  if (next.because === 'all') return;
  const names = (await (await fetch(`${bookRoot}first-weeks/names.json`)).json()) as Names;
  const { pieces, go } = nextSays(next, names);
  const link = ({ at, says, opens }: PathLink) => linkTo(at, says, opens && (() => keepLesson(opens)));
  for (const place of document.querySelectorAll<HTMLElement>('[data-left-off]')) {
    const said = pieces.map((piece) => {
      if (typeof piece === 'string') return piece;
      if (!('b' in piece)) return link(piece);
      const named = document.createElement('b');
      named.textContent = piece.b;
      return named;
    });
    place.replaceChildren(...said, ...(go ? [' ', link(go)] : []));
    place.hidden = false;
  }
}
const show = () => void carryOn().catch(() => undefined); // the page that was read last stands there then
show();
addEventListener('pageshow', ({ persisted }) => persisted && show());
