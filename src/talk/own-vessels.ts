// What a guide says of the vessels, as a house's own vessels have it: figures that no line of a house gives.
import type { Plant } from '../core/plant/plant.ts';
import type { TalkFigureId } from './figures.ts';

/** What each figure can mean of a house's vessels, in the figure's own unit; the first is told. Left out where nothing is given. */
export type OwnVessels = Readonly<Partial<Record<TalkFigureId, readonly number[]>>>;

interface Group {
  readonly number: number;
  readonly usual?: readonly string[];
}

/** How many there are in all, and of each group where there are several: a guide may speak of the wooden ones alone. */
function counted(groups: readonly Group[]): readonly number[] {
  const all = groups.reduce((sum, { number }) => sum + number, 0);
  return groups.length > 1 ? [all, ...groups.map(({ number }) => number)] : [all];
}

/** A figure of each group that was given; usual values that nobody gave are not. */
const given = <T extends Group>(groups: readonly T[], key: keyof T & string): readonly number[] =>
  groups.filter(({ usual }) => !usual?.includes(key)).map((group) => Number(group[key]));

/** The figures that vessels tell: how many washbacks and stills, what a washback holds to the brim or as filled, what a still is charged with. */
export function vesselFigures({
  washbacks,
  washStills,
  intermediateStills,
  spiritStills,
}: Plant): OwnVessels {
  const [all] = counted([...washStills, ...intermediateStills, ...spiritStills]);
  const found: OwnVessels = {
    numberOfWashbacks: counted(washbacks),
    washbackCapacity: [...given(washbacks, 'full'), ...given(washbacks, 'working')],
    numberOfStills: washStills.length > 0 && spiritStills.length > 0 ? [all!] : [],
    numberOfWashStills: counted(washStills),
    numberOfSpiritStills: counted(spiritStills),
    washStillCharge: given(washStills, 'charge'),
    spiritStillCharge: given(spiritStills, 'charge'),
  };
  return Object.fromEntries(Object.entries(found).filter(([, values]) => (values[0] ?? 0) > 0));
}
