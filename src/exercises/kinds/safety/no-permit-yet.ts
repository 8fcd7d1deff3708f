// A vessel to enter, and no permit.
import { judged } from '../../judged.ts';
import before from './before/no-permit-yet.ts';

export default judged({
  id: 'no-permit-yet',
  title: 'Before the permit',
  topic: 'safety',
  level: 2,
  sources: ['hse-co2', 'memory'],
  scene: (chance) => {
    const vessel = chance.pick([
      'the mash tun',
      'a washback',
      'the spirit still',
      'a malt bin',
      'the hot liquor tank',
    ]);
    const job = chance.pick([
      'free a blocked outlet',
      'fetch a dropped spanner',
      'scrape off a corner',
      'look at a crack',
    ]);
    const minutes = chance.pick([2, 3, 5, 10]);
    const who = chance.pick([
      'The foreman',
      'An older colleague',
      'The fitter',
      'The man from the contractor',
    ]);
    return `${who} asks you to climb into ${vessel} and ${job}. “It takes ${minutes} minutes, the permit is being written.” What do you do?`;
  },
  would: [
    [
      'Tell whoever asks that it is no, however short the job.',
      'Two minutes are long enough to be overcome in. Nobody goes in before it is given.',
    ],
    [
      'Stay outside, head and arms too, and ask how far the permit is.',
      'Whoever gives it knows what is still to be done. The head in the vessel is an entry.',
    ],
    [
      'Wait for the permit, and for the tests of oxygen and gas that it asks for.',
      'Feeds, drives and heat are locked off, and then the air is tested. Who does it, your site’s procedure and your local code say.',
    ],
    [
      'Leave the job, even if the whole shift has to wait for it.',
      'A shift lost is made up. Nobody goes in before the permit is given.',
    ],
    [
      'Call those who write the permits, and let nobody climb in before one is there.',
      'Others may be asked after you, and those who give permits have to know.',
    ],
  ],
  wouldNot: [
    [
      'Wait until the feeds are locked off, and then put head and arms in.',
      'The head in the vessel is an entry. What the air does to you does not ask where your feet stand.',
    ],
    [
      'Wait until a trained colleague stands outside, and then go in.',
      'A watcher is one part of what a permit asks for. The air is not tested and nothing is locked off.',
    ],
    [
      'Say no until the permit of yesterday has been found, and go in on that.',
      'The air and the locks of today are not those of yesterday. Each entry has its own permit.',
    ],
    [
      'Stay outside, and see to it that the one who goes in has a rope on.',
      'Neither of you has a permit. Nobody goes in until it is given, and a rope is not air.',
    ],
    [
      'Wear a mask for it, and leave the job if you feel unwell.',
      'In bad air a person may drop before feeling anything, and a dust mask holds back no gas.',
    ],
  ],
  before,
});
