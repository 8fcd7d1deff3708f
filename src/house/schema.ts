// The schema of a house's file, in JSON Schema 2020-12, made from the table of figures.
import { figureTable, type FigureId } from '../core/figures/index.ts';
import { countedIds, waysToKnow } from '../core/figures/standing.ts';
import { kinds } from '../core/kinds.ts';
import { FORMAT, VERSION } from './codec.ts';
import { choiceFigures, numberFigures, type ChoiceName, type NumberName } from './figures.ts';
import { partIds } from './parts/part.ts';

type Schema = Readonly<Record<string, unknown>>;

/** A number of a kind, within the limits of its figure. */
function numberOf(id: FigureId, description?: string): Schema {
  const { label, kind, limits } = figureTable[id];
  const { unit } = kinds[kind];
  return {
    title: `${label}${unit && `, ${unit}`}`,
    ...(description && { description }),
    type: 'number',
    minimum: limits[0],
    maximum: limits[1],
  };
}

const objectOf = (properties: Schema, more: Schema = {}): Schema => ({
  type: 'object',
  properties,
  additionalProperties: false,
  ...more,
});
const each = <K extends string>(names: readonly K[], schema: (name: K) => Schema): Schema =>
  Object.fromEntries(names.map((name) => [name, schema(name)]));

const numbers = Object.keys(numberFigures) as NumberName[];
const choices = Object.keys(choiceFigures) as ChoiceName[];

const figures = objectOf({
  ...each(numbers, (name) => numberOf(name, numberFigures[name].meaning)),
  ...each(choices, (name) => {
    const { label, meaning, options } = choiceFigures[name];
    return { title: label, description: meaning, enum: Object.keys(options) };
  }),
});

const known = objectOf({
  given: objectOf(each(numbers, (name) => ({ enum: waysToKnow(name) }))),
  counted: objectOf(each(countedIds, (id) => numberOf(id))),
});

/** What a house's file may hold. Figures left out are the built-in house's; a part is described where this handbook says so, and is otherwise as its page keeps it. */
export const houseSchema: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'house.schema.json',
  title: 'A house of the Malt Spirit Handbook',
  ...objectOf(
    {
      format: { const: FORMAT },
      version: { enum: [1, VERSION] },
      name: { type: 'string', minLength: 1, maxLength: 80 },
      figures,
      parts: objectOf(each(partIds, (id) => (id === 'known' ? known : { type: ['object', 'array'] }))),
    },
    { required: ['format', 'version', 'figures'], additionalProperties: true },
  ),
};
