// German, not yet reviewed by a native speaker.
import type { DemoWords } from '../en/demo.ts';

/** What is written in the demo evening: an invented place, and producers that do not exist. */
export const demoWords: DemoWords = {
  title: 'Sechs Laternen: ein Abend vom Obstgarten bis zum Rauch',
  hostName: 'Maren',
  place: 'Das alte Fährhaus, Quellhaven',
  welcome:
    'Kommt mit Hunger auf Gerüche, nicht auf Essen. Esst, bevor ihr kommt, und lasst das Auto zu Hause.',
  pours: {
    orchardWall: {
      name: 'Obstgartenmauer',
      producer: 'Brennerei Tarnwetter',
      region: 'Fennmarker Hügel',
      style: 'Single Malt, ohne Torf',
      cask: 'Eiche, erstbefüllt (First Fill), über Ahorn getoastet',
      story: 'Die Brennblase steht an einem Birnengarten, und in einem warmen Herbst bleibt die Tür offen.',
    },
    slowCandle: {
      name: 'Langsame Kerze',
      producer: 'Varrowmeer & Töchter',
      region: 'Fennmarker Hügel',
      style: 'Single Malt, ohne Torf',
      cask: 'Eiche, wiederbefüllt (Refill)',
      story:
        'Drei Schwestern wechselten sich am Feuer ab und wurden sich nie einig, wann der Mittellauf endet.',
    },
    bellfoundersRest: {
      name: 'Glockengießers Rast',
      producer: 'Brennerei Ostrevan',
      region: 'Unteres Quelltal',
      style: 'Getreide und Malz',
      cask: 'Süßweinfass (Butt)',
    },
    saltOnTheSill: {
      name: 'Salz auf dem Sims',
      producer: 'Werkhof Hollinschär',
      region: 'Quellküste',
      style: 'Single Malt, von der Küste',
      cask: 'Eiche, wiederbefüllt (Refill), Lagerhaus am Meer',
    },
    secondLighthouse: {
      name: 'Zweiter Leuchtturm',
      producer: 'Werkhof Hollinschär',
      region: 'Quellküste',
      style: 'Single Malt, getorft',
      cask: 'Eiche, erstbefüllt (First Fill)',
    },
    charcoalBurnersCoat: {
      name: 'Köhlers Mantel',
      producer: 'Brennerei Neunglut',
      region: 'Moosinseln',
      style: 'Single Malt, stark getorft',
      cask: 'kleine ausgebrannte Eiche',
      story: 'In Fassstärke und jung abgefüllt, weil die Gründerin nicht warten konnte.',
    },
  },
};
