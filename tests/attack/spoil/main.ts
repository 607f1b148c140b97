import { countOptions } from '../count-options.ts';
import { type Finding, spoil } from './attack.ts';

/** The flood of one evening may slow the tap of another by so much; above it by chance too, on a machine with other work. */
const most = 1.1;

export async function run(words: readonly string[]): Promise<number> {
  const { seconds, sockets, guessers } = countOptions(words, { seconds: 60, sockets: 200, guessers: 80 });
  console.log(`Four kinds of bad guests for ${seconds} s each, with the tap of another evening beside them.`);
  const findings = await spoil({ lasts: seconds * 1000, flood: sockets, guessers }, tell);
  const held = findings.every(({ faults }) => faults.length === 0);
  return held ? 0 : 1;
}

function tell({ name, quiet, meanwhile, counted, grown, faults }: Finding): void {
  const ratio = meanwhile / quiet;
  const slow = ratio > most ? ' (more than a tenth slower)' : '';
  console.log(
    `${name}: a tap took ${quiet.toFixed(1)} ms, meanwhile ${meanwhile.toFixed(1)} ms: ${ratio.toFixed(2)} times${slow}; ` +
      `memory ${grown >= 0 ? '+' : ''}${grown.toFixed(0)} MB; ${JSON.stringify(counted)}`,
  );
  for (const fault of faults) console.error(`  ${fault}`);
}
