import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Sheet } from './device.ts';
import { end, openDisplay } from './display.ts';

interface PrintJob {
  readonly open: string;
  /** What to wait for, as an expression, and the script to run then; one after the other. */
  readonly steps: readonly (readonly [string, string])[];
  readonly sheets: readonly (Sheet & { readonly marginMm: number })[];
}

const names = { A4: 'iso_a4', Letter: 'na_letter' } as const;
const script = new URL('print-in-webkit.py', import.meta.url).pathname;

/** What WebKitGTK's print window makes of a page, a PDF for each sheet. Throws what the script says when it fails. */
export async function printInWebKit({ open, steps, sheets }: PrintJob): Promise<Buffer[]> {
  const folder = mkdtempSync(join(tmpdir(), 'print-'));
  const { display, screen } = await openDisplay();
  const prints = sheets.map(({ paper, ...how }, at) => ({
    ...how,
    paper: names[paper],
    file: join(folder, `${at}.pdf`),
  }));
  try {
    await new Promise<void>((resolve, reject) => {
      const python = spawn('/usr/bin/python3', [script, JSON.stringify({ open, steps, prints })], {
        env: {
          ...process.env,
          DISPLAY: display,
          LIBGL_ALWAYS_SOFTWARE: '1',
          WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
        },
      });
      let said = '';
      python.stderr.on('data', (part: Buffer) => {
        said += String(part);
      });
      python.once('error', reject);
      python.once('close', (code) => (code === 0 ? resolve() : reject(new Error(said))));
    });
    return prints.map(({ file }) => readFileSync(file));
  } finally {
    await end(screen);
    rmSync(folder, { recursive: true, force: true });
  }
}
