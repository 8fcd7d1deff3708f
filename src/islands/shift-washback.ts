// A shift at a washback, as the desk has it: wort in, yeast in, read by the hour, and the wash to its charger.
import { formatNumber as n } from '../core/format.ts';
import { litres20 } from '../core/quantity.ts';
import { isRefusal } from '../core/refusal.ts';
import { isMark } from '../core/shift/course.ts';
import {
  isCoolerTemperature,
  sampleOfWash,
  washbackCourse,
  type Action,
} from '../core/shift/washback/act.ts';
import { chargerFree, rigOfWashback, WASHBACK_STEP, type Rig } from '../core/shift/washback/rig.ts';
import { goalsOfWashback, scoreOfWashback, washbackWrongs } from '../core/shift/washback/score.ts';
import type { Happening, WashbackState } from '../core/shift/washback/state.ts';
import { hourSinceFirstWort, washOf } from '../core/shift/washback/step.ts';
import { WATER_DENSITY } from '../core/spirit/density.ts';
import { withNext } from '../shift/kept.ts';
import { drawWashbackEvents } from '../shift/washback/draw.ts';
import {
  houseOfWashback,
  setupOfWashback,
  type WashbackDone,
  type WashbackShift,
} from '../shift/washback/shift.ts';
import { decodeWashback, encodeWashback } from '../shift/washback/text.ts';
import { gravityJar, gravityStem, hoursAt, SITE } from './shift-hours.ts';
import { ShiftPictureWashback } from './ShiftPictureWashback.tsx';
import type { Control, EndTold, Post, Sign } from './shift-post.ts';

const happenings: Readonly<Record<Happening, string>> = {
  third: 'A third of the wort is in, and covers the floor well.',
  full: 'All the wort is in.',
  froth: 'The froth rises towards the rim.',
  'froth-down': 'The froth is falling.',
  trips: 'The switcher has stopped by itself.',
  alarm: 'The gas alarm at the door sounds.',
  'fan-mended': 'The fan runs again.',
  asks: 'Somebody dropped the sample can into the washback and wants to reach in for it.',
  hot: 'The wash is at 34 °C.',
  charger: 'The wash charger has room.',
  day: 'Another day is over.',
};

function keyed(key: string, _: Rig, state: WashbackState): Action | undefined {
  const mark = (what: 'dose' | 'cooling', by: number): Action | undefined =>
    isMark(state[what] + by) ? { do: what, to: state[what] + by } : undefined;
  const cooler = (by: number): Action | undefined =>
    isCoolerTemperature(state.set + by) ? { do: 'set', to: state.set + by } : undefined;
  switch (key) {
    case 'e':
      return cooler(0.5);
    case 'd':
      return cooler(-0.5);
    case 'r':
      return mark('dose', 1);
    case 'f':
      return mark('dose', -1);
    case 'u':
      return mark('cooling', 1);
    case 'j':
      return mark('cooling', -1);
    case 'y':
      return { do: 'pitch' };
    case 'x':
      return { do: 'meter' };
    case 's':
      return { do: 'switcher', on: !state.isSwitching };
    case 'a':
      return { do: 'antifoam' };
    case 'k':
      return { do: 'report' };
    case 'm':
      return state.isAsked ? { do: 'let-in' } : undefined;
    case 'n':
      return state.isAsked ? { do: 'refuse' } : undefined;
    case 'o':
      return { do: 'hand-over' };
    default:
      return undefined;
  }
}

function controls(rig: Rig, state: WashbackState): readonly (readonly Control[])[] {
  const coil: Control = {
    turn: 'Coil',
    shows: String(state.cooling),
    says: `Cooling coil, ${state.cooling} of 10`,
    up: 'u',
    down: 'j',
  };
  const cooler: Control = {
    turn: 'Wort °C',
    shows: n(state.set, 1),
    says: `Wort cooler at ${n(state.set, 1)} °C`,
    up: 'e',
    down: 'd',
  };
  const yeast: Control = {
    turn: 'Yeast kg',
    shows: n(state.dose * rig.perMark, 0),
    says: `Yeast, ${n(state.dose * rig.perMark, 0)} kg`,
    up: 'r',
    down: 'f',
  };
  const isFull = state.filled >= rig.mass;
  return [
    [
      ...(isFull ? [] : [cooler]),
      ...(state.pitched < 0 ? [yeast] : []),
      ...(isFull || state.pitched >= 0 ? [coil] : []),
    ],
    [
      state.pitched < 0
        ? { key: 'y', label: ['Pitch the yeast'], isMain: true }
        : { key: 'o', label: ['To the charger'], isMain: true },
      { key: 'h', label: ['Hydrometer'] },
      { key: 'x', label: ['Gas meter'] },
    ],
    [
      { key: 's', label: ['Switcher', state.isSwitching ? 'off' : 'on'] },
      { key: 'a', label: ['Anti-', 'foam'] },
      { key: 'k', label: ['Report', 'the fan'] },
      { key: 'm', label: ['Let', 'them'], isOff: !state.isAsked },
      { key: 'n', label: ['Say no', 'to it'], isOff: !state.isAsked },
    ],
  ];
}

function gauges(rig: Rig, state: WashbackState): readonly (readonly [string, string])[] {
  const { froth, readings } = state;
  const last = readings.at(-1);
  return [
    ['Wash', state.filled > 0 ? `${n(state.temperature, 1)} °C` : '–'],
    ['Room', `${n(rig.events.air, 0)} °C`],
    ['Wort in', `${n((100 * state.filled) / rig.mass, 0)} %`],
    [
      'Froth',
      froth < 0.1
        ? 'none'
        : froth < 0.4
          ? 'low'
          : froth < 0.75
            ? 'half up'
            : froth < 1
              ? 'near the rim'
              : 'over the rim',
    ],
    ['Switcher', state.isSwitching ? 'turns' : 'stands'],
    [
      'Yeast',
      state.pitched < 0 ? 'not in' : `in for ${hoursAt(hourSinceFirstWort(state) - state.pitched)} h`,
    ],
    ['Last read', last ? `${n(last.corrected, 4)}` : '–'],
    ['Read at', last ? `${hoursAt(last.step * WASHBACK_STEP)} h` : '–'],
    [
      'Gas at door',
      state.meteredAt < 0
        ? 'not read'
        : `${n(state.metered, 0)} ppm, ${hoursAt(state.meteredAt * WASHBACK_STEP)} h`,
    ],
  ];
}

function signs(rig: Rig, state: WashbackState): readonly Sign[] {
  const sign = (is: boolean, title: string, usual: string) =>
    is ? [{ title, usual: `${usual} ${SITE}` }] : [];
  const isAlarm = state.isFanOff && state.happened.some(({ id }) => id === 'alarm');
  return [
    ...sign(
      isAlarm && state.reportedAt < 0,
      'The gas alarm sounds: the fan has stopped.',
      'Usual: stay out, keep others out, shut the door, report it. The gas cannot be seen.',
    ),
    ...sign(
      isAlarm && state.reportedAt >= 0,
      'The fan is reported; the gas stands high.',
      'Usual: nobody goes in until the fan runs and the meter says so.',
    ),
    ...sign(state.isAsked, 'Somebody wants to reach into the washback.', 'What do you say?'),
    ...sign(
      state.froth >= 0.75,
      'The froth is near the rim.',
      state.isSwitching
        ? 'Usual: the switcher turns already; a dose of antifoam.'
        : 'Usual: switcher on; if that is not enough, a dose of antifoam.',
    ),
    ...sign(
      state.pitched >= 0 && state.temperature >= 34,
      `The wash is at ${n(state.temperature, 1)} °C.`,
      rig.events.hasCoil
        ? 'Usual: more cooling; above 35 yeast suffers.'
        : 'Usual: there is no coil, so it is watched; the next is set cooler.',
    ),
  ];
}

function wordsOf(action: Action): string {
  switch (action.do) {
    case 'set':
      return `Wort cooler to ${n(action.to, 1)} °C`;
    case 'dose':
      return `Yeast to mark ${action.to}`;
    case 'cooling':
      return `Cooling to ${action.to}`;
    case 'switcher':
      return action.on ? 'Switcher on' : 'Switcher off';
    case 'pitch':
      return 'Yeast pitched';
    case 'antifoam':
      return 'Antifoam';
    case 'meter':
      return 'Gas meter read';
    case 'report':
      return 'Fan reported';
    case 'go-in':
      return 'In for a sample';
    case 'let-in':
      return 'Somebody let to the open washback';
    case 'refuse':
      return 'Nobody let in';
    case 'hand-over':
      return 'To the wash charger';
    case 'read':
      return `Hydrometer ${n(action.read, 4)}, at 20 °C ${n(action.corrected, 4)}`;
    case 'note':
      return action.text;
  }
}

function end(rig: Rig, state: WashbackState, shift: WashbackShift): EndTold<WashbackDone> {
  const wash = washOf(rig, state);
  const score = scoreOfWashback(rig, state);
  const volume = (1000 * wash.mass) / (wash.gravity * WATER_DENSITY);
  const done: WashbackDone = {
    wash: { volume: litres20(volume), strength: wash.strength },
    gravity: wash.gravity,
    warmest: state.warmest,
    score: score.total,
  };
  const { goal } = rig;
  return {
    score,
    done,
    made: `Washback ${shift.done.length + 1}`,
    compared: [
      ['Wash, L', n(volume, 0), n(goal.volume, 0)],
      ['Wash, % vol', n(wash.strength, 2), n(goal.strength, 2)],
      ['L of pure alcohol', n(wash.alcohol, 0), n(goal.alcohol, 0)],
      ['Last gravity', n(wash.gravity, 4), n(rig.setup.final, 4)],
      ['Warmest, °C', n(state.warmest, 1), n(rig.peak, 1)],
      ['Gas, kg', n(state.gas, 0), n(goal.carbonDioxide, 0)],
      ['Over the rim, kg', n(state.over, 0), '0'],
      ['Hours', n(state.handedAt, 1), n(Math.max(rig.setup.hours, chargerFree(rig)), 1)],
    ],
    rounds:
      'The next round is another washback of the same house, on another day: another room, another froth, another trouble.',
    heads: ['Round', 'wash, L', '% vol', 'warmest, °C', 'points'],
    rows: [...shift.done, done].map((each, i) => [
      String(i + 1),
      n(each.wash.volume, 0),
      n(each.wash.strength, 2),
      n(each.warmest, 1),
      String(each.score),
    ]),
  };
}

export const washbackPost: Post<Rig, WashbackState, Action, WashbackDone, WashbackShift> = {
  id: 'shift-washback',
  title: 'A shift at a washback',
  place: 'washback',
  words: { at: 'washback', round: 'round' },
  course: washbackCourse,
  paces: [
    { steps: 4 / WASHBACK_STEP, name: '4 h', after: ' a second' },
    { steps: 1 / WASHBACK_STEP, name: '1 h', after: ' a second' },
    { steps: 0.25 / WASHBACK_STEP, name: '15 min', after: ' a second' },
    { steps: 1, name: '5 min', after: ' a second' },
  ],
  clock: (step) => hoursAt(step * WASHBACK_STEP),
  first: (seed, name, line) => ({ seed, house: houseOfWashback(name, line), done: [], log: [], step: 0 }),
  rig: (shift) => rigOfWashback(setupOfWashback(shift), drawWashbackEvents(shift.seed, shift.done.length + 1, shift.house.hours)),
  next: withNext,
  encode: encodeWashback,
  decode: decodeWashback,
  happenings,
  stops: ['third', 'full', 'froth', 'trips', 'alarm', 'fan-mended', 'asks', 'hot', 'charger'],
  whys: washbackWrongs,
  turned: ['set', 'dose', 'cooling'],
  told: ['meter', 'pitch'],
  wordsOf,
  signs,
  opening: 'Set the wort cooler and weigh out the yeast; then let the clock go.',
  gauges,
  gaugesName: 'At the washback now',
  controls,
  keyed,
  hydrometer: {
    stem: gravityStem,
    jar: (rig, state) => {
      const sample = sampleOfWash(rig, state);
      return isRefusal(sample) ? sample : gravityJar(sample);
    },
    fetch: { do: 'go-in' },
  },
  Picture: ShiftPictureWashback,
  names: { pitch: 'Temperature at pitching', dose: 'Yeast', peak: 'Warmest', alcohol: 'Alcohol', hours: 'Hours', finished: 'Seen to be finished', readings: 'Readings', care: 'Care, dangers apart', danger: 'Danger' },
  goals: goalsOfWashback,
  end,
}; // prettier-ignore
