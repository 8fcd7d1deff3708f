// Texts that mean harm or mischief, for every door through which text comes in.

/** Each sets `hurt` on the window if any part of it ever runs. */
export const injections = [
  '<img src=x onerror=hurt=1>',
  '<svg onload=hurt=1></svg>',
  '</script><script>hurt=1</script>',
  '"><iframe src=javascript:parent.hurt=1>',
  "' onmouseover='hurt=1' x='",
  'javascript:hurt=1',
  '${hurt=1}',
  '{{hurt=1}}',
  '&lt;b&gt;&#x3c;',
  '</textarea></title></style><b onclick=hurt=1>',
] as const;

export const prototypeKeys = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype'] as const;

/** Names that are no names: what they are, and the text. */
export const brokenNames: Readonly<Record<string, string>> = {
  'half a surrogate pair': 'Sallow\ud83d',
  'a zero byte': 'Sal\u0000low',
  'text turned round': '\u202ewoliaS\u2066',
  'a line end': 'Sallow\nby',
  'ten thousand marks on a letter': `a${'\u0301'.repeat(10_000)}`,
  'a pair cut in two at the limit': `${'a'.repeat(79)}😀`,
  'a megabyte': 'a'.repeat(1_000_000),
  'nothing that can be seen': '\u0000\u202e',
  'spaces of no width': '\u200b\u2060\ufeff',
  'a Hangul filler': '\u3164',
  'an empty Braille cell': '\u2800',
  'a mark on no letter': '\u0301',
  'a soft hyphen in it': 'Harrow\u00admere',
  'a joiner in it': 'Harrow\u200dmere',
  'a space of no width in it': 'Harrow\u200bmere',
  'a variation selector behind it': 'Harrowmere\ufe0f',
  'a tag behind it': 'Harrowmere\u{e0041}',
  'a space behind it': 'Harrowmere\u00a0',
  'two spaces in it': 'House  of Sallowby',
  nothing: '',
};

/** JSON values that are no figure. */
export const notFigures = ['1e999', '-1e999', 'null', 'true', '"62"', '"１２"', '{}', '[62]', '1e-400', '-0', '{"__proto__":62}'] as const; // prettier-ignore

/** What may be typed where a number is wanted, and is none. */
export const notNumbers = ['NaN', 'Infinity', '-Infinity', '1e999', '0x10', '１２', '٦٢', '1,2,3', '6.2.1', '62\u0000', '\u202e26', '--1', '<b>1</b>', '9'.repeat(400), '1'.padEnd(100_000, ' 1')] as const; // prettier-ignore

/** A value of many lists, one in the other. */
export const nested = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);

/** The text of a house with anything in it. */
export const houseText = (figures: string, name: unknown = 'Sallowby'): string =>
  `{"format":"malt-spirit-handbook/house","version":1,"name":${JSON.stringify(name)},"figures":${figures}}`;

/** The text of a signed file with anything in it; its key and signature have the right length and are none. */
export const signedText = (change: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({
    format: 'malt-spirit-handbook/signed',
    version: 1,
    kind: 'house',
    name: 'Sallowby',
    release: 1,
    date: '2026-05-14',
    signer: 'Ann',
    key: 'A'.repeat(87),
    text: houseText('{}'),
    signature: 'A'.repeat(86),
    ...change,
  });

/** Signed files that cannot be read: what is changed in one, and what the sentence says of it. */
export const brokenReleases: readonly (readonly [change: Readonly<Record<string, unknown>>, says: string])[] =
  [
    [{ version: 2 }, 'of version 2'],
    [{ kind: 'walk' }, 'of the kind “walk”'],
    [{ kind: '__proto__' }, 'of the kind “__proto__”'],
    [{ kind: ['house'] }, 'of the kind'],
    [{ name: '' }, 'no name'],
    [{ name: '\u202eevil' }, 'no name'],
    [{ name: '__proto__ '.repeat(50) }, 'no name'],
    [{ signer: 7 }, 'does not say who'],
    [{ release: 0 }, 'gives “0” as its release'],
    [{ release: -3 }, 'as its release'],
    [{ release: 1.5 }, 'as its release'],
    [{ release: 1e9 }, 'as its release'],
    [{ release: '2' }, 'as its release'],
    [{ date: '14/05/2026' }, 'as its day'],
    [{ date: '2026-13-01' }, 'as its day'],
    [{ key: 'A' }, 'key in the signed file is damaged'],
    [{ key: 'é'.repeat(87) }, 'key in the signed file is damaged'],
    [{ signature: '' }, 'signature in the file is damaged'],
    [{ text: { figures: {} } }, 'no text in it'],
    [{}, 'signature does not fit'], // no point of the curve
  ];
