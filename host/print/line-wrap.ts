/** Words on at most `most` lines of about `width` letters; what is left over is marked with an ellipsis. */
export function wrapped(text: string, width: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const kept = lines.slice(0, most).map((line) => cut(line, width));
  const end = kept.at(-1);
  if (lines.length > most && end !== undefined) kept[most - 1] = cut(`${end}…`, width);
  return kept;
}

/** The line, or what of it fits `width` letters with an ellipsis at its end. */
export const cut = (line: string, width: number): string => {
  const letters = [...line];
  return letters.length <= width ? line : `${letters.slice(0, Math.max(1, Math.floor(width) - 1)).join('')}…`;
};
