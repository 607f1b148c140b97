// German, not yet reviewed by a native speaker.
import type { StrengthWords } from '../en/plan-strength.ts';

/** An amount in grams for women and men; said once where it is the same. */
const eachSex = (women: string, men: string): string =>
  women === men ? `${women}\u00a0g` : `${women}\u00a0g für Frauen und ${men}\u00a0g für Männer`;

/** What a country advises, and the cautions of every tasting, in German. */
export const strengthWords: StrengthWords = {
  advice: (country, amount) => `Amtlicher Rat (${country}): ${amount}.`,
  adviceNone: (country) =>
    `Amtlicher Rat (${country}): keine Zahl für einen Tag oder Abend; je weniger, desto besser.`,
  adviceAmount: {
    occasion: (women, men) => `an einem Tag höchstens ${eachSex(women, men)}`,
    day: (women, men) => `als tägliche Gewohnheit höchstens ${eachSex(women, men)}, und Tage ganz ohne`,
    week: (women, men) => `höchstens ${eachSex(women, men)} in der Woche, auf mehrere Tage verteilt`,
  },
  adviceAbove: 'Wer alles schluckt, liegt heute Abend darüber: Sag es, und achte darauf, dass alle spucken.',
  cautions: 'Für jede Verkostung',
  ageIs: (age) =>
    `Wer jünger als ${age} ist, bekommt keinen Alkohol; das ist das höchste Alter, das das Recht dieses Landes nennt.`,
  ageCheck: 'Lass dir vor dem ersten Glas von allen, die jünger als 25 aussehen, den Ausweis zeigen.',
  cautionWords: {
    'spit-every-sip': 'Jeder Schluck wird ausgespuckt, auch vom Gastgeber.',
    'spitting-still-leaves-some': 'Etwas nimmt auch auf, wer spuckt.',
    'water-between-pours': 'Wasser zwischen den Proben, so viel alle mögen.',
    'eat-first': 'Alle haben vor dem ersten Glas gegessen.',
    'anyone-may-skip-a-pour': 'Alle dürfen jede Probe auslassen, ohne Begründung.',
    'nobody-drives-after-tasting': 'Wer verkostet hat, fährt nicht.',
    'no-sum-tells-when-to-drive': 'Keine Rechnung, auch diese nicht, sagt, wann jemand wieder fahren darf.',
    'arrange-the-way-home': 'Klär vor dem ersten Glas, wie alle nach Hause kommen.',
    'no-alcohol-below-age': 'Wer das gesetzliche Mindestalter nicht erreicht hat, bekommt keinen Alkohol.',
    'ask-local-law-for-age': 'Das Mindestalter bestimmt das örtliche Recht; sieh dort nach.',
    'no-alcohol-in-pregnancy': 'Kein Alkohol in der Schwangerschaft.',
    'no-alcohol-when-breastfeeding': 'Kein Alkohol in der Stillzeit.',
    'no-alcohol-with-medicines':
      'Bei Medikamenten oder Krankheit vorher in der Arztpraxis oder Apotheke fragen.',
    'no-alcohol-with-dangerous-work': 'Kein Alkohol vor der Arbeit an Maschinen oder in der Höhe.',
    'no-alcohol-when-others-depend-on-you': 'Kein Alkohol, solange jemand auf deine Obhut angewiesen ist.',
    'no-alcohol-before-important-decisions': 'Kein Alkohol vor Entscheidungen, auf die es ankommt.',
    'no-safe-amount-known': 'Es ist keine Menge Alkohol bekannt, die unbedenklich wäre.',
    'law-on-serving': 'Für den Ausschank von Alkohol brauchst du vielleicht eine Genehmigung.',
    'law-on-shipping':
      'Alkohol mit Post oder Kurier zu verschicken ist vielerorts verboten oder geregelt; frag vorher.',
    'follow-published-guide': 'ASTM E1879 ist der veröffentlichte Leitfaden für das Verkosten von Alkohol.',
    'licensed-practice-decides':
      'Örtliche Vorschriften und die Regeln der zugelassenen Gastronomie gehen allem vor, was hier steht.',
  },
};
