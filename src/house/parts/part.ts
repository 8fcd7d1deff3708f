// What a house may keep beside its figures: parts, each with an id, a reader of its own and a value when nothing is given.

/** Every part that a house may have. A text with another is told of. */
export const partIds = ['known', 'plant', 'periods', 'stock', 'malts', 'facts', 'dates', 'bottles'] as const;
export type PartId = (typeof partIds)[number];

/**
 * The parts of a house as its text carries them, not read yet: a part is read by its own reader, and only where it is
 * used, so a page that shows none carries no reader. A part that is empty is not among them.
 */
export type HouseParts = Readonly<Partial<Record<PartId, unknown>>>;

/** A part once it is read, with a sentence that names each thing that could not be used. */
export interface PartReading<T> {
  readonly value: T;
  readonly problems: readonly string[];
}

export interface HousePart<T> {
  readonly id: PartId;
  /** What a sentence calls it: “Stills and vessels”. */
  readonly title: string;
  /** The value of a house that has not given it. */
  readonly empty: T;
  /** Reads what a text carries, strictly, bounded in length and count; never throws. What it gives is read back as it is. */
  read(data: unknown): PartReading<T>;
}

const DEEPEST = 12; // lists in lists: what a text may carry; deeper could not be written again

/** True when data from a text is not too deep to be written again. */
function isShallow(data: unknown, depth = DEEPEST): boolean {
  if (typeof data !== 'object' || data === null) return true;
  return depth > 0 && Object.values(data).every((each) => isShallow(each, depth - 1));
}

/** The parts in a house's text, still to be read; what is no part of a house is told of. */
export function partsIn(data: Readonly<Record<string, unknown>>): { parts: HouseParts; unusable: string[] } {
  const given = partIds.filter((id) => Object.hasOwn(data, id));
  return {
    parts: Object.fromEntries(given.filter((id) => isShallow(data[id])).map((id) => [id, data[id]])),
    unusable: [
      ...given.filter((id) => !isShallow(data[id])),
      ...Object.keys(data).filter((id) => !(partIds as readonly string[]).includes(id)),
    ],
  };
}

const asText = (data: unknown) => JSON.stringify(data);

/** True when two values of a part, read or not, say the same. */
export const isSamePart = (a: unknown, b: unknown): boolean => a === b || asText(a) === asText(b);

/** The parts with one of them changed; a value that is empty takes it away. */
export function withPart<T>(parts: HouseParts, { id, empty }: HousePart<T>, value: T): HouseParts {
  const { [id]: _, ...others } = parts;
  return isSamePart(value, empty) ? others : { ...others, [id]: value };
}

const readings = new WeakMap<object, Map<PartId, PartReading<unknown>>>();

/** What a part's reader makes of a text's data, read once; nothing given is the empty value. */
export function readPart<T>(part: HousePart<T>, data: unknown): PartReading<T> {
  if (data === undefined) return { value: part.empty, problems: [] };
  if (typeof data !== 'object' || data === null) return part.read(data);
  const of = readings.get(data) ?? readings.set(data, new Map()).get(data)!;
  if (!of.has(part.id)) of.set(part.id, part.read(data));
  return of.get(part.id) as PartReading<T>;
}
