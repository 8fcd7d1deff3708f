// A lock set by law.
import { choice } from '../../choice.ts';

export default choice({
  id: 'the-lock-on-the-safe',
  title: 'The lock on the safe',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['alda-1979', 'common-practice'],
  ask: (chance) => {
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
    return {
      prompt: `${reason}, with ${rest} hours of the run to go. The safe is locked, and ${who} ${idea}. What do you do?`,
      right: {
        text: 'Leave the lock alone, and tell whoever is responsible for licence and keys.',
        why: 'The account of every litre of pure alcohol rests on that lock. Who may open it, when, and how it is written down, follows from the licence. If the run cannot go on, it is stopped by the site’s procedure.',
      },
      others: [
        {
          text: 'Open it, put things right and lock it again; nothing is taken.',
          why: 'Whether anything was taken is just what nobody could then know.',
        },
        {
          text: 'Let the colleague do it, since you do not touch it yourself.',
          why: 'You know of it. That makes it your affair, and the licence is the whole house’s.',
        },
        {
          text: 'Open it with two witnesses and write it in the book.',
          why: 'Witnesses do not replace leave. Ask whoever holds the licence first.',
        },
        {
          text: 'Drill a small hole for a wire, above the spirit.',
          why: 'That damages what the law wants whole, and makes a spark beside spirit.',
        },
        {
          text: 'Let the run go on without reading anything.',
          why: 'A cut made blind spoils the spirit, and a fault left alone may be a leak. Report it.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Leave the lock alone, whatever it is that has gone wrong.',
            why: 'The account of every litre of pure alcohol rests on that lock.',
          },
          {
            text: 'Tell whoever answers for licence and keys.',
            why: 'Who may open it, when, and how it is written down, follows from the licence.',
          },
          {
            text: 'Stop the run by the procedure if it cannot go on blind.',
            why: 'A run can be stopped; an opened safe cannot be explained.',
          },
          {
            text: 'Say no, and report that there is such a way in.',
            why: 'A lock that can be got round is a matter for whoever holds the licence.',
          },
        ],
      },
    };
  },
});
