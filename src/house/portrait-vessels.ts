// The vessels on the house's portrait: as many as its plant has, of what and how large. Where none is named one stands as a sign, and no number is told.
import { formatCount } from '../core/format.ts';
import { schemes, type Plant, type Stills } from '../core/plant/plant.ts';
import { namedSizes } from '../core/stock/sizes.ts';
import type { RoomName } from './portrait.ts';

export type Shape =
  'sacks' | 'mill' | 'mash-tun' | 'washback' | 'steel' | 'tub' | 'wash-still' | 'spirit-still';
export interface DrawnVessel {
  readonly shape: Shape;
  /** Against the largest of its room, 0–1. */
  readonly size: number;
  /** How a still's vapour is condensed; nothing where nobody has said. */
  readonly condenser?: Stills['condenser'] | undefined;
}
export interface PortraitVessels {
  /** What is said of them; empty where the house has named none. */
  readonly says: string;
  readonly drawn: readonly DrawnVessel[];
  /** True where one stands for vessels that the house has not named. */
  readonly isSign?: boolean;
}

const MOST = 48; // vessels of a kind that are drawn; the words tell how many there are
const some = (number: number, drawn: DrawnVessel) =>
  Array.from({ length: Math.min(MOST, number) }, () => drawn);
const sum = (groups: readonly { readonly number: number }[]) =>
  groups.reduce((all, { number }) => all + number, 0);
const isGiven = (group: { readonly usual?: readonly string[] }, key: string) => !group.usual?.includes(key);
const cooledBy = { 'shell-and-tube': 'shell-and-tube condensers', 'worm-tub': 'worm tubs' } as const;
const one = (shape: Shape): PortraitVessels => ({ says: '', drawn: [{ shape, size: 1 }] });
const sign = (shape: Shape): PortraitVessels => ({ ...one(shape), isSign: true });

function tunRoom({ washbacks }: Plant): PortraitVessels {
  if (washbacks.length === 0) return sign('tub');
  const largest = Math.max(...washbacks.map(({ full }) => full));
  const of = (material: string | undefined) =>
    sum(washbacks.filter((each) => (isGiven(each, 'material') ? each.material : undefined) === material));
  const told = [['wood', ' of wood'], ['steel', ' of steel'], [undefined, '']] as const; // prettier-ignore
  return {
    says: told.flatMap(([material, what]) => (of(material) > 0 ? [formatCount(of(material), 'washback') + what] : [])).join(', '),
    drawn: washbacks.flatMap((each) =>
      some(each.number, {
        shape: !isGiven(each, 'material') ? 'tub' : each.material === 'wood' ? 'washback' : 'steel',
        size: isGiven(each, 'full') ? Math.cbrt(each.full / largest) : 1,
      }),
    ),
  };
} // prettier-ignore

function stillHouse({ washStills, intermediateStills, spiritStills, scheme }: Plant): PortraitVessels {
  const kinds = [
    { stills: washStills, name: 'wash still', shape: 'wash-still', sign: 1 },
    { stills: scheme === 'twice' ? undefined : intermediateStills, name: 'intermediate still', shape: 'wash-still', sign: 0.85 },
    { stills: spiritStills, name: 'spirit still', shape: 'spirit-still', sign: 0.85 },
  ] as const;
  const all = kinds.flatMap(({ stills }) => stills ?? []);
  const largest = Math.max(...all.map(({ charge }) => charge));
  const cooled = all.flatMap((each) => (isGiven(each, 'condenser') ? [cooledBy[each.condenser]] : []));
  return {
    says: [
      ...kinds.flatMap(({ stills, name }) => (stills?.length ? [formatCount(sum(stills), name)] : [])),
      ...(all.length > 0 && scheme !== 'twice' ? [schemes[scheme].toLowerCase()] : []),
      ...new Set(cooled),
    ].join(', '),
    drawn: kinds.flatMap(({ stills, shape, sign }): readonly DrawnVessel[] =>
      stills?.length === 0
        ? [{ shape, size: sign }]
        : (stills ?? []).flatMap((each) =>
            some(each.number, {
              shape,
              size: isGiven(each, 'charge') ? Math.cbrt(each.charge / largest) : sign,
              condenser: isGiven(each, 'condenser') ? each.condenser : undefined,
            }),
          ),
    ),
    isSign: kinds.some(({ stills }) => stills?.length === 0),
  };
} // prettier-ignore

/** What stands in a room, the store left aside. */
export function vesselsIn(room: Exclude<RoomName, 'store'>, plant: Plant): PortraitVessels {
  const tuns = sum(plant.mashTuns);
  switch (room) {
    case 'malt':
      return one('sacks');
    case 'mill':
      return one('mill');
    case 'mash':
      return tuns === 0
        ? sign('mash-tun')
        : { says: formatCount(tuns, 'mash tun'), drawn: some(tuns, { shape: 'mash-tun', size: 1 }) };
    case 'wash':
      return tunRoom(plant);
    case 'stills':
      return stillHouse(plant);
  }
}

/** So many of each hundred casks, by what one holds, L. */
export type CaskSizeShares = ReadonlyMap<number, number>;

/** The names of the sizes in a mix, the most frequent first: “barrels, hogsheads and butts”. */
export function namesOfCasks(mix: CaskSizeShares): string {
  const names = [...mix]
    .filter(([, share]) => share > 0)
    .sort((a, b) => b[1] - a[1])
    .map(([size]) => {
      const name = Object.entries(namedSizes).find(([, litres]) => litres === size)?.[0];
      return name === undefined ? `casks of ${size}\u00a0L` : `${name}s`;
    });
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** The mix of what lies in store by its register, or of what is filled; nothing where neither is known. */
export function caskMix(
  register: readonly { readonly casks: number; readonly size: number }[],
  filled: { readonly barrels: number; readonly hogsheads: number } | undefined,
): CaskSizeShares {
  const mix = new Map<number, number>();
  const all = register.reduce((sum, { casks }) => sum + casks, 0);
  for (const { casks, size } of all > 0 ? register : [])
    mix.set(size, (mix.get(size) ?? 0) + (100 * casks) / all);
  if (all === 0 && filled) {
    const { barrels, hogsheads } = filled;
    for (const [size, share] of [
      [200, barrels],
      [250, hogsheads],
      [500, 100 - barrels - hogsheads],
    ] as const)
      // prettier-ignore
      if (share > 0) mix.set(size, share);
  }
  return mix;
}
