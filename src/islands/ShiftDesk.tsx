// A shift at the still: one charge by the clock, and the next. What is kept, the keys, and what is said stand here; the rest in its parts.
import { createSignal, onCleanup, onMount, Show } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import type { Action } from '../core/shift/act.ts';
import { sampleOf, type Sample } from '../core/shift/samples.ts';
import { plantPart } from '../house/parts/plant.ts';
import { usePart } from '../house/part-store.ts';
import { useHouse } from '../house/store.ts';
import { seedOfLink } from '../shift/link.ts';
import { firstShift, houseOfShift, nextOf, type ChargeDone, type Shift } from '../shift/shift.ts';
import { useAnnouncement } from './announce.ts';
import { NotKept } from './NotKept.tsx';
import { ShiftBegin } from './ShiftBegin.tsx';
import { ShiftClock, stepsOf } from './ShiftClock.tsx';
import { actionOfKey, ShiftControls } from './ShiftControls.tsx';
import { ShiftEnd } from './ShiftEnd.tsx';
import { ShiftGauges } from './ShiftGauges.tsx';
import { ShiftLog } from './ShiftLog.tsx';
import { ShiftPicture } from './ShiftPicture.tsx';
import { ShiftReading } from './ShiftReading.tsx';
import { keepShift, keptShift } from './shift-kept.ts';
import { paces, shiftRun } from './shift-run.ts';
import { signsOf } from './shift-words.ts';

const EDGE = 4; // px left over the still when it is brought into sight

export default function ShiftDesk() {
  const { mounted, name, line } = useHouse();
  const plant = usePart(plantPart);
  const [isKept, setKept] = createSignal(true);
  const [kept, setKeptShift] = createSignal<Shift>();
  const [seed, setSeed] = createSignal(1);
  const [told, setTold] = createSignal('');
  const [sample, setSample] = createSignal<Sample>();
  let desk: HTMLElement | undefined;
  const run = shiftRun((shift) => setKept(keepShift(shift)));
  const { shift, rig, state, isRunning, pace, setPace } = run;
  const focusOn = (id: string) => queueMicrotask(() => document.getElementById(id)?.focus({ preventScroll: id === 'shift-go' }));

  /** What the address and this browser hold of shifts. */
  const look = () => {
    const found = keptShift();
    if (found && !('problem' in found)) setKeptShift(found);
    const linked = seedOfLink(location.hash);
    if (typeof linked === 'number') setSeed(linked);
    const problems = [found, linked].flatMap((each) => typeof each === 'object' && 'problem' in each ? [each.problem] : []); // prettier-ignore
    setTold(problems.join(' '));
  };
  onMount(() => {
    look();
    const linked = () => {
      run.close();
      setSample(undefined);
      look();
    };
    const away = () => document.hidden && isRunning() && run.pause();
    addEventListener('hashchange', linked);
    document.addEventListener('visibilitychange', away);
    addEventListener('pagehide', run.pause);
    onCleanup(() => {
      removeEventListener('hashchange', linked);
      document.removeEventListener('visibilitychange', away);
      removeEventListener('pagehide', run.pause);
    });
  });

  const open = (next: Shift) => {
    setTold('');
    run.open(next);
    if (run.problem()) return;
    // The focus first, then all of the still into sight.
    queueMicrotask(() => {
      document.getElementById(state()?.isDone ? 'shift-end-title' : 'shift-go')?.focus({ preventScroll: true });
      if (desk) scrollTo({ top: desk.getBoundingClientRect().top + scrollY - EDGE });
    });
  };
  const begin = (number: number) => {
    const still = plant.value().spiritStills[0];
    open(firstShift(number, houseOfShift(name(), line(), still)));
  };
  const next = (made: ChargeDone) => {
    open(nextOf(shift()!, made));
  };
  const does = (action: Action) => {
    run.does(action);
    if (state()?.isDone) focusOn('shift-end-title');
  };
  const read = () => {
    run.pause();
    const found = sampleOf(rig()!, state()!);
    if (isRefusal(found)) run.say(found.refused);
    else setSample(found);
  };
  const leave = () => {
    setSample(undefined);
    focusOn('shift-go');
  };
  const toggle = () => (isRunning() ? run.pause() : (setSample(undefined), run.run()));
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey || !state() || state()!.isDone) return;
    if ((event.target as Element).closest('input, textarea, select')) return;
    const key = event.key.toLowerCase();
    const place = '1234'.indexOf(key);
    const action = actionOfKey(key, state()!);
    if (key === 'p') toggle();
    else if (key === 'g') {
      run.pause();
      run.goOn(stepsOf(pace()));
    }
    else if (key === 'h') read();
    else if (place >= 0 && key !== '') setPace(paces[place]!);
    else if (action) does(action);
    else return;
    event.preventDefault();
  };
  const signs = () => (rig() && state() ? signsOf(rig()!, state()!) : []);

  useAnnouncement(
    'shift',
    () => [run.said(), run.problem(), told()],
    () => [run.said(), run.problem(), told()].filter(Boolean).join(' '),
    () => desk,
  );

  return (
    <section class="calculator shift" ref={desk} aria-label="A shift at the still" onKeyDown={press}>
      <div role="status">
        <Show when={told() || run.problem()}>
          <p class="problem">{[told(), run.problem()].filter(Boolean).join(' ')}</p>
        </Show>
        <NotKept isKept={isKept()} what="your shift" />
      </div>
      <Show when={!shift() || run.problem()}>
        <ShiftBegin seed={seed()} house={name()} kept={kept()} isReady={mounted()} begin={begin} goOn={open} />
      </Show>
      <Show when={run.isReplaying()}>
        <p>The shift is run again to where it stood.</p>
      </Show>
      <Show when={rig() && state()}>
        <Show
          when={!state()!.isDone}
          fallback={<ShiftEnd rig={rig()!} state={state()!} shift={shift()!} next={next} />}
        >
          <ShiftClock run={run} toggle={toggle} />
          <Show
            when={sample()}
            fallback={
              <>
                <div class="shift-view">
                  <ShiftPicture rig={rig()!} state={state()!} />
                  <ShiftGauges rig={rig()!} state={state()!} />
                </div>
                <div class="shift-sign" data-sign={signs().length > 0 ? '' : undefined}>
                  <Show when={signs()[0]} fallback={<p>{run.said() || `Shift ${shift()!.seed}, round ${shift()!.done.length + 1}. Shut the still, put on water, then steam.`}</p>}>
                    {(sign) => (
                      <>
                        <p>
                          <strong>{sign().title}</strong> {sign().usual}
                        </p>
                      </>
                    )}
                  </Show>
                </div>
                <ShiftControls state={state()!} does={does} read={read} />
              </>
            }
          >
            {(now) => (
              <ShiftReading
                sample={now()}
                leave={leave}
                write={(shown, made) => {
                  does({ do: 'read', read: shown, corrected: made });
                  leave();
                }}
              />
            )}
          </Show>
          <label class="tick stops">
            <input type="checkbox" checked={run.doesStop()} onChange={(event) => run.setStop(event.currentTarget.checked)} />{' '}
            The clock stops when something happens
          </label>
        </Show>
        <ShiftLog shift={shift()!} state={state()!} write={(text) => void run.does({ do: 'note', text })} />
      </Show>
    </section>
  );
} // prettier-ignore
