// A lock set by law.
import { judged } from '../../judged.ts';
import before from './before/the-lock-on-the-safe.ts';

export default judged({
  id: 'the-lock-on-the-safe',
  title: 'The lock on the safe',
  topic: 'safety',
  level: 1,
  sources: ['alda-1979', 'common-practice'],
  scene: (chance) => {
    const reason = chance.pick([
      'The hydrometer in the safe has sunk',
      'A joint inside the safe drips',
      'A label has fallen over the thermometer',
      'The spout in the safe sticks',
    ]);
    const idea = chance.pick([
      'says that the hinges can be unscrewed',
      'has a spare key that nobody knows of',
      'wants to lift the glass out',
      'knows how to slip the lock',
    ]);
    const who = chance.pick(['a colleague', 'the fitter', 'the man from the other shift', 'the apprentice']);
    const rest = chance.pick([2, 5, 8]);
    return `${reason}, with ${rest} hours of the run to go. The safe is locked, and ${who} ${idea}. What do you do?`;
  },
  would: [
    [
      'Call whoever answers for the keys, and wait for them.',
      'Who may open it, when, and how it is written down, follows from the licence.',
    ],
    [
      'Say no, and report that there is such a way in.',
      'A lock that can be got round is a matter for whoever holds the licence.',
    ],
    [
      'Stop the run by the procedure if it cannot go on with the safe shut.',
      'A run can be stopped; an opened safe cannot be explained.',
    ],
    [
      'Leave the lock alone, even if the cut is spoilt.',
      'The account of every litre of pure alcohol rests on that lock.',
    ],
    [
      'Look up what the licence says, so that it is opened by those whom it names.',
      'There is a proper way to have it opened, with its record.',
    ],
  ],
  wouldNot: [
    [
      'Have it opened before two trained colleagues, and write it in the log.',
      'Witnesses do not replace leave. Whoever holds the licence is asked first.',
    ],
    [
      'Say no to the lock, and let them take out the glass with care.',
      'The lock guards the whole safe, glass and hinges too.',
    ],
    [
      'Open it first, and then report it to whoever answers for the keys.',
      'The report comes too late: whether anything was taken is just what nobody can then know.',
    ],
    [
      'Keep it shut until the run is done, and report the fault as soon as it is.',
      'The lock is left alone, and rightly; but a fault that waits may be a leak, and a cut made blind spoils the spirit. It is reported at once, and the run is stopped if need be.',
    ],
    [
      'Have a trained fitter do it, and look on, so that nothing is taken.',
      'A fitter’s training is no leave. You know of it, and the licence is the whole house’s.',
    ],
  ],
  before,
});
