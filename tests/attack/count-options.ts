import { parseArgs } from 'node:util';

/**
 * Whole numbers from the command line, `--name 12`, each with what is taken when it is left out.
 * Throws a sentence for anything else.
 */
export function countOptions<Name extends string>(
  words: readonly string[],
  usual: Readonly<Record<Name, number>>,
): Record<Name, number> {
  const names = Object.keys(usual) as Name[];
  const options = Object.fromEntries(names.map((name) => [name, { type: 'string' as const }]));
  const { values } = parseArgs({ args: [...words], options });
  const read = (name: Name): number => {
    const written = values[name];
    if (written === undefined) return usual[name];
    if (!/^\d{1,10}$/.test(String(written))) throw new Error(`--${name} takes a whole number.`);
    return Number(written);
  };
  return Object.fromEntries(names.map((name) => [name, read(name)])) as Record<Name, number>;
}
