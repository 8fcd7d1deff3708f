// Which figures of a plant are usual values that its reader has not given yet, and a sentence that says so.
import { plantFields, stillFields, tunFields, washbackFields, type VesselField } from './fields.ts';
import { stillNames, type Plant } from './plant.ts';

const kinds = {
  mashTuns: ['mash tuns', tunFields],
  washbacks: ['washbacks', washbackFields],
  washStills: [stillNames.wash.toLowerCase(), stillFields],
  intermediateStills: [stillNames.intermediate.toLowerCase(), stillFields],
  spiritStills: [stillNames.spirit.toLowerCase(), stillFields],
} as const;

/** The labels of the figures, by vessel, that stand at usual values; what is chosen from a few, and the brim, move no hour and no litre. */
function usualFigures(plant: Plant): readonly string[] {
  const labels = (fields: Readonly<Record<string, VesselField>>, names: readonly string[]) =>
    Object.entries(fields).flatMap(([name, { label }]) =>
      names.includes(name) && name !== 'full' ? [label.toLowerCase()] : [],
    );
  const groups = Object.entries(kinds).flatMap(([key, [name, fields]]) => {
    const names = plant[key as keyof typeof kinds].flatMap(({ usual = [] }) => usual);
    const found = labels(fields, names);
    return found.length > 0 ? [`${name} (${found.join(', ')})`] : [];
  });
  return [...groups, ...labels(plantFields, plant.usual ?? [])];
}

/**
 * That what is said of a plant, and of a week with some `others`, rests on usual values, and on which; nothing where its reader gave them all.
 * @example usualSentence({ mashTuns: [], washbacks: [], washStills: [], intermediateStills: [], spiritStills: [] }) // undefined (no figure of it is a usual value)
 */
export function usualSentence(plant: Plant, others: readonly string[] = []): string | undefined {
  const figures = [...usualFigures(plant), ...others];
  return figures.length > 0
    ? `This rests on usual values that are not yours yet: ${figures.join('; ')}.`
    : undefined;
}
