import { randomInt } from 'node:crypto';
import { countOptions } from '../count-options.ts';
import { seekSecrets } from './attack.ts';
import { compareTwins } from './outsider.ts';

export async function run(words: readonly string[]): Promise<number> {
  const { notes, seed } = countOptions(words, { notes: 10_000, seed: randomInt(1_000_000) });
  console.log(`Looking for ${notes} private notes where they must not be; again with --seed ${seed}.`);
  const begun = performance.now();
  const report = await seekSecrets({ notes, seed });
  const seconds = ((performance.now() - begun) / 1000).toFixed(0);
  const kinds = new Map<string, number>();
  for (const { who, where, as } of report.findings) {
    const kind = `${as}, seen by ${who} in ${where}`;
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  }
  for (const [kind, count] of kinds) console.error(`${count} times ${kind}`);
  console.log(
    `${report.notes} notes in ${report.evenings} evenings; ${report.messages} messages, answers and log lines ` +
      `(${(report.bytes / 1e6).toFixed(1)} MB) looked at in ${seconds} s, ` +
      `${report.aloud} words rightly on a board: ${report.findings.length} hits.`,
  );
  const twins = await compareTwins();
  for (const finding of twins.findings) console.error(finding);
  console.log(
    `Twin evenings with and without notes: ${twins.frames} frames compared, ${twins.findings.length} differ.`,
  );
  return report.findings.length === 0 && twins.findings.length === 0 && twins.heardAloud ? 0 : 1;
}
