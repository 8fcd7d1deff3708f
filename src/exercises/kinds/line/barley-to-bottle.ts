// The whole line in order.
import { order } from '../../order.ts';

export default order({
  id: 'barley-to-bottle',
  title: 'From barley to bottle',
  topic: 'line',
  level: 1,
  sources: ['common-practice'],
  prompt: 'Put these five steps of malt spirit in order.',
  steps: [
    'Barley is steeped in water.',
    'The damp grain grows for some days.',
    'The kiln dries the green malt.',
    'Rollers crack the malt into grist.',
    'Grist and the first hot water meet in the mash tun.',
    'Wort is drained from the tun and cooled.',
    'Yeast goes into the washback.',
    'The wash still is charged with wash.',
    'Low wines go into the spirit still, with the foreshots and feints of the run before.',
    'The heart of the run is taken off.',
    'Spirit is let down to the filling strength.',
    'Casks are filled.',
    'The spirit is regauged after some years in the store.',
    'Casks are emptied into a vat for bottling.',
    'The vatting is let down to the bottling strength.',
    'Bottles are filled.',
  ],
  why: 'The grain must grow before it is dried and be dry before it is cracked; its starch becomes sugar, the sugar alcohol; the two stills gather it, and the wood comes last.',
});
