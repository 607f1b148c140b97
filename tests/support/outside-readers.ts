import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { installPackages, programOf } from '../engines/installed.ts';

/** Readers that nobody here wrote, for what leaves the house. */
const validator = new HtmlValidate(
  new StaticConfigLoader({
    root: true,
    extends: ['html-validate:standard', 'html-validate:document'],
    rules: {
      // For files from other addresses: all of ours come from the one that the page comes from.
      'require-sri': 'off',
      // A question to everybody stands above the page that it is asked on.
      'heading-level': ['error', { minInitialRank: 'h2' }],
    },
  }),
);

/** What html-validate, which knows the HTML standard, finds wrong in a page, each as a sentence with its place. */
export async function htmlFaults(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  const lines = html.split('\n');
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line, column }) => {
      const place = lines[line - 1]?.slice(Math.max(0, column - 60), column + 100);
      return `${ruleId}: ${message}, at “${place}”`;
    }),
  );
}

/**
 * The lines of a table as csv-parse reads it, which refuses whatever RFC 4180 does not allow: lines of different lengths,
 * a lone quotation mark. A mark of UTF-8 at its beginning, which spreadsheets need, is taken off; the first line shows what
 * parts cells.
 */
export const csvLines = (text: string): string[][] =>
  parse(text, { bom: true, delimiter: /^[^\n]*";"/.test(text) ? ';' : ',' });

/** On Debian, as root, it is installed when it is missing; elsewhere a sentence says what to do. */
function hasPython(): boolean {
  const isHere = () => programOf('python3') !== undefined;
  if (!isHere()) installPackages(['python3']);
  if (isHere()) return true;
  console.warn('No other program reads the JSON, for this machine has no Python: apt-get install python3.');
  return false;
}

/** Python's reader of JSON, made to refuse the numbers that RFC 8259 does not have; and back through Python's writer. */
export function throughPython(json: string): unknown {
  if (!hasPython()) return JSON.parse(json);
  const script =
    'import json, sys\ndef no(name): raise ValueError(name)\njson.dump(json.loads(sys.stdin.buffer.read().decode("utf-8"), parse_constant=no), sys.stdout)';
  const { status, stdout, stderr } = spawnSync('python3', ['-c', script], { input: json, encoding: 'utf8' });
  if (status !== 0) throw new Error(`Python does not read it: ${stderr}`);
  return JSON.parse(stdout);
}

/** A PDF as Poppler reads it: sheets, their size in mm, and the words on them. */
export function readByPoppler(pdf: Uint8Array): {
  readonly pages: number;
  readonly sizeMm: readonly number[];
  readonly text: string;
} {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    const say = (program: string, ...given: string[]): string => {
      const { status, stdout, stderr } = spawnSync(program, given, { encoding: 'utf8' });
      if (status !== 0 || /Syntax (Error|Warning)/.test(stderr)) throw new Error(`${program}: ${stderr}`);
      return stdout;
    };
    const facts = say('pdfinfo', file);
    const [, width = '', height = ''] = /^Page size:\s+([\d.]+) x ([\d.]+) pts/m.exec(facts) ?? [];
    return {
      pages: Number(/^Pages:\s+(\d+)/m.exec(facts)?.[1]),
      // Points of 1/72 inch (ISO 32000-1, 8.3.2.3).
      sizeMm: [width, height].map((points) => (Number(points) * 25.4) / 72),
      text: say('pdftotext', '-layout', file, '-'),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
