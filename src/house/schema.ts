// The schema of a house's file, in JSON Schema 2020-12, made from the table of figures.
import { figureTable, type FigureId } from '../core/figures/index.ts';
import { countedIds, waysKept } from '../core/figures/standing.ts';
import { HOUSE_FORMAT, HOUSE_VERSION } from './codec.ts';
import { choiceFigures, numberFigures, type ChoiceName, type NumberName } from './figures.ts';
import { eachSchema, numberSchema, objectSchema, type Schema } from './schema-kit.ts';
import { schemasOfParts } from './schema-parts.ts';

/** A figure within its limits. */
const numberOf = (id: FigureId, description?: string): Schema => {
  const { label, kind, limits } = figureTable[id];
  return numberSchema(label, kind, limits, description ? { description } : {});
};

const numbers = Object.keys(numberFigures) as NumberName[];
const choices = Object.keys(choiceFigures) as ChoiceName[];

const figures = objectSchema({
  ...eachSchema(numbers, (name) => numberOf(name, numberFigures[name].meaning)),
  ...eachSchema(choices, (name) => {
    const { label, meaning, options } = choiceFigures[name];
    return { title: label, description: meaning, enum: Object.keys(options) };
  }),
});

const known = objectSchema({
  given: objectSchema(eachSchema(numbers, (name) => ({ enum: waysKept(name) }))),
  counted: objectSchema(eachSchema(countedIds, (id) => numberOf(id))),
});

/** What a house's file may hold. Figures left out are the built-in house's, and so are parts. What contradicts itself is told by the reader alone: a schema knows each value by itself. */
export const houseSchema: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'house.schema.json',
  title: 'A house of the Malt Spirit Handbook',
  ...objectSchema(
    {
      format: { const: HOUSE_FORMAT },
      version: { enum: [1, HOUSE_VERSION] },
      name: { type: 'string', minLength: 1, maxLength: 80 },
      figures,
      parts: objectSchema(schemasOfParts(figures, known)),
    },
    { required: ['format', 'version', 'figures'], additionalProperties: true },
  ),
};
