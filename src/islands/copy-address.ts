// An address that the reader sends on: copied, or shown to be copied by hand.

/** Copies an address; says what came of it. */
export async function copyAddress(address: string, copied: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(address);
    return copied;
  } catch {
    return `Copy this link: ${address}`;
  }
}
