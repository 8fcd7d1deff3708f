// Reads the talk of a walk in a worker: cuts it into rooms, and looks for its figures anew after an edit.
import { createSignal } from 'solid-js';
import { withFiguresFound, withTalk, type FoundFigure } from '../walk/pieces.ts';
import { withLength } from '../walk/time.ts';
import { textOfWalk, type Walk } from '../walk/walk.ts';
import type { Talk } from './script-kept.ts';
import { talkReader } from './script-reading.ts';
import type { TalkRead } from './script-reading.worker.ts';
import { isRefusal } from '../core/refusal.ts';

const REREAD = 1500; // ms after an edit until the figures in it are looked for anew

/** The figures that a reading found, each as it stands in the text. */
const foundIn = ({ text, script, taken }: TalkRead): readonly FoundFigure[] =>
  script.quantities.flatMap(({ start, end }) => {
    const { figure, said } = taken[start] ?? {};
    if (!figure || !said) return [];
    const value = said.as === 'range' ? (said.low + said.high) / 2 : said.value;
    return [{ at: start, words: text.slice(start, end), figure, value }];
  });

/** `cutInto` hears of the walk with its talk cut, and a sentence on it; `figuresIn` of the walk with the figures of its pieces. */
export function useWalkReading(
  walk: () => Walk,
  cutInto: (walk: Walk, says: string) => void,
  figuresIn: (walk: Walk) => void,
) {
  const [isCutting, setCutting] = createSignal(false);
  const [hasFailed, setFailed] = createSignal(false);
  const [cuts, setCuts] = createSignal(0);
  let timer: ReturnType<typeof setTimeout> | undefined;
  const reader = talkReader(
    () => [],
    (read) => {
      setFailed(false);
      if (!read.cuts) {
        if (textOfWalk(walk()) === read.text) figuresIn(withFiguresFound(walk(), foundIn(read)));
        return;
      }
      setCutting(false);
      const cut = withTalk(walk(), read.text, read.cuts, foundIn(read));
      const timed = withLength(cut, cut.length);
      const told = new Set(read.cuts.map(({ room }) => room)).size;
      setCuts(cuts() + 1);
      cutInto(
        isRefusal(timed) ? cut : timed,
        `The talk is cut into ${read.cuts.length} pieces, in ${told} of ${cut.rooms.length} rooms.`,
      );
    },
    () => {
      setCutting(false);
      setFailed(true);
    },
  );
  return {
    isCutting,
    hasFailed,
    /** How often a talk was cut. */
    cuts,
    wake: () => reader.wake(),
    cut({ text, corrections }: Pick<Talk, 'text' | 'corrections'>) {
      clearTimeout(timer);
      setFailed(false);
      setCutting(true);
      const rooms = walk().rooms.map(({ name, stages }) => ({ name, stages }));
      reader.ask({ text, corrections, asksAll: false, rooms });
    },
    /** Looks for the figures anew, once nothing more is typed. */
    lookAgain() {
      clearTimeout(timer);
      timer = setTimeout(
        () => !isCutting() && reader.ask({ text: textOfWalk(walk()), corrections: [], asksAll: false }),
        REREAD,
      );
    },
    /** Leaves what is being read: another walk is opened. */
    drop() {
      clearTimeout(timer);
      reader.forget();
      setCutting(false);
    },
  };
}
