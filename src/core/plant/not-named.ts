// Which vessels a house has not named yet, so that nothing was judged of them.
import { holdingNames, holdings } from './fields.ts';
import { stillNames, type Plant } from './plant.ts';

/**
 * The vessels that a plant’s distillation needs and that are not named, in the order of the line, as a sentence says them. A house
 * may do without a wash charger, so that one is never among them.
 * @example notNamed({ scheme: 'twice', mashTuns: [{}], washbacks: [{}], washStills: [{}], spiritStills: [], lowWinesReceiver: { holds: 1 }, spiritReceiver: { holds: 1 } }) // ['spirit stills'] (all others have a name)
 */
export function notNamed(plant: Plant): readonly string[] {
  const groups = [
    ['Mash tuns', plant.mashTuns],
    ['Washbacks', plant.washbacks],
    [stillNames.wash, plant.washStills],
    ...(plant.scheme === 'twice' ? [] : [[stillNames.intermediate, plant.intermediateStills] as const]),
    [stillNames.spirit, plant.spiritStills],
  ] as const;
  return [
    ...groups.flatMap(([name, list]) => (list.length === 0 ? [name] : [])),
    ...holdings.flatMap((name) =>
      name !== 'washCharger' && plant[name].holds === 0 ? [holdingNames[name]] : [],
    ),
  ].map((name) => name.toLowerCase());
}
