import { Router } from 'express';
import { z } from 'zod';
import { houseId } from '../../core/ids.ts';
import { durationMs, later } from '../../core/units.ts';
import type { HouseOffer, OpenedHouse } from '../../shared/wire/http.ts';
import { addressOf } from '../access/address.ts';
import { hashOf } from '../access/keys.ts';
import { emptyHouseKept, openHouseLimits } from '../access/open-houses.ts';
import { Refused } from './answers.ts';
import { parsed } from './asking.ts';
import type { HttpParts } from './parts.ts';

const opening = z.strictObject({ language: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}$/) });

/** Where whoever runs the server allows it, a stranger makes a house of their own. */
export function openHouseRoutes({ store, chance, clock, openHouses, openings }: HttpParts): Router {
  const router = Router();

  router.get('/houses', (_request, response) => {
    const { evenings, seats } = openHouseLimits;
    response.json((openHouses ? { evenings, seats } : null) satisfies HouseOffer | null);
  });

  router.post('/houses', async (request, response) => {
    if (!openHouses) throw new Refused('wrong-role');
    const { language } = parsed(opening, request.body);
    if (!openings.take(addressOf(request))) throw new Refused('too-many-houses');
    const createdAt = clock.now();
    await store.houses.sweep(later(createdAt, durationMs(-emptyHouseKept)));
    const key = chance.key();
    await store.houses.add({
      house: houseId(chance.id()),
      name: new Date(createdAt).toISOString().slice(0, 10),
      keyHash: hashOf(key),
      createdAt,
      open: true,
      limits: openHouseLimits,
      ways: { language, volumeUnit: null },
    });
    response.status(201).json({ key } satisfies OpenedHouse);
  });

  return router;
}
