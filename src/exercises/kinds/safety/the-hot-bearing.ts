// A bearing that runs hot in a dusty place.
import { choice } from '../../choice.ts';

export default choice({
  id: 'the-hot-bearing',
  title: 'A hot bearing',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['memory', 'common-practice'],
  ask: (chance) => {
    const machine = chance.pick([
      'the malt mill',
      'the malt lift',
      'the screw above the grist bin',
      'the dresser',
    ]);
    const sign = chance.pick([
      'A bearing is too hot to touch',
      'A belt slips and smells of rubber',
      'There is a knocking that was not there before',
      'There is a smell of burning',
    ]);
    const left = chance.pick([20, 30, 40, 50]);
    const tonnes = chance.pick([0.4, 0.6, 0.9, 1.2]);
    return {
      prompt: `The mill room is at work, with ${tonnes} t still to go and ${left} minutes to the mash. ${sign} at ${machine}. What do you do?`,
      right: {
        text: 'Stop the machine by the site’s procedure, and report it before anything else.',
        why: 'A hot bearing, a slipping belt or a spark from metal can light dust. It starts again when someone in charge says so; a late mash is the smaller trouble.',
      },
      others: [
        {
          text: 'Finish the malt of this mash, and report it straight afterwards.',
          why: 'The danger is while it runs. Stop first, explain later.',
        },
        {
          text: 'Pour some cold water over it and go on.',
          why: 'That hides the cause, and water on a running machine brings dangers of its own.',
        },
        {
          text: 'Take off the guard and look while it turns.',
          why: 'Belts and rollers catch sleeves and hands. Machines are shut off and locked before anyone reaches in.',
        },
        {
          text: 'Turn up the dust extraction and go on.',
          why: 'Extraction takes away dust and not the thing that lights it.',
        },
        {
          text: 'Slow the mill down to half and go on.',
          why: 'Half as fast is not cool, and nobody knows yet what is wrong.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Stop the machine in the way the site lays down.',
            why: 'A hot bearing, a slipping belt or a spark from metal can light dust.',
          },
          {
            text: 'Report it at once, though the mash will be late.',
            why: 'A late mash is the smaller trouble.',
          },
          {
            text: 'Keep hands off until it is locked and stands still.',
            why: 'Belts and rollers catch sleeves and hands.',
          },
          {
            text: 'Let it rest until someone in charge lets it go on.',
            why: 'Until the cause is known, it is the same fault that starts again.',
          },
        ],
      },
    };
  },
});
