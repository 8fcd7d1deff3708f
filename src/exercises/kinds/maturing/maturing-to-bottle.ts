// From the receiver to the bottle, in order.
import { order } from '../../order.ts';

export default order({
  id: 'maturing-to-bottle',
  title: 'From receiver to bottle',
  topic: 'maturing',
  level: 1,
  sources: ['common-practice', 'oiml-r22', 'swr-2009'],
  prompt: 'One house, one filling, and many years later one bottling. In what order do these come?',
  steps: [
    'New spirit is pumped from the receiver to the filling vat.',
    'Water is added until the vat is at filling strength.',
    'The vat is mixed, and its strength and volume are written down.',
    'The casks are filled, bunged and rolled into the store.',
    'In its first days the dry wood drinks about 2 % of the spirit.',
    'After some years a few casks are regauged and nosed.',
    'The casks chosen are emptied into one vat.',
    'That vat is let down with water to bottling strength.',
    'The spirit is filled into bottles.',
    'The bottles are labelled, with the age of the youngest part.',
  ],
  why: 'Spirit is let down and measured before wood, for the wood changes both litres and strength. It is put together and let down again before glass, for glass changes nothing.',
});
