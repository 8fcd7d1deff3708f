// The part “malts”: the grists that a house mashes, each of one malt or of several, and the weeks of the year for each.
import { isData } from '../../core/reading/data.ts';
import { called, canRead, list, number, only, problemIn, record, text, type Reader } from '../../core/reading/given.ts'; // prettier-ignore
import type { KindName } from '../../core/kinds.ts';
import { extractBases, type Basis, type Campaign, type Malt } from '../../core/malting/grist.ts';
import { UNSEEN, quotedGiven, wasGiven } from '../../core/quoted-given.ts';
import { numberFigures } from '../figures.ts';
import type { HousePart } from './part.ts';
import { numberOfKind, ofColumns, soundRows } from './rows.ts';

export interface NamedCampaign extends Campaign {
  readonly name: string;
  /** Where its wash ends elsewhere than the yeast of the house would take it. */
  readonly finalGravity?: number;
}
export interface Malts {
  readonly basis: Basis;
  readonly campaigns: readonly NamedCampaign[];
}

export const MOST_CAMPAIGNS = 8;
export const MOST_MALTS = 8; // in a grist
export const WEEKS = [0, 53] as const;
export const LONGEST_CAMPAIGN_NAME = 40; // characters

/** What is said of a malt in a grist, and what it can be. */
const { maltMoisture, solubleExtract, fermentability } = numberFigures; // with the limits that they have for the house
export const maltColumns = {
  mass: { kind: 'mass', label: 'Malt in a mash', range: [0, 100_000], step: 25 },
  moisture: { ...maltMoisture, label: 'Moisture' },
  extract: solubleExtract,
  fermentability,
  phenols: { kind: 'ppm', label: 'Phenols', range: [0, 400], step: 0.5 },
} as const satisfies Readonly<
  Record<keyof Malt, { kind: KindName; label: string; range: readonly [number, number]; step: number }>
>;
export const finalGravityField = numberFigures.finalGravity;

const malt = record(ofColumns(maltColumns), {}) as Reader<Malt>;
const campaignName = called(
  'The name of a grist',
  text(
    LONGEST_CAMPAIGN_NAME,
    (name) => name.trim() !== '' && !name.match(UNSEEN),
    `it can have up to ${LONGEST_CAMPAIGN_NAME} characters on one line.`,
  ),
);
const malts: Reader<readonly Malt[]> = (given, what, tell) =>
  canRead(
    list(
      only(() => true, ''),
      MOST_MALTS,
      1,
    ),
    given,
  )
    ? list(malt, MOST_MALTS, 1)(given, what, tell)
    : void tell(`it can have from 1 to ${MOST_MALTS} malts.`);
const campaign = record(
  { name: campaignName, weeks: called('Weeks', number(...WEEKS, `they can be from ${WEEKS[0]} to ${WEEKS[1]}.`)), malts },
  { finalGravity: numberOfKind({ ...finalGravityField, label: 'Final gravity' }) },
) as Reader<NamedCampaign>; // prettier-ignore
const basis = called(
  'What extract and phenols are parts of',
  only<Basis>(
    (given) => typeof given === 'string' && Object.hasOwn(extractBases, given),
    `it can be ${Object.keys(extractBases).join(' or ')}.`,
  ),
);

/** What is wrong with the name of a campaign, or nothing. */
export const campaignNameProblem = (name: unknown): string | undefined => problemIn(campaignName, name);

/** Where a grist stands, and what it is called if it has a name. */
function whereOf(row: unknown, i: number): string {
  const name = isData(row) ? row['name'] : undefined;
  return `Grist ${i + 1}${typeof name === 'string' && name !== '' ? ` (“${quotedGiven(name)}”)` : ''}`;
}

export const maltsPart: HousePart<Malts> = {
  id: 'malts',
  title: 'Malts of the year',
  empty: { basis: 'as-is', campaigns: [] },
  read(data) {
    if (!isData(data)) return { value: maltsPart.empty, problems: ['Malts of the year: this is no list.'] };
    const problems: string[] = [];
    const tell = (problem: string) => void problems.push(problem);
    const ofWhat = basis(data['basis'], '', tell) ?? 'as-is';
    const rows: readonly unknown[] = Array.isArray(data['campaigns']) ? data['campaigns'] : [];
    if (!Array.isArray(data['campaigns']))
      tell(wasGiven('Malts of the year', data['campaigns'], 'the grists must be a list.'));
    if (rows.length > MOST_CAMPAIGNS)
      tell(`There are ${rows.length} grists; the first ${MOST_CAMPAIGNS} are kept.`);
    const strange = Object.keys(data).find((key) => key !== 'basis' && key !== 'campaigns');
    if (strange !== undefined) tell(wasGiven('Malts of the year', strange, 'there is no such thing in it.'));
    const campaigns = soundRows(rows.slice(0, MOST_CAMPAIGNS), 'grist', campaign, whereOf, tell);
    return { value: { basis: ofWhat, campaigns }, problems };
  },
};
