// The name of a file that is saved for the reader.

/** “Sallowby, copy” of a house becomes sallowby-copy.house.json. */
export const fileNameOf = (name: string, kind: string): string =>
  `${name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')}.${kind}.json`;
