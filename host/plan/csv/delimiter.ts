/** What parts the cells of a list. A comma with a blank is one of its own: then a comma between digits is a decimal one. */
export type Delimiter = '\t' | ';' | '|' | ', ' | ',';

/** The delimiter of a pasted or uploaded list, from its lines without what stands in quotes. */
export function delimiterOf(text: string): Delimiter {
  const lines = text
    .replace(/"(?:[^"]|"")*"/g, '""')
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== '')
    .slice(0, 200);
  const most = (mark: string) =>
    lines.filter((line) => line.includes(mark)).length * 2 >= Math.max(1, lines.length);
  if (most('\t')) return '\t';
  if (most(';')) return ';';
  if (most('|')) return '|';
  const commas = lines.flatMap((line) => [...line.matchAll(/(.?),(.?)/g)]);
  const decimal = commas.filter(
    ([, before = '', after = '']) => /\d/.test(before) && /\d/.test(after),
  ).length;
  const spaced = commas.filter(([, , after = '']) => after === '' || /\s/.test(after)).length;
  return decimal > 0 && spaced > 0 && decimal + spaced === commas.length ? ', ' : ',';
}
