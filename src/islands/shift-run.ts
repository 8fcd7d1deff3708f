// A shift that runs: its clock, what is done at it, and what it says. The physics is the core's; this only calls it.
import { batch, createMemo, createSignal, onCleanup, untrack } from 'solid-js';
import { act, type Action, type Logged } from '../core/shift/act.ts';
import { LONGEST } from '../core/shift/replay.ts';
import { rigFor, STEP, type Rig } from '../core/shift/rig.ts';
import { beginShift, type ShiftState } from '../core/shift/state.ts';
import { stepShift } from '../core/shift/step.ts';
import { drawEvents } from '../shift/draw.ts';
import { setupOf, type Shift } from '../shift/shift.ts';
import { MOST_ACTIONS } from '../shift/text.ts';
import { happenings, stops } from './shift-words.ts';
import { whys } from '../core/shift/score.ts';

/** Seconds of the run in one of ours. */
export const paces = [300, 60, 10, 1] as const;
const TICK = 200; // ms from one look at the clock to the next
const MOST = 60; // steps in one look: no more than the fastest pace asks for
const PORTION = 150; // steps of a shift that is run again, in one task
const SLOW = 10; // s of the run in one of ours while something wants attention and the clock does not stop

export function shiftRun(keep: (shift: Shift) => void) {
  const [shift, setShift] = createSignal<Shift>();
  const [charge, setCharge] = createSignal<Shift>(); // the shift as it was opened: the rig is made anew only for another charge
  const [state, setState] = createSignal<ShiftState>();
  const [isRunning, setRunning] = createSignal(false);
  const [isReplaying, setReplaying] = createSignal(false);
  const [pace, setPace] = createSignal<number>(60);
  const [doesStop, setStop] = createSignal(true);
  const [said, setSaid] = createSignal('', { equals: false }); // said again when it is the same again
  const [problem, setProblem] = createSignal('');
  let [owed, last] = [0, 0];
  let timer: ReturnType<typeof setInterval> | undefined;

  const rig = createMemo<Rig | undefined>(() => {
    const now = charge();
    const rigged = now && rigFor(setupOf(now), drawEvents(now.seed, now.done.length + 1));
    if (rigged && 'refused' in rigged) {
      setProblem(`This charge cannot be run by the house’s cuts: ${rigged.refused}`);
      return undefined;
    }
    return rigged;
  });
  const pause = () => {
    clearInterval(timer);
    timer = undefined;
    if (isRunning()) setRunning(false);
    keepNow();
  };
  const keepNow = () => {
    const [now, at] = untrack(() => [shift(), state()] as const);
    if (now && at) keep({ ...now, step: at.step });
  };

  /** Goes on by so many steps, or until something happens at which the clock stops. */
  const goOn = (steps: number) => {
    const own = rig();
    let now = state();
    if (!own || !now) return;
    for (let i = 0; i < steps && !now.isDone && now.step < LONGEST; i++) {
      const before: ShiftState = now;
      now = stepShift(own, before);
      const happened = now.happened.slice(before.happened.length);
      const wrong = now.wrong.slice(before.wrong.length);
      if (happened.length + wrong.length === 0) continue;
      const says = [...happened.map(({ id }) => happenings[id]), ...wrong.map(({ id }) => whys[id][1])].join(' '); // prettier-ignore
      const isToStop = wrong.length > 0 || happened.some(({ id }) => stops.includes(id));
      batch(() => {
        setState(now);
        setSaid(says);
        if (isToStop && doesStop()) pause();
        else if (isToStop) setPace(Math.min(pace(), SLOW));
      });
      if (isToStop) break;
    }
    setState(now);
  };
  const tick = () => {
    const at = performance.now();
    owed += ((at - last) / 1000) * pace();
    last = at;
    const steps = Math.floor(owed / STEP);
    owed -= steps * STEP;
    if (steps > 0) goOn(Math.min(MOST, steps));
    const now = state();
    if (!now || now.isDone || now.step >= LONGEST) pause();
  };
  const run = () => {
    if (isRunning() || !state() || state()!.isDone) return;
    [owed, last] = [0, performance.now()];
    setRunning(true);
    timer = setInterval(tick, TICK);
  };
  onCleanup(() => clearInterval(timer));

  /** Does something now, and writes it into the log; false when the log is full. */
  const does = (action: Action): boolean => {
    const [own, at, now] = [rig(), state(), shift()];
    if (!own || !at || !now) return false;
    if (now.log.length >= MOST_ACTIONS) return (setSaid('The log is full.'), false);
    const acted = act(own, at, action);
    batch(() => {
      setShift({ ...now, log: [...now.log, { step: at.step, action }] });
      setState(acted.state);
      if (acted.says) setSaid(acted.says);
      if (acted.state.isDone) pause();
    });
    keepNow();
    return true;
  };

  /** Opens a shift and runs it to where it stood, a portion at a time so that the page stays awake. */
  const open = (next: Shift) => {
    pause();
    batch(() => {
      setProblem('');
      setSaid('');
      setShift(next);
      setCharge(next);
      setState(undefined);
    });
    const own = rig();
    if (!own) return;
    if (next.step === 0 && next.log.length === 0) {
      setState(beginShift(own));
      return void keepNow();
    }
    setReplaying(true);
    const log: readonly Logged[] = next.log;
    let [at, done] = [beginShift(own), 0];
    const portion = () => {
      if (charge() !== next) return; // another was opened meanwhile
      for (let i = 0; ; i++) {
        for (; done < log.length && log[done]!.step <= at.step; done++)
          at = act(own, at, log[done]!.action).state;
        if (at.step >= next.step || at.isDone) break;
        if (i === PORTION) return void setTimeout(portion);
        at = stepShift(own, at);
      }
      batch(() => {
        setState(at);
        setReplaying(false);
      });
    };
    portion();
  };
  const close = () => {
    pause();
    batch(() => {
      setShift(undefined);
      setCharge(undefined);
      setState(undefined);
    });
  };
  return { shift, rig, state, isRunning, isReplaying, pace, setPace, doesStop, setStop, said, say: setSaid, problem, run, pause, goOn, does, open, close }; // prettier-ignore
}
export type ShiftRun = ReturnType<typeof shiftRun>;
