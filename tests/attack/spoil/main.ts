import { countOptions } from '../count-options.ts';
import { type Finding, kinds, spoil } from './attack.ts';

/** The flood of one evening may slow the tap of another by so much; above it by chance too, on a machine with other work. */
const most = 1.1;

export async function run(words: readonly string[]): Promise<number> {
  const [asked, rest] = [kinds.filter((kind) => words.includes(kind)), words.filter((word) => !isKind(word))];
  const { seconds, sockets, guessers } = countOptions(rest, { seconds: 60, sockets: 200, guessers: 80 });
  const some = asked.length > 0 ? asked : kinds;
  console.log(
    `Bad guests (${some.join(', ')}) for ${seconds} s each in turns with as long rests, with the tap of another evening beside them.`,
  );
  const findings = await spoil({ lasts: 2 * seconds * 1000, flood: sockets, guessers, kinds: some }, tell);
  const held = findings.every(({ faults }) => faults.length === 0);
  return held ? 0 : 1;
}

const isKind = (word: string): boolean => (kinds as readonly string[]).includes(word);

function tell({ name, quiet, meanwhile, ratio, counted, grown, faults }: Finding): void {
  const slow = ratio > most ? ' (more than a tenth slower)' : '';
  console.log(
    `${name}: a tap took ${quiet.toFixed(1)} ms, meanwhile ${meanwhile.toFixed(1)} ms: ${ratio.toFixed(2)} times${slow}; ` +
      `memory ${grown >= 0 ? '+' : ''}${grown.toFixed(0)} MB; ${JSON.stringify(counted)}`,
  );
  for (const fault of faults) console.error(`  ${fault}`);
}
