import { spawn } from 'node:child_process';

/**
 * Fetched for this command alone: with what it needs it is 185 MB in 201 packages and takes 26 s to install, which
 * nobody who runs the evening should wait for. This is the last version that accepts Node 20.
 */
const tool = 'lighthouse@12.8.2';

export const goals = { performance: 95, accessibility: 100, 'best-practices': 100 } as const;
export type Category = keyof typeof goals;
export const categories = Object.keys(goals) as readonly Category[];
export type Scores = Readonly<Record<Category, number>>;

interface Audit {
  readonly title: string;
  readonly score: number | null;
  readonly displayValue?: string;
}
export interface Report {
  readonly categories: Readonly<
    Record<
      Category,
      {
        readonly score: number | null;
        readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
      }
    >
  >;
  readonly audits: Readonly<Record<string, Audit>>;
}

/**
 * Loads one page on an emulated phone (a slow 4G line and a processor four times slower, as the tool simulates them) and
 * writes the report. Rejects with what the tool said when it could not.
 * @param profile a folder of the browser's that remembers something; absent: it remembers nothing
 */
export function measure(url: string, report: string, chromium: string, profile?: string): Promise<void> {
  const asRoot = process.getuid?.() === 0;
  const flags = [
    '--headless=new',
    ...(asRoot ? ['--no-sandbox'] : []),
    ...(profile === undefined ? [] : [`--user-data-dir=${profile}`]),
  ].join(' ');
  const child = spawn(
    'npx',
    [
      '--yes',
      tool,
      url,
      '--quiet',
      '--output=json',
      `--output-path=${report}`,
      `--only-categories=${categories.join(',')}`,
      `--chrome-flags=${flags}`,
      ...(profile === undefined ? [] : ['--disable-storage-reset']),
    ],
    { env: { ...process.env, CHROME_PATH: chromium }, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const said: string[] = [];
  child.stderr.on('data', (chunk) => said.push(String(chunk)));
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (code) => {
      if (code === 0) resolve();
      else reject(new Error(`${tool} could not measure ${new URL(url).pathname}: ${said.join('').trim()}`));
    });
  });
}

/** From 0 to 100, as the tool shows them. */
export function scoresIn(report: Report): Scores {
  const score = (category: Category) => Math.round((report.categories[category].score ?? 0) * 100);
  return {
    performance: score('performance'),
    accessibility: score('accessibility'),
    'best-practices': score('best-practices'),
  };
}

/** Where a page falls short of a goal, with the checks that cost it something. */
export function shortOf(report: Report): { readonly category: Category; readonly why: readonly string[] }[] {
  const scores = scoresIn(report);
  return categories
    .filter((category) => scores[category] < goals[category])
    .map((category) => ({ category, why: costsIn(report, category) }));
}

const costsIn = ({ categories: all, audits }: Report, category: Category): string[] =>
  all[category].auditRefs
    .filter(({ id, weight }) => weight > 0 && (audits[id]?.score ?? 1) < 0.9)
    .map(({ id }) => [audits[id]?.title, audits[id]?.displayValue].filter(Boolean).join(' '));
