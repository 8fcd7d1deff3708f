// Which of four names a spirit may carry.
import { judgeClaim, meetsDefinition, type Claim, type Definition } from '../../../core/law/claim.ts';
import { definitions } from '../../../core/law/definitions.ts';
import type { Chance } from '../../seeded-random.ts';
import { choice, EVEN_WORDING_SINCE } from '../../choice.ts';
import { soundSpirit, spiritInWords } from './claims.ts';

const COUNTRIES = [
  'Scotland',
  'Ireland',
  'another EU country',
  'the United States',
  'the United States',
  'Canada',
  'Japan',
] as const;
const OTHERS = 3;
/** Great Britain came later and asks what the European Union asks: sheets given before go on drawing what they drew. */
const names = definitions.filter(({ id }) => id !== 'great-britain' && id !== 'eu-single-malt');

const missed = (claim: Claim, definition: Definition) =>
  judgeClaim(claim, definition).filter(({ met }) => !met);

/** A spirit that meets some names and misses at least three. */
function drawn(chance: Chance): Claim {
  for (;;) {
    const made = soundSpirit(chance, chance.pick(COUNTRIES));
    const claim = { ...made, years: chance.pick([2, made.years, made.years, made.years]) };
    const met = names.filter((definition) => meetsDefinition(claim, definition)).length;
    if (met > 0 && names.length - met >= OTHERS) return claim;
  }
}

const unmet = (claim: Claim, definition: Definition) => ({
  text: `${definition.name}.`,
  why: `Not met: ${missed(claim, definition)
    .map(({ asks }) => asks)
    .join('; ')}.`,
});
const met = ({ name, points }: Definition) => ({
  text: `${name}.`,
  why: `Every point is met: ${points.map(({ asks }) => asks).join('; ')}.`,
});

/** A spirit that meets at least three names, and one of those that it misses, asked the other way round: so no name is right more often than wrong. */
function turned(chance: Chance) {
  for (;;) {
    const claim = soundSpirit(chance, chance.pick(COUNTRIES));
    const fit = names.filter((definition) => meetsDefinition(claim, definition));
    if (fit.length < OTHERS) continue;
    const not = chance.pick(names.filter((definition) => !fit.includes(definition)));
    return {
      prompt: `${spiritInWords(claim)} Which of these names may it not carry, as this handbook’s check has it?`,
      right: unmet(claim, not),
      others: fit.map(met),
    };
  }
}

export default choice({
  id: 'name-it-may-carry',
  title: 'Which name may it carry?',
  topic: 'law',
  form: 'judgement',
  level: 2,
  sources: [
    'swr-2009',
    'eu-2019-787',
    'irish-whiskey-1980',
    'cfr-27-5',
    'ttb-199',
    'canada-fdr',
    'japan-standard',
  ],
  ask: (chance) => {
    if (chance.generator >= EVEN_WORDING_SINCE && chance.below(2) === 1) return turned(chance);
    const claim = drawn(chance);
    const right = chance.pick(names.filter((definition) => meetsDefinition(claim, definition)));
    // The names that it only just misses, first.
    const others = chance
      .shuffle(names.filter((definition) => !meetsDefinition(claim, definition)))
      .sort((a, b) => missed(claim, a).length - missed(claim, b).length)
      .slice(0, OTHERS);
    return {
      prompt: `${spiritInWords(claim)} Which of these names may it carry, as this handbook’s check has it?`,
      right: met(right),
      others: others.map((definition) => unmet(claim, definition)),
    };
  },
});
