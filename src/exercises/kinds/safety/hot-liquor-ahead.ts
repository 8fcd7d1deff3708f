// A valve on the hot side, and someone at the outlet.
import { judged, ONE_TONE_SINCE } from '../../judged.ts';
import before from './before/hot-liquor-ahead.ts';

export default judged({
  id: 'hot-liquor-ahead',
  title: 'Before the valve is opened',
  topic: 'safety',
  level: 1,
  sources: ['scald-times', 'common-practice', 'memory'],
  scene: (chance) => {
    const liquid = chance.pick(['hot liquor', 'pot ale', 'spent lees', 'the last water for the mash']);
    const degrees = chance.pick([75, 80, 85, 90, 95]);
    const isWaste = liquid === 'pot ale' || liquid === 'spent lees';
    const outlet = chance.pick([
      'the open end of a hose on the floor',
      'the drain in the next room',
      `the ${isWaste && chance.generator >= ONE_TONE_SINCE ? 'cooling tank' : 'mash tun'} with its hatch open`,
      'a pipe that ends behind the still',
    ]);
    const pressed = chance.pick([
      'The mash is late.',
      'The shift ends in ten minutes.',
      'You are asked to hurry.',
      'The lorry is waiting.',
    ]);
    return `You are about to open a valve. ${liquid[0]!.toUpperCase()}${liquid.slice(1)} at ${degrees} °C will come out at ${outlet}, which you cannot see from here. ${pressed} What do you do?`;
  },
  would: [
    [
      'Go and clear the outlet and bar the way to it, and then come back and open it.',
      'Water at 65 °C burns through the skin in two seconds, and this is hotter. So you have to know who is near.',
    ],
    [
      'Have a colleague keep the outlet clear, and open it if they say so.',
      'Now somebody sees the place that you cannot, and keeps people from it.',
    ],
    [
      'Keep it shut until you know that no one is there, even if the others shout.',
      'No mash and no lorry is worth a scald.',
    ],
    [
      'Check the hose and its joints, and see its end made fast and kept clear.',
      'A hose that comes off scalds whoever is near, as does one that points at somebody.',
    ],
    [
      'Clear and bar the outlet, wear your gloves and goggles, and then open it slowly.',
      'You have seen the place and the people. A slow start keeps a hose from leaping.',
    ],
  ],
  wouldNot: [
    [
      'Call out a warning, count to ten, and open it if nobody answers.',
      'A call that nobody answers tells you nothing: they may not have heard it.',
    ],
    [
      'Look for gloves and goggles first, and open it as soon as you wear them.',
      'They protect you, and nobody at the outlet.',
    ],
    [
      'Ask a trained colleague whether people ever stand there, and open it if not.',
      'What is usual is not what is there now. Someone has to look.',
    ],
    [
      'Hold it back until it is ten degrees down, and then open it slowly.',
      'It is still hot enough to burn: even 60 °C does in five seconds. Looking is what is missing.',
    ],
    [
      'Hang a warning on the valve, even if it is only for a minute, and open it.',
      'The sign hangs at the wrong end: whoever is at the outlet does not see it.',
    ],
  ],
  before,
});
