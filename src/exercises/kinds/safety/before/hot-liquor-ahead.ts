// What sheets of generators before 7 show for “Before the valve is opened”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Check the line, make sure that nobody is near the outlet, and only then open.',
    'By figures from memory, water at 65 °C burns seriously in a second or two, and this is hotter. Valves and hoses are checked, and one knows who is near the outlet, as the site’s procedure says.',
  ],
  others: [
    [
      'Open it slowly, so that anyone there has time to step back.',
      'A slow jet scalds as badly. They may not see or hear it.',
    ],
    [
      'Call out “hot water” loudly, wait a few seconds, and open.',
      'A call that nobody answers tells you nothing. You have to know that nobody is there.',
    ],
    ['Open it and walk over quickly to look.', 'The liquid is there before you.'],
    [
      'Open it, since everybody who works here knows that this pipe is hot.',
      'Visitors, cleaners and new colleagues do not. Look first.',
    ],
    [
      'Open it fully so that it is over sooner.',
      'More hot liquid at once is worse for whoever stands there.',
    ],
  ],
  would: [
    [
      'Make sure first that nobody at all is near the place where it comes out.',
      'Water at 65 °C burns seriously in a second or two, by figures from memory, and this is hotter.',
    ],
    [
      'Have the hose and its joints checked before it is opened.',
      'A hose that comes off scalds whoever is near, as the site’s procedure knows.',
    ],
    [
      'Walk over and look, and then walk back and open.',
      'You have to know where it goes before it goes there.',
    ],
    ['Let them wait for it, however late it is.', 'No mash and no lorry is worth a scald.'],
  ],
} satisfies Before;
