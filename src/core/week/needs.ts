// What a house and its plant ask of a week, in the numbers that a timetable is made from.
import { formatNumber } from '../format.ts';
import type { Line } from '../line/line.ts';
import type { Plant } from '../plant/plant.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import type { WorkHours } from './calendar.ts';
import type { StillStage, WeekNeeds } from './run-weeks.ts';

/** When the house works, and how long a washback takes to be emptied and cleaned, h. */
export interface Shifts {
  readonly mashing: WorkHours;
  readonly distilling: WorkHours;
  readonly turnRound: number;
}

const litres = (volume: number) => `${formatNumber(volume, 0)} L`;

function checked(name: string, { days, from, hours }: WorkHours): WorkHours {
  within(`Days of ${name}`, days, 1, 7);
  within(`The hour at which ${name} begins`, from, 0, 23.75);
  within(`Hours of ${name} a day`, hours, 0.25, 24);
  return { days: Math.round(days), from, hours };
}

/**
 * What each kind of still takes and gives for a mash, L. Low wines, foreshots and feints go to one receiver; litres that
 * are lost in mixing, below a hundredth, are left out, so that what is drawn in a week is what came.
 */
function stagesOf({ wash, round }: Line, plant: Plant): readonly StillStage[] {
  const lowWines = round.lowWines.volume;
  const back = round.foreshots.volume + round.feints.volume;
  const { between } = round;
  const again = between?.charge.volume ?? 0;
  const undiluted = round.charge.volume - round.dilution;
  const fromAgain = plant.scheme === 'thrice' ? undiluted + again - lowWines - back : (between?.onward.volume ?? 0);
  const first = { id: 'wash', groups: plant.washStills, charged: wash.volume, drawn: 0, back: lowWines, spirit: 0 } as const;
  const second = { id: 'intermediate', groups: plant.intermediateStills, charged: again, drawn: again, back: fromAgain, spirit: 0 } as const;
  const last = {
    id: 'spirit',
    groups: plant.spiritStills,
    charged: round.charge.volume,
    drawn: lowWines - again + fromAgain + back,
    back,
    spirit: round.heart.volume,
  } as const;
  return between ? [first, second, last] : [first, last];
} // prettier-ignore

/**
 * The needs of a week. A mash fills one washback, so only those count that take it; a charger or receiver that is not named
 * limits nothing, but a charger that is not named holds nothing either. Refuses, by vessel, what can never run.
 * @example weekNeeds(line, { mashTuns: [] }, shiftsOf(usualWeek)) // refuses: No mash tun is named (so nothing is mashed)
 */
export function weekNeeds(line: Line, plant: Plant, shifts: Shifts): WeekNeeds | Refusal {
  if (plant.mashTuns.length === 0) return refuse('No mash tun is named, so nothing is mashed.');
  const takers = plant.washbacks.filter(({ working }) => working >= line.wort.volume);
  const largest = Math.max(0, ...plant.washbacks.map(({ working }) => working));
  if (takers.length === 0)
    return refuse(
      largest === 0
        ? 'No washback is named, so nothing ferments.'
        : `No washback takes a mash: the wort is ${litres(line.wort.volume)}, and the largest is filled to ${litres(largest)}.`,
    );
  const mashing = checked('mashing', shifts.mashing);
  const distilling = checked('distilling', shifts.distilling);
  const stages = stagesOf(line, plant);
  const tooLong = [...stages.flatMap(({ groups }) => groups)].find(
    ({ hours }) => distilling.hours < 24 && hours > distilling.hours,
  );
  if (tooLong)
    return refuse(
      `A still run takes ${formatNumber(tooLong.hours, 1)} h, and the stills run for ${formatNumber(distilling.hours, 1)} h a day; no run would be over in its day.`,
    );
  const quickest = Math.min(...plant.mashTuns.map(({ hours }) => hours));
  if (mashing.hours < 24 && quickest > mashing.hours)
    return refuse(
      `A mash takes ${formatNumber(quickest, 1)} h, and mashing goes on for ${formatNumber(mashing.hours, 1)} h a day; no mash would be over in its day.`,
    );
  const hearts = plant.spiritStills.reduce(
    (sum, { number, charge }) => sum + number * Math.min(charge, line.charge.volume),
    0,
  );
  const atOnce = (hearts / line.charge.volume) * line.heart.volume;
  const spiritReceiver = plant.spiritReceiver.holds || Infinity;
  if (atOnce > spiritReceiver)
    return refuse(
      `The spirit receiver holds ${litres(spiritReceiver)}, and one run of each spirit still gives ${litres(atOnce)}.`,
    );
  return {
    tuns: plant.mashTuns,
    washbacks: takers.reduce((sum, { number }) => sum + number, 0),
    turnRound: within('Hours of emptying and cleaning', shifts.turnRound, 0, 48),
    short: plant.shortFermentation,
    weekend: plant.weekendFermentation,
    wash: line.wash.volume,
    charger: plant.washCharger.holds,
    receiver: plant.lowWinesReceiver.holds || Infinity,
    spiritReceiver,
    stages,
    mashing,
    distilling,
  };
}
