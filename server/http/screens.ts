import { Router } from 'express';
import { z } from 'zod';
import { durationMs, later } from '../../core/units.ts';
import type { ScreenAnswer } from '../../shared/wire/http.ts';
import { addressOf } from '../access/address.ts';
import { Allowances } from '../access/allowances.ts';
import { hashOf } from '../access/keys.ts';
import { Refused } from './answers.ts';
import { hostedTasting, parsed } from './asking.ts';
import type { HttpParts } from './parts.ts';
import type { RowFor } from './row-for-code.ts';

const askSchema = z.strictObject({
  code: z.string().max(40),
  /** Made on the screen, so that asking again is harmless. */
  key: z.string().regex(/^[A-Za-z0-9_-]{22,64}$/),
});
const answerSchema = z.strictObject({ admit: z.boolean() });

/** Long enough for one evening and its late goodbye. */
const goodFor = durationMs(24 * 3600 * 1000);

/** New screens from one address, so that nobody keeps all numbers for themselves by asking as one after the other. */
const screensFrom = { perSecond: 0.1, burst: 10 };

/** Screens that everybody in the room can see: they show nothing private, and only once the host lets them in. */
export function screenRoutes(
  { store, keyring, conductors, chance, clock, guestOrigins }: HttpParts,
  rowFor: RowFor,
): Router {
  const router = Router();
  const newScreens = new Allowances(clock, screensFrom);

  router.post('/screens', async (request, response) => {
    const { code: typed, key } = parsed(askSchema, request.body);
    const { tasting, code } = await rowFor(typed, request);
    const known = keyring.identify(key);
    if (known !== undefined) {
      if (known.role !== 'screen' || known.tasting !== tasting) throw new Refused('wrong-key');
      const linkCode = code + keyring.passOf(tasting);
      const answer: ScreenAnswer = { tasting, admitted: true, code, linkCode, guestOrigins: guestOrigins() };
      response.json(answer);
      return;
    }
    const mayAsk = () => newScreens.take(`${tasting} ${addressOf(request)}`);
    const asking = conductors.of(tasting)?.screens.ask(hashOf(key), chance, mayAsk);
    if (asking === undefined) throw new Refused('table-full');
    if (asking === 'refused') throw new Refused('wrong-key');
    response.status(202).json({ tasting, admitted: false, number: asking.number } satisfies ScreenAnswer);
  });

  router.post('/tastings/:tasting/screens/:screen', async (request, response) => {
    const tasting = hostedTasting(request, keyring);
    const { admit } = parsed(answerSchema, request.body);
    const hash = conductors.of(tasting)?.screens.answer(String(request.params.screen), admit);
    if (hash === undefined) throw new Refused('nothing-to-do');
    const expiresAt = later(clock.now(), goodFor);
    if (admit) await store.keys.add({ role: 'screen', hash, tasting, expiresAt });
    response.status(204).end();
  });

  /** Every screen of the tasting goes dark. */
  router.delete('/tastings/:tasting/screens', async (request, response) => {
    const tasting = hostedTasting(request, keyring);
    await store.keys.revoke(tasting, { role: 'screen' });
    conductors.of(tasting)?.publisher.dismissScreens();
    response.status(204).end();
  });

  return router;
}
