// What goes into each stage and what comes out of it, for one mash, in one unit for each balance.
import type { KindName } from '../core/kinds.ts';
import type { Line } from '../core/line/line.ts';
import type { Stage } from '../house/figures.ts';

/** How a part is drawn: a fill and a stroke pattern, so that parts differ without colour as well. */
export type PartPattern =
  'grain' | 'husk' | 'liquid' | 'water' | 'spirit' | 'foreshots' | 'feints' | 'round' | 'lost';

export interface FlowPart {
  readonly name: string;
  readonly amount: number;
  readonly mark: PartPattern;
}
export interface StageFlow {
  readonly title: string;
  readonly kind: KindName;
  readonly into: readonly FlowPart[];
  readonly out: readonly FlowPart[];
}

/** A part; figures that contradict each other never draw less than nothing. */
const part = (name: string, amount: number, mark: PartPattern): FlowPart => ({
  name,
  amount: Math.max(0, amount),
  mark,
});

function malting({ house, barley, malt }: Line): StageFlow[] {
  const dry = barley.mass * (1 - house.barleyMoisture / 100);
  const lost = (dry * house.maltingLoss) / 100;
  return [
    {
      title: 'From barley to malt',
      kind: 'mass',
      into: [part('Barley', barley.mass, 'grain')],
      out: [
        part('Malt', malt.mass, 'grain'),
        part('Dry matter lost', lost, 'lost'),
        part('Water lost from the barley', barley.mass - malt.mass - lost, 'water'),
      ],
    },
  ];
}

function milling({ malt, grist }: Line): StageFlow[] {
  return [
    {
      title: 'From malt to grist',
      kind: 'mass',
      into: [part('Malt', malt.mass, 'grain')],
      out: [
        part('Husk', grist.husk, 'husk'),
        part('Grits', grist.grits, 'grain'),
        part('Flour', grist.flour, 'liquid'),
      ],
    },
  ];
}

function mashing({ malt, mash, wort }: Line): StageFlow[] {
  return [
    {
      title: 'From grist to wort',
      kind: 'mass',
      into: [
        part('Grist', malt.mass, 'grain'),
        part('Water that stays in wort and draff', wort.mass + mash.draff - malt.mass, 'water'),
      ],
      out: [part('Wort', wort.mass, 'liquid'), part('Wet draff', mash.draff, 'husk')],
    },
  ];
}

function fermenting({ wort, wash }: Line): StageFlow[] {
  return [
    {
      title: 'From wort to wash',
      kind: 'mass',
      into: [part('Wort', wort.mass, 'liquid')],
      out: [
        part('Wash', wash.washMass, 'liquid'),
        part('Carbon dioxide', wash.carbonDioxide, 'lost'),
        part('Yeast, in Balling’s sum', wash.yeastGrown, 'husk'),
      ],
    },
  ];
}

const feintsAgain = (name: string, amount: number) => part(name, amount, 'round');

/** The stills between wash still and spirit still, where a house has them. */
function between({ lowWines, round }: Line): StageFlow[] {
  if (!round.between) return [];
  const { charge, onward, lees, weak, fromSpirit } = round.between;
  const back = weak.volume + fromSpirit.volume;
  return [
    {
      title: 'The intermediate still',
      kind: 'volume20',
      into: [
        part('Low wines', back > 0 ? lowWines.volume : charge.volume, 'liquid'),
        ...(back > 0 ? [feintsAgain('Weak feints of the round before', back)] : []),
      ],
      out: [
        part(
          back > 0 ? 'Strong feints, to the spirit still' : 'To the spirit still',
          onward.volume,
          'feints',
        ),
        ...(back > 0 ? [feintsAgain('Weak feints', weak.volume)] : []),
        part('Spent lees', lees.volume, 'lost'),
      ],
    },
  ];
}

/** What comes to the spirit still, but for its own foreshots and feints. */
function toSpiritStill({ lowWines, round }: Line): FlowPart[] {
  if (!round.between) return [part('Low wines', lowWines.volume, 'liquid')];
  const { charge, onward, weak } = round.between;
  if (weak.volume > 0) return [part('Strong feints of the intermediate still', onward.volume, 'liquid')];
  return [
    part('Low wines', lowWines.volume - charge.volume, 'liquid'),
    part('Run again', onward.volume, 'liquid'),
  ];
}

function distilling(line: Line): StageFlow[] {
  const { wash, potAle, lowWines, foreshots, heart, feints, spentLees, round } = line;
  const strong = round.between?.strong ?? feints;
  const weak = round.between?.fromSpirit.volume ?? 0;
  const isDivided = weak > 0;
  return [
    {
      title: 'The wash still',
      kind: 'volume20',
      into: [part('Wash', wash.volume, 'liquid')],
      out: [part('Low wines', lowWines.volume, 'liquid'), part('Pot ale', potAle.volume, 'lost')],
    },
    ...between(line),
    {
      title: 'The spirit still',
      kind: 'volume20',
      into: [
        ...toSpiritStill(line),
        feintsAgain(
          `Foreshots and ${isDivided ? 'strong ' : ''}feints of the round before`,
          foreshots.volume + strong.volume,
        ),
        ...(round.dilution >= 0.5 ? [part('Water', round.dilution, 'water')] : []),
      ],
      out: [
        part('Foreshots', foreshots.volume, 'foreshots'),
        part('Heart', heart.volume, 'spirit'),
        part(isDivided ? 'Strong feints' : 'Feints', strong.volume, 'feints'),
        ...(isDivided ? [feintsAgain('Weak feints, to the intermediate still', weak)] : []),
        part('Spent lees', round.spiritRun.residue.volume, 'lost'),
      ],
    },
    {
      title: `The alcohol, through ${round.between ? 'all' : 'both'} stills`,
      kind: 'alcohol',
      into: [part('Wash', wash.alcohol, 'liquid')],
      out: [
        part('Heart', heart.alcohol, 'spirit'),
        part('Pot ale', potAle.alcohol, 'lost'),
        part('Spent lees', spentLees.alcohol, 'lost'),
      ],
    },
  ];
}

function maturing({ heart, filling, matured, bottling, house }: Line): StageFlow[] {
  const years = `${house.yearsInWood} ${house.yearsInWood === 1 ? 'year' : 'years'}`;
  return [
    {
      title: 'Letting down to fill',
      kind: 'volume20',
      into: [part('Heart', heart.volume, 'spirit'), part('Water', filling.water, 'water')],
      out: [part('Into casks', filling.volume, 'spirit')],
    },
    {
      title: `The alcohol, through ${years} in wood`,
      kind: 'alcohol',
      into: [part('Into casks', filling.alcohol, 'spirit')],
      out: [
        part('Out of the casks', matured.alcohol, 'spirit'),
        part('Indrink, into the wood', matured.toWood, 'lost'),
        part('Lost to the air', matured.alcoholLost, 'lost'),
        part('Left in the casks', matured.inCasks, 'lost'),
      ],
    },
    {
      title: 'Letting down to bottle',
      kind: 'volume20',
      into: [part('Out of the casks', matured.volume, 'spirit'), part('Water', bottling.water, 'water')],
      out: [
        part('In bottles', bottling.volume, 'spirit'),
        part('In filters and pipes', (100 * bottling.inFilters) / bottling.strength, 'lost'),
      ],
    },
  ];
}

const total = (parts: readonly FlowPart[]) => parts.reduce((sum, { amount }) => sum + amount, 0);

/** A balance of volumes with what shrinks in mixing, or swells in parting, named on the side that is short of it. */
function withShrinkage(flow: StageFlow): StageFlow {
  if (flow.kind !== 'volume20') return flow;
  const shrunk = total(flow.into) - total(flow.out);
  return shrunk >= 0
    ? { ...flow, out: [...flow.out, part('Volume lost as strengths change', shrunk, 'lost')] }
    : { ...flow, into: [...flow.into, part('Volume gained as strengths change', -shrunk, 'lost')] };
}

const stageFlows: Readonly<Record<Stage, (line: Line) => StageFlow[]>> = {
  malting,
  milling,
  mashing,
  fermenting,
  distilling,
  maturing,
};

/** The balances of a stage, drawn one after another: what goes in is what comes out. */
export function flowsOf(stage: Stage, line: Line): readonly StageFlow[] {
  return stageFlows[stage](line).map(withShrinkage);
}
