// One printed figure beside the computed one.
import type { SourceStanding } from '../core/sources.ts';

export interface Row {
  readonly id: string;
  readonly source: string;
  readonly standing: SourceStanding;
  readonly what: string;
  readonly printed: number;
  readonly computed: number;
  /** Computed less printed. */
  readonly deviation: number;
  /** Largest distance allowed, in the group's unit. */
  readonly tolerance: number;
  /** Why this tolerance and not a smaller one. */
  readonly reason: string;
}

export interface Group {
  readonly title: string;
  /** The unit of every row; nothing where each row names its own. */
  readonly unit: string;
  /** Told in one line on the page: how its printed side was come by. */
  readonly inBrief?: string;
  readonly rows: readonly Row[];
}

export function publishedRow(given: Omit<Row, 'deviation'>): Row {
  return { ...given, deviation: given.computed - given.printed };
}

/** The standing of a row from the first word of its provenance. */
export function standingOfRow(provenance: string): SourceStanding {
  if (/^(read|published)/.test(provenance)) return 'published';
  if (/^(computed|derived)/.test(provenance)) return 'computed';
  if (/^memory/.test(provenance)) return 'memory';
  throw new Error(`“${provenance}” is not a standing.`);
}

/** The one entry of a list whose item, name or id is `name`. */
export function publishedEntry<T extends object>(list: readonly T[], name: string): T {
  const found = list.filter((one) => ['item', 'name', 'id'].some((key) => Reflect.get(one, key) === name));
  if (found.length !== 1) throw new Error(`${found.length} entries are named “${name}”.`);
  return found[0]!;
}
