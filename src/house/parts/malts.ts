// The part “malts”: the grists that a house mashes, each of one malt or of several, and the weeks of the year for each.
import { isData } from '../../core/reading/data.ts';
import { allowedInWords } from '../../core/format.ts';
import type { KindName } from '../../core/kinds.ts';
import { extractBases, type Basis, type Campaign, type Malt } from '../../core/malting/grist.ts';
import { UNSEEN, quotedGiven, wasGiven } from '../../core/quoted-given.ts';
import { numberFigures } from '../figures.ts';
import type { HousePart } from './part.ts';

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
const columns = Object.entries(maltColumns);

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** What is wrong with the final gravity of a grist, or nothing; it need not be given. */
function gravityProblem(value: unknown): string | undefined {
  const { kind, range } = finalGravityField;
  const isSound =
    value === undefined || (typeof value === 'number' && value >= range[0] && value <= range[1]);
  return isSound ? undefined : wasGiven('Final gravity', value, allowedInWords(kind, range));
}

/** A malt, or the sentence that says what is wrong with it. */
function readMalt(data: unknown): Malt | string {
  if (!isData(data)) return 'this is no malt.';
  for (const [name, { label, kind, range }] of columns) {
    const value = data[name];
    if (!(typeof value === 'number' && value >= range[0] && value <= range[1]))
      return wasGiven(label, value, allowedInWords(kind, range));
  }
  return Object.fromEntries(columns.map(([name]) => [name, data[name]])) as unknown as Malt;
}

/** What is wrong with the name of a campaign, or nothing. */
export function campaignNameProblem(name: unknown): string | undefined {
  const isSound =
    typeof name === 'string' &&
    name.trim() !== '' &&
    name.length <= LONGEST_CAMPAIGN_NAME &&
    !name.match(UNSEEN);
  return isSound
    ? undefined
    : wasGiven(
        'The name of a grist',
        name,
        `it can have up to ${LONGEST_CAMPAIGN_NAME} characters on one line.`,
      );
}

export const maltsPart: HousePart<Malts> = {
  id: 'malts',
  title: 'Malts of the year',
  empty: { basis: 'as-is', campaigns: [] },
  read(data) {
    if (!isData(data)) return { value: maltsPart.empty, problems: ['Malts of the year: this is no list.'] };
    const problems: string[] = [];
    const given = data['basis'];
    const isBasis = typeof given === 'string' && Object.hasOwn(extractBases, given);
    if (!isBasis) problems.push(wasGiven('What extract and phenols are parts of', given, `it can be ${Object.keys(extractBases).join(' or ')}.`)); // prettier-ignore
    const basis = isBasis ? (given as Basis) : 'as-is';
    const list = listOf(data['campaigns']);
    if (!Array.isArray(data['campaigns']))
      problems.push(wasGiven('Malts of the year', data['campaigns'], 'the grists must be a list.'));
    if (list.length > MOST_CAMPAIGNS)
      problems.push(`There are ${list.length} grists; the first ${MOST_CAMPAIGNS} are kept.`);
    const strange = Object.keys(data).filter((key) => key !== 'basis' && key !== 'campaigns');
    if (strange.length > 0)
      problems.push(wasGiven('Malts of the year', strange[0], 'there is no such thing in it.'));
    const campaigns = list.slice(0, MOST_CAMPAIGNS).flatMap((each, i): NamedCampaign[] => {
      const { name, weeks, malts: grist, finalGravity } = isData(each) ? each : {};
      const where = `Grist ${i + 1}${typeof name === 'string' && name !== '' ? ` (“${quotedGiven(name)}”)` : ''}`;
      const rows = listOf(grist).slice(0, MOST_MALTS).map(readMalt);
      const wrong =
        campaignNameProblem(name) ??
        (typeof weeks === 'number' && weeks >= WEEKS[0] && weeks <= WEEKS[1]
          ? undefined
          : wasGiven('Weeks', weeks, `they can be from ${WEEKS[0]} to ${WEEKS[1]}.`)) ??
        (rows.length === 0 || listOf(grist).length > MOST_MALTS
          ? `it can have from 1 to ${MOST_MALTS} malts.`
          : rows.find((row) => typeof row === 'string')) ??
        gravityProblem(finalGravity);
      if (wrong === undefined)
        return [
          {
            name,
            weeks,
            malts: rows,
            ...(finalGravity !== undefined && { finalGravity }),
          } as unknown as NamedCampaign,
        ];
      problems.push(`${where}: ${wrong}`);
      return [];
    });
    return { value: { basis, campaigns }, problems };
  },
};
