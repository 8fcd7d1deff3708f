// A valve on the hot side, and someone at the outlet.
import { choice } from '../../choice.ts';

export default choice({
  id: 'hot-liquor-ahead',
  title: 'Before the valve is opened',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['memory'],
  ask: (chance) => {
    const liquid = chance.pick(['hot liquor', 'pot ale', 'spent lees', 'the last water for the mash']);
    const degrees = chance.pick([75, 80, 85, 90, 95]);
    const outlet = chance.pick([
      'the open end of a hose on the floor',
      'the drain in the next room',
      'the mash tun with its hatch open',
      'a pipe that ends behind the still',
    ]);
    const pressed = chance.pick([
      'The mash is late.',
      'The shift ends in ten minutes.',
      'You are asked to hurry.',
      'The lorry is waiting.',
    ]);
    return {
      prompt: `You are about to open a valve. ${liquid[0]!.toUpperCase()}${liquid.slice(1)} at ${degrees} °C will come out at ${outlet}, which you cannot see from here. ${pressed} What do you do?`,
      right: {
        text: 'Check the line, make sure that nobody is near the outlet, and only then open.',
        why: 'By figures from memory, water at 65 °C burns seriously in a second or two, and this is hotter. Valves and hoses are checked, and one knows who is near the outlet, as the site’s procedure says.',
      },
      others: [
        {
          text: 'Open it slowly, so that anyone there has time to step back.',
          why: 'A slow jet scalds as badly. They may not see or hear it.',
        },
        {
          text: 'Call out “hot water” loudly, wait a few seconds, and open.',
          why: 'A call that nobody answers tells you nothing. You have to know that nobody is there.',
        },
        {
          text: 'Open it and walk over quickly to look.',
          why: 'The liquid is there before you.',
        },
        {
          text: 'Open it, since everybody who works here knows that this pipe is hot.',
          why: 'Visitors, cleaners and new colleagues do not. Look first.',
        },
        {
          text: 'Open it fully so that it is over sooner.',
          why: 'More hot liquid at once is worse for whoever stands there.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Make sure first that nobody at all is near the place where it comes out.',
            why: 'Water at 65 °C burns seriously in a second or two, by figures from memory, and this is hotter.',
          },
          {
            text: 'Have the hose and its joints checked before it is opened.',
            why: 'A hose that comes off scalds whoever is near, as the site’s procedure knows.',
          },
          {
            text: 'Walk over and look, and then walk back and open.',
            why: 'You have to know where it goes before it goes there.',
          },
          {
            text: 'Let them wait for it, however late it is.',
            why: 'No mash and no lorry is worth a scald.',
          },
        ],
      },
    };
  },
});
