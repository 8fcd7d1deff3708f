// What sheets of generators before 7 show for “Froth in the neck”.
import type { Before } from '../../../judged.ts';

export default {
  right: [
    'Ease the heat at once by the site’s procedure, and watch until the froth falls.',
    'Wash boils up like milk. Carried over, it fouls the low wines, and a still that is choked with froth is a danger.',
  ],
  others: [
    ['Heat harder for a minute, to boil the froth away.', 'More heat makes more vapour and more froth.'],
    [
      'Open the man-door to let it down.',
      'Nothing is opened on a still at work: vapour and boiling wash would come out.',
    ],
    [
      'Pour cold water on the neck by hand.',
      'The procedure decides on water, and you would have to climb a hot still.',
    ],
    [
      'Leave it; the froth always falls by itself.',
      'It may fall or it may go over. Ease the heat, then wait.',
    ],
    [
      'Find the stillman first and ask.',
      'It goes over in less time than that. The heat is eased first; then call.',
    ],
  ],
  would: [
    [
      'Ease the heat at once, as the procedure says.',
      'Wash boils up like milk, and less heat is what lets it fall.',
    ],
    ['Stay and watch until the froth has fallen.', 'It may rise again as soon as nobody looks.'],
    ['Send someone for the stillman once the heat is down.', 'The heat comes first, and then the call.'],
    ['Put the next thing off, whoever is waiting.', 'Froth goes over in less time than an answer takes.'],
  ],
} satisfies Before;
