// Minutes in words: one is no plural.

/** “1 minute”, “8 minutes”. */
export const minutes = (count: number): string => `${count} ${count === 1 ? 'minute' : 'minutes'}`;
