// An address that the reader sends on: copied, or shown to be copied by hand.

/** True where only this machine can open the book, so an address of it is of no use to another. */
export const isHere = (): boolean => /^(?:localhost|127\.\d+\.\d+\.\d+|\[::1\])$/.test(location.hostname);

/** Copies an address; says what came of it. */
export async function copyAddress(address: string, copied: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(address);
    return copied;
  } catch {
    return `Copy this link: ${address}`;
  }
}
