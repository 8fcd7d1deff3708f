// Three talks of the collection whose paragraphs a person gave to rooms before any cutter was written, and one told without paragraphs or stops.

export const ROOMS = ['barn', 'mill', 'mash', 'tun', 'still', 'fill'] as const;
export type RoomName = (typeof ROOMS)[number];

/** The room of each paragraph, by hand. */
export const byHand: Readonly<Record<string, readonly RoomName[]>> = {
  'elderby/chatty-host': ['barn', 'barn', 'mill', 'mash', 'tun', 'still', 'still', 'still', 'fill'],
  // The bond store is told second, but its next word is “backtrack”: the order of telling stays, so it belongs before the malt.
  'hartwell/mangrove': ['barn', 'barn', 'barn', 'mash', 'tun', 'still', 'still', 'fill'],
  // “Up the iron stairs now” leads to the mill; the plates that cool the wort are shown in the mash house.
  'house/long': [
    ...(['barn', 'barn', 'barn', 'barn', 'barn', 'barn', 'mill', 'mill', 'mash', 'mash'] as const),
    ...(['tun', 'tun', 'tun', 'still', 'still', 'still', 'still'] as const),
    ...(['fill', 'fill', 'fill', 'fill', 'fill'] as const),
  ],
};

/** Three more, labelled once the cutter was as it is, and looked at once; nothing was changed for them. */
export const heldOut: Readonly<Record<string, readonly RoomName[]>> = {
  'hartwell/creekside': ['barn', 'barn', 'mill', 'mash', 'tun', 'still', 'still', 'fill'],
  'jarrow/ledger': ['barn', 'barn', 'mill', 'tun', 'tun', 'still', 'still', 'fill', 'fill'],
  'cinderford/old-cindermere': ['barn', 'barn', 'mash', 'tun', 'still', 'still', 'fill'],
};

/** Of the talk without paragraphs or stops, the words with which each room begins. */
export const beginsBy: readonly (readonly [RoomName, string])[] = [
  ['barn', 'aye right'],
  ['mill', 'and the mill does'],
  ['mash', 'anyway the first water'],
  ['tun', 'right so the washbacks'],
  ['still', 'so one washback does'],
  ['fill', 'so over the fifty weeks'],
];
