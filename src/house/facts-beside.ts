// What the fact sheet says of the vessels, against the vessels themselves: sentences where they differ.
import { condensers, washbackMaterials, type Plant } from '../core/plant/plant.ts';
import { factKind, type FactId, type Facts } from './facts.ts';

/** What each choice of the fact sheet means in the words of the vessels; what is of both is not among them. */
const meant = {
  washbacks: { wood: 'wood', larch: 'wood', fir: 'wood', oak: 'wood', steel: 'steel' },
  condenser: { 'shell-and-tube': 'shell-and-tube', 'worm-tub': 'worm-tub' },
} as const satisfies Partial<Record<FactId, Readonly<Record<string, string>>>>;

const words: Readonly<Record<string, string>> = { ...washbackMaterials, ...condensers };

/** A sentence for each thing that is given on the fact sheet and among the vessels, and not alike; usual values say nothing. */
export function factsAgainstVessels(facts: Facts, { washbacks, washStills, intermediateStills, spiritStills }: Plant): readonly string[] {
  const given = <T extends { readonly usual?: readonly string[] }>(groups: readonly T[], key: keyof T & string) =>
    groups.filter(({ usual = [] }) => !usual.includes(key)).map((group) => String(group[key]));
  const vessels = {
    washbacks: given(washbacks, 'material'),
    condenser: given([...washStills, ...intermediateStills, ...spiritStills], 'condenser'),
  };
  return (Object.keys(meant) as (keyof typeof meant)[]).flatMap((id) => {
    const is = facts[id]?.is;
    const found = [...new Set(vessels[id])];
    if (is === undefined || found.length === 0) return [];
    const says = (meant[id] as Readonly<Record<string, string>>)[is];
    const isAlike = says === undefined ? found.length > 1 : found.length === 1 && found[0] === says;
    if (isAlike) return [];
    const { label, choices } = factKind(id);
    const [option] = choices![is]!;
    return [`${label}: the fact sheet says “${option.toLowerCase()}”, the stills and vessels “${found.map((each) => words[each]!.toLowerCase()).join('” and “')}”.`];
  });
} // prettier-ignore
