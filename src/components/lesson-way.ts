// The way back and on, where a lesson of the first weeks has sent the reader: behind the passage, the guess or the shift, and at the page's end.
import { keepLesson, keptLesson } from '../islands/lesson-kept.ts';
import { tick } from '../islands/path-kept.ts';
import { today } from '../islands/today.ts';
import {
  isMarked,
  lessonAt,
  stepAfter,
  stepNow,
  type OpenLesson,
  type OpenStep,
} from '../path/open-lesson.ts';

/** Where this copy of the book has its root: where its manifest is. */
const root = new URL('.', document.querySelector<HTMLLinkElement>('link[rel=manifest]')!.href).href;
const main = document.getElementById('main')!;

function link(at: string, says: string, onGo?: () => void): HTMLAnchorElement {
  const made = document.createElement('a');
  made.href = root + at;
  made.textContent = says;
  if (onGo) made.addEventListener('click', onGo);
  return made;
}

/** The way as one line: back to the lesson, and on. A passage counts as read when the reader goes on from it. */
function way(lesson: OpenLesson): HTMLElement {
  const [now, next] = [stepNow(lesson), stepAfter(lesson)];
  const done = () => {
    if (isMarked(now)) tick(now.id, today());
    if (next) keepLesson({ ...lesson, now: next.id });
  };
  const line = document.createElement('p');
  line.className = 'lesson-way';
  line.append(
    'Your lesson: ',
    link(lessonAt(lesson), `back to “${lesson.title}”`),
    link(
      next?.at ?? `${lessonAt(lesson)}#lessons`,
      `${isMarked(now) ? 'Done. ' : ''}${next ? `Next: ${next.says}` : 'To all the lessons'}`,
      done,
    ),
  );
  return line;
}

const levelOf = (element: Element) => Number(/^H([1-6])$/.exec(element.tagName)?.[1] ?? 9);
/** Where a passage ends: before the next heading as high as its own. */
function endOf({ at, to }: OpenStep): Element | undefined {
  const heading = document.getElementById(to ?? at.split('#')[1] ?? '');
  if (!heading) return undefined;
  if (heading.matches('.predict')) return heading;
  let last: Element = heading;
  for (let each = heading.nextElementSibling; each; each = each.nextElementSibling) {
    if (levelOf(each) <= levelOf(heading) || each.matches('.chapter-ends, .page-sources, .practise')) break;
    last = each;
  }
  return last;
}

/** Puts the way where the reader is now, and takes it from where it was. */
function show(): void {
  for (const old of document.querySelectorAll('.lesson-way[data-put]')) old.remove();
  const lesson = keptLesson();
  if (!lesson) return;
  const now = stepNow(lesson);
  const here = new URL(root + now.at).pathname;
  if (location.pathname !== here || now.at.startsWith(lessonAt(lesson)) || now.at.startsWith('practice/'))
    return; // those pages say it themselves
  const put = (element: Element | null | undefined, where: InsertPosition) => {
    const line = way(lesson);
    line.dataset['put'] = '';
    element?.insertAdjacentElement(where, line);
  };
  put(main.querySelector('.shift')?.closest('astro-island') ?? endOf(now), 'afterend');
  const ends = main.querySelector('.page-sources, .chapter-ends');
  if (ends) put(ends, 'beforebegin');
}
/** Where the book leads a reader on who comes back, the open lesson comes before the page that was read last. */
function carryOn(): void {
  const lesson = keptLesson();
  if (!lesson || location.pathname === new URL(root + lessonAt(lesson)).pathname) return;
  const stage = lesson.stage[0]!.toUpperCase() + lesson.stage.slice(1);
  for (const place of document.querySelectorAll<HTMLElement>('[data-left-off]')) {
    place.replaceChildren('Carry on with your lesson: ', link(lessonAt(lesson), `${stage}, ${lesson.title}`));
    place.hidden = false;
  }
}
show();
carryOn();
addEventListener('hashchange', show);
addEventListener('pageshow', ({ persisted }) => persisted && show());
