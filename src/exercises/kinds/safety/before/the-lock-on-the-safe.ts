// What sheets of generators before 7 show for “The lock on the safe”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Leave the lock alone, and tell whoever is responsible for licence and keys.',
    'The account of every litre of pure alcohol rests on that lock. Who may open it, when, and how it is written down, follows from the licence. If the run cannot go on, it is stopped by the site’s procedure.',
  ],
  others: [
    [
      'Open it, put things right and lock it again; nothing is taken.',
      'Whether anything was taken is just what nobody could then know.',
    ],
    [
      'Let the colleague do it, since you do not touch it yourself.',
      'You know of it. That makes it your affair, and the licence is the whole house’s.',
    ],
    [
      'Open it with two witnesses and write it in the book.',
      'Witnesses do not replace leave. Ask whoever holds the licence first.',
    ],
    [
      'Drill a small hole for a wire, above the spirit.',
      'That damages what the law wants whole, and makes a spark beside spirit.',
    ],
    [
      'Let the run go on without reading anything.',
      'A cut made blind spoils the spirit, and a fault left alone may be a leak. Report it.',
    ],
  ],
  would: [
    [
      'Leave the lock alone, whatever it is that has gone wrong.',
      'The account of every litre of pure alcohol rests on that lock.',
    ],
    [
      'Tell whoever answers for licence and keys.',
      'Who may open it, when, and how it is written down, follows from the licence.',
    ],
    [
      'Stop the run by the procedure if it cannot go on blind.',
      'A run can be stopped; an opened safe cannot be explained.',
    ],
    [
      'Say no, and report that there is such a way in.',
      'A lock that can be got round is a matter for whoever holds the licence.',
    ],
  ],
} satisfies Before;
