// An address as a picture of code (ISO/IEC 18004), as the path of a drawing: one unit a module.
import { encode } from 'uqr';

/** Bytes of an address that go into one picture: of version 25, 117 modules wide, level M; a phone reads no denser one off a screen with ease. */
export const MOST_QR_BYTES = 997;
const QUIET = 4; // modules of white around the code, by the standard

export interface Code {
  /** Modules on a side, the white around it with them. */
  readonly size: number;
  readonly version: number;
  readonly path: string;
}

/** True when an address goes into one picture. */
export const fitsPicture = (address: string): boolean =>
  new TextEncoder().encode(address).length <= MOST_QR_BYTES;

/** The picture of an address; undefined when it would be too dense. */
export function qrCodeOf(address: string): Code | undefined {
  if (!fitsPicture(address)) return undefined;
  const { data, size, version } = encode(address, { ecc: 'M', border: QUIET });
  const rows = data.map((row, y) =>
    [
      ...row
        .map((dark) => (dark ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ]
      .map(({ index, 0: run }) => `M${index} ${y}h${run.length}v1h-${run.length}z`)
      .join(''),
  );
  return { size, version, path: rows.join('') };
}
