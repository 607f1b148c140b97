// German, not yet reviewed by a native speaker.
import type { DeviceCheckWords } from '../en/device-check.ts';

export const deviceCheckWords: DeviceCheckWords = {
  language: 'de',
  title: (tasting) =>
    tasting === '' ? 'Kamera und Ton ausprobieren' : `Kamera und Ton für „${tasting}“ ausprobieren`,
  lead: 'Zu Hause siehst und hörst du den Tisch über dieses Handy. Probier es mit dem Handy aus, das du am Abend nimmst. Es dauert eine halbe Minute.',
  private: 'Hier sieht und hört dich niemand, und nichts wird aufgezeichnet.',
  begin: 'Anfangen',
  again: 'Noch einmal ausprobieren',
  stop: 'Kamera und Mikrofon ausschalten',
  plainHttp:
    'Browser geben Kamera und Mikrofon nur an Adressen, die mit https beginnen, und diese tut das nicht. Bitte deinen Gastgeber um eine solche Adresse, oder nimm den Videoanruf unten. Ton und Verbindung kannst du hier ausprobieren.',
  noDevices: 'Dieser Browser gibt keiner Seite eine Kamera oder ein Mikrofon. Nimm bitte einen anderen.',
  noCall: 'Dieser Browser kann am Anruf nicht teilnehmen. Nimm bitte einen anderen.',
  callLink: 'Videoanruf',
  parts: { camera: 'Kamera', microphone: 'Mikrofon', loudspeaker: 'Lautsprecher', line: 'Verbindung' },
  untried: 'Noch nicht ausprobiert.',
  asking: 'Dein Browser fragt, ob diese Seite sie benutzen darf: Sag bitte ja.',
  camera: {
    works: 'Sie geht. So sehen dich die anderen.',
    refused:
      'Sie wurde nicht erlaubt. Erlaube die Kamera für diese Seite in den Einstellungen des Browsers und probier es noch einmal.',
    none: 'An diesem Gerät ist keine. Die anderen hören dich, das reicht.',
    taken: 'Ein anderes Programm benutzt sie gerade. Schließ es und probier es noch einmal.',
  },
  picture: 'Dein eigenes Bild, wie im Spiegel',
  microphone: {
    works: 'Es geht: Es hat dich gehört.',
    refused:
      'Es wurde nicht erlaubt. Erlaube das Mikrofon für diese Seite in den Einstellungen des Browsers und probier es noch einmal.',
    none: 'An diesem Gerät ist keins. Schließ ein Headset an oder nimm ein anderes Handy.',
    taken:
      'Ein anderes Programm benutzt es gerade, vielleicht ein Telefonat. Schließ es und probier es noch einmal.',
    silent:
      'Es hat nichts gehört. Ist es stumm oder verdeckt? Probier es noch einmal und sprich etwas lauter.',
  },
  speak: 'Sag etwas: Der Balken sollte sich bewegen.',
  level: 'Lautstärke',
  loudspeaker: {
    works: 'Er geht.',
    silent: 'Stell lauter und schalte den Stummmodus aus. Dann spiel den Ton noch einmal ab.',
  },
  play: 'Ton abspielen',
  tone: 'Der Ton, der dich zurückholt, wenn deine Augen zu sind.',
  heard: 'Ich habe ihn gehört',
  unheard: 'Ich habe nichts gehört',
  measuring: 'Wird gemessen\u00a0…',
  line: {
    works: 'Gut genug für Bilder und Stimmen.',
    voice: 'Reicht für Stimmen. Lass die Bilder aus oder geh näher ans WLAN.',
    slow: 'Zu langsam für einen Anruf. Geh näher ans WLAN oder versuch es mit dem Mobilfunk.',
    gone: 'Der Server deines Gastgebers antwortet nicht. Sieh nach dem Netz und probier es noch einmal.',
  },
  figures: (roundTrip, upward) => `${roundTrip}\u00a0ms hin und zurück, ${upward}\u00a0Mbit/s im Upload`,
  reach: {
    network:
      'Der Anruf dieses Abends geht nur im Netz des Gastgebers. Frag deinen Gastgeber, ob es einen anderen Videoanruf gibt.',
    public: 'Der Anruf geht von Gerät zu Gerät. Die meisten Netze zu Hause lassen ihn durch.',
    relay:
      'Der Anruf geht von Gerät zu Gerät, oder über die Weiterleitung deines Gastgebers, wo dein Netz es verlangt.',
  },
  tell: 'Sag es deinem Gastgeber',
  tellHint: 'Dein Gastgeber sieht deinen Namen und wie es mit diesen vieren ging, sonst niemand.',
  name: 'Dein Name',
  nameHint: 'So, wie dein Gastgeber dich kennt.',
  send: 'Meinem Gastgeber sagen',
  sendAgain: 'Noch einmal sagen',
  told: 'Dein Gastgeber weiß Bescheid. Bis zum Abend kannst du es jederzeit noch einmal ausprobieren.',
  takeBack: 'Zurücknehmen',
  takenBack: 'Dein Gastgeber sieht nichts mehr davon.',
  noName: 'Schreib deinen Namen hin, damit dein Gastgeber weiß, wer so weit ist.',
  whenAndWhere: 'Wann und wo',
  finished: 'Diese Verkostung ist vorbei, es gibt nichts mehr auszuprobieren.',
};
