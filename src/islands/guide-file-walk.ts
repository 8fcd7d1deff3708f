// The walk that a guide's file is made of, as this browser keeps it; and whether it is being printed.
import { createSignal, onCleanup, onMount } from 'solid-js';
import { useHouse } from '../browser/house-store.ts';
import { FIRST_WALK_NAME } from '../walk/text.ts';
import { firstWalk, type Walk } from '../walk/walk.ts';
import { otherHouse } from '../walk/house-of-walk.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { dateInWords, today as now } from './today.ts';
import { keptWalk } from './walk-kept.ts';

/** The walk, with what could not be read of it, and today; until the island is mounted the usual rooms. */
export function useGuideWalk() {
  const [walk, setWalk] = createSignal<Walk>(firstWalk(FIRST_WALK_NAME));
  const [problems, setProblems] = createSignal<readonly string[]>([]);
  const [today, setToday] = createSignal('');
  const { mounted, name } = useHouse();
  onMount(() => {
    const read = keptWalk();
    setWalk(read.walk);
    setProblems(read.problems);
    setToday(dateInWords(now()));
  });
  /** The house that the walk was written for, where another stands here: its figures are not on the page. */
  const other = () => (mounted() ? otherHouse(walk(), name()) : undefined);
  return { walk, problems, today, other };
}

/** Says of which house the figures are, and leads to the other; fetched where there is another. */
export const OtherHouse = fetchedWhenWanted(() =>
  import('./GuideFileOther.tsx').then((come) => come.GuideFileOther),
);

/** True while the page is laid out for paper: what is only printed is made then. */
export function useOnPaper(): () => boolean {
  const [isOnPaper, setOnPaper] = createSignal(false);
  onMount(() => {
    const paper = matchMedia('print');
    const look = () => setOnPaper(paper.matches);
    const begin = () => setOnPaper(true);
    look();
    paper.addEventListener('change', look);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', look);
    onCleanup(() => {
      paper.removeEventListener('change', look);
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', look);
    });
  });
  return isOnPaper;
}
