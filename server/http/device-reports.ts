import { Router } from 'express';
import { z } from 'zod';
import type { TastingId } from '../../core/ids.ts';
import { nameSchema } from '../../core/session/sent-command.ts';
import type { DeviceReport, DeviceReports } from '../../shared/wire/device-check.ts';
import { addressOf } from '../access/address.ts';
import { Allowances } from '../access/allowances.ts';
import { callReach } from '../access/call-servers.ts';
import type { Store } from '../store/store.ts';
import { deviceResultsSchema, storedDeviceReportsSchema } from '../store/stored-device-reports.ts';
import { Refused } from './answers.ts';
import { hostedTasting, parsed } from './asking.ts';
import type { HttpParts } from './parts.ts';
import type { RowFor } from './row-for-code.ts';

const reportSchema: z.ZodType<DeviceReport> = z.strictObject({
  id: z.string().regex(/^[A-Za-z0-9_-]{20,40}$/),
  told: z.strictObject({ name: nameSchema, tried: deviceResultsSchema }).nullable(),
});

/** More than a mesh can seat many times over; beyond them the oldest gives way. */
const mostReports = 60;
/** Of one household, whose members try again and again. */
const reportsFrom = { perSecond: 1 / 60, burst: 20 };
/** Bytes that try a line upwards, in one request and from one address. */
const longestTry = 256 * 1024;
const triesFrom = { perSecond: 0.2, burst: 24 };

/**
 * Before the evening a guest at home tries camera, microphone, loudspeaker and line, and tells the host how they did. It goes
 * to the host alone; no other guest, helper or screen learns who tried what.
 */
export function deviceReportRoutes(
  { store, keyring, clock, callServers }: HttpParts,
  rowFor: RowFor,
): Router {
  const reporting = new Allowances(clock, reportsFrom);
  const trying = new Allowances(clock, triesFrom);
  const router = Router();

  router.put('/invitations/:code/kit', async (request, response) => {
    const report = parsed(reportSchema, request.body);
    const { tasting } = await rowFor(String(request.params.code), request);
    if (!reporting.take(`${tasting} ${addressOf(request)}`)) throw new Refused('too-fast');
    await change(store, tasting, (reports) => [
      ...reports.filter(({ id }) => id !== report.id),
      ...(report.told === null ? [] : [{ id: report.id, ...report.told, at: clock.now() }]),
    ]);
    response.status(204).end();
  });

  router.get('/tastings/:tasting/kits', (request, response) => {
    const tasting = hostedTasting(request, keyring);
    const kits = read(store, tasting).reports.map(({ name, tried, at }) => ({ name, tried, at }));
    response.json({ kits: kits.reverse(), reach: callReach(callServers) } satisfies DeviceReports);
  });

  /** Counts to nobody: what is sent is let fall as it comes, and the device takes the time. */
  router.post('/line', async (request, response) => {
    if (!trying.take(addressOf(request))) throw new Refused('too-fast');
    let bytes = 0;
    for await (const chunk of request) {
      bytes += (chunk as Buffer).length;
      if (bytes > longestTry) throw new Refused('too-large');
    }
    response.status(204).end();
  });
  return router;
}

type Reports = z.infer<typeof storedDeviceReportsSchema>;

/** Where it cannot be read it counts as empty: devices are tried again in half a minute. */
function read(store: Store, tasting: TastingId): { readonly reports: Reports; readonly revision: number } {
  const stored = store.documents.read(tasting, 'kits');
  return {
    reports: storedDeviceReportsSchema.safeParse(stored?.body).data ?? [],
    revision: stored?.revision ?? 0,
  };
}

/** Two who report at once do not lose each other's word. */
async function change(store: Store, tasting: TastingId, next: (reports: Reports) => Reports): Promise<void> {
  for (let tries = 0; tries < 10; tries += 1) {
    const { reports, revision } = read(store, tasting);
    const saved = await store.documents.save(tasting, 'kits', next(reports).slice(-mostReports), revision);
    if (saved !== undefined) return;
  }
  throw new Refused('not-stored');
}
