// What was taken out or joined last, and putting it back as it was; what came in since stays.
import { sameName, withThings, type ClassBook, type BookEntry, type Person, type Thing } from './book.ts';

/** The stamp of what was taken out or joined last; 0 where nothing was. What was told of a name goes only with something else. */
export const lastTakenOut = ({ entries }: ClassBook): number =>
  Object.values(entries).reduce((last, { gone, is, stamp }) => (gone && is !== 'told' ? Math.max(last, stamp) : last), 0); // prettier-ignore
export const hasTakenOut = (book: ClassBook): boolean => lastTakenOut(book) > 0;

const plain = ({ gone: _, stamp: __, ...thing }: BookEntry) => thing as Thing;

/** A thing as it was before its owner was joined to another. */
function ofBefore(entry: BookEntry, owner: string): Thing {
  const { was = [], into: _, ...thing } = plain(entry) as Thing & { was?: readonly string[]; into?: string };
  return { ...thing, person: owner, ...(was.length > 1 ? { was: was.slice(0, -1) } : {}) } as Thing;
}

/** Whom a person who went was joined to. A join of an older handbook is known by what was told with it. */
function joinedTo({ entries }: ClassBook, { into, name, stamp }: BookEntry<Person>): string | undefined {
  const told = Object.values(entries).find((each) => each.is === 'told' && !each.gone && each.same && each.stamp === stamp && each.name === sameName(name)); // prettier-ignore
  return into ?? (told?.is === 'told' ? told.person : undefined);
}

/** Two people as they were before one was joined to the other. What was moved or taken out since stays as it is. */
function parted(book: ClassBook, id: string, person: BookEntry<Person>, into: string): ClassBook {
  const { name, role } = person;
  const things: Record<string, Thing> = { [id]: { is: 'person', name, role } };
  const gone: string[] = [];
  for (const [each, entry] of Object.entries(book.entries)) {
    if (!('person' in entry) || entry.person !== (entry.gone ? id : into)) continue;
    const isTold = entry.is === 'told' && entry.same && entry.name === sameName(name);
    const isMoved = person.into === undefined ? entry.stamp === person.stamp && !isTold : entry.was?.at(-1) === id;
    if (isMoved) things[each] = ofBefore(entry, id);
    else if (isTold && !entry.gone) gone.push(each);
  }
  const next = withThings(book, { ...things, ...Object.fromEntries(gone.map((each) => [each, plain(book.entries[each]!)])) });
  return { ...next, entries: { ...next.entries, ...Object.fromEntries(gone.map((each) => [each, { ...next.entries[each]!, gone: true as const }])) } };
} // prettier-ignore

const nameAt = ({ entries }: ClassBook, id: string | undefined) => {
  const entry = id !== undefined && Object.hasOwn(entries, id) ? entries[id] : undefined;
  return entry?.is === 'person' ? entry.name : '';
};

/** The book with what was taken out or joined last put back, and a sentence that says what that was. */
export function withPutBack(book: ClassBook): { readonly book: ClassBook; readonly says: string } {
  const last = lastTakenOut(book);
  const back = Object.entries(book.entries).filter(([, { gone, stamp }]) => gone && stamp === last);
  for (const [id, entry] of back) {
    const into = entry.is === 'person' ? joinedTo(book, entry as BookEntry<Person>) : undefined;
    if (into === undefined) continue;
    const person = entry as BookEntry<Person>;
    return { book: parted(book, id, person, into), says: `${person.name} and ${nameAt(book, into)} are two again, each with what was theirs. What came in since stands where it is.` };
  }
  const next = withThings(book, Object.fromEntries(back.map(([id, entry]) => [id, plain(entry)])));
  const names = back.flatMap(([, entry]) => (entry.is === 'person' ? [entry.name] : entry.is === 'work' ? [`“${entry.title}”`] : []));
  const results = back.filter(([, { is }]) => is === 'result').length;
  const what = names.length > 0 ? names.join(' and ') : back.length === 1 && results === 1 ? `The result of ${nameAt(book, (back[0]![1] as { person?: string }).person)}` : 'What was taken out last';
  return { book: next, says: `${what} is back${names.length > 0 && results > 0 ? `, with ${results} ${results === 1 ? 'result' : 'results'}` : ''}.` };
} // prettier-ignore
