// German, not yet reviewed by a native speaker.
import type { CallRefusals } from '../en/call-refusals.ts';

export const callRefusals: CallRefusals = {
  'not-in-call': 'Dieses Gerät ist nicht im Anruf; tritt ihm erst bei.',
  'no-such-peer': 'Jenes Gerät ist nicht mehr im Anruf; du brauchst nichts zu tun.',
  'call-full': 'Im Anruf sind schon acht Geräte, mehr fasst er nicht; nimm den Link zum anderen Anruf.',
  'call-from-home': 'Der Anruf ist für Gäste zu Hause; wenn du zu Hause bist, sag es unter „Mein Platz“.',
};
