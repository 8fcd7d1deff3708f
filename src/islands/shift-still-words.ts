// What a shift at the still says: signs and what is usual, what happened, what was done, and the time.
import type { Action } from '../core/shift/still/act.ts';
import { formatNumber as n } from '../core/format.ts';
import { STILL_STEP, type Rig } from '../core/shift/still/rig.ts';
import type { Happening, ShiftState } from '../core/shift/still/state.ts';
import { BLOCKED_AT, boilingPointInPot, potFraction } from '../core/shift/still/step.ts';
import { atSafe } from '../core/shift/still/rig.ts';
import { SITE } from './shift-hours.ts';
import type { Sign } from './shift-post.ts';

/** The run's time at a step: 1:05:30. */
export function stillClock(step: number): string {
  const seconds = step * STILL_STEP;
  const two = (part: number) => String(Math.floor(part)).padStart(2, '0');
  return `${Math.floor(seconds / 3600)}:${two((seconds / 60) % 60)}:${two(seconds % 60)}`;
}

export const stillHappenings: Readonly<Record<Happening, string>> = {
  boils: 'The charge begins to boil.',
  'head-warm': 'The head is hot.',
  'first-drops': 'First drops at the safe.',
  froth: 'Froth stands half up in the sight glass.',
  'froth-down': 'The froth is down.',
  warm: 'The spirit runs warm.',
  cool: 'The spirit runs cool again.',
  blocked: 'The pressure rises, and less comes over.',
  cleared: 'The line is clear again; those whose work it is have seen to it.',
  asks: 'A colleague asks you to open the manhole for a look.',
  unturned: 'The spirit is down to where the house ends its heart, and the spout was never turned to it.',
  weak: 'The spirit is down to where the house ends its feints.',
  cooling: 'The still begins to cool with its air valve shut.',
};

/** At which of these the clock stops. */
export const stillStops: readonly Happening[] = ['boils', 'first-drops', 'froth', 'warm', 'blocked', 'cleared', 'asks', 'unturned', 'weak', 'cooling']; // prettier-ignore

/** What wants something of the stillman now, the most urgent first; each with what is usual, and whose word holds. */
export function stillSigns(rig: Rig, state: ShiftState): readonly Sign[] {
  const { isAsked, pressure, froth, flow, safe, steam, vapour, isAirOpen, boiled, temperature } = state;
  const sign = (is: boolean, title: string, usual: string) => (is ? [{ title, usual: `${usual} ${SITE}` }] : []);
  return [
    ...sign(pressure >= BLOCKED_AT, 'Pressure rises, flow falls: the line may be blocked.', 'Usual: steam off, keep everything shut, report it, and wait until the line is cleared.'),
    ...sign(froth >= 0.5, 'Froth in the sight glass.', 'Usual: steam well down at once, until the froth falls.'),
    ...sign(flow > 0 && safe >= 28, `Spirit at ${n(safe, 0)} °C in the safe.`, 'Usual: more cooling water, or less steam. Vapour at the safe can burn.'),
    ...sign(isAsked, 'Somebody asks you to open the manhole.', 'What do you say?'),
    ...sign(steam > 0 && boiled > 0 && flow > 0 && atSafe(vapour) <= rig.setup.cuts.feints, 'The feints are at their end.', 'Usual: steam off; when the pressure is gone, air valve open, and only then discharge.'),
    ...sign(boiled > 0 && !isAirOpen && steam === 0 && temperature < boilingPointInPot(rig, potFraction(state)) - 3, 'The still cools, shut.', 'Usual: air valve open before it cools or empties, so that it draws no vacuum.'),
  ];
} // prettier-ignore

const valve = { charging: 'Charging valve', air: 'Air valve', manhole: 'Manhole' } as const;

/** What was done, as the log has it. */
export function stillActionWords(action: Action): string {
  switch (action.do) {
    case 'steam':
      return action.to === 0 ? 'Steam off' : `Steam to ${action.to}`;
    case 'water':
      return `Cooling water to ${action.to}`;
    case 'spout':
      return action.to === 'spirit' ? 'Spout to the spirit receiver' : 'Spout to foreshots and feints';
    case 'read':
      return `Hydrometer ${n(action.read, 1)}, at 20 °C ${n(action.corrected, 1)} % vol`;
    case 'haze':
      return 'Haze test';
    case 'refuse':
      return 'Manhole refused';
    case 'discharge':
      return 'Discharge';
    case 'note':
      return action.text;
    default:
      return `${valve[action.do]} ${action.open ? 'open' : 'shut'}`;
  }
}
