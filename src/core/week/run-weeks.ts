// Week after week run forward, each thing begun as soon as all that it needs is there, until a week repeats itself.
// tests/core/week-rules.ts goes through a week by its rules alone; tests/study/week has what integer programming found.
import { fermentationOf, HOURS_IN_WEEK, openFrom, type WorkHours } from './calendar.ts';
import { chargesInOrder, type Division, type StillGroup, type WeekCharge } from './charges.ts';

/** A kind of still run. Its charges draw from the low wines and feints receiver, but for the first, which takes wash. */
export interface StillStage {
  readonly id: 'wash' | 'intermediate' | 'spirit';
  readonly groups: readonly StillGroup[];
  /** L for each mash: charged, drawn from the receiver, given back to it, and sent to the spirit receiver. */
  readonly charged: number;
  readonly drawn: number;
  readonly back: number;
  readonly spirit: number;
}

/** What a timetable is made from; L, h. */
export interface WeekNeeds {
  readonly tuns: readonly { readonly number: number; readonly hours: number }[];
  readonly washbacks: number;
  /** Emptying and cleaning. */
  readonly turnRound: number;
  readonly short: number;
  readonly weekend: number;
  readonly wash: number;
  readonly charger: number;
  readonly receiver: number;
  readonly spiritReceiver: number;
  /** The wash stills first. */
  readonly stages: readonly StillStage[];
  readonly mashing: WorkHours;
  readonly distilling: WorkHours;
}

/** Something that takes a vessel, in steps since the first Monday's midnight. */
export interface TakenVessel {
  readonly start: number;
  readonly end: number;
  /** Which of its kind, from 0. */
  readonly vessel: number;
}
/** A washback with one mash: filling, fermenting, ready, empty, clean. */
export interface Fermented extends TakenVessel {
  readonly full: number;
  readonly ready: number;
  readonly emptied: number;
}
export interface StillRun extends TakenVessel {
  readonly charge: WeekCharge;
}
/** Mashes, washbacks with a mash, and still runs: a list for each stage. */
export interface Doings {
  readonly mashes: readonly TakenVessel[];
  readonly washbacks: readonly Fermented[];
  readonly runs: readonly (readonly StillRun[])[];
}
/** A week that repeats itself: what begins in it. Which of several like vessels it is may change from week to week. */
export interface RepeatedWeek extends Doings {
  /** What was begun before, and goes on into it. */
  readonly before: Doings;
  /** In the low wines and feints receiver at the week's beginning, L, and the most kept room for. */
  readonly stock: number;
  readonly most: number;
}
/** A week that never repeats itself: by how many hours each week falls behind the last. */
export interface Behind {
  readonly behind: number;
}

const MOST_WEEKS = 40; // run forward before a week is said not to repeat itself
const WEEKS_TO_EMPTY = 4; // within which a washback that was filled is clean again
const DROP = 1e-6; // L; less than this is rounding

/** Steps in a time; a part of one is a whole one. */
const stepsIn = (hours: number, step: number) => Math.ceil(hours / step - 1e-9);

/**
 * Weeks of the mashes that may begin at the hours `begins`, run forward in steps of `step` hours from empty vessels, but for
 * what the receiver holds at first, L.
 * A mash begins when a tun and a washback are free; a charge, when a still is free, its liquid is there and the receiver
 * has room for all that it will give; both only where they are over before the shift is. Of three kinds of still none
 * goes more than a charge ahead of the one before it. Low wines count when their run
 * is over, room for them is kept from when it begins.
 * @example runWeeks({ tuns: [{ number: 1, hours: 30 }], washbacks: 1, turnRound: 6, short: 60, weekend: 60, wash: 8000, charger: 8000, receiver: Infinity, spiritReceiver: Infinity, stages: [], mashing: { days: 1, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }, [0], 'by-mash', 1).behind // Infinity (a mash of thirty hours is never over in a day)
 */
export function runWeeks(
  needs: WeekNeeds,
  begins: readonly number[],
  division: Division,
  step: number,
  stockAtFirst = 0,
): RepeatedWeek | Behind {
  const week = Math.round(HOURS_IN_WEEK / step);
  const mashes = begins.length;
  const release = begins.map((hour) => Math.ceil(hour / step - 1e-9));
  const mayMash = openFrom(needs.mashing, step);
  const mayDistil = openFrom(needs.distilling, step);
  const tuns = needs.tuns.flatMap(({ number, hours }) =>
    Array.from({ length: number }, () => ({ steps: stepsIn(hours, step), free: 0 })),
  );
  const turnRound = stepsIn(needs.turnRound, step);
  const fermentation = Int32Array.from({ length: week }, (_, i) =>
    stepsIn(fermentationOf(i * step, needs, needs.distilling), step),
  );
  const backs = new Float64Array(Math.min(needs.washbacks, 1000));
  const stages = needs.stages.map((stage) => {
    const charges = chargesInOrder(stage.charged, mashes, stage.groups, division);
    return {
      ...stage,
      charges,
      order: stage.groups.map((_, group) => charges.flatMap((c, i) => (c.group === group ? [i] : []))),
      next: stage.groups.map(() => 0),
      steps: stage.groups.map(({ hours }) => stepsIn(hours, step)),
      free: stage.groups.map(({ number }) => new Float64Array(number)),
      firstStill: stage.groups.map((_, g) =>
        stage.groups.slice(0, g).reduce((sum, { number }) => sum + number, 0),
      ),
      runs: [] as (StillRun | undefined)[],
      over: 0,
    };
  });

  const mashed: TakenVessel[] = [];
  const fermented: { -readonly [K in keyof Fermented]: Fermented[K] }[] = [];
  const ends: { at: number; back: number }[] = []; // runs that will bring something to the receiver
  let [ready, emptied, drawnWash, inReceiver, keptRoom, now] = [0, 0, 0, stockAtFirst, stockAtFirst, 0];
  const awake = new Uint8Array((MOST_WEEKS + 2 * WEEKS_TO_EMPTY) * week); // steps at which something may begin
  const wake = (at: number) => void (awake[at] = 1);
  const stocks: number[] = [];
  const peaks: number[] = [0];

  // Three kinds of still share the receiver: none may take all that is there for the one before it.
  const inTurn = stages.length > 2;
  /** Weeks of a stage's charges that are over. */
  function weeksOver(s: number): number {
    const stage = stages[s]!;
    while ((stage.runs[stage.over]?.end ?? Infinity) <= now) stage.over++;
    const [rounds, place] = [
      Math.floor(stage.over / stage.charges.length),
      stage.over % stage.charges.length,
    ];
    return rounds + (place === 0 ? 0 : stage.charges[place - 1]!.upTo);
  }

  function beginMash(): boolean {
    const next = mashed.length;
    if (release[next % mashes]! + Math.floor(next / mashes) * week > now) return false;
    const tun = tuns.findIndex(({ free, steps }) => free <= now && mayMash[now % week]! >= steps);
    if (tun === -1) return false;
    let vessel = 0;
    for (let i = 1; i < backs.length; i++) if (backs[i]! < backs[vessel]!) vessel = i;
    if (backs[vessel]! > now) return false;
    const full = now + tuns[tun]!.steps;
    const ripe = full + fermentation[full % week]!;
    mashed.push({ start: now, end: full, vessel: tun });
    fermented.push({ start: now, full, ready: ripe, emptied: Infinity, end: Infinity, vessel });
    wake(full);
    wake(ripe);
    tuns[tun]!.free = full;
    backs[vessel] = Infinity;
    return true;
  }

  function beginCharge(s: number): boolean {
    const stage = stages[s]!;
    let any = false;
    for (const [group, order] of stage.order.entries()) {
      if (order.length === 0) continue;
      const turn = stage.next[group]!;
      const [round, place] = [Math.floor(turn / order.length), order[turn % order.length]!];
      const charge = stage.charges[place]!;
      const steps = stage.steps[group]!;
      if (mayDistil[now % week]! < steps) continue;
      const still = stage.free[group]!.findIndex((free) => free <= now);
      if (still === -1) continue;
      const [drawn, back] = [charge.part * stage.drawn * mashes, charge.part * stage.back * mashes];
      if (s === 0 ? (round + charge.upTo) * mashes > ready + 1e-9 : drawn > inReceiver + DROP) continue;
      if (inTurn && s > 0 && round + charge.upTo - charge.part > weeksOver(s - 1) + 1e-9) continue;
      if (keptRoom - drawn + back > needs.receiver + DROP) continue;
      stage.free[group]![still] = now + steps;
      stage.runs[round * stage.charges.length + place] = {
        start: now,
        end: now + steps,
        vessel: stage.firstStill[group]! + still,
        charge,
      };
      stage.next[group]!++;
      if (s === 0) drawnWash += charge.part * mashes * needs.wash;
      inReceiver -= drawn;
      keptRoom += back - drawn;
      peaks[peaks.length - 1] = Math.max(peaks.at(-1)!, keptRoom);
      ends.push({ at: now + steps, back });
      wake(now + steps);
      any = true;
    }
    return any;
  }

  function goOn(): void {
    for (let i = ends.length - 1; i >= 0; i--)
      if (ends[i]!.at <= now) inReceiver += ends.splice(i, 1)[0]!.back;
    while (ready < fermented.length && fermented[ready]!.ready <= now) ready++;
    for (let any = true; any;) {
      any = false;
      for (let s = stages.length - 1; s >= 0; s--) any = beginCharge(s) || any;
      while (emptied < ready && (emptied + 1) * needs.wash - drawnWash <= needs.charger + DROP) {
        const washback = fermented[emptied++]!;
        washback.emptied = now;
        washback.end = now + turnRound;
        backs[washback.vessel] = washback.end;
        wake(washback.end);
      }
      any = beginMash() || any;
    }
  }

  /** Steps by which the last week's beginnings come later than a week after those before; the most of all. */
  function drift(weeksBack: number): number {
    const late = (starts: readonly ({ readonly start: number } | undefined)[], each: number) => {
      const last = starts.findIndex((run) => run === undefined);
      const to = Math.floor((last === -1 ? starts.length : last) / each) * each;
      if (to < (weeksBack + 1) * each) return Infinity;
      let most = 0;
      for (let i = to - each; i < to; i++)
        most = Math.max(
          most,
          Math.abs(starts[i]!.start - starts[i - weeksBack * each]!.start - weeksBack * week),
        );
      return most;
    };
    return Math.max(
      late(mashed, mashes),
      ...stages.map(({ runs, charges }) => (charges.length === 0 ? 0 : late(runs, charges.length))),
    );
  }

  /** True when a mash or a still run was begun in a week. */
  function hasRun(index: number): boolean {
    return [mashed, ...stages.map(({ runs }) => runs)].some((list) =>
      list.some((run) => run !== undefined && run.start >= index * week),
    );
  }

  for (let w = 0; w < MOST_WEEKS + WEEKS_TO_EMPTY; w++) {
    for (const at of release) wake(w * week + at);
    for (let i = 0; i < week; i++)
      if ([mayMash, mayDistil].some((may) => may[i]! > may[(i + week - 1) % week]!)) wake(w * week + i);
  }
  const runOn = (weeks: number) => {
    while (stocks.length < weeks) {
      stocks.push(inReceiver);
      peaks.push(keptRoom);
      for (const end = stocks.length * week; now < end; now++) if (awake[now] === 1) goOn();
    }
  };
  for (let weeks = 1; weeks <= MOST_WEEKS; weeks++) {
    runOn(weeks);
    if (weeks > 2 && ends.length === 0 && !hasRun(weeks - 1)) return { behind: Infinity };
    if (weeks > 2 && drift(1) === 0 && Math.abs(stocks.at(-1)! - inReceiver) < 1) {
      runOn(weeks + WEEKS_TO_EMPTY); // until every washback of that week is clean
      return weekOf(weeks - 1);
    }
  }
  const over = drift(8);
  return { behind: over === Infinity ? Infinity : (over * step) / 8 };

  /** What begins in a week, and what has gone on since before, in steps from its Monday's midnight; ends may lie beyond it. */
  function weekOf(index: number): RepeatedWeek {
    const from = index * week;
    const moved = <T extends TakenVessel>(taken: T): T => ({
      ...taken,
      start: taken.start - from,
      end: taken.end - from,
    });
    const pick = (test: (taken: TakenVessel) => boolean): Doings => {
      const of = <T extends TakenVessel>(list: readonly (T | undefined)[]) =>
        list
          .filter((each): each is T => each !== undefined && test(each))
          .map(moved)
          .sort((a, b) => a.start - b.start);
      return {
        mashes: of(mashed),
        washbacks: of(fermented).map((each) => ({
          ...each,
          full: each.full - from,
          ready: each.ready - from,
          emptied: each.emptied - from,
        })),
        runs: stages.map(({ runs }) => of(runs)),
      };
    };
    return {
      ...pick(({ start }) => start >= from && start < from + week),
      before: pick(({ start, end }) => start < from && end > from),
      stock: stocks[index]!,
      most: peaks[index + 1]!,
    };
  }
}
