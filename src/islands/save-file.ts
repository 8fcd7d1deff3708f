// Saves a text or bytes as a file of the reader's.

const KEPT_FOR = 10_000; // ms until the browser may forget the bytes

export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_FOR);
}
