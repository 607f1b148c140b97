/**
 * `npm run attack -- NAME [options]`. Each attack lives in a folder of its own and says by its exit code whether the
 * promise held; every one is bounded in count and time and stays on this machine.
 */
interface Attack {
  /** The rest of the command line; answers with the exit code. */
  readonly run: (words: readonly string[]) => Promise<number>;
}

const attacks: Readonly<Record<string, () => Promise<Attack>>> = {
  cluster: () => import('./cluster/main.ts'),
  crash: () => import('./crash/main.ts'),
  secrets: () => import('./secrets/main.ts'),
  simulate: () => import('./simulation/main.ts'),
  fuzz: () => import('./fuzz/main.ts'),
  faults: () => import('./faults/main.ts'),
  spoil: () => import('./spoil/main.ts'),
  residue: () => import('./residue/main.ts'),
  rot: () => import('./rot/main.ts'),
};

async function main([name = '', ...words]: readonly string[]): Promise<number> {
  const load = Object.hasOwn(attacks, name) ? attacks[name] : undefined;
  if (load === undefined) {
    console.error(`Name one of: ${Object.keys(attacks).join(', ')}. For example: npm run attack -- secrets`);
    return 2;
  }
  const { run } = await load();
  return run(words);
}

main(process.argv.slice(2)).then(
  (code) => process.exit(code),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);
