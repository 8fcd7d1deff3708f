// What the fact sheet says of the vessels, and the vessels themselves: what they add to it, and sentences where they differ.
import { condensers, washbackMaterials, type Plant } from '../core/plant/plant.ts';
import { factKind, type FactId, type Facts } from './facts.ts';

/** What each choice of the fact sheet means in the words of the vessels; what is of both is not among them. */
const meant = {
  washbacks: { wood: 'wood', larch: 'wood', fir: 'wood', oak: 'wood', steel: 'steel' },
  condenser: { 'shell-and-tube': 'shell-and-tube', 'worm-tub': 'worm-tub' },
} as const satisfies Partial<Record<FactId, Readonly<Record<string, string>>>>;

/** What is given of a kind of vessel; usual values are not. */
const givenOf = <T extends { readonly usual?: readonly string[] }>(
  groups: readonly T[],
  key: keyof T & string,
) => groups.filter(({ usual = [] }) => !usual.includes(key)).map((group) => String(group[key]));
const ofVessels = ({ washbacks, washStills, intermediateStills, spiritStills }: Plant) => ({
  washbacks: [...new Set(givenOf(washbacks, 'material'))],
  condenser: [...new Set(givenOf([...washStills, ...intermediateStills, ...spiritStills], 'condenser'))],
});

/** The fact sheet, with what only the vessels tell: wood or steel, and how it is condensed. */
export function withVessels(facts: Facts, plant: Plant): Facts {
  const told = Object.entries(ofVessels(plant)).flatMap(([id, found]) => {
    if (found.length === 0 || facts[id as FactId] !== undefined) return [];
    return [[id, { is: found.length > 1 ? 'both' : found[0]! }] as const];
  });
  return { ...facts, ...Object.fromEntries(told) };
}

const words: Readonly<Record<string, string>> = { ...washbackMaterials, ...condensers };

/** A sentence for each thing that is given on the fact sheet and among the vessels, and not alike; usual values say nothing. */
export function factsAgainstVessels(facts: Facts, plant: Plant): readonly string[] {
  const vessels = ofVessels(plant);
  return (Object.keys(meant) as (keyof typeof meant)[]).flatMap((id) => {
    const is = facts[id]?.is;
    const found = vessels[id];
    if (is === undefined || found.length === 0) return [];
    const says = (meant[id] as Readonly<Record<string, string>>)[is];
    const isAlike = says === undefined ? found.length > 1 : found.length === 1 && found[0] === says;
    if (isAlike) return [];
    const { label, choices } = factKind(id);
    const [option] = choices![is]!;
    return [`${label}: the fact sheet says “${option.toLowerCase()}”, the stills and vessels “${found.map((each) => words[each]!.toLowerCase()).join('” and “')}”.`];
  });
} // prettier-ignore
