// The names of a class: whose a name is, which two are written almost alike, and one person joined to another or renamed with nothing lost.
import { entriesOfKind, entryId, peopleOf, sameName, withThings, type ClassBook, type BookEntry, type Got, type Person, type Thing } from './book.ts'; // prettier-ignore

const MOST_JOINED = 20; // joins that a thing remembers, one after another
const SHORTEST = 4; // letters of a name from which one letter may be a slip; below it Ada and Una would be asked about

/** The person of each name, also of a name that the trainer has said is theirs; the names as `sameName` has them. */
export function idByName(book: ClassBook): Map<string, string> {
  const people = peopleOf(book);
  const there = new Set(people.map(({ id }) => id));
  const told = entriesOfKind(book, 'told').filter(({ same, person }) => same && there.has(person));
  return new Map([
    ...told.map(({ name, person }) => [name, person] as const),
    ...people.map(({ id, name }) => [sameName(name), id] as const),
  ]);
}

/** An id for a new person of that name, which nobody in the book has. */
export function freeId(book: ClassBook, name: string): string {
  const same = sameName(name);
  for (let turn = 0; ; turn++) {
    const id = turn === 0 ? entryId('person', same) : entryId('person', same, turn);
    const there = Object.hasOwn(book.entries, id) ? book.entries[id] : undefined;
    if (there?.is !== 'person' || (there.gone && sameName(there.name) === same)) return id;
  }
}

const others: Readonly<Record<string, string>> = { ø: 'o', æ: 'ae', œ: 'oe', ß: 'ss', ł: 'l', đ: 'd', ð: 'd', þ: 'th', ı: 'i' }; // prettier-ignore

/** A name by its letters and digits alone, without accents and capitals. */
const lettersOf = (name: string): string =>
  name
    .toLowerCase()
    .normalize('NFD')
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/[øæœßłđðþı]/g, (each) => others[each]!);

/** Whether one letter was put in, left out or changed; a digit tells two apart. */
function isOneOff(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (long.length - short.length > 1) return false;
  let from = 0;
  while (from < short.length && short[from] === long[from]) from++;
  const isLonger = long.length > short.length;
  if (short.slice(isLonger ? from : from + 1) !== long.slice(from + 1)) return false;
  return !/\p{N}/u.test(`${long[from] ?? ''}${isLonger ? '' : (short[from] ?? '')}`);
}

/** Whether two names are one but for accents, capitals, spaces or one letter. */
export function isAlike(one: string, other: string): boolean {
  const [a, b] = [lettersOf(one), lettersOf(other)];
  if (a === '' || b === '') return false;
  return a === b || (Math.min(a.length, b.length) >= SHORTEST && isOneOff(a, b));
}

type Known = Person & { readonly id: string; readonly stamp: number };

/** Two people whose names are almost alike and of whom nothing was said yet: the later first. */
export function alikePeople(book: ClassBook): readonly (readonly [later: Known, earlier: Known])[] {
  const people = peopleOf(book);
  const told = new Set(entriesOfKind(book, 'told').map(({ name, person }) => JSON.stringify([name, person])));
  const isTold = (a: Known, b: Known) => told.has(JSON.stringify([sameName(a.name), b.id]));
  return people.flatMap((a, i) =>
    people.slice(i + 1).flatMap((b): (readonly [Known, Known])[] => {
      if (!isAlike(a.name, b.name) || isTold(a, b) || isTold(b, a)) return [];
      return [a.stamp > b.stamp ? [a, b] : [b, a]];
    }),
  );
}

const tell = (name: string, person: string, same: boolean) =>
  ({ [entryId('told', sameName(name), person)]: { is: 'told', name: sameName(name), person, same } satisfies Thing }); // prettier-ignore

/** The book in which two people are known to be two. */
export const withPeopleApart = (book: ClassBook, one: Known, other: Known): ClassBook =>
  withThings(book, { ...tell(one.name, other.id, false), ...tell(other.name, one.id, false) });

/** The person of an id, whether they stand in the book or not. */
function personAt(book: ClassBook, id: string): BookEntry<Person> | undefined {
  const entry = Object.hasOwn(book.entries, id) ? book.entries[id] : undefined;
  return entry?.is === 'person' ? (entry as BookEntry<Person>) : undefined;
}

/** What an entry says, whoever it is of: by it the same is known under two names. */
const saysOf = ({ stamp: _, ...thing }: BookEntry) => JSON.stringify(Object.entries({ ...thing, person: '', was: [] }).sort(([a], [b]) => (a < b ? -1 : 1))); // prettier-ignore

/** Whose a thing was, with one who is joined to another now. */
const wasOf = (entry: BookEntry, from: string) =>
  [...(('was' in entry && entry.was) || []), from].slice(-MOST_JOINED);

/** One person with all that two had: what both had stands once, and the name that goes is theirs from now on. */
export function withPeopleJoined(book: ClassBook, from: string, into: string): ClassBook {
  const [goes, stays] = [personAt(book, from), personAt(book, into)];
  if (!goes || !stays || stays.gone || from === into) return book;
  const things = Object.entries(book.entries).filter(([, entry]) => entry.gone === undefined);
  const has = new Set(things.flatMap(([, entry]) => ('person' in entry && entry.person === into ? [saysOf(entry)] : []))); // prettier-ignore
  const [moved, twice]: [Record<string, Thing>, string[]] = [{}, []];
  for (const [id, entry] of things) {
    if (!('person' in entry) || entry.person !== from) continue;
    if (has.has(saysOf(entry))) twice.push(id);
    else moved[id] = { ...entry, person: into, was: wasOf(entry, from) } as Thing;
  }
  const next = withThings(book, { ...moved, ...tell(goes.name, into, true) });
  const stamp = Math.max(...Object.values(next.entries).map((entry) => entry.stamp));
  const gone = [
    [from, { ...goes, into, stamp, gone: true }] as const,
    ...twice.map((id) => [id, { ...next.entries[id]!, was: wasOf(book.entries[id]!, from), stamp, gone: true } as BookEntry] as const), // prettier-ignore
  ];
  return { ...next, entries: { ...next.entries, ...Object.fromEntries(gone) } };
}

/** The book in which a result is another person's; the same book where either is not in it. */
export function withResultGiven(book: ClassBook, id: string, to: string): ClassBook {
  const entry = Object.hasOwn(book.entries, id) ? book.entries[id] : undefined;
  const person = personAt(book, to);
  if (entry?.is !== 'result' || entry.gone || !person || person.gone || entry.person === to) return book;
  const { stamp: _, was: __, ...result } = entry as BookEntry<Got>;
  return withThings(book, { [id]: { ...result, person: to } });
}

/** Gives what came under a joined name from another copy of the book to the person it was joined to. */
export function withJoinedFollowed(book: ClassBook): ClassBook {
  const owners = new Set(Object.values(book.entries).flatMap((entry) => ('person' in entry && !entry.gone ? [entry.person] : []))); // prettier-ignore
  return entriesOfKind(book, 'told')
    .filter(({ same }) => same)
    .reduce((now, { name, person }) => {
      const from = Object.entries(now.entries).find(([id, entry]) => entry.is === 'person' && entry.gone && owners.has(id) && sameName(entry.name) === name); // prettier-ignore
      return from ? withPeopleJoined(now, from[0], person) : now;
    }, book);
}

/** The book in which a person has another name; results under the old one still come to them. A sentence where the name is somebody's. */
export function withPersonRenamed(book: ClassBook, id: string, name: string): ClassBook | string {
  const person = personAt(book, id);
  if (!person || person.gone) return 'Choose a person.';
  if (name === '') return 'Write the new name.';
  const owner = idByName(book).get(sameName(name));
  if (owner !== undefined && owner !== id)
    return `${name} is a name in the book already: join the two instead.`;
  return withThings(book, { ...tell(person.name, id, true), [id]: { is: 'person', name, role: person.role } }); // prettier-ignore
}
