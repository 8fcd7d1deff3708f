// Where in the book the answer to a kind of question is explained: addresses from its root.
import type { Topic } from './topics.ts';

/** Passages, each with the kinds that belong to it. */
const passages: Readonly<Record<string, readonly string[]>> = {
  'malting/#water-wakes-the-grain': ['steep-uptake', 'steep-water', 'moisture-on-dry-basis', 'sample-moisture', 'impossible-moisture'],
  'malting/#the-load-is-judged-at-the-gate': ['germination-count', 'corns-to-count', 'protein-from-nitrogen', 'malt-analysis'],
  'malting/#heat-stops-it': ['kiln', 'kiln-free-drying'],
  'malting/#why-malt-weighs-less-than-its-barley': ['barley-for-malt', 'malt-from-barley', 'impossible-in-malting'],
  'malting/#what-the-malt-could-give': ['predicted-spirit-yield'],
  'malting/#what-it-does-to-flavour': ['peat-blend'],
  'malting/work/#how-it-is-run-hour-by-hour': ['malting-order'],
  'milling/#small-pieces-have-more-surface': ['surface-of-grist'],
  'milling/#large-pieces-let-water-through': ['grist-split'],
  'milling/#the-sieve-test': ['sieve-test', 'sieve-loss', 'size-curve', 'flour-of-two-parts', 'impossible-in-the-mill'],
  'milling/work/#how-it-is-run-step-by-step': ['milling-order', 'mill-and-bin', 'mashes-in-bin', 'malt-left-to-mill'],
  'mashing/#why-the-temperature-is-a-compromise': ['conversion', 'conversion-curve'],
  'mashing/#how-hot-the-water-must-be': ['strike-water', 'mash-temperature', 'mash-rescue', 'fahrenheit-and-celsius'],
  'mashing/#why-several-waters': ['washing', 'successive-waters', 'returned-worts'],
  'mashing/#how-much-extract-the-wort-holds': ['extract-in-wort', 'efficiency-of-wort', 'wort-mass', 'mash-efficiency', 'impossible-in-the-mash'],
  'mashing/#what-stays-in-the-draff': ['draff', 'extract-lost', 'extract-held-by-draff', 'draff-in-a-week', 'impossible-draff'],
  'mashing/work/#how-it-is-run-step-by-step': ['mashing-order'],
  'mashing/work/#what-can-go-wrong-and-the-signs': ['gravity-read-warm'],
  'fermenting/#sugar-into-alcohol': ['carbon-dioxide-by-mass', 'carbon-dioxide', 'carbon-dioxide-from-a-wash', 'alcohol-in-the-washback'],
  'fermenting/#three-ways-to-find-the-strength': ['strength-from-gravities', 'strength-by-balling', 'strength-three-ways', 'impossible-in-the-washback'],
  'fermenting/#how-far-the-yeast-got': ['apparent-attenuation', 'extract-used', 'fermentability-from-gravities'],
  'fermenting/#why-it-grows-warm': ['washback-heat'],
  'fermenting/#how-fast-it-goes': ['half-the-fall', 'fermentation-curve', 'carbon-dioxide-at-its-height'],
  'fermenting/work/#how-it-is-run-hour-by-hour': ['order-of-a-fermentation'],
  'fermenting/work/#how-much-yeast-and-how-long': ['washbacks-needed', 'longest-fermentation', 'yeast-dose', 'yeast-cells', 'pressed-yeast-for-cells'],
  'distilling/#why-the-strength-falls-during-the-run': ['spirit-run-cut', 'spirit-run-heart', 'reflux-by-proportion', 'low-wines-volume'],
  'distilling/#three-parts-of-one-run': ['impossible-in-the-spirit-still', 'impossible-in-the-wash-still'],
  'distilling/#the-round': ['charge-strength', 'balanced-heart', 'what-if', 'season'],
  'distilling/work/#how-it-is-run-hour-by-hour': ['order-of-a-spirit-run', 'hydrometer-in-the-safe', 'wash-run', 'spent-liquors', 'pot-ale-a-week'],
  'maturing/#fifty-and-fifty-is-not-a-hundred': ['reduce-to-strength', 'volume-made-in-mixing', 'contraction-estimate', 'blend-to-strength', 'impossible-in-reducing', 'mixing-that-cannot-be'],
  'maturing/#what-the-wood-gives-and-takes': ['surface-to-volume', 'taken-from-the-wood'],
  'maturing/#what-the-air-takes': ['cask-through-years', 'angels-share-of-a-store', 'volume-through-years', 'alcohol-lost-by-regauge', 'calibrate-loss', 'impossible-in-the-cask', 'air-or-leak'],
  'maturing/#weaker-or-stronger': ['below-forty', 'year-of-a-strength', 'cask-in-the-store', 'loss-in-a-warmer-store'],
  'maturing/work/#how-it-is-run-year-by-year': ['maturing-to-bottle', 'casks-and-bottles', 'fill-casks', 'bottles-from-a-cask', 'casks-for-alcohol', 'vatting', 'impossible-at-bottling'],
  'strength-and-volume/': ['pure-alcohol'],
  'maturing/safe/': ['lifting', 'cask-on-the-ramp'],
  'milling/safe/': ['dust-cloud', 'dust-for-a-cloud', 'dust-class', 'blowing-the-dust', 'the-hot-bearing', 'one-more-sack'],
  'mashing/safe/': ['hot-liquor-ahead', 'collapsed-in-a-tun', 'no-permit-yet', 'entering-a-confined-space'],
  'fermenting/safe/': ['over-the-hatch', 'the-silent-alarm', 'where-the-level-settles', 'oxygen-beside-the-gas', 'carbon-dioxide-in-a-room', 'fresh-air-for-a-level', 'size-of-a-cloud', 'gas-let-into-a-room'],
  'distilling/safe/': ['a-spark-at-the-receiver', 'closed-while-it-cools', 'froth-in-the-neck', 'the-earth-wire', 'spilt-spirit', 'vapour-from-a-spill', 'spirit-in-the-air', 'a-part-of-the-lower-limit'],
  'ingredients/#how-it-is-got-and-measured': ['why-it-is-measured', 'fresh-water-in-a-week'],
  'ingredients/#what-can-go-wrong-and-the-signs': ['sign-and-cause'],
  'ingredients/barley/#why-low-nitrogen': ['extract-by-protein', 'extract-for-nitrogen'],
  'ingredients/barley/#how-it-is-bought': ['dry-grain-in-a-load', 'malt-after-screenings'],
  'ingredients/yeast/#what-it-must-be': ['yeast-to-a-tonne'],
  'heat-and-water/#where-the-heat-goes': ['heat-for-mash-water', 'steam-to-warm-the-wash'],
  'heat-and-water/#how-heat-is-saved': ['heat-saved-by-warm-water'],
  'heat-and-water/#what-can-hurt-you': ['a-scald'],
  'heat-and-water/water/#where-it-goes': ['cooling-water-in-summer', 'how-far-the-river-warms'],
  'heat-and-water/by-products/': ['which-by-product'],
  'heat-and-water/by-products/#pot-ale-and-spent-lees': ['heat-for-syrup'],
  'heat-and-water/check/#how-much-water-does-it-take': ['water-for-a-bottle'],
  'heat-and-water/check/#does-anything-go-into-the-river': ['asked-what-you-do-not-know'],
  'running/counting/#dip-to-litres-to-alcohol': ['left-in-the-receiver', 'ledger-line-that-cannot-be'],
  'running/counting/#four-letters-on-a-cask-sheet': ['more-than-the-yearly-loss'],
  'running/counting/#a-stocktake': ['missing-of-what-was-handled'],
  'running/#a-walk-after-low-yield': ['where-the-yield-was-lost', 'yield-by-final-gravity', 'yield-of-damp-malt', 'yield-gone-with-the-draff'],
  'visitors/#should-i-add-water-or-ice': ['water-in-the-glass'],
  'visitors/#may-i-use-my-phone-or-take-photographs': ['a-phone-among-the-stills'],
  'visitors/#what-is-the-angels-share': ['bottles-gone-to-the-air'],
  'nose/session/': ['water-for-nosing', 'sample-for-a-glass'],
}; // prettier-ignore

const ofTopic: Readonly<Partial<Record<Topic, string>>> = {
  malting: 'malting/',
  milling: 'milling/',
  mashing: 'mashing/',
  fermenting: 'fermenting/',
  distilling: 'distilling/',
  maturing: 'maturing/',
  strength: 'strength-and-volume/',
  safety: 'safety/',
  law: 'law/',
  ingredients: 'ingredients/',
  heat: 'heat-and-water/',
  running: 'running/',
  visitors: 'visitors/',
  nose: 'nose/',
};

/** Every passage that a kind is led to, for the test that each is there. */
export const allPassages: Readonly<Record<string, readonly string[]>> = passages;

const byKind = new Map(Object.entries(passages).flatMap(([at, kinds]) => kinds.map((kind) => [kind, at])));

/** The passage of a kind of question, or its topic's chapter; undefined for what goes along the whole line. */
export const passageOf = (kind: string, topic?: Topic): string | undefined =>
  byKind.get(kind) ?? (topic && ofTopic[topic]);
