// Cuts on which too much hangs: so near the start of the run that a hair decides, or with foreshots too large for foreshots.
import { foreshotsFigures } from '../distilling/foreshots.ts';
import { stillCurve } from '../distilling/still.ts';
import { formatNumber as n } from '../format.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { portionOf } from '../spirit/amounts.ts';
import type { Caution } from './cautions.ts';
import type { Line } from './line.ts';

const NEAR = 1; // % vol; printed models differ by as much over one charge, and a hydrometer in the safe reads to a few tenths
const LARGE = 0.1; // of the charge's alcohol; half an hour beside a heart of two and a half to three comes to that at most
const USUAL = 0.03; // of it; the built-in house's own, common practice

/** Strength, % vol, of the charge whose foreshots down to the house's cut are the usual part of its alcohol. */
function weakerCharge({ house }: Line): number | undefined {
  const { potAt, left } = stillCurve({ reflux: house.spiritReflux, pressure: house.airPressure });
  const cut = potAt(house.foreshotsStrength);
  if (cut === undefined) return undefined;
  const miss = (x: number) => left(x, cut) * cut - (1 - USUAL) * x;
  const most = Math.min(0.7, 2 * cut);
  if (!(most > cut) || miss(most) > 0) return undefined;
  const x = bracketedRoot(miss, cut, most);
  return portionOf({ ethanol: x, water: 1 - x }).strength;
}

/**
 * What a careful colleague would say of where a house cuts its run; empty when nothing hangs on a hair.
 * @example cutCautions({ ...line, foreshots: { ...line.foreshots, alcohol: line.charge.alcohol / 2 } }).length > 0 // true (half of the alcohol is no foreshots)
 */
export function cutCautions(line: Line): readonly Caution[] {
  const { house, foreshots, charge } = line;
  const start = foreshots.begins;
  const part = foreshots.alcohol / charge.alcohol;
  const unusual = (figure: Caution['figure'], says: string): Caution => ({
    stage: 'distilling',
    weight: 'unusual',
    ...(figure && { figure }),
    says,
  });
  const byStrength = house.foreshotsBy === 'strength';
  const [figure] = foreshotsFigures[house.foreshotsBy];
  const weaker = byStrength && part > LARGE ? weakerCharge(line) : undefined;
  const found = [
    byStrength &&
      house.foreshotsStrength >= start &&
      unusual(
        figure,
        `The run begins at ${n(start, 1)} % vol, not above the ${n(house.foreshotsStrength, 1)} at which the foreshots end, so there are none. End them after a share of the alcohol, litres or minutes, or at a lower strength.`,
      ),
    byStrength &&
      house.foreshotsStrength < start &&
      start - house.foreshotsStrength < NEAR &&
      unusual(
        figure,
        `The foreshots end at ${n(house.foreshotsStrength, 1)} % vol, and the run begins at ${n(start, 1)}: so near the start, a few tenths make them double or nothing, and the model of the still is no surer. End them after a share of the alcohol, litres or minutes.`,
      ),
    part > LARGE &&
      unusual(
        figure,
        `The foreshots hold ${n(100 * part, 0)} % of the charge’s alcohol; a few per cent are usual, and half an hour takes a tenth at most. ${
          !byStrength
            ? 'Take less.'
            : `End them after a share of the alcohol, litres or minutes.${
                weaker !== undefined && weaker < charge.strength
                  ? ` A cut at ${n(house.foreshotsStrength, 1)} % vol suits a charge of about ${n(weaker, 0)} % vol; yours is ${n(charge.strength, 1)}.`
                  : ''
              }`
        }`,
      ),
    start - house.heartEnd < NEAR &&
      unusual(
        'heartEnd',
        `The heart ends at ${n(house.heartEnd, 1)} % vol, and the run begins at ${n(start, 1)}: so near the start, a few tenths make much or nothing of it, and the model of the still is no surer. End it lower; about 60 is common.`,
      ),
  ];
  return found.filter((caution) => caution !== false);
}
