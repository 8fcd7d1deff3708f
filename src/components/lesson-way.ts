// The way back and on, where a lesson of the first weeks has sent the reader: behind the passage, the guess or the shift, and at the page's end.
import { keepLesson, keptLesson } from '../islands/lesson-kept.ts';
import { markStep, ticks } from '../islands/path-kept.ts';
import { today } from '../islands/today.ts';
import {
  isMarked,
  isShift,
  lessonAt,
  lineAt,
  stepAfter,
  stepNow,
  type OpenLesson,
  type OpenStep,
} from '../path/open-lesson.ts';
import { shiftCounts, shiftStep, tryAgain, type ShiftOver } from '../path/shift-step.ts';
import { linkTo as link, bookRoot } from './book-root.ts';

const main = document.getElementById('main')!;
/** What to try again after the shift that has just ended. */
let again: string | undefined;

/** The way as one line: back to the lesson, and on. A passage counts as read when the reader goes on from it. */
function way(lesson: OpenLesson): HTMLElement {
  const [now, next] = [stepNow(lesson), stepAfter(lesson)];
  const done = () => {
    if (isMarked(now)) markStep(now.id, today());
    if (next) keepLesson({ ...lesson, now: next.id });
  };
  const line = document.createElement('p');
  line.className = 'lesson-way';
  const isRun = isShift(now) && ticks()[now.id] !== undefined;
  const toRun = isShift(now) && !isRun;
  if (toRun && again) line.append(again, ' ');
  const said = isMarked(now) || isRun ? 'Done. ' : toRun ? 'Leave it for later. ' : '';
  if (toRun && !again) line.append('Run it to its end without a danger, and it counts as done. ');
  if (isRun && again) line.append(again, ' ');
  line.append(
    'Your lesson: ',
    link(lineAt(lesson), `back to “${lesson.title}”`),
    link(
      next?.at ?? `${lessonAt(lesson)}#lessons`,
      `${said}${next ? `Next: ${next.says}` : 'To all the lessons'}`,
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
  const here = new URL(bookRoot + now.at).pathname;
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
/** The end of a shift marks its step, also where no lesson has sent the reader; then the way on says so. */
export function shiftOver(over: ShiftOver): void {
  const id = shiftStep(location.href.slice(bookRoot.length).split('#')[0]!);
  if (id === undefined) return;
  if (shiftCounts(over)) markStep(id, today());
  again = tryAgain(over);
  show();
}
show();
addEventListener('hashchange', show);
addEventListener('pageshow', ({ persisted }) => persisted && show());
