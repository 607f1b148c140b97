export type DecodedFile =
  | { readonly is: 'text'; readonly text: string }
  /** A workbook of a spreadsheet, not a list of lines. */
  | { readonly is: 'workbook' }
  | { readonly is: 'not-text' }
  | { readonly is: 'too-large' };

/** A lineup of 16 with long stories is a tenth of this. */
export const mostBytes = 2 * 1024 * 1024;

const begins = (bytes: Uint8Array, ...mark: readonly number[]) =>
  mark.every((byte, at) => bytes[at] === byte);

/**
 * Text from a file of whichever encoding spreadsheets write: UTF-8, UTF-16 with its mark, or else Windows-1252, in
 * which every byte is a letter.
 */
export function decodeFile(bytes: Uint8Array): DecodedFile {
  if (bytes.length > mostBytes) return { is: 'too-large' };
  if (begins(bytes, 0x50, 0x4b, 0x03, 0x04) || begins(bytes, 0xd0, 0xcf, 0x11, 0xe0))
    return { is: 'workbook' };
  if (begins(bytes, 0xff, 0xfe)) return { is: 'text', text: new TextDecoder('utf-16le').decode(bytes) };
  if (begins(bytes, 0xfe, 0xff)) return { is: 'text', text: new TextDecoder('utf-16be').decode(bytes) };
  if (bytes.includes(0)) return { is: 'not-text' };
  try {
    return { is: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { is: 'text', text: new TextDecoder('windows-1252').decode(bytes) };
  }
}
