// Whose units a reader means: gallons and proof are of one country or the other.

/** Whose gallons and proof are meant when none are named. */
export type Country = 'US' | 'UK';

/** The country whose units a unit is one of. */
export const countryOf = (unit: string): Country | undefined =>
  unit.includes('US') ? 'US' : unit.includes('UK') ? 'UK' : undefined;
