export type PhotoKind = 'image/jpeg' | 'image/png' | 'image/webp';

const starts = (bytes: Uint8Array, signature: readonly number[], at = 0): boolean =>
  signature.every((value, index) => bytes[at + index] === value);

/** 0x52 49 46 46 … 57 45 42 50: "RIFF", a length, "WEBP". */
const RIFF = [0x52, 0x49, 0x46, 0x46];
const WEBP = [0x57, 0x45, 0x42, 0x50];

/** What the bytes are by their own signature; the sender's name and type count for nothing. */
export const photoKind = (bytes: Uint8Array): PhotoKind | undefined => {
  if (starts(bytes, [0xff, 0xd8, 0xff])) return 'image/jpeg';
  if (starts(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'image/png';
  if (starts(bytes, RIFF) && starts(bytes, WEBP, 8)) return 'image/webp';
  return undefined;
};

/** A file name that no folder, header or shell reads as anything else. */
export const tidyName = (name: string): string =>
  name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N} ._-]/gu, '_')
    .replace(/^\.+/, '_')
    .slice(-80) || 'photo';
