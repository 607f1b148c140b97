import type { GuestWords } from '../../shared/language/en/guest.ts';
import { textFields, textOf } from '../../shared/notes/entry.ts';
import type { Keepsake, KeepsakePour } from '../../shared/wire/http.ts';
import { factsOf } from '../board/facts-of.ts';
import { evening } from './evening-line.ts';

/**
 * A guest's evening as CommonMark. What people typed comes out as the very characters they typed: nothing in it can
 * turn into a heading, a link, a picture or HTML.
 */
export function keepsakeMarkdown(keepsake: Keepsake, words: GuestWords): string {
  const head = [
    `# ${plainMarkdown(keepsake.title || words.keepsake.title)}`,
    plainMarkdown([words.keepsake.notesOf(keepsake.guest), ...evening(keepsake, words)].join(' · ')),
  ];
  return `${[...head, ...keepsake.pours.flatMap((pour) => pourMarkdown(pour, words))].join('\n\n')}\n`;
}

function pourMarkdown(pour: KeepsakePour, words: GuestWords): string[] {
  const facts = pour.facts === null ? [] : factsOf(words, pour.facts);
  const notes = textFields.flatMap((field) => {
    const text = textOf(pour.entries, field);
    return text === '' ? [] : [`### ${plainMarkdown(words.fields[field])}`, plainMarkdown(text)];
  });
  return [
    `## ${plainMarkdown(pourTitle(pour, words))}`,
    ...(facts.length === 0 ? [] : [plainMarkdown(facts.join(' · '))]),
    ...(notes.length === 0 ? [`*${plainMarkdown(words.keepsake.noNotes)}*`] : notes),
  ];
}

export function pourTitle({ position, facts, code }: KeepsakePour, words: GuestWords): string {
  const marks = [...(code === null ? [] : [words.glass.coded(code)]), facts?.name ?? words.keepsake.unnamed];
  return `${words.glass.nth(position)}: ${marks.join(', ')}`;
}

/** Characters that mean something anywhere in a line of CommonMark or of its common extensions. */
const inline = /[\\`*_[\]<>&~|$^]/g;
/** What means something only at the start of a line: headings, lists, rules, underlines, quotes. */
const lineStart = /^([#+\-=:]|\d{1,9}[.)])/;

/** Typed text, escaped; line ends stay line ends, blank lines part paragraphs. */
export function plainMarkdown(typed: string): string {
  const lines = typed.split(/\r\n?|\n/).map((line) => escapedLine(line.trim()));
  return lines
    .map((line, index) => (line !== '' && (lines[index + 1] ?? '') !== '' ? `${line}\\` : line))
    .join('\n');
}

function escapedLine(line: string): string {
  return line.replace(inline, '\\$&').replace(lineStart, (mark) => `${mark.slice(0, -1)}\\${mark.slice(-1)}`);
}
