// What sheets of generators before 7 show for “A hot bearing”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Stop the machine by the site’s procedure, and report it before anything else.',
    'A hot bearing, a slipping belt or a spark from metal can light dust. It starts again when someone in charge says so; a late mash is the smaller trouble.',
  ],
  others: [
    [
      'Finish the malt of this mash, and report it straight afterwards.',
      'The danger is while it runs. Stop first, explain later.',
    ],
    [
      'Pour some cold water over it and go on.',
      'That hides the cause, and water on a running machine brings dangers of its own.',
    ],
    [
      'Take off the guard and look while it turns.',
      'Belts and rollers catch sleeves and hands. Machines are shut off and locked before anyone reaches in.',
    ],
    [
      'Turn up the dust extraction and go on.',
      'Extraction takes away dust and not the thing that lights it.',
    ],
    [
      'Slow the mill down to half and go on.',
      'Half as fast is not cool, and nobody knows yet what is wrong.',
    ],
  ],
  would: [
    [
      'Stop the machine in the way the site lays down.',
      'A hot bearing, a slipping belt or a spark from metal can light dust.',
    ],
    ['Report it at once, though the mash will be late.', 'A late mash is the smaller trouble.'],
    ['Keep hands off until it is locked and stands still.', 'Belts and rollers catch sleeves and hands.'],
    [
      'Let it rest until someone in charge lets it go on.',
      'Until the cause is known, it is the same fault that starts again.',
    ],
  ],
} satisfies Before;
