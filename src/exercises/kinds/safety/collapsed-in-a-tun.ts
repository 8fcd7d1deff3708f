// Someone lies at the bottom of a vessel.
import { judged } from '../../judged.ts';
import before from './before/collapsed-in-a-tun.ts';

export default judged({
  id: 'collapsed-in-a-tun',
  title: 'Someone is down in a vessel',
  topic: 'safety',
  level: 1,
  sources: ['hse-co2', 'common-practice'],
  scene: (chance) => {
    const vessel = chance.pick([
      'an empty washback',
      'a washback that was drained this morning',
      'the mash tun',
      'a steep',
      'a grain bin',
      'an emptied low wines receiver',
    ]);
    const time = chance.pick([
      'at ten past six in the morning',
      'at half past two at night',
      'shortly before noon',
      'at twenty to five',
    ]);
    const near = chance.pick([
      'A ladder stands beside you.',
      'A second colleague is running for a rope.',
      'You think you can reach an arm if you lean in.',
      'The manhole is wide, and the bottom is only two metres down.',
    ]);
    return `${time[0]!.toUpperCase()}${time.slice(1)} you find a colleague lying at the bottom of ${vessel}. There is no answer when you shout. ${near} What do you do?`;
  },
  would: [
    [
      'Raise the alarm, and hold the others back from the opening.',
      'You cannot help if you fall too, and those who want to help are the next to fall.',
    ],
    [
      'Call for a trained team with air of their own, and wait outside.',
      'Only people with air of their own can go in and come out again. Your site’s procedure says how they are called.',
    ],
    [
      'Give the alarm, and stay outside until people with breathing sets are there.',
      'It is hard, and it is what gets one person out and not two in.',
    ],
    [
      'Stand in the way of anyone who wants to go down with a rope.',
      'Whoever follows without air of their own becomes the second casualty.',
    ],
    [
      'Stand well away from the rim, and tell the rescuers what was in it.',
      'The bad air may reach to the rim; and what the vessel held tells them what the air may be.',
    ],
  ],
  wouldNot: [
    [
      'Raise the alarm first, and then go in to hold their head up.',
      'Whoever follows without air of their own becomes the second casualty.',
    ],
    [
      'Stay outside, even if it is a long reach, and lift them by the arms.',
      'The bad air may reach to the rim. Heads do not belong in there either.',
    ],
    [
      'Call down to them, and wait for a minute in case they have only fainted.',
      'That loses time, and they would wake in the same air. Raise the alarm.',
    ],
    [
      'Look for the meter first, so that you can report what the air is.',
      'Every minute counts. The alarm comes first, and no reading would allow you to go in.',
    ],
    [
      'Leave the hatch open for a while, and then send in one person.',
      'Heavy gas stays at the bottom. Nobody goes in but rescuers with air of their own.',
    ],
  ],
  before,
});
