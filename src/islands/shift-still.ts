// A shift at the still, as the desk has it: one charge of low wines from steam on to the last feints.
import { formatNumber as n } from '../core/format.ts';
import { isRefusal } from '../core/refusal.ts';
import { celsius, strength, type Spirit } from '../core/quantity.ts';
import { isMark } from '../core/shift/course.ts';
import { stillCourse, valves, type Action, type Valve } from '../core/shift/still/act.ts';
import { backOf, madeOf } from '../core/shift/still/made.ts';
import { houseBegins, rigOfStill, STILL_STEP, type Rig } from '../core/shift/still/rig.ts';
import { correctedTo20, sampleOfSafe } from '../core/shift/still/samples.ts';
import { goalsOfStill, scoreOfStill, stillWrongs } from '../core/shift/still/score.ts';
import type { ShiftState } from '../core/shift/still/state.ts';
import { flowOf, litresOver } from '../core/shift/still/step.ts';
import { drawStillEvents } from '../shift/still/draw.ts';
import {
  firstStillShift,
  houseOfStill,
  nextOfShift,
  setupOfStill,
  type ChargeDone,
  type OwnStill,
  type StillShift,
} from '../shift/still/shift.ts';
import { decodeStill, encodeStill } from '../shift/still/text.ts';
import { ShiftPictureStill } from './ShiftPictureStill.tsx';
import type { Control, EndTold, Post } from './shift-post.ts';
import {
  stillClock,
  stillHappenings,
  stillSigns,
  stillStops,
  stillActionWords,
} from './shift-still-words.ts';

const keyOfValve: Readonly<Record<Valve, string>> = { charging: 'c', air: 'a', manhole: 'm' };
const isOpen = (state: ShiftState, valve: Valve) =>
  ({ charging: state.isChargingOpen, air: state.isAirOpen, manhole: state.isManholeOpen })[valve];

function keyed(key: string, _: Rig, state: ShiftState): Action | undefined {
  const mark = (what: 'steam' | 'water', by: number): Action | undefined =>
    isMark(state[what] + by) ? { do: what, to: state[what] + by } : undefined;
  const valve = valves.find((each) => keyOfValve[each] === key);
  if (valve) return { do: valve, open: !isOpen(state, valve) };
  switch (key) {
    case 'e':
      return mark('steam', 1);
    case 'd':
      return mark('steam', -1);
    case 'r':
      return mark('water', 1);
    case 'f':
      return mark('water', -1);
    case 't':
      return { do: 'spout', to: state.spout === 'spirit' ? 'feints' : 'spirit' };
    case 'z':
      return { do: 'haze' };
    case 'n':
      return state.isAsked ? { do: 'refuse' } : undefined;
    case 'o':
      return { do: 'discharge' };
    default:
      return undefined;
  }
}

const controls = (_: Rig, state: ShiftState): readonly (readonly Control[])[] => [
  [
    { turn: 'Steam', shows: String(state.steam), says: `Steam, ${state.steam} of 10`, up: 'e', down: 'd' },
    { turn: 'Water', shows: String(state.water), says: `Water, ${state.water} of 10`, up: 'r', down: 'f' },
  ],
  [
    { key: 't', label: [state.spout === 'spirit' ? 'Spout to feints' : 'Spout to spirit'], isMain: true },
    { key: 'h', label: ['Hydrometer'] },
    { key: 'z', label: ['Haze test'] },
  ],
  [
    ...valves.map((valve): Control => ({
      key: keyOfValve[valve],
      label: [isOpen(state, valve) ? 'Shut' : 'Open', valve],
    })),
    { key: 'o', label: ['Run off', 'lees'] },
    { key: 'n', label: ['Say no', 'to it'], isOff: !state.isAsked },
  ],
];

function gauges(_: Rig, state: ShiftState): readonly (readonly [string, string])[] {
  const runs = state.flow > 0;
  const { froth } = state;
  return [
    ['Charge', `${n(state.temperature, 1)} °C`],
    ['Head', `${n(state.head, 0)} °C`],
    ['Pressure', `${n(state.pressure, 1)} kPa`],
    [
      'Sight glass',
      froth === 0
        ? 'none'
        : froth < 0.25
          ? 'low'
          : froth < 0.5
            ? 'a third up'
            : froth < 1
              ? 'half up or more'
              : 'over the neck',
    ],
    ['Flow', runs ? `${n(flowOf(state), 0)} L/h` : 'none'],
    ['Spirit, warm', runs ? `${n(state.safe, 0)} °C` : '–'],
    ['Come over', `${n(litresOver(state), 0)} L`],
    ['Water leaves', runs ? `${n(state.leaves, 0)} °C` : '–'],
    ['Spout', state.spout === 'spirit' ? 'on spirit' : 'on feints'],
  ];
}

function end(rig: Rig, state: ShiftState, shift: StillShift): EndTold<ChargeDone> {
  const made = madeOf(state, STILL_STEP);
  const { goal } = rig;
  const score = scoreOfStill(rig, state);
  const spirit = ({ volume, strength }: Spirit) => ({ volume, strength });
  const done: ChargeDone = {
    charge: shift.charge,
    heart: spirit(made.heart),
    back: spirit(backOf(state)),
    score: score.total,
  };
  const alcohol = ({ volume, strength }: Spirit) => (volume * strength) / 100;
  const isSettled = Math.abs(alcohol(done.heart) / shift.house.settles - 1) <= 0.01;
  return {
    score,
    done,
    made: `Charge ${shift.done.length + 1}`,
    compared: [
      ['Heart, L of pure alcohol', n(made.heart.alcohol, 1), n(goal.heart.alcohol, 1)],
      ['Heart, L', n(made.heart.volume, 0), n(goal.heart.volume, 0)],
      ['Heart, % vol', n(made.heart.strength, 1), n(goal.heart.strength, 1)],
      ['Heart began at, % vol', made.began > 0 ? n(made.began, 1) : '–', n(houseBegins(rig), 1)],
      ['Heart ended at, % vol', made.ended > 0 ? n(made.ended, 1) : '–', n(rig.setup.cuts.heart, 1)],
      ['Foreshots, L', n(made.foreshots.volume, 0), n(goal.foreshots.volume, 0)],
      ['Feints, L', n(made.feints.volume, 0), n(goal.feints.volume, 0)],
      ['Minutes', n(made.minutes, 0), n((rig.usualSteps * STILL_STEP) / 60, 0)],
    ],
    rounds: `Foreshots and feints go into the next charge. By its own cuts the house settles at ${n(shift.house.settles, 1)} L of pure alcohol in the heart. ${isSettled ? 'This round is within 1 % of that.' : 'This round is not there yet.'}`,
    heads: ['Round', 'charge, L', '% vol', 'heart, L pure', 'points'],
    rows: [...shift.done, done].map(({ charge, heart, score }, i) => [
      String(i + 1),
      n(charge.volume, 0),
      n(charge.strength, 1),
      n(alcohol(heart), 1),
      String(score),
    ]),
  };
}

/** The desk's still; `own` tells of the house's plant, where it has one. */
export const stillPost = (own: () => OwnStill | undefined): Post<Rig, ShiftState, Action, ChargeDone, StillShift> => ({
  id: 'shift',
  title: 'A shift at the still',
  place: 'still',
  words: { at: 'still', round: 'charge' },
  course: stillCourse,
  paces: [
    { steps: 300 / STILL_STEP, name: '5 min', after: ' a second' },
    { steps: 60 / STILL_STEP, name: '1 min', after: ' a second' },
    { steps: 10 / STILL_STEP, name: '10 s', after: ' a second' },
    { steps: 1 / STILL_STEP, name: 'real', after: ' time' },
  ],
  clock: stillClock,
  first: (seed, name, line) => firstStillShift(seed, houseOfStill(name, line, own())),
  rig: (shift) => rigOfStill(setupOfStill(shift), drawStillEvents(shift.seed, shift.done.length + 1)),
  next: nextOfShift,
  encode: encodeStill,
  decode: decodeStill,
  happenings: stillHappenings,
  stops: stillStops,
  whys: stillWrongs,
  turned: ['steam', 'water'],
  told: ['haze'],
  wordsOf: stillActionWords,
  signs: stillSigns,
  opening: 'Shut the still, put on water, then steam.',
  gauges,
  gaugesName: 'At the still now',
  controls,
  keyed,
  hydrometer: {
    stem: { kind: 'strength', limits: [0, 100], mark: 0.2, printed: 5, digits: 1, row: 1, unit: ' % vol', isDenserMore: false },
    jar: (rig, state) => {
      const sample = sampleOfSafe(rig, state);
      if (isRefusal(sample)) return sample;
      return { ...sample, at20: (shown) => correctedTo20(strength(shown), celsius(sample.temperature)) };
    },
  },
  Picture: ShiftPictureStill,
  names: { strength: 'Strength of the heart', foreshots: 'Foreshots', heart: 'End of the heart', end: 'End of the run', kept: 'Spirit kept', readings: 'Readings', care: 'Care, dangers apart', danger: 'Danger' },
  goals: goalsOfStill,
  end,
}); // prettier-ignore
