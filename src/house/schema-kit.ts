// The pieces of a JSON Schema: numbers of a kind, texts, choices, lists and objects that hold nothing else.
import { kinds, type KindName } from '../core/kinds.ts';

export type Schema = Readonly<Record<string, unknown>>;

/** A number of a kind within its limits; a count is whole if `isWhole`. */
export const numberSchema = (
  label: string,
  kind: KindName,
  [minimum, maximum]: readonly [number, number],
  more: Schema = {},
): Schema => ({
  title: `${label}${kinds[kind].unit && `, ${kinds[kind].unit}`}`,
  ...more,
  type: 'number',
  minimum,
  maximum,
});
export const WHOLE = { multipleOf: 1 } as const;

/** One of a few, by its key. */
export const oneOfSchema = (title: string, options: Readonly<Record<string, unknown>>): Schema => ({
  title,
  enum: Object.keys(options),
});

/** A text on one line. */
export const textSchema = (title: string, maxLength: number): Schema => ({
  title,
  type: 'string',
  minLength: 1,
  maxLength,
});

/** A list of things of one form, `minItems` to `maxItems` of them. */
export const listSchema = (items: Schema, maxItems: number, minItems = 0): Schema => ({
  type: 'array',
  items,
  maxItems,
  ...(minItems > 0 && { minItems }),
});

/** A record with these fields and no other. */
export const objectSchema = (properties: Schema, more: Schema = {}): Schema => ({
  type: 'object',
  properties,
  additionalProperties: false,
  ...more,
});

/** An object of which nothing may be left out. */
export const wholeSchema = (properties: Schema): Schema =>
  objectSchema(properties, { required: Object.keys(properties) });

/** A schema for each of some names. */
export const eachSchema = <K extends string>(names: readonly K[], schema: (name: K) => Schema): Schema =>
  Object.fromEntries(names.map((name) => [name, schema(name)]));
