// The first weeks, stage by stage: the lessons of each, in order, and so what is to be right before it is signed off.
import type { PathStage, LessonStep } from './steps.ts';

const read = (at: string, title: string, to?: string): LessonStep => ({
  do: 'read',
  at,
  title,
  ...(to === undefined ? {} : { to }),
});
const guess = (at: string, ...ids: readonly string[]): readonly LessonStep[] =>
  ids.map((id) => ({ do: 'guess', id, at }));
const work = (kind: string): LessonStep => ({ do: 'work', kind });
const practise = (...kinds: readonly string[]): LessonStep => ({ do: 'practise', kinds });
const task = (id: string, says: string, at?: string): LessonStep => ({
  do: 'task',
  id,
  says,
  ...(at === undefined ? {} : { at }),
});

export const pathStages: readonly PathStage[] = [
  {
    stage: 'malting',
    goal: 'You can say what the maltings do to barley and why malt weighs less than it, and reckon the barley behind a mash and the spirit that a malt could give.',
    lessons: [
      {
        title: 'Water wakes the grain, heat stops it',
        steps: [
          ...guess('malting/', 'steep-water', 'kiln-water'),
          read('malting/#what-malting-is-for', 'What malting is for'),
          read('malting/#what-happens-inside-and-why', 'What happens inside, to the kiln', 'heat-stops-it'),
          ...guess('malting/work/', 'kiln-on-a-damp-day'),
          practise('malting-order', 'moisture-on-dry-basis'),
        ],
      },
      {
        title: 'Less malt than barley',
        steps: [
          ...guess('malting/', 'loss-in-malting'),
          read('malting/#why-malt-weighs-less-than-its-barley', 'Why malt weighs less than its barley'),
          work('barley-for-malt'),
          practise('barley-for-malt', 'kiln'),
        ],
      },
      {
        title: 'What the malt could give, and what can hurt you',
        steps: [
          ...guess('malting/', 'moister-malt'),
          read('malting/#what-the-malt-could-give', 'What the malt could give'),
          practise('predicted-spirit-yield'),
          read('malting/safe/', 'Malting: stay safe'),
          practise('collapsed-in-a-tun'),
          task('malting-analysis', 'Ask for the analysis of the malt in the bin. Find its moisture, extract and fermentability, and reckon its spirit yield.'), // prettier-ignore
        ],
      },
    ],
  },
  {
    stage: 'milling',
    goal: 'You can say why malt is broken and not ground to powder, judge a grist by its sieves, and treat dust as what it is.',
    lessons: [
      {
        title: 'Husk, grits and flour',
        steps: [
          read('milling/#what-milling-is-for', 'What milling is for'),
          read(
            'milling/#small-pieces-have-more-surface',
            'Small pieces and large ones',
            'large-pieces-let-water-through',
          ),
          ...guess('milling/', 'husk-for-grits'),
          practise('grist-split', 'milling-order'),
        ],
      },
      {
        title: 'The sieve test',
        steps: [
          ...guess('milling/', 'what-sticks'),
          ...guess('milling/work/', 'flour-that-sticks'),
          read('milling/#the-sieve-test', 'The sieve test'),
          work('sieve-test'),
          practise('sieve-test'),
          ...guess('milling/', 'half-passes'),
        ],
      },
      {
        title: 'The mill by the clock, and its dust',
        steps: [
          ...guess('milling/work/', 'faster-mill'),
          ...guess('milling/safe/', 'dust-in-a-room'),
          read('milling/work/#how-it-is-run-step-by-step', 'How it is run, step by step'),
          practise('mill-and-bin'),
          read('milling/safe/', 'Milling: stay safe'),
          practise('dust-for-a-cloud', 'blowing-the-dust'),
          task('milling-sieve', 'With the miller: take a sample by the site’s procedure, sieve it, and write down the three parts.'), // prettier-ignore
        ],
      },
    ],
  },
  {
    stage: 'mashing',
    goal: 'You can say why the mash stands where it does, find the heat of the first water, and judge a mash by its extract and its draff.',
    lessons: [
      {
        title: 'Why the heat is a compromise',
        steps: [
          ...guess('mashing/', 'hot-mash'),
          read(
            'mashing/#starch-swells-and-enzymes-cut-it',
            'Starch, enzymes and heat',
            'why-the-temperature-is-a-compromise',
          ),
          practise('conversion-curve'),
        ],
      },
      {
        title: 'The first water and the next',
        steps: [
          ...guess('mashing/', 'colder-grist'),
          read('mashing/#how-hot-the-water-must-be', 'How hot the water must be'),
          ...guess('mashing/work/', 'thicker-mash'),
          work('strike-water'),
          practise('strike-water'),
          ...guess('mashing/', 'three-small-waters'),
          read('mashing/#why-several-waters', 'Why several waters'),
          practise('mashing-order'),
        ],
      },
      {
        title: 'What the wort holds, and what can hurt you',
        steps: [
          ...guess('mashing/work/', 'a-degree-misread'),
          ...guess('mashing/', 'wetter-draff'),
          read(
            'mashing/#how-much-extract-the-wort-holds',
            'Extract, efficiency and draff',
            'what-stays-in-the-draff',
          ),
          practise('extract-in-wort', 'draff'),
          read('mashing/safe/', 'Mashing: stay safe'),
          practise('hot-liquor-ahead'),
          task(
            'mashing-shift',
            'Run a shift at the mash tun in this book, to its end and without a danger.',
            'shift/mash-tun/',
          ),
          task('mashing-watch', 'Beside the mashman, hands off, for one mash: write down each temperature and volume, and reckon the efficiency afterwards.'), // prettier-ignore
        ],
      },
    ],
  },
  {
    stage: 'fermenting',
    goal: 'You can follow a washback by its gravity and its heat, find the alcohol in it, and say what its gas can do.',
    lessons: [
      {
        title: 'Sugar into alcohol, gas and warmth',
        steps: [
          ...guess('fermenting/', 'rise-of-a-washback'),
          read('fermenting/#sugar-into-alcohol', 'Sugar into alcohol'),
          ...guess('fermenting/', 'extract-below-one'),
          practise('order-of-a-fermentation', 'alcohol-in-the-washback'),
        ],
      },
      {
        title: 'How warm, how fast, how long',
        steps: [
          ...guess('fermenting/', 'half-the-fall'),
          read(
            'fermenting/#why-it-grows-warm',
            'Why it grows warm, and how fast it goes',
            'how-fast-it-goes',
          ),
          practise('half-the-fall'),
          ...guess('fermenting/work/', 'another-day'),
          ...guess('fermenting/check/', 'longer-needs-more'),
          work('washbacks-needed'),
          practise('washbacks-needed'),
        ],
      },
      {
        title: 'The gas',
        steps: [
          ...guess('fermenting/safe/', 'gas-of-a-washback', 'fan-at-half'),
          read('fermenting/safe/', 'Fermenting: stay safe'),
          practise('carbon-dioxide-by-mass', 'the-silent-alarm', 'over-the-hatch'),
          task(
            'fermenting-shift',
            'Run a shift at a washback in this book, to its end and without a danger.',
            'shift/washback/',
          ),
          task('fermenting-alarm', 'With the person in charge: see where the carbon dioxide meters are, what they show now, and which way is out.'), // prettier-ignore
        ],
      },
    ],
  },
  {
    stage: 'distilling',
    goal: 'You can say what each cut takes and gives, read the strength at the safe, and keep count in litres of pure alcohol.',
    lessons: [
      {
        title: 'Vapour stronger than liquid',
        steps: [
          ...guess('distilling/', 'first-drops'),
          read(
            'distilling/#vapour-is-stronger-than-liquid',
            'Why the strength rises, and falls',
            'why-the-strength-falls-during-the-run',
          ),
          ...guess('distilling/', 'part-that-comes-over'),
          practise('pure-alcohol', 'hydrometer-in-the-safe'),
        ],
      },
      {
        title: 'The cuts and the round',
        steps: [
          ...guess('distilling/', 'later-heart-alcohol'),
          ...guess('distilling/work/', 'later-heart-litres'),
          read('distilling/#three-parts-of-one-run', 'Three parts of one run, and the round', 'the-round'),
          practise('order-of-a-spirit-run', 'spirit-run-cut'),
          work('charge-strength'),
          practise('charge-strength'),
        ],
      },
      {
        title: 'A shift, and what can hurt you',
        steps: [
          ...guess('distilling/work/', 'warm-safe', 'wash-still-stopped-early'),
          read('distilling/safe/', 'Distilling: stay safe'),
          practise('a-spark-at-the-receiver', 'closed-while-it-cools'),
          task(
            'distilling-shift',
            'Run a shift at the still in this book, to its end and without a danger.',
            'shift/',
          ),
          task('distilling-watch', 'Beside the stillman, hands off: name each reading before it is written down.'), // prettier-ignore
        ],
      },
    ],
  },
  {
    stage: 'maturing',
    goal: 'You can let spirit down by mass, say what wood and air do to it, and follow a cask to its bottles.',
    lessons: [
      {
        title: 'Fifty and fifty is not a hundred',
        steps: [
          ...guess('maturing/', 'fifty-and-fifty'),
          read('maturing/#fifty-and-fifty-is-not-a-hundred', 'Fifty and fifty is not a hundred'),
          ...guess('maturing/work/', 'water-for-filling'),
          work('reduce-to-strength'),
          practise('reduce-to-strength', 'maturing-to-bottle'),
        ],
      },
      {
        title: 'What wood gives and air takes',
        steps: [
          ...guess('maturing/', 'after-twenty-years', 'drier-store'),
          ...guess('maturing/work/', 'drier-store-litres'),
          read(
            'maturing/#what-the-wood-gives-and-takes',
            'Wood, air, weaker or stronger',
            'weaker-or-stronger',
          ),
          practise('cask-through-years', 'year-of-a-strength'),
        ],
      },
      {
        title: 'From cask to bottle, and what can hurt you',
        steps: [
          ...guess('maturing/', 'weaker-bottles'),
          practise('casks-and-bottles'),
          read('maturing/safe/', 'Maturing: stay safe'),
          practise('lifting', 'cask-on-the-ramp'),
          task('maturing-shift', 'Take a cask through its years in this book, to its end.', 'shift/casks/'),
          task('maturing-regauge', 'With the warehouseman: see a cask sounded, dipped or weighed, and reckon what it should hold.'), // prettier-ignore
        ],
      },
    ],
  },
];
