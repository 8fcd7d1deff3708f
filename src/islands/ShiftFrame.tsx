// The desk of every shift: what begins, what is kept, the keys, and what is said stand here; the rest in its parts and in what the kind says of itself.
import { createSignal, onCleanup, onMount, Show } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import type { Moment, LogNote, LogRead } from '../core/shift/course.ts';
import { useHouse } from '../browser/house-store.ts';
import type { KeptShift } from '../shift/kept.ts';
import { seedOfLink } from '../shift/link.ts';
import { useAnnouncement } from './announce.ts';
import { NotKept } from './NotKept.tsx';
import { ShiftBegin } from './ShiftBegin.tsx';
import { ShiftClock } from './ShiftClock.tsx';
import { ShiftControls } from './ShiftControls.tsx';
import { ShiftEnd } from './ShiftEnd.tsx';
import { ShiftGauges } from './ShiftGauges.tsx';
import { ShiftGoals } from './ShiftGoals.tsx';
import { ShiftLog } from './ShiftLog.tsx';
import { ShiftReading } from './ShiftReading.tsx';
import { keeperOf } from './shift-kept.ts';
import type { Jar, Post } from './shift-post.ts';
import { isUntouched, shiftRun, stepsOf } from './shift-run.ts';

const EDGE = 4; // px left over the desk when it is brought into sight

export function ShiftFrame<R, S extends Moment, A extends LogNote | LogRead | { readonly do: string }, D, K extends KeptShift<{ readonly name: string }, D, A>>(props: { readonly post: Post<R, S, A, D, K> }) {
  const { post } = props; // what a kind says of itself does not change
  const { mounted, name, line } = useHouse();
  const keeper = keeperOf<K>(post.id, post.encode, post.decode);
  const [isKept, setKept] = createSignal(true);
  const [kept, setKeptShift] = createSignal<K>();
  const [isOver, setOver] = createSignal(false); // the kept one
  const [seed, setSeed] = createSignal(1);
  const [told, setTold] = createSignal('');
  const [sample, setSample] = createSignal<Jar>();
  let desk: HTMLElement | undefined;
  const run = shiftRun(post, (shift) => setKept(keeper.keep(shift)), keeper);
  const { shift, rig, state, isRunning, pace, setPace } = run;
  const focusOn = (id: string) => queueMicrotask(() => document.getElementById(id)?.focus({ preventScroll: id === 'shift-go' }));

  /** What the address and this browser hold of shifts. */
  const look = () => {
    const found = keeper.kept();
    setOver(false);
    if (found && !('problem' in found)) {
      setKeptShift(() => found);
      run.askIsOver(found, () => kept() === found && !shift(), () => setOver(true));
    }
    const linked = seedOfLink(location.hash);
    if (typeof linked === 'number') setSeed(linked);
    const problems = [found, linked].flatMap((each) => typeof each === 'object' && 'problem' in each ? [(each as { problem: string }).problem] : []); // prettier-ignore
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

  const open = (next: K) => {
    setTold('');
    // The focus first, then all of the still into sight.
    const show = () => {
      document.getElementById(state()?.isDone ? 'shift-end-title' : 'shift-go')?.focus({ preventScroll: true });
      if (desk) scrollTo({ top: desk.getBoundingClientRect().top + scrollY - EDGE });
    };
    run.open(next, () => queueMicrotask(show));
  };
  const begin = (number: number) => {
    const first = post.first(number, name(), line());
    if (isRefusal(first)) setTold(first.refused);
    else open(first);
  };
  const next = (made: D) => open(post.next(shift()!, made));
  const does = (action: A) => {
    run.does(action);
    if (state()?.isDone) focusOn('shift-end-title');
  };
  const read = (): void => {
    if (!post.hydrometer) return;
    run.pause();
    const found = post.hydrometer.jar(rig()!, state()!);
    if (isRefusal(found)) return void run.say(found.refused);
    const { fetch } = post.hydrometer;
    if (!fetch || run.does(fetch)) setSample(found);
  };
  const stepOn = () => {
    run.pause();
    run.goOn(stepsOf(pace()));
    if (state()?.isDone) focusOn('shift-end-title');
  };
  /** Does what a key asks for; false where it asks for nothing. */
  const pressed = (key: string): boolean => {
    const place = '1234'.indexOf(key);
    if (key === 'p') toggle();
    else if (key === 'g') stepOn();
    else if (key === 'h' && post.hydrometer) read();
    else if (place >= 0 && key !== '') setPace(post.paces[place]!.steps);
    else {
      const action = post.keyed(key, rig()!, state()!);
      if (!action) return false;
      does(action);
    }
    return true;
  };
  const leave = () => {
    setSample(undefined);
    focusOn('shift-go');
  };
  const toggle = (): void => isRunning() ? run.pause() : (setSample(undefined), run.run());
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey || !state() || state()!.isDone) return;
    if ((event.target as Element).closest('input, textarea, select')) return;
    if (pressed(event.key.toLowerCase())) event.preventDefault();
  };
  const signs = () => (rig() && state() ? post.signs(rig()!, state()!) : []);

  useAnnouncement(
    'shift',
    () => [run.said(), run.problem(), told()],
    () => [run.said(), run.problem(), told()].filter(Boolean).join(' '),
    () => desk,
  );

  return (
    <section class="calculator shift" ref={desk} aria-label={post.title} onKeyDown={press}>
      <div role="status">
        <Show when={told() || run.problem()}>
          <p class="problem">{[told(), run.problem()].filter(Boolean).join(' ')}</p>
        </Show>
        <NotKept isKept={isKept()} what="your shift" />
      </div>
      <Show when={!shift() || run.problem()}>
        <ShiftBegin seed={seed()} place={`${name()}’s ${post.place}`} kept={kept()} isToLose={kept() !== undefined && !isOver() && !(isUntouched(kept()!) && kept()!.done.length === 0)} isOver={isOver()} clock={post.clock} isReady={mounted()} begin={begin} goOn={open} />
      </Show>
      <Show when={run.isReplaying()}>
        <p>The shift is run again to where it stood.</p>
      </Show>
      <Show when={rig() && state()}>
        <Show
          when={!state()!.isDone}
          fallback={<ShiftEnd post={post} rig={rig()!} state={state()!} shift={shift()!} next={next} />}
        >
          <ShiftClock
            time={post.clock(state()!.step)}
            isRunning={isRunning()}
            pace={pace()}
            paces={post.paces}
            setPace={setPace}
            toggle={toggle}
            stepOn={stepOn}
          />
          <Show
            when={sample()}
            fallback={
              <>
                <div class="shift-view">
                  <post.Picture rig={rig()!} state={state()!} />
                  <ShiftGauges name={post.gaugesName} rows={post.gauges(rig()!, state()!)} />
                </div>
                <div class="shift-sign" data-sign={signs().length > 0 ? '' : undefined}>
                  <Show when={run.said() || signs().length === 0}>
                    <p>{run.said() || `Shift ${shift()!.seed}, round ${shift()!.done.length + 1}. ${post.opening}`}</p>
                  </Show>
                  <Show when={signs()[0]}>
                    {(sign) => (
                      <p>
                        <strong>{sign().title}</strong> {sign().usual}
                      </p>
                    )}
                  </Show>
                </div>
                <ShiftControls rows={post.controls(rig()!, state()!)} press={(key) => void pressed(key)} />
              </>
            }
          >
            {(now) => (
              <ShiftReading
                jar={now()}
                stem={post.hydrometer!.stem}
                leave={leave}
                write={(shown, made) => {
                  does({ do: 'read', read: shown, corrected: made } as A);
                  leave();
                }}
              />
            )}
          </Show>
          <label class="tick stops">
            <input type="checkbox" checked={run.doesStop()} onChange={(event) => run.setStop(event.currentTarget.checked)} />{' '}
            The clock stops when something happens
          </label>
          <ShiftGoals goals={post.goals(rig()!)} names={post.names} />
        </Show>
        <ShiftLog post={post} shift={shift()!} state={state()!} came={run.came()} write={(text) => void run.does({ do: 'note', text } as A)} />
      </Show>
    </section>
  );
} // prettier-ignore
