import { guessLine, judged, nearnessText, roomInWords, valueText } from '../../shared/guess/guess-texts.ts';
import { resultWords } from '../../shared/language/en/result.ts';
import type { NoteValues } from '../../shared/notes/entry.ts';
import { type FieldInWords, pageInWords, type Vocabulary } from '../../shared/notes/in-words.ts';
import { isBlank } from '../../shared/notes/value.ts';
import { rowInWords, saidOf } from '../../shared/talk/result-texts.ts';
import type { Keepsake, KeepsakePour, KeepsakeTrial } from '../../shared/wire/http.ts';
import type { Drink, PourId } from '../../shared/wire/views.ts';
import { factLines } from '../stage/fact-lines.ts';
import { evening } from './evening-line.ts';
import type { KeepsakeLanguage } from './keepsake-language.ts';

/** Codes and figures of an evening as a person reads them: the common ground of page, paper and files. */
export interface KeepsakeInWords {
  readonly title: string;
  /** Whose notes, with whom, where and when: one line below the title. */
  readonly head: string;
  readonly pours: readonly PourInWords[];
  readonly trials: readonly (PassageInWords & { readonly trial: KeepsakeTrial })[];
  /** What the room made of its glasses, as it was told. */
  readonly results: readonly PassageInWords[];
}

export interface PourInWords {
  readonly pour: KeepsakePour;
  readonly glass: string;
  readonly name: string;
  readonly facts: readonly string[];
  readonly reading: readonly { readonly title: string; readonly link: string }[];
  readonly fields: readonly FieldInWords[];
  /** What the room guessed of it; empty where nothing was told. */
  readonly room: readonly string[];
}

export interface PassageInWords {
  readonly title: string;
  readonly said: string;
  /** Of a result glass by glass, the best first; empty where too few let it count. */
  readonly rows: readonly string[];
}

export type VocabularyOf = (drink: Drink) => Vocabulary;

export function keepsakeInWords(
  keepsake: Keepsake,
  vocabularyOf: VocabularyOf,
  language: KeepsakeLanguage,
): KeepsakeInWords {
  return {
    title: keepsake.title || language.home.title,
    head: [language.home.notesOf(keepsake.guest), ...evening(keepsake, language)].join(' · '),
    pours: keepsake.pours.map((pour) => pourInWords(pour, keepsake, vocabularyOf(pour.drink), language)),
    results: resultsInWords(keepsake, language),
    trials: keepsake.trials.map((trial) => ({
      trial,
      title: language.home.trial.title,
      said: trialSentences(trial, language).join(' '),
      rows: [],
    })),
  };
}

function pourInWords(
  pour: KeepsakePour,
  { guess: asked, room }: Keepsake,
  vocabulary: Vocabulary,
  { guest, home }: KeepsakeLanguage,
): PourInWords {
  const { facts } = pour;
  return {
    pour,
    glass: guest.glass.nth(pour.position),
    name: facts?.name ?? home.unnamed,
    facts: facts === null ? [] : factLines(guest, facts),
    reading: facts === null ? [] : readingOf(facts, guest.pour.more),
    fields: [...pageInWords(pour.entries, vocabulary), ...guessInWords(pour, asked)],
    room:
      room?.guesses.flatMap((each) => (each.pour === pour.pour ? roomInWords(each, pour.drink) : [])) ?? [],
  };
}

/** Glasses go by their names, or by where they stood before this guest. */
function resultsInWords({ pours, room }: Keepsake, { guest, home }: KeepsakeLanguage): PassageInWords[] {
  const nameOf = (id: PourId): string => {
    const pour = pours.find((each) => each.pour === id);
    return pour?.facts?.name ?? (pour ? guest.glass.nth(pour.position) : home.unnamed);
  };
  return (room?.results ?? []).flatMap(({ parts }) =>
    parts.map((part) => ({
      title: resultWords.titles[part.of],
      said: saidOf(part, nameOf),
      rows:
        part.outcome === 'too-few'
          ? []
          : [
              ...part.pours.map((figure) => rowInWords(part, figure, nameOf(figure.pour))),
              resultWords.counted[part.of](part.counted, part.given),
            ],
    })),
  );
}

/** What was guessed, and beside it, once the name is told, how near it was. A device may keep a keepsake of before guesses. */
function guessInWords({ entries, truth }: KeepsakePour, asked: Keepsake['guess']): FieldInWords[] {
  const guess = entries.find(({ field }) => field === 'guess')?.value as NoteValues['guess'] | undefined;
  if (!asked || guess === undefined || isBlank(guess)) return [];
  const near = truth ? judged(guess, truth, asked.choices) : [];
  const told = near.map(
    (each) => `${valueText(each.fact, each.guess, asked.currency)} (${nearnessText(each)})`,
  );
  return [{ field: 'guess', text: told.join(' · ') || guessLine(guess, asked.choices, asked.currency) }];
}

/** The host's list, and the pour's own link where it is not in it. */
function readingOf({ reading, link }: NonNullable<KeepsakePour['facts']>, more: string) {
  const known = link === null || reading.some((each) => each.link === link);
  return known ? reading : [...reading, { title: more, link }];
}

function trialSentences(
  { glasses, picked, odd }: KeepsakeTrial,
  { home: { trial } }: KeepsakeLanguage,
): string[] {
  const codeOf = (glass: number): string => glasses[glass - 1] ?? String(glass);
  const truth = odd === null ? trial.open : picked?.glass === odd ? trial.right : trial.wrong(codeOf(odd));
  return picked === null
    ? [trial.none, ...(odd === null ? [] : [trial.wrong(codeOf(odd))])]
    : [trial.picked(codeOf(picked.glass), glasses), ...(picked.guessed ? [trial.guessed] : []), truth];
}
