// What a house has of the figures that a guide says, for judging whether a sentence still holds.
import type { Line } from '../core/line/line.ts';
import { talkFigures } from '../talk/figures.ts';
import { heldAgainst, ofHouse, type HowKnown } from '../talk/own-house.ts';
import type { HouseNow } from './stale.ts';
import type { SaidHere } from './walk.ts';

/** A house's figures as they are now; of one that it has twice, as hours over a weekend, the one that was said. */
export const houseNow =
  (line: Line, known: HowKnown, said: readonly SaidHere[]): HouseNow =>
  (figure) => {
    const own = known.vessels?.[figure]?.[0] ?? ofHouse(figure, line);
    if (own === undefined) return undefined;
    const id = talkFigures[figure].inTable;
    if (id !== undefined && known.standing(id) === 'unknown') return { value: own, isKnown: false };
    const here = said.find((each) => each.figure === figure);
    const held = here && heldAgainst({ figure, said: { as: 'rounded', value: here.value } }, line, known);
    const isEstimate = id !== undefined && known.standing(id) === 'estimate';
    return { value: held?.house ?? own, isKnown: true, ...(isEstimate ? { isEstimate } : {}) };
  };
