// German, not yet reviewed by a native speaker.
import { countingIn } from '../counting.ts';
import type { BoardWords } from '../en/board.ts';

const several = countingIn('de');

export const boardWords: BoardWords = {
  title: 'Auf dem Tisch',
  waiting: 'Das Gespräch ist noch nicht offen.',
  empty: 'Dazu hat noch niemand etwas geteilt.',
  later: 'später ergänzt',
  you: 'du',
  unnamed: 'ohne Namen',
  atHome: 'zu Hause',
  all: 'Alle',
  choose: 'Welches Glas?',
  trial: 'Welches ist anders',
  fields: { look: 'Aussehen', nose: 'Nase', palate: 'Gaumen', finish: 'Abgang', thoughts: 'Gedanken' },

  words: {
    title: 'Genannte Wörter',
    hint: 'Nur, was vor dem Gespräch notiert war.',
    by: (word, people) => `${word}: ${several(people, 'Person', 'Personen')}`,
    more: (count) => `und ${several(count, 'weiteres Wort', 'weitere Wörter')} von je einer Person`,
  },
  colours: {
    title: 'Farben',
    picture: (parts) => `Von hell nach dunkel: ${parts.join(', ')}`,
  },
  places: { title: 'Rangfolge', of: (name, place) => `${name}: ${place}` },
  odd: {
    title: 'Wer hat das abweichende Glas gefunden?',
    found: (right, of) => `${right} von ${of} haben das andere gewählt.`,
    chance: 'Wer nur rät, trifft in einem von drei Fällen.',
    right: (glass) => `Glas ${glass}, und das war es`,
    wrong: (picked, odd) => `Glas ${picked}; es war Glas ${odd}`,
    guessed: 'geraten',
    picked: (glass) => `Glas ${glass}`,
  },

  speaking: {
    title: 'Wer wann spricht',
    hint: 'Ausgelost. Niemand muss sprechen.',
    each: (seconds) =>
      seconds < 90
        ? `Je etwa ${several(seconds, 'Sekunde', 'Sekunden')}.`
        : `Je etwa ${several(Math.round(seconds / 60), 'Minute', 'Minuten')}.`,
    rounds: (pours) => `Einmal für jedes von ${several(pours, 'Glas', 'Gläsern')}.`,
    now: 'etwa jetzt',
    everybody: (guests) => `Alle ${guests} in dieser Reihenfolge`,
  },

  share: {
    title: 'Deine Seite gehört dir',
    lead: 'Niemand sieht sie, außer du sagst es, Glas für Glas. Du kannst es jederzeit zurücknehmen.',
    leadLast: 'Du kannst noch wählen, was gezählt oder gesehen werden darf.',
    choose: (glass) => `${glass}: Was wird aus meiner Seite?`,
    choices: {
      named: 'Mit meinem Namen',
      unnamed: 'Ohne meinen Namen',
      private: 'Bleibt bei mir',
    },
    unnamed:
      'Ohne Namen geht, was du vor dem Gespräch notiert hast. In kleiner Runde lässt sich trotzdem erraten, von wem es ist.',
    done: {
      named: (glass) => `${glass}: Deine Seite liegt auf dem Tisch.`,
      unnamed: (glass) => `${glass}: Deine Seite kommt ohne deinen Namen auf den Tisch.`,
      private: (glass) => `${glass}: Deine Seite bleibt bei dir.`,
    },
    nothing: 'Zu diesem Glas hast du nichts notiert.',
    yours: 'Deine Seite',
    earlier: 'Frühere Gläser',
  },
};
