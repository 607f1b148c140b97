import { type Plan, planSchema } from '../../core/tasting.ts';
import { demoEvening } from '../../shared/demo/evening.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import type { Device } from '../server/support/device.ts';
import { type Guest, House } from '../server/support/house.ts';

/** As long as a name may be: sixty UTF-16 units, with pictures, without a space to break at, and from right to left. */
export const longNames = [
  'Bartholomea Wilhelmina Featherstonehaugh-Cholmondeleyshir 🍐',
  'Maximilianalexandrapenelopevaleriandorotheakonstantinefridol',
  '🥃'.repeat(30),
  'אברהם בן־שלמה הכהן מהגבעה הירוקה שמעבר לנהר הגדול והרחב מאוד',
] as const;

const pours = Array.from({ length: 16 }, (_, index) => {
  const known = demoEvening.pours?.[index % 6];
  return {
    ...known,
    id: `lamp${index + 1}`,
    drink: 'spirit' as const,
    name:
      index === 0
        ? 'Verantwortungsbewusstseinsschulungsfässer der Nachtwächterinnenvereinigung von Oberquellhaven, zweite Füllung 🌊'
        : `${known?.name ?? 'Lantern'} ${index + 1}`,
  };
});

/** Everything at its largest: sixteen pours with long names, a long title, forty guests. */
const largestPlan: Plan = planSchema.parse({
  ...demoEvening,
  title:
    'Sixteen lanterns and a Donaudampfschifffahrtsgesellschaftskapitänsmütze: from the orchard wall to smoke 🕯️',
  place: 'Oberquellhaven, Nachtwächterinnenvereinigungsgebäude, the long room above the ferry landing',
  hostName: longNames[0],
  guests: 40,
  remoteGuests: 8,
  practice: false,
  blind: false,
  codes: {},
  flightSizes: [16],
  pours,
});

export interface FullHouse {
  readonly plan: Plan;
  readonly house: House;
  readonly made: CreatedTasting;
  readonly host: Device;
  readonly guests: readonly Guest[];
}

/** Forty guests at the table and at home, among them the longest names there can be. */
export async function fillHouse(seats = 39): Promise<FullHouse> {
  const house = await House.open();
  const made = await house.plan(largestPlan);
  const host = await house.host(made);
  await host.host({ type: 'OpenDoors' });
  const guests: Guest[] = [];
  for (let seat = 0; seat < seats; seat += 1) {
    const guest = await house.guest(made, longNames[seat] ?? `Guest number ${seat + 1}`);
    if (seat % 5 === 4) await guest.guest({ type: 'ChangeSeat', remote: true });
    guests.push(guest);
  }
  return { plan: largestPlan, house, made, host, guests };
}
