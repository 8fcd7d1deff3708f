// Whose units a reader means: gallons and proof are of one country or the other.

/** Whose gallons and proof are meant when none are named. */
export type UnitCountry = 'US' | 'UK';

/**
 * The country whose units a unit is one of.
 * @example [countryOf('US gal'), countryOf('L')] // ['US', undefined] (a litre is of no country)
 */
export const countryOf = (unit: string): UnitCountry | undefined =>
  unit.includes('US') ? 'US' : unit.includes('UK') ? 'UK' : undefined;
