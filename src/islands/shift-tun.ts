// A shift at a mash tun, as the desk has it: grist and water in, iodine, the run-off, two more waters, and the draff out.
import { formatNumber as n } from '../core/format.ts';
import { isRefusal } from '../core/refusal.ts';
import { isMark } from '../core/shift/course.ts';
import { isLiquorTemperature, sampleOfWort, tunCourse, wortOf, type Action } from '../core/shift/tun/act.ts';
import { rigOfTun, TUN_STEP, type Rig } from '../core/shift/tun/rig.ts';
import { goalsOfTun, scoreOfTun, tunWrongs } from '../core/shift/tun/score.ts';
import type { Happening, TunState } from '../core/shift/tun/state.ts';
import { CLOUDY_ABOVE, drainable } from '../core/shift/tun/step.ts';
import { withNext } from '../shift/kept.ts';
import { drawTunEvents } from '../shift/tun/draw.ts';
import { houseOfTun, setupOfTun, type TunDone, type TunShift } from '../shift/tun/shift.ts';
import { decodeTun, encodeTun } from '../shift/tun/text.ts';
import { gravityJar, gravityStem, hoursAt, SITE } from './shift-hours.ts';
import { ShiftPictureTun } from './ShiftPictureTun.tsx';
import type { Control, EndTold, Post, Sign } from './shift-post.ts';

const happenings: Readonly<Record<Happening, string>> = {
  mashed: 'The mash is in.',
  'clear-run': 'The run-off is clear.',
  pulls: 'The bed pulls down; less runs.',
  set: 'The bed is set: nothing runs.',
  freed: 'The bed is free again.',
  sunk: 'The first wort has sunk to the top of the bed.',
  'water-in': 'The water is in.',
  asks: 'Somebody wants to reach in by the hatch and clear a rake.',
  drained: 'The bed has drained.',
};

function keyed(key: string, _: Rig, state: TunState): Action | undefined {
  const liquor = (by: number): Action | undefined =>
    isLiquorTemperature(state.liquor + by) ? { do: 'liquor', to: state.liquor + by } : undefined;
  const valve = (by: number): Action | undefined =>
    isMark(state.valve + by) ? { do: 'valve', to: state.valve + by } : undefined;
  switch (key) {
    case 'e':
      return liquor(0.5);
    case 'd':
      return liquor(-0.5);
    case 'q':
      return liquor(5);
    case 'a':
      return liquor(-5);
    case 'r':
      return valve(1);
    case 'f':
      return valve(-1);
    case 'y':
      return state.waters === 0 ? { do: 'mash-in' } : { do: 'water' };
    case 'z':
      return { do: 'iodine' };
    case 't':
      return { do: 'run', to: 'washback' };
    case 'b':
      return { do: 'run', to: 'back' };
    case 'w':
      return { do: 'run', to: 'weak' };
    case 'u':
      return { do: 'underlet' };
    case 'j':
      return { do: 'warm' };
    case 'k':
      return { do: 'cool' };
    case 'm':
      return state.isAsked ? { do: 'let-in' } : undefined;
    case 'n':
      return state.isAsked ? { do: 'refuse' } : undefined;
    case 'o':
      return { do: 'empty' };
    default:
      return undefined;
  }
}

const controls = (_: Rig, state: TunState): readonly (readonly Control[])[] => [
  [
    {
      turn: 'Liquor',
      shows: n(state.liquor, 1),
      says: `Hot liquor at ${n(state.liquor, 1)} °C`,
      up: 'e',
      down: 'd',
      far: { by: '5', up: 'q', down: 'a' },
    },
    {
      turn: 'Run-off',
      shows: String(state.valve),
      says: `Run-off, ${state.valve} of 10`,
      up: 'r',
      down: 'f',
    },
  ],
  [
    state.waters === 0
      ? { key: 'y', label: ['Mash in'], isMain: true }
      : { key: 'y', label: ['Next water'], isMain: true, isOff: state.waters === 3 },
    { key: 'h', label: ['Hydrometer'] },
    { key: 'z', label: ['Iodine'] },
  ],
  [
    { key: 'b', label: ['Back', 'on top'] },
    { key: 't', label: ['To the', 'washback'] },
    { key: 'w', label: ['To weak', 'wort'] },
    { key: 'u', label: ['Under-', 'let'] },
    { key: 'o', label: ['Draff', 'out'] },
  ],
  [
    { key: 'j', label: ['Add', 'hot'] },
    { key: 'k', label: ['Add', 'cold'] },
    { key: 'm', label: ['Let', 'them'], isOff: !state.isAsked },
    { key: 'n', label: ['Say no', 'to it'], isOff: !state.isAsked },
  ],
];

function gauges(rig: Rig, state: TunState): readonly (readonly [string, string])[] {
  const { tight, isSet, cloud } = state;
  const isIn = state.waters > 0;
  const weak = rig.setup.weak.water > 0 ? `, ${n(rig.setup.weak.water, 0)} weak` : '';
  return [
    ['Grist', `${n(rig.setup.bed.malt, 0)} kg, ${n(rig.events.grist, 0)} °C`],
    [
      'Next water',
      state.waters < 3 ? `${n(rig.waters[state.waters]!, 0)} kg${state.waters === 0 ? weak : ''}` : 'none',
    ],
    ['Mash', isIn ? `${n(state.temperature, 1)} °C` : `wanted ${n(rig.setup.mash, 1)} °C`],
    ['Over the bed', isIn ? `${n(drainable(rig, state), 0)} kg` : '–'],
    ['Bed', isSet ? 'set' : tight < 0.25 ? 'open' : tight < 0.55 ? 'pulls' : 'pulls hard'],
    ['Runs', state.flow > 0 ? `${n(state.flow * 60, 0)} kg/h` : 'nothing'],
    ['Run-off', state.flow > 0 ? (cloud > CLOUDY_ABOVE ? 'cloudy' : 'clear') : '–'],
    ['Collected', `${n(wortOf(state.wort).volume, 0)} L`],
    ['Weak wort', `${n(wortOf(state.weak).volume, 0)} L`],
  ];
}

function signs(rig: Rig, state: TunState): readonly Sign[] {
  const sign = (is: boolean, title: string, usual: string) =>
    is ? [{ title, usual: `${usual} ${SITE}` }] : [];
  return [
    ...sign(state.isAsked, 'Somebody wants to reach into the tun.', 'What do you say?'),
    ...sign(
      state.isSet,
      'The bed is set.',
      'Usual: run-off shut, lift the bed from below, let it settle, and draw gently, back over the bed at first.',
    ),
    ...sign(
      !state.isSet && state.tight >= 0.55 && state.valve > 0,
      'The bed pulls hard, and less runs.',
      'Usual: ease the run-off at once, and wait.',
    ),
    ...sign(
      state.waters > 0 &&
        state.comes === 0 &&
        state.waters === 1 &&
        state.valve === 0 &&
        Math.abs(state.temperature - rig.setup.mash) > 1.5 &&
        state.converted < 0.5,
      `The mash stands at ${n(state.temperature, 1)} °C; the house mashes at ${n(rig.setup.mash, 1)}.`,
      'Usual: a little hot or cold water, soon. Hot water scalds.',
    ),
  ];
}

function wordsOf(action: Action): string {
  switch (action.do) {
    case 'liquor':
      return `Hot liquor to ${n(action.to, 1)} °C`;
    case 'valve':
      return action.to === 0 ? 'Run-off shut' : `Run-off to ${action.to}`;
    case 'run':
      return {
        back: 'Run-off back over the bed',
        washback: 'Run-off to the washback',
        weak: 'Run-off to weak wort',
      }[action.to];
    case 'mash-in':
      return 'Mash in';
    case 'water':
      return 'Next water';
    case 'warm':
      return 'Hot water added';
    case 'cool':
      return 'Cold water added';
    case 'iodine':
      return 'Iodine test';
    case 'underlet':
      return 'Underlet';
    case 'let-in':
      return 'Somebody let to the open tun';
    case 'refuse':
      return 'Nobody let in';
    case 'empty':
      return 'Draff out';
    case 'read':
      return `Hydrometer ${n(action.read, 4)}, at 20 °C ${n(action.corrected, 4)}`;
    case 'note':
      return action.text;
  }
}

function end(rig: Rig, state: TunState, shift: TunShift): EndTold<TunDone> {
  const score = scoreOfTun(rig, state);
  const { goal } = rig;
  const made = wortOf(state.wort);
  const room = Math.min(1, rig.waters[0] / Math.max(1, state.weak.water)); // more weak wort than the first water takes is let go
  const done: TunDone = {
    ...made,
    water: room * state.weak.water,
    extract: room * state.weak.extract,
    score: score.total,
  };
  const [weak, goalWeak] = [wortOf(state.weak), wortOf(goal.weak)];
  return {
    score,
    done,
    made: `Mash ${shift.done.length + 1}`,
    compared: [
      ['First water, °C', n(state.temperatures[0] ?? 0, 1), n(goal.strike, 1)],
      ['Wort, L', n(made.volume, 0), n(goal.volume, 0)],
      ['Its gravity', n(made.gravity, 4), n(goal.gravity, 4)],
      ['Extract in it, kg', n(state.wort.extract, 0), n(goal.wort.extract, 0)],
      ['Weak wort, L', n(weak.volume, 0), n(goalWeak.volume, 0)],
      ['Its gravity', n(weak.gravity, 4), n(goalWeak.gravity, 4)],
      [
        'Left in the draff, kg',
        n(state.mobile.extract + state.kept.extract, 0),
        n(rig.extract + rig.setup.weak.extract - goal.wort.extract - goal.weak.extract, 0),
      ],
    ],
    rounds:
      'The weak wort is part of the next first water, so each mash lends to the next until as much is lent as is borrowed.',
    heads: ['Round', 'wort, L', 'gravity', 'weak wort, kg extract', 'points'],
    rows: [...shift.done, done].map((each, i) => [
      String(i + 1),
      n(each.volume, 0),
      n(each.gravity, 4),
      n(each.extract, 0),
      String(each.score),
    ]),
  };
}

export const tunPost: Post<Rig, TunState, Action, TunDone, TunShift> = {
  id: 'shift-mash-tun',
  title: 'A shift at a mash tun',
  place: 'mash tun',
  words: { at: 'tun', round: 'mash' },
  course: tunCourse,
  paces: [
    { steps: 10 / TUN_STEP, name: '10 min', after: ' a second' },
    { steps: 5 / TUN_STEP, name: '5 min', after: ' a second' },
    { steps: 1 / TUN_STEP, name: '1 min', after: ' a second' },
    { steps: 1, name: '30 s', after: ' a second' },
  ],
  clock: (step) => hoursAt((step * TUN_STEP) / 60),
  first: (seed, name, line) => ({ seed, house: houseOfTun(name, line), done: [], log: [], step: 0 }),
  rig: (shift) => rigOfTun(setupOfTun(shift), drawTunEvents(shift.seed, shift.done.length + 1)),
  next: withNext,
  encode: encodeTun,
  decode: decodeTun,
  happenings,
  stops: ['mashed', 'clear-run', 'pulls', 'set', 'sunk', 'water-in', 'asks', 'drained'],
  whys: tunWrongs,
  turned: ['liquor', 'valve'],
  told: ['iodine'],
  wordsOf,
  signs,
  opening: 'Set the hot liquor for the grist of today, and mash in.',
  gauges,
  gaugesName: 'At the mash tun now',
  controls,
  keyed,
  hydrometer: {
    stem: gravityStem,
    jar: (rig, state) => {
      const sample = sampleOfWort(rig, state);
      return isRefusal(sample) ? sample : gravityJar(sample);
    },
  },
  Picture: ShiftPictureTun,
  names: { mash: 'Temperature of the mash', iodine: 'Iodine', bed: 'The bed', gravity: 'Gravity', volume: 'Litres', extract: 'Extract', waters: 'Later waters', readings: 'Readings', care: 'Care, dangers apart', danger: 'Danger' },
  goals: goalsOfTun,
  end,
}; // prettier-ignore
