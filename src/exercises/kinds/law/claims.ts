// What a spirit is, as a question tells it, and spirits that most definitions could not fault.
import { formatNumber as n } from '../../../core/format.ts';
import type { Claim, Country } from '../../../core/law/claim.ts';
import type { Chance } from '../../seeded-random.ts';

const woods: Record<Claim['wood'], string> = {
  'new charred oak': 'new charred oak',
  'used or uncharred oak': 'used oak',
  'other wood': 'chestnut',
};
const place = (country: Country) =>
  country === 'another EU country' ? 'a country of the European Union other than Ireland' : country;

/** A spirit in words, with every fact that a definition may ask for. */
export function spiritInWords(claim: Claim): string {
  const { grain, still, madeIn, maturedIn, bottledIn } = claim;
  const elsewhere = (country: Country = madeIn) => (country === madeIn ? 'there' : `in ${place(country)}`);
  return (
    `A spirit from ${grain.replace('only', 'alone')}, made in ${still}s of ${claim.oneDistillery ? 'one distillery' : 'two distilleries'} in ${place(madeIn)}, came off the still at ${n(claim.distilledAt, 1)} % vol, taken as a whole. ` +
    `It was filled at ${n(claim.filledAt, 1)} % vol into ${woods[claim.wood]} of ${claim.largestCask} L, lay ${claim.years} years ${elsewhere(maturedIn)}, and is bottled ${elsewhere(bottledIn)} at ${n(claim.bottledAt, 1)} % vol with ${claim.added === 'water only' ? 'only water' : claim.added} added.`
  );
}

/** A malt spirit made, matured and bottled in one country, at fault for some names by its country, filling or wood alone. */
export function soundSpirit(chance: Chance, country: Country): Claim {
  return {
    madeIn: country,
    grain: 'malted barley only',
    still: 'pot still',
    oneDistillery: true,
    distilledAt: chance.pick([72.5, 73, 74.5, 75, 76.5, 78]),
    wood: chance.pick(['new charred oak', 'used or uncharred oak']),
    largestCask: chance.pick([190, 200, 250, 500]),
    filledAt: chance.pick([60, 62, 62.5, 63.5, 64]),
    years: chance.pick([4, 5, 8, 10, 12]),
    maturedIn: country,
    bottledIn: country,
    bottledAt: chance.pick([40, 43, 46, 50]),
    added: chance.pick(['water only', 'water and plain caramel']),
  };
}
