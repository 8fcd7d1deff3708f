// A shift that runs: its clock, what is done at it, and what it says. The physics is the core's; this only calls it.
import { batch, createMemo, createSignal, onCleanup, untrack } from 'solid-js';
import type { Moment } from '../core/shift/course.ts';
import type { KeptShift } from '../shift/kept.ts';
import { MOST_ACTIONS } from '../shift/text.ts';
import { runAgain } from './shift-again.ts';
import type { Desk } from './shift-kept.ts';
import { outcomeInLog } from './shift-log.ts';
import type { Post } from './shift-post.ts';
import { isRefusal } from '../core/refusal.ts';

const TICK = 200; // ms from one look at the clock to the next

/** Where the desk is kept beside the shift. */
interface Desks {
  readonly desk: () => Desk | undefined;
  readonly keepDesk: (desk: Desk) => boolean;
}

/** Steps that the clock goes on by at one press: what the pace makes of a second, or one step. */
export const stepsOf = (pace: number): number => Math.max(1, Math.round(pace));

/** True for a round in which nothing was done yet. */
export const isUntouched = ({ step, log }: KeptShift<unknown, unknown, unknown>): boolean =>
  step === 0 && log.length === 0;

export function shiftRun<
  R,
  S extends Moment,
  A extends { readonly do: string },
  D,
  K extends KeptShift<{ readonly name: string }, D, A>,
>(post: Post<R, S, A, D, K>, keep: (shift: K) => void, desk: Desks) {
  const { course, paces } = post;
  const [shift, setShift] = createSignal<K>();
  const [opened, setOpened] = createSignal<K>(); // the shift as it was opened: the rig is made anew only for another round
  const [state, setState] = createSignal<S>();
  const [came, setCame] = createSignal<readonly string[]>([]); // of each action of the log
  const [isRunning, setRunning] = createSignal(false);
  const [isReplaying, setReplaying] = createSignal(false);
  const [pace, setPace] = createSignal<number>(paces[1]!.steps);
  const [doesStop, setStop] = createSignal(true);
  const [said, setSaid] = createSignal('', { equals: false }); // said again when it is the same again
  const [problem, setProblem] = createSignal('');
  const slow = paces[2]!.steps; // while something wants attention and the clock does not stop
  const most = paces[0]!.steps; // no more in one look than the fastest pace makes of a second
  let [owed, last] = [0, 0];
  let timer: ReturnType<typeof setInterval> | undefined;

  const rig = createMemo<R | undefined>(() => {
    const now = opened();
    const rigged = now && post.rig(now);
    if (rigged && typeof rigged === 'object' && isRefusal(rigged)) {
      setProblem(
        `This round cannot be run by the house’s figures: ${(rigged as { refused: string }).refused}`,
      );
      return undefined;
    }
    return rigged as R | undefined;
  });
  const pause = () => {
    clearInterval(timer);
    timer = undefined;
    if (isRunning()) setRunning(false);
    keepNow();
  };
  const keepNow = () => {
    const [now, at] = untrack(() => [shift(), state()] as const);
    if (!now || !at) return;
    keep({ ...now, step: at.step });
    const [fast, last] = untrack(() => [pace(), said()] as const);
    desk.keepDesk({ seed: now.seed, round: now.done.length, step: at.step, pace: fast, said: last });
  };

  /** Goes on by so many steps, or until something happens at which the clock stops. */
  const goOn = (steps: number) => {
    const own = rig();
    let now = state();
    if (!own || !now) return;
    for (let i = 0; i < steps && !now.isDone && now.step < course.longest; i++) {
      const before: S = now;
      now = course.step(own, before);
      const happened = now.happened.slice(before.happened.length);
      const wrong = now.wrong.slice(before.wrong.length);
      if (happened.length + wrong.length === 0) continue;
      const says = [...happened.map(({ id }) => post.happenings[id as keyof typeof post.happenings]), ...wrong.map(({ id }) => post.whys[id as keyof typeof post.whys][1])].join(' '); // prettier-ignore
      const isToStop =
        wrong.length > 0 || happened.some(({ id }) => (post.stops as readonly string[]).includes(id));
      batch(() => {
        setState(() => now);
        setSaid(says);
        if (isToStop && doesStop()) pause();
        else if (isToStop) setPace(Math.min(pace(), slow));
      });
      if (isToStop) break;
    }
    setState(() => now);
  };
  const tick = () => {
    const at = performance.now();
    owed += ((at - last) / 1000) * pace();
    last = at;
    const steps = Math.floor(owed);
    owed -= steps;
    if (steps > 0) goOn(Math.min(most, steps));
    const now = state();
    if (!now || now.isDone || now.step >= course.longest) pause();
  };
  const run = () => {
    if (isRunning() || !state() || state()!.isDone) return;
    [owed, last] = [0, performance.now()];
    setRunning(true);
    timer = setInterval(tick, TICK);
  };
  onCleanup(() => clearInterval(timer));

  /** Does something now, and writes it into the log; false when it was refused, or the log is full. */
  const does = (action: A): boolean => {
    const [own, at, now] = [rig(), state(), shift()];
    if (!own || !at || !now) return false;
    if (now.log.length >= MOST_ACTIONS) return (setSaid('The log is full.'), false);
    const acted = course.act(own, at, action);
    batch(() => {
      setShift(() => ({ ...now, log: [...now.log, { step: at.step, action }] }));
      setCame([...came(), outcomeInLog(at, acted, post.told.includes(action.do))]);
      setState(() => acted.state);
      if (acted.says) setSaid(acted.says);
      if (acted.state.isDone) pause();
    });
    keepNow();
    return !acted.isRefused;
  };

  /** Opens a shift and runs it to where it stood; then calls `then`. */
  const open = (next: K, then: () => void) => {
    pause();
    batch(() => {
      setProblem('');
      setSaid('');
      setCame([]);
      setShift(() => next);
      setOpened(() => next);
      setState(undefined);
    });
    const own = rig();
    if (!own) return;
    setReplaying(true);
    runAgain(post, own, next, () => opened() === next, (again) => {
      batch(() => {
        setCame(again.came);
        setState(() => again.state);
        setReplaying(false);
        const left = desk.desk();
        if (left && left.seed === next.seed && left.round === next.done.length && left.step === again.state.step && !isUntouched(next)) {
          setSaid(left.said || standsAt(next, again.state));
          if (paces.some(({ steps }) => steps === left.pace)) setPace(left.pace);
        } else if (!isUntouched(next)) setSaid(standsAt(next, again.state));
      });
      keepNow();
      then();
    }); // prettier-ignore
  };
  const standsAt = ({ seed, done }: K, { step, happened }: S) => {
    const last = happened.at(-1);
    return `Shift ${seed}, round ${done.length + 1}, stands at ${post.clock(step)}.${last ? ` Last: ${post.happenings[last.id as keyof typeof post.happenings]}` : ''}`;
  }; // prettier-ignore
  /** Tells of a kept shift whether it has come to its end. */
  const askIsOver = (kept: K, isWanted: () => boolean, then: () => void) => {
    const own = post.rig(kept);
    if (own && typeof own === 'object' && isRefusal(own)) return;
    runAgain(post, own as R, kept, isWanted, ({ state }) => state.isDone && then());
  };
  const close = () => {
    pause();
    batch(() => {
      setShift(undefined);
      setOpened(undefined);
      setState(undefined);
    });
  };
  return { shift, rig, state, came, askIsOver, isRunning, isReplaying, pace, setPace, doesStop, setStop, said, say: setSaid, problem, run, pause, goOn, does, open, close }; // prettier-ignore
}
