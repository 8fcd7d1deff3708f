// A whole number from a text, for a seed or a check.

/** A whole number of 32 bits from a text. Source: the hash FNV-1a, in the public domain, from memory. */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
