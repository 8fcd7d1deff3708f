// US proof as it is said: twice the strength. The law has both at 60 °F; the hundredths that this makes are not spoken.
export const US_PROOF = 2; // degrees of proof for each % vol; 27 CFR 5.1
