// Someone bends over the open hatch of a washback.
import { judged } from '../../judged.ts';
import before from './before/over-the-hatch.ts';

export default judged({
  id: 'over-the-hatch',
  title: 'Bending over the hatch',
  topic: 'safety',
  level: 1,
  sources: ['hse-co2', 'ivhhn-co2', 'niosh-idlh-co2', 'memory'],
  scene: (chance) => {
    const who = chance.pick(['a visitor', 'a new colleague', 'a photographer', 'the student on your tour']);
    const hours = chance.pick([12, 18, 20, 24, 30, 36]);
    const why = chance.pick([
      'to smell the wash',
      'to see the froth',
      'to fetch a pen that fell in',
      'to listen to it',
    ]);
    return `A washback has been working for ${hours} hours. While you talk to the others, ${who} climbs its step and bends over the open hatch ${why}. What do you do?`;
  },
  would: [
    [
      'Call them down, and let all else wait until they are.',
      'The explanation can wait and the person cannot: above the wash may lie nearly pure carbon dioxide.',
    ],
    [
      'Get them away from it at once, even if you stop in mid-sentence.',
      'The gas fells a person in a breath. No sentence is worth that.',
    ],
    [
      'Have everybody leave that place, and let nobody go back to the hatch.',
      'The gas flows over the rim. What air the room has, only a meter shows.',
    ],
    [
      'Keep them back from it, and let what they want there wait.',
      'Smell, sight and sound of a wash can be had without the gas, and a pen can be lost.',
    ],
    [
      'Shout, so that they come down as soon as they hear it.',
      'A fright is soon over. One breath of that gas may be enough.',
    ],
  ],
  wouldNot: [
    [
      'Tell all of the group why first, so that they can call them down too.',
      'The order is wrong. Stop first, explain later.',
    ],
    [
      'Go up to them, and keep hold of their jacket until they are done.',
      'Then two heads are over the hatch, and whoever drops is not held by a jacket.',
    ],
    [
      'Have them hold their breath, and look for a moment only.',
      'Nobody holds their breath for as long as they look. The head does not belong there.',
    ],
    [
      'Wait for the oxygen alarm, and get them away if it sounds.',
      'It may stay silent while carbon dioxide already harms.',
    ],
    [
      'Look for a dust mask that fits, and have them wear it up there.',
      'A dust mask holds back dust. Gas goes straight through it.',
    ],
  ],
  before,
});
