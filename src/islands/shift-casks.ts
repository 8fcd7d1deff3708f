// A shift of two casks, as the desk has it: one filling in two stores, year by year, and when to bottle.
import { formatNumber as n } from '../core/format.ts';
import {
  casksCourse,
  type Action,
  type CasksState,
  type Happening,
  type Which,
} from '../core/shift/casks/course.ts';
import { lossOfStores, MONTHS, rigOfCasks, type Rig } from '../core/shift/casks/rig.ts';
import { goalsOfCasks, scoreOfCasks, casksWrongs } from '../core/shift/casks/score.ts';
import { portionOf } from '../core/spirit/amounts.ts';
import { houseOfCasks, roundOfCasks, type CasksDone, type CasksShift } from '../shift/casks/shift.ts';
import { decodeCasks, encodeCasks } from '../shift/casks/text.ts';
import { withNext } from '../shift/kept.ts';
import { SITE } from './shift-hours.ts';
import { ShiftPictureCasks } from './ShiftPictureCasks.tsx';
import type { Control, EndTold, Post, Sign } from './shift-post.ts';

const happenings: Readonly<Record<Happening, string>> = {
  year: 'A year is over.',
  age: 'The casks have the age that is wanted.',
  asks: 'Somebody wants to look in at the bung by a naked flame.',
};

const yearsAt = (months: number): string => `${Math.floor(months / MONTHS)} y ${months % MONTHS} m`;
const keys: Readonly<Record<string, readonly ['regauge' | 'look' | 'nose' | 'mend' | 'bottle', Which]>> = {
  r: ['regauge', 0],
  l: ['look', 0],
  s: ['nose', 0],
  k: ['mend', 0],
  b: ['bottle', 0],
  t: ['regauge', 1],
  i: ['look', 1],
  d: ['nose', 1],
  j: ['mend', 1],
  v: ['bottle', 1],
};

function keyed(key: string, _: Rig, state: CasksState): Action | undefined {
  const at = Object.hasOwn(keys, key) ? keys[key] : undefined;
  if (at) return { do: at[0], cask: at[1] };
  if (key === 'm' && state.isAsked) return { do: 'flame' };
  if (key === 'n' && state.isAsked) return { do: 'refuse' };
  return undefined;
}

const verbs = {
  regauge: 'Regauge',
  look: 'Look over',
  nose: 'Nose',
  mend: 'Cooper',
  bottle: 'Bottle',
} as const;
function controls(_: Rig, state: CasksState): readonly (readonly Control[])[] {
  const row = (i: Which): readonly Control[] =>
    Object.entries(keys)
      .filter(([, [, cask]]) => cask === i)
      .map(([key, [what]]) => ({
        key,
        label: [verbs[what], i === 0 ? 'first' : 'second'],
        isOff: state.casks[i].bottledAt >= 0,
      }));
  return [
    row(0),
    row(1),
    [
      { key: 'm', label: ['Let them'], isOff: !state.isAsked },
      { key: 'n', label: ['Say no to it'], isOff: !state.isAsked },
    ],
  ];
}

const regauged = ({ casks }: CasksState, i: Which) => {
  const { month, volume, strength } = casks[i].regauged;
  return month < 0 ? 'not yet' : `${n(volume, 1)} L, ${n(strength, 1)} %, ${yearsAt(month)}`;
};

function gauges(rig: Rig, state: CasksState): readonly (readonly [string, string])[] {
  const { setup, events, wanted } = rig;
  const store = (i: Which) =>
    `${n(setup.stores[i].temperature, 0)} °C, ${n(setup.stores[i].humidity, 0)} % humid`;
  return [
    ['Filled with', `${n(setup.filling.volume, 0)} L, ${n(setup.filling.strength, 1)} %`],
    ['Wanted age', yearsAt(events.age)],
    ['Bottles of', `${n(setup.bottle, 0)} cL, ${n(setup.strength, 1)} %`],
    ['First, dunnage', store(0)],
    [
      'Its bottles',
      state.casks[0].bottledAt >= 0
        ? `${n(state.casks[0].bottles, 0)} of ${n(wanted[0], 0)}`
        : `${n(wanted[0], 0)} wanted`,
    ],
    ['Its regauge', regauged(state, 0)],
    ['Second', store(1)],
    [
      'Its bottles',
      state.casks[1].bottledAt >= 0
        ? `${n(state.casks[1].bottles, 0)} of ${n(wanted[1], 0)}`
        : `${n(wanted[1], 0)} wanted`,
    ],
    ['Its regauge', regauged(state, 1)],
  ];
}

const signs = (rig: Rig, state: CasksState): readonly Sign[] => [
  ...(state.isAsked
    ? [
        {
          title: 'Somebody wants to look in at the bung by a naked flame.',
          usual: `Usual: no. Vapour of spirit burns; a lamp that is made for it, or none. ${SITE}`,
        },
      ]
    : []),
  ...(state.step > rig.events.age && state.casks.some(({ bottledAt }) => bottledAt < 0)
    ? [
        {
          title: 'The age is reached.',
          usual: 'Usual: regauge, reckon the bottles, and bottle before there are too few.',
        },
      ]
    : []),
];

function wordsOf(action: Action): string {
  if (action.do === 'note') return action.text;
  if (action.do === 'read') return 'Hydrometer';
  if (!('cask' in action)) return action.do === 'flame' ? 'A flame let near the casks' : 'The flame refused';
  const verb = {
    regauge: 'Regauged',
    look: 'Looked over',
    nose: 'Nosed',
    mend: 'Cooper called',
    bottle: 'Bottled',
  }[action.do];
  return `${verb}, ${action.cask === 0 ? 'first' : 'second'} cask`;
}

function end(rig: Rig, state: CasksState, shift: CasksShift): EndTold<CasksDone> {
  const score = scoreOfCasks(rig, state);
  const [first, second] = state.casks;
  const done: CasksDone = {
    first: first.bottles,
    second: second.bottles,
    firstAge: first.bottledAt,
    secondAge: second.bottledAt,
    score: score.total,
  };
  const row = (name: string, i: Which): readonly (readonly [string, string, string])[] => {
    const { out, toAir, leaked, bottles, bottledAt } = state.casks[i];
    const [came, air, leak] = [out, toAir, leaked].map(portionOf);
    return [
      [`${name}, bottles`, n(bottles, 0), n(rig.wanted[i], 0)],
      [`${name}, bottled at`, bottledAt >= 0 ? yearsAt(bottledAt) : '–', `from ${yearsAt(rig.events.age)}`],
      [
        `${name}, L at % vol`,
        bottledAt >= 0 ? `${n(came!.volume, 1)} at ${n(came!.strength, 1)}` : '–',
        `loses ${n(lossOfStores(rig, i), 1)} % a year`,
      ],
      [`${name}, L of pure alcohol to air and leak`, `${n(air!.alcohol, 1)} and ${n(leak!.alcohol, 1)}`, '–'],
    ];
  };
  return {
    score,
    done,
    made: `Filling ${shift.done.length + 1}`,
    compared: [...row(`The ${rig.setup.stores[0].name}`, 0), ...row(`The ${rig.setup.stores[1].name}`, 1)],
    rounds: 'The next round is another filling, with another second store and another age.',
    heads: ['Round', 'first, bottles', 'at', 'second, bottles', 'at', 'points'],
    rows: [...shift.done, done].map((each, i) => [
      String(i + 1),
      n(each.first, 0),
      each.firstAge >= 0 ? yearsAt(each.firstAge) : '–',
      n(each.second, 0),
      each.secondAge >= 0 ? yearsAt(each.secondAge) : '–',
      String(each.score),
    ]),
  };
}

export const casksPost: Post<Rig, CasksState, Action, CasksDone, CasksShift> = {
  id: 'shift-casks',
  title: 'A cask in two stores',
  place: 'stores',
  words: { at: 'casks', round: 'filling' },
  course: casksCourse,
  paces: [
    { steps: 12, name: '1 year', after: ' a second' },
    { steps: 6, name: '6 m', after: 'onths a second' },
    { steps: 3, name: '3 m', after: 'onths a second' },
    { steps: 1, name: '1 m', after: 'onth a second' },
  ],
  clock: yearsAt,
  first: (seed, name, line) => ({ seed, house: houseOfCasks(name, line), done: [], log: [], step: 0 }),
  rig: (shift) => {
    const { setup, events } = roundOfCasks(shift);
    return rigOfCasks(setup, events);
  },
  next: withNext,
  encode: encodeCasks,
  decode: decodeCasks,
  happenings,
  stops: ['year', 'age', 'asks'],
  whys: casksWrongs,
  turned: [],
  told: ['regauge', 'look', 'nose', 'bottle'],
  wordsOf,
  signs,
  opening: 'The casks are filled. Let the years go, look at them, and bottle each in time.',
  gauges,
  gaugesName: 'The two casks now',
  controls,
  keyed,
  Picture: ShiftPictureCasks,
  names: { firstBottles: 'Bottles of the first cask', secondBottles: 'Bottles of the second', firstAge: 'Age of the first', secondAge: 'Age of the second', regauge: 'Regauged before bottling', leak: 'The leak', work: 'Looks', care: 'Care, dangers apart', danger: 'Danger' },
  goals: goalsOfCasks,
  end,
}; // prettier-ignore
