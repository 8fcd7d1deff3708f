// Readings of invented washbacks, as a hydrometer would show them.
import { extractAt } from '../../../core/fermenting/fall.ts';
import { hours, plato, quantity } from '../../../core/quantity.ts';
import { gravityFromPlato } from '../../../core/wort/extract.ts';

const TIMES = [0, 8, 12, 16, 20, 24, 32, 48]; // hours after the start
const rounded = (value: number) => Math.round(1000 * value) / 1000;

function washback(initial: number, final: number, half: number, steepness: number) {
  const fall = {
    initial: plato(initial),
    final: plato(final),
    half: hours(half),
    steepness: quantity('perHour', steepness),
  };
  return TIMES.map((hour) => ({ hour, gravity: rounded(gravityFromPlato(extractAt(fall, hour))) }));
}

const washbacks = () =>
  [13, 13.5, 14, 14.5, 15].flatMap((initial) =>
    [-0.8, -0.4].flatMap((final) =>
      [13.4, 14.6, 15.8, 17.2].flatMap((half) =>
        [0.22, 0.27, 0.33].map((steepness) => washback(initial, final, half, steepness)),
      ),
    ),
  );
let drawn: ReturnType<typeof washbacks> | undefined;

/** Washbacks of a house that does not exist, each with eight readings; worked out when a question first needs them. */
export const invented = {
  get readings() {
    return (drawn ??= washbacks());
  },
};
