// German, not yet reviewed by a native speaker.
import type { CueWordSheet } from '../en/cues.ts';

export const cueWords: CueWordSheet = {
  gathering: { verb: 'Ankommen', hint: 'Setz dich und lass die Gläser noch stehen. Wir fangen zusammen an.' },
  welcome: { verb: 'Zuhören', hint: 'Dein Gastgeber eröffnet den Abend.' },
  'ground-rules': { verb: 'Zustimmen', hint: 'Ein paar Regeln, damit alle eigene Worte finden.' },
  water: { verb: 'Wasser', hint: 'Trink etwas und spül den Mund aus. Ein Bissen Brot hilft.' },
  break: { verb: 'Pause', hint: 'Wasser, etwas zu essen, frische Luft. Lass die vollen Gläser stehen.' },
  ranking: { verb: 'Rangfolge', hint: 'Was hat dir am besten gefallen? Behalt es noch für dich.' },
  rankingNamed: { verb: 'Rangfolge', hint: 'Jetzt kennst du die Namen: Was hat dir am besten gefallen?' },
  'odd-one-out': { verb: 'Vergleichen', hint: 'Zwei sind gleich, eins nicht. Behalt es noch für dich.' },
  discussion: { verb: 'Gespräch', hint: 'Sag es mit deinen Worten, oder hör einfach zu.' },
  result: { verb: 'Ergebnis', hint: 'Was der Raum von diesen Gläsern hält.' },
  reveal: { verb: 'Namen', hint: 'Das hattest du im Glas.' },
  farewell: { verb: 'Abschied', hint: 'Trink ein Glas Wasser, und setz dich heute nicht mehr ans Steuer.' },
  practice: {
    swirl: { verb: 'Schwenken', hint: 'Nur Wasser. Lass den Fuß auf dem Tisch und zieh kleine Kreise.' },
    look: { verb: 'Schauen', hint: 'Nur Wasser. Halt es etwas schräg vor diese weiße Karte.' },
    nose: { verb: 'Riechen', hint: 'Nur Wasser. Augen zu, kurze Züge. Ein leiser Ton holt dich zurück.' },
    sip: { verb: 'Probieren', hint: 'Nur Wasser. Ein kleiner Schluck, im Mund bewegt, mit etwas Luft.' },
    spit: { verb: 'Spucken', hint: 'In den Becher, mit Schwung. Alle tun es, den ganzen Abend.' },
  },
  step: {
    swirl: {
      spirit: { verb: 'Schwenken', hint: 'Deckel ab. Neig und dreh es langsam, dann lass es ruhen.' },
      wine: { verb: 'Schwenken', hint: 'Fuß auf dem Tisch, kleine Kreise, dann lass es ruhen.' },
      beer: { verb: 'Schwenken', hint: 'Zwei, drei sanfte Drehungen, um den Schaum zu wecken.' },
    },
    drops: { verb: '3 Tropfen dazu', hint: 'Wasser. Dreh das Glas langsam, dann lass es ruhen.' },
    look: {
      spirit: { verb: 'Schauen', hint: 'Halt es vor das Weiß. Wie tief ist die Farbe?' },
      wine: { verb: 'Schauen', hint: 'Neig es über dem Weiß. Erst die Mitte, dann den Rand.' },
      beer: { verb: 'Schauen', hint: 'Halt es vor das Weiß. Farbe, Trübung, Schaum.' },
    },
    nose: {
      spirit: { verb: 'Riechen', hint: 'Augen zu, Lippen leicht offen. Komm langsam näher.' },
      wine: { verb: 'Riechen', hint: 'Augen zu. Ein langer, ruhiger Zug, dann ein paar kurze.' },
      beer: { verb: 'Riechen', hint: 'Augen zu. Kurze Züge, knapp über dem Schaum.' },
    },
    sip: {
      spirit: {
        verb: 'Probieren',
        hint: 'Ein ganz kleiner Schluck. Beweg ihn im Mund, zieh etwas Luft ein.',
      },
      wine: { verb: 'Probieren', hint: 'Beweg den Schluck im Mund und zieh etwas Luft ein.' },
      beer: { verb: 'Probieren', hint: 'Lass es über die ganze Zunge laufen, und atme langsam aus.' },
    },
    spit: {
      spirit: { verb: 'Spucken', hint: 'In den Becher. Dann spür nach, was bleibt.' },
      wine: { verb: 'Spucken', hint: 'In den Becher. Dann spür nach, was bleibt.' },
      beer: { verb: 'Spucken', hint: 'In den Becher. Dann spür nach, was bleibt.' },
    },
    review: { verb: 'Nachlesen', hint: 'Deine Seite, von oben bis unten. Ist das alles noch im Glas?' },
    reflect: { verb: 'Nachdenken', hint: 'Woran erinnert dich dieses Glas? Wie geht es dir damit?' },
  },
  write: {
    look: { verb: 'Notieren', hint: 'Nimm das Glas noch einmal in die Hand. Was siehst du?' },
    nose: { verb: 'Notieren', hint: 'Noch einmal die Nase ins Glas. Was riechst du?' },
    palate: { verb: 'Notieren', hint: 'Wie war es im Mund?' },
    finish: { verb: 'Notieren', hint: 'Was bleibt jetzt, und wie lange?' },
  },
};
