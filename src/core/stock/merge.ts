// Single casks, and groups, that were filled alike as one group: what a register of thousands of rows is kept as.
import type { CaskGroup } from './group.ts';

/** What must be the same for groups to stand as one, beside the years of filling and regauge. */
const alike = ['size', 'wood', 'held', 'fill', 'firing', 'store', 'storeKind', 'laid', 'owner'] as const satisfies readonly (keyof CaskGroup)[]; // prettier-ignore

const yearOf = (day: string | undefined) => day?.slice(0, 4);
const keyOf = (group: CaskGroup) =>
  JSON.stringify([...alike.map((name) => group[name]), yearOf(group.filled), yearOf(group.regauged)]);

/** A day that all have, or else their year. */
const dayOf = (days: readonly string[]) =>
  days.every((day) => day === days[0]) ? days[0]! : yearOf(days[0])!;

/** The mean litres of a cask, and the strength of all together: litres and alcohol of the whole stay as they were. */
function meanOf(
  groups: readonly CaskGroup[],
  of: (group: CaskGroup) => readonly [volume: number, strength: number],
): readonly [volume: number, strength: number] {
  let [casks, litres, alcohol] = [0, 0, 0];
  for (const group of groups) {
    const [volume, strength] = of(group);
    casks += group.casks;
    litres += group.casks * volume;
    alcohol += group.casks * volume * strength;
  }
  return [litres / casks, litres > 0 ? alcohol / litres : of(groups[0]!)[1]];
}

/** Groups of one key as one: casks add up, fillings and regauges are the mean; a name that differs goes. */
function asOne(groups: readonly CaskGroup[]): CaskGroup {
  const first = groups[0]!;
  if (groups.length === 1) return first;
  const { name, ...rest } = first;
  const [filledVolume, filledStrength] = meanOf(groups, (each) => [each.filledVolume, each.filledStrength]);
  const [regaugedVolume, regaugedStrength] = meanOf(groups, (each) => [each.regaugedVolume ?? 0, each.regaugedStrength ?? 0]); // prettier-ignore
  return {
    ...(name !== undefined && groups.every((each) => each.name === name) && { name }),
    ...rest,
    casks: groups.reduce((sum, { casks }) => sum + casks, 0),
    filled: dayOf(groups.map(({ filled }) => filled)),
    filledVolume,
    filledStrength,
    ...(first.regauged !== undefined && {
      regauged: dayOf(groups.map(({ regauged }) => regauged!)),
      regaugedVolume,
      regaugedStrength,
    }),
  };
}

/**
 * Groups of one size, wood, fill, store, owner and year, and regauged in one year or not at all, as one; in the order of the first of each.
 * @example mergeAlike([{ casks: 1, size: 200, filled: '2016-01-01', filledVolume: 190, filledStrength: 60 }, { casks: 3, size: 200, filled: '2016-05-01', filledVolume: 198, filledStrength: 60 }]) // [{ casks: 4, size: 200, filled: '2016', filledVolume: 196, filledStrength: 60 }] (190 and 3 × 198, over 4)
 */
export function mergeAlike(groups: readonly CaskGroup[]): readonly CaskGroup[] {
  const byKey = new Map<string, CaskGroup[]>();
  for (const group of groups) {
    const key = keyOf(group);
    const same = byKey.get(key);
    if (same) same.push(group);
    else byKey.set(key, [group]);
  }
  return [...byKey.values()].map(asOne);
}
