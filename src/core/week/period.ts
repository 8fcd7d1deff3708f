// The balance that a stillhouse signs: what stood there, what was made, what stands there now, and where the rest was lost.
import { formatNumber } from '../format.ts';
import { fermentWort } from '../fermenting/wash.ts';
import type { Line } from '../line/line.ts';
import { wortExtract } from '../mashing/wort.ts';
import type { Quantity, Spirit } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';

export const liquids = {
  wash: 'Wash',
  lowWines: 'Low wines and feints',
  spirit: 'Spirit',
} as const;
export type StandingLiquid = keyof typeof liquids;
/** What stands in washbacks and charger, in the low wines and feints receiver, and in the spirit receiver; L at 20 °C and % vol. */
export type StandingSpirit = Readonly<Record<StandingLiquid, Spirit>>;

/** A period of a stillhouse, from one dipping of all vessels to the next. */
export interface Period {
  readonly name: string;
  readonly opening: StandingSpirit;
  readonly closing: StandingSpirit;
  /** All malt mashed, kg; all wort, L, with its mean gravity and that of the wash. */
  readonly malt: Quantity<'mass'>;
  readonly wort: Quantity<'volume20'>;
  readonly originalGravity: Quantity<'gravity'>;
  readonly finalGravity: Quantity<'gravity'>;
  readonly washCharged: Spirit;
  /** 0 L where low wines are not measured by themselves: both stills are then one step. */
  readonly lowWinesMade: Spirit;
  readonly spiritMade: Spirit;
  /** Out of the spirit receiver, to be filled. */
  readonly spiritSent: Spirit;
}

export const stepNames = {
  mash: 'Mash',
  washback: 'Fermentation',
  wash: 'Wash, from washback to still',
  washStill: 'Wash still',
  spiritStill: 'Spirit still',
  stills: 'Both stills',
  receiver: 'Spirit receiver',
} as const;

/** A step of the walk, L of pure alcohol. */
export interface PeriodStep {
  readonly step: keyof typeof stepNames;
  readonly came: number;
  readonly left: number;
  readonly loss: number;
  /** Of what came, %. */
  readonly percent: number;
  /** What the house's own figures let it lose of what came, L of pure alcohol. */
  readonly usual: number;
}
/** One liquid's account: opening + made − gone on − loss = closing, L of pure alcohol. */
export interface Account {
  readonly liquid: StandingLiquid;
  readonly opening: number;
  readonly made: number;
  readonly goneOn: number;
  readonly loss: number;
  readonly closing: number;
}
export interface PeriodBalance {
  readonly accounts: readonly Account[];
  readonly steps: readonly PeriodStep[];
  /** From the malt to what was sent on. */
  readonly came: number;
  readonly left: number;
  readonly loss: number;
  readonly percent: number;
  /** The step that lost most beyond what the house's figures let it lose; nothing when none did. */
  readonly worst?: PeriodStep;
  /** What cannot be, a sentence each. */
  readonly problems: readonly string[];
}

/**
 * Litres of pure alcohol: volume × strength ÷ 100.
 * @example pureLitres({ volume: 4000, strength: 23 }) // 920 (4000 × 0.23)
 */
export const pureLitres = ({ volume, strength }: Spirit): number => (volume * strength) / 100;

const LEAST = 0.05; // L of pure alcohol; less is not told, as it is not printed
const litres = (alcohol: number) => `${formatNumber(alcohol, 1)} L`;

/** What of one reading cannot be, in a sentence that names it; or nothing. */
function unreadable(period: Period): string | undefined {
  const spirits: readonly (readonly [string, Spirit])[] = [
    ...(['opening', 'closing'] as const).flatMap((when) =>
      (Object.keys(liquids) as StandingLiquid[]).map(
        (liquid) => [`${liquids[liquid]} at the ${when}`, period[when][liquid]] as const,
      ),
    ),
    ['Wash charged', period.washCharged],
    ['Low wines made', period.lowWinesMade],
    ['Spirit made', period.spiritMade],
    ['Spirit sent on', period.spiritSent],
  ];
  for (const [name, { volume, strength }] of spirits) {
    if (!(volume >= 0)) return `${name}: ${volume} L cannot stand in a vessel; give 0 or more.`;
    if (!(strength >= 0 && strength <= 100))
      return `${name}: a strength of ${strength} % vol cannot be; give 0 to 100.`;
  }
  if (!(period.malt >= 0)) return `Malt mashed: ${period.malt} kg cannot be; give 0 or more.`;
  if (!(period.wort >= 0)) return `Wort collected: ${period.wort} L cannot be; give 0 or more.`;
  if (!(period.originalGravity > period.finalGravity))
    return `The final gravity ${period.finalGravity} is not below the original gravity ${period.originalGravity}; wort that ferments grows lighter.`;
  return undefined;
}

/**
 * The balance of a period in litres of pure alcohol at 20 °C. Extract is counted as the alcohol that it gives when the house's
 * wash reaches its own final gravity. Every loss is what came less what left, so all losses together are what came to the
 * period less what left it. Usual losses are those of the house's line: extract that stays behind, pot ale, spent lees.
 * Refuses a reading that cannot be; where more left a step than came, a sentence says so.
 * @example balanceOf({ opening: { wash: { volume: -1, strength: 8 }, lowWines: { volume: 0, strength: 0 }, spirit: { volume: 0, strength: 0 } }, closing: { wash: { volume: 0, strength: 0 }, lowWines: { volume: 0, strength: 0 }, spirit: { volume: 0, strength: 0 } }, washCharged: { volume: 0, strength: 0 }, lowWinesMade: { volume: 0, strength: 0 }, spiritMade: { volume: 0, strength: 0 }, spiritSent: { volume: 0, strength: 0 } }, line) // refuses: cannot stand in a vessel (−1 L)
 */
export function balanceOf(period: Period, line: Line): PeriodBalance | Refusal {
  const wrong = unreadable(period);
  if (wrong !== undefined) return refuse(wrong);
  const { opening, closing } = period;
  const wort = { volume: period.wort, gravity: period.originalGravity };
  const houseFinal = line.house.finalGravity;
  if (period.originalGravity <= houseFinal)
    return refuse(`The original gravity ${period.originalGravity} is not above the house's final gravity ${houseFinal}.`);
  const inWort = period.wort > 0 ? wortExtract(wort) : 0;
  const couldGive = period.wort > 0 ? fermentWort(wort, houseFinal).alcohol : 0;
  const wash = period.wort > 0 ? fermentWort(wort, period.finalGravity).alcohol : 0;
  const inMalt = inWort > 0 ? (((period.malt * line.house.solubleExtract) / 100) * couldGive) / inWort : 0;

  const { round } = line;
  const share = (lost: { alcohol: number }, of: { alcohol: number }) => lost.alcohol / of.alcohol;
  const potAle = share(round.potAle, line.wash);
  const lees = share(round.residue, round.lowWines);
  const charged = pureLitres(period.washCharged);
  const lowWines = pureLitres(period.lowWinesMade);
  const toSpirit = pureLitres(opening.lowWines) + (period.lowWinesMade.volume > 0 ? lowWines : charged);
  const fromSpirit = pureLitres(period.spiritMade) + pureLitres(closing.lowWines);
  const step = (name: PeriodStep['step'], came: number, left: number, usual: number): PeriodStep => ({
    step: name,
    came,
    left,
    loss: came - left,
    percent: came > 0 ? (100 * (came - left)) / came : 0,
    usual,
  });
  // Spent lees of what is truly charged: what stands at the closing has not been charged.
  const distilled = (all: number) => Math.max(0, all - pureLitres(closing.lowWines)) * lees;
  const steps = [
    step('mash', inMalt, couldGive, inMalt * Math.max(0, 1 - line.mash.efficiency / 100)),
    step('washback', couldGive, wash, 0),
    step('wash', pureLitres(opening.wash) + wash, charged + pureLitres(closing.wash), 0),
    ...(period.lowWinesMade.volume > 0
      ? [
          step('washStill', charged, lowWines, charged * potAle),
          step('spiritStill', toSpirit, fromSpirit, distilled(toSpirit)),
        ]
      : [step('stills', toSpirit, fromSpirit, charged * potAle + distilled(pureLitres(opening.lowWines) + charged * (1 - potAle)))]),
    step('receiver', pureLitres(opening.spirit) + pureLitres(period.spiritMade), pureLitres(period.spiritSent) + pureLitres(closing.spirit), 0),
  ];
  const lossIn = (name: PeriodStep['step']) => steps.find((each) => each.step === name)?.loss ?? 0;
  const accounts: readonly Account[] = [
    { liquid: 'wash', opening: pureLitres(opening.wash), made: wash, goneOn: charged, loss: lossIn('wash'), closing: pureLitres(closing.wash) },
    {
      liquid: 'lowWines',
      opening: pureLitres(opening.lowWines),
      made: period.lowWinesMade.volume > 0 ? lowWines : charged,
      goneOn: pureLitres(period.spiritMade),
      loss: lossIn('spiritStill') + lossIn('stills'),
      closing: pureLitres(closing.lowWines),
    },
    {
      liquid: 'spirit',
      opening: pureLitres(opening.spirit),
      made: pureLitres(period.spiritMade),
      goneOn: pureLitres(period.spiritSent),
      loss: lossIn('receiver'),
      closing: pureLitres(closing.spirit),
    },
  ];
  const came = inMalt + pureLitres(opening.wash) + pureLitres(opening.lowWines) + pureLitres(opening.spirit);
  const left = pureLitres(period.spiritSent) + pureLitres(closing.wash) + pureLitres(closing.lowWines) + pureLitres(closing.spirit);
  const beyond = ({ loss, usual }: PeriodStep) => loss - usual;
  const worst = steps.reduce((a, b) => (beyond(b) > beyond(a) ? b : a));
  return {
    accounts,
    steps,
    came,
    left,
    loss: came - left,
    percent: came > 0 ? (100 * (came - left)) / came : 0,
    ...(beyond(worst) > LEAST && { worst }),
    problems: steps.filter(({ loss }) => loss < -LEAST).map(gained),
  };
} // prettier-ignore

const whole: Readonly<Record<PeriodStep['step'], (came: string, left: string) => string>> = {
  mash: (came, left) => `The wort could give ${left} of pure alcohol, and the malt mashed only ${came}`,
  washback: (came, left) => `The wash holds ${left} of pure alcohol, and the house’s final gravity gives ${came}: it fermented further than the house’s figures say`,
  wash: (came, left) => `Wash charged and wash at the closing hold ${left} of pure alcohol, and only ${came} stood there or was made`,
  washStill: (came, left) => `The low wines hold ${left} of pure alcohol, and the wash charged only ${came}`,
  spiritStill: (came, left) => `Spirit made and low wines and feints at the closing hold ${left} of pure alcohol, and only ${came} stood there or was made`,
  stills: (came, left) => `Spirit made and low wines and feints at the closing hold ${left} of pure alcohol, and only ${came} stood there or was charged`,
  receiver: (came, left) => `Spirit sent on and spirit at the closing hold ${left} of pure alcohol, and only ${came} stood there or was made`,
}; // prettier-ignore

/** The sentence of a step from which more left than came. */
function gained({ step, came, left, loss }: PeriodStep): string {
  return `${whole[step](litres(came), litres(left))}; ${litres(-loss)} too much.`;
}

/**
 * Where the most was lost beyond what the house's figures let it lose, in a sentence; or that nothing was.
 * @example whereLost({}) // 'No step lost more than the house’s own figures let it lose.' (none is the worst)
 */
export function whereLost({ worst }: PeriodBalance): string {
  if (!worst) return 'No step lost more than the house’s own figures let it lose.';
  const { step, loss, usual } = worst;
  const own =
    usual > LEAST
      ? `, where the house’s figures let it lose ${litres(usual)}`
      : ', where the house’s figures lose none';
  return `Most was lost beyond the usual here: ${stepNames[step].toLowerCase()}, ${litres(loss)} of pure alcohol${own}.`;
}
