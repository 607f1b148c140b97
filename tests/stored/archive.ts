import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { brotliCompressSync, brotliDecompressSync, constants } from 'node:zlib';

/** Files of a folder in one compressed file: names and contents as JSON, contents in base64 where they are no text. */
export function pack(files: ReadonlyMap<string, Buffer>): Buffer {
  const listed = [...files].map(([name, content]) => {
    const text = content.toString('utf8');
    const isText = Buffer.from(text, 'utf8').equals(content);
    return isText ? { name, text } : { name, base64: content.toString('base64') };
  });
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: 11,
    [constants.BROTLI_PARAM_LGWIN]: 24,
  };
  return brotliCompressSync(JSON.stringify(listed), { params });
}

export function unpack(packed: Buffer): ReadonlyMap<string, Buffer> {
  const listed = JSON.parse(brotliDecompressSync(packed).toString('utf8')) as readonly {
    readonly name: string;
    readonly text?: string;
    readonly base64?: string;
  }[];
  return new Map(
    listed.map(({ name, text, base64 }) => [
      name,
      text === undefined ? Buffer.from(base64 ?? '', 'base64') : Buffer.from(text),
    ]),
  );
}

export function unpackInto(packed: Buffer, folder: string): void {
  for (const [name, content] of unpack(packed)) {
    const file = join(folder, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
}

/** Every file below a folder that is wanted, by its name from there. */
export function filesOf(folder: string, wanted: (name: string) => boolean): Map<string, Buffer> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (name) => statSync(join(folder, name)).isFile() && wanted(name),
  );
  return new Map(
    names.sort().map((name) => [relative(folder, join(folder, name)), readFileSync(join(folder, name))]),
  );
}
