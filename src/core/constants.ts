// Physical constants used in more than one stage: value, meaning, unit, source.

export const ETHANOL_MOLAR_MASS = 46.069; // kg/kmol; IUPAC standard atomic weights
export const WATER_MOLAR_MASS = 18.0153; // kg/kmol; IUPAC standard atomic weights
export const STANDARD_ATMOSPHERE = 101.325; // kPa; ISO 2533
