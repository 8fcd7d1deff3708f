// What happens in a washback, from cooled wort to the next.
import { order } from '../../order.ts';

export default order({
  id: 'order-of-a-fermentation',
  title: 'From wort to wash',
  topic: 'fermenting',
  level: 1,
  sources: ['common-practice', 'memory'],
  prompt: 'Put these in the order in which they happen at one washback.',
  steps: [
    'The hot wort is cooled to about 19 °C.',
    'The wort runs into the washback and meets its yeast.',
    'The yeast settles in, and for some hours little shows.',
    'Half of the fall in gravity is done, and gas comes fastest.',
    'The sugar is gone, and the gravity stands still.',
    'The yeast fades, and the lactic bacteria take over.',
    'Acids of the bacteria join with alcohols into esters.',
    'The wash is sent to the wash still.',
    'The empty washback is cleaned for the next wort.',
  ],
  why: 'Yeast needs cool wort, then time to settle in. It makes the alcohol while sugar lasts, with most gas in the middle of the fall. Only afterwards do bacteria have the wash to themselves, and their acids are wanted before these late esters can form; the yeast has made most esters itself.',
});
