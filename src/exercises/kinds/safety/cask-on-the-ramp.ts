// A full cask that begins to roll.
import { choice } from '../../choice.ts';

export default choice({
  id: 'cask-on-the-ramp',
  title: 'A cask begins to roll',
  topic: 'safety',
  form: 'judgement',
  level: 1,
  sources: ['derived', 'common-practice'],
  ask: (chance) => {
    const cask = chance.pick([
      'a full barrel of about 230 kg',
      'a full hogshead of about 285 kg',
      'a full butt of over 550 kg',
    ]);
    const way = chance.pick([
      'down a ramp towards a doorway',
      'down the yard towards the lorry',
      'along the alley between two rows',
      'off the end of the rails',
    ]);
    const you = chance.pick([
      'You stand beside it.',
      'You are two steps below it.',
      'You hold a chock in your hand.',
      'Your hand is on its head.',
    ]);
    return {
      prompt: `In the store ${cask} begins to roll ${way}. ${you} What do you do?`,
      right: {
        text: 'Get out of its path, shout a warning, and let it hit what it hits.',
        why: 'A rolling cask is not stopped by hand or foot. Spilt spirit is then a fire danger: sparks are kept away, the alarm is raised, and the site’s procedure for spills follows.',
      },
      others: [
        {
          text: 'Put a foot against it while it is still slow enough for that.',
          why: 'Even slow, it has the weight of several people. It goes over the foot.',
        },
        {
          text: 'Run ahead and throw a chock in front of it.',
          why: 'That takes you into its path, and a moving cask jumps a chock.',
        },
        {
          text: 'Run along and pull at its rim to turn it.',
          why: 'Hands at a rolling cask are caught between it and the next thing.',
        },
        {
          text: 'Brace your back against the doorway to stop it there.',
          why: 'You would be crushed between cask and frame.',
        },
        {
          text: 'Call a colleague to catch it from below.',
          why: 'Nobody stands below a cask on a slope.',
        },
      ],
      bothWays: {
        would: [
          {
            text: 'Get out of its path, and let it hit whatever it hits.',
            why: 'A rolling cask is not stopped by hand or foot.',
          },
          { text: 'Shout a warning to all who stand further along.', why: 'They may not see it coming.' },
          {
            text: 'Keep hands and feet away until it lies quite still.',
            why: 'Even slow, it has the weight of several people.',
          },
          {
            text: 'Take what it spills for a fire danger, and raise the alarm.',
            why: 'Sparks are kept away from spilt spirit, and the site’s procedure for spills follows.',
          },
        ],
      },
    };
  },
});
