import { guessWords } from '../../shared/language/en/guess.ts';
import type { Keepsake } from '../../shared/wire/http.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';
import {
  keepsakeInWords,
  type PassageInWords,
  type PourInWords,
  type VocabularyOf,
} from './keepsake-text.ts';

/**
 * A guest's evening as CommonMark. What people typed comes out as the very characters they typed: nothing in it can
 * turn into a heading, a link, a picture or HTML.
 */
export function keepsakeMarkdown(
  keepsake: Keepsake,
  vocabularyOf: VocabularyOf,
  language: KeepsakeLanguage,
): string {
  const { title, head, pours, trials, results } = keepsakeInWords(keepsake, vocabularyOf, language);
  const whole = [
    `# ${plainMarkdown(title)}`,
    plainMarkdown(head),
    ...pours.flatMap((pour) => pourMarkdown(pour, language)),
    ...[...trials, ...results].flatMap(passageMarkdown),
  ];
  return `${whole.join('\n\n')}\n`;
}

function pourMarkdown(
  { pour, glass, name, facts, reading, fields, room }: PourInWords,
  language: KeepsakeLanguage,
) {
  const { home, guest } = language;
  const code = pour.code === null ? [] : [guest.glass.coded(pour.code)];
  return [
    `## ${plainMarkdown(`${glass}: ${[...code, name].join(', ')}`)}`,
    ...(facts.length === 0 ? [] : [plainMarkdown(facts.join(' · '))]),
    ...fields.flatMap(({ field, text }) => [
      `### ${plainMarkdown(language.fields[field])}`,
      plainMarkdown(text),
    ]),
    ...(fields.length === 0 ? [`*${plainMarkdown(home.noNotes)}*`] : []),
    ...(room.length === 0 ? [] : [`### ${plainMarkdown(guessWords.room.title)}`, listMarkdown(room)]),
    ...(reading.length === 0
      ? []
      : [
          `### ${plainMarkdown(home.reading)}`,
          reading
            .map(({ title, link }) => `- ${plainMarkdown(title)}: <${encodeURI(decoded(link))}>`)
            .join('\n'),
        ]),
  ];
}

const passageMarkdown = ({ title, said, rows }: PassageInWords): string[] => [
  `## ${plainMarkdown(title)}`,
  plainMarkdown(said),
  ...(rows.length === 0 ? [] : [listMarkdown(rows)]),
];

const listMarkdown = (lines: readonly string[]): string =>
  lines.map((line) => `- ${plainMarkdown(line)}`).join('\n');

/** A link that is encoded already must not be encoded twice; between angle brackets nothing can break out of it. */
function decoded(link: string): string {
  try {
    return decodeURI(link);
  } catch {
    return link;
  }
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
