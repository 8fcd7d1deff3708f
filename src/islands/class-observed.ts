// Puts a record of observed tasks into the class book that is open in this browser.
import type { ObservedRecord } from '../exercises/observed/record.ts';
import { nameOnRecord } from '../exercises/class/observed.ts';
import { keepBook, keptBook } from './class-kept.ts';
import { putAsNew, putByName } from './ClassWhose.tsx';

// The book is that of this browser, which may be a trainee's phone and not the trainer's desk.
const HERE = 'in the class book on this device';
const ELSEWHERE = 'Is your class book on another machine? Save this record to a file and open it there.';

/** What came of it, in a sentence. A name that is not in the book is new in the class; the class book asks of one that is almost alike. */
export function recordIntoClassBook(record: ObservedRecord): string {
  if (nameOnRecord(record) === '') return 'Write the trainee’s name first.';
  if (Object.keys(record.seen).length === 0) return 'Nothing is marked in this record yet.';
  const { book, problems } = keptBook();
  if (problems.length > 0)
    return 'The class book in this browser is damaged: open it first, and see what it says.';
  const { book: next, says } = putByName(book, record, HERE) ?? putAsNew(book, record, HERE);
  return keepBook(next).isKept ? `${says} ${ELSEWHERE}` : 'This browser does not keep the class book; save the record to a file instead.'; // prettier-ignore
}
