import { type Request, Router } from 'express';
import { sheetFor } from '../../core/guess/guess-sheet.ts';
import { glassNumbers } from '../../core/running-order/glass-numbers.ts';
import { toldTruths } from '../../core/session/guesses.ts';
import { numbersServed, oddGlassOf, reachedBy, servedTo, trialGlasses } from '../../core/session/serving.ts';
import type { Finished, Seat, UnderWay } from '../../core/session/state.ts';
import { namedPour } from '../../core/session/views/pour-card.ts';
import type { Pour } from '../../core/tasting.ts';
import type { OddPick } from '../../shared/notes/entry.ts';
import type { Keepsake, KeepsakePour, KeepsakeTrial } from '../../shared/wire/http.ts';
import { roomGuessesOf } from '../live/guess-telling.ts';
import { ownEntry } from '../live/notes.ts';
import type { StoredEntry } from '../store/store.ts';
import { Refused } from './answers.ts';
import { identityOf, tastingIn } from './asking.ts';
import type { HttpParts } from './parts.ts';

/** A guest's own notes with what may be known of the pours, at any time of the evening and after it. */
export function keepsakeRoutes({ store, keyring, conductors }: HttpParts): Router {
  const router = Router();

  /** Whose notes are asked for, by the key of the seat. */
  const own = (request: Request) => {
    const tasting = tastingIn(request);
    const identity = identityOf(request, keyring);
    if (identity.role !== 'seat') throw new Refused('wrong-role');
    if (identity.tasting !== tasting) throw new Refused('wrong-key');
    const conductor = conductors.of(tasting);
    if (conductor === undefined) throw new Refused('no-such-tasting');
    return { tasting, conductor, seat: identity.seat, hash: identity.hash };
  };

  router.get('/keepsake/:tasting', (request, response) => {
    const { tasting, conductor, seat: id, hash } = own(request);
    const { session } = conductor.standing;
    const seat = session.status === 'unopened' ? undefined : session.seats[id];
    if (session.status === 'unopened' || seat === undefined) throw new Refused('no-such-seat');
    if (seat.presence !== 'seated' && seat.presence !== 'left') throw new Refused('not-seated');
    const { plan } = session;
    // A device without the seat's notes takes home what was written on it.
    const notebook = conductor.devices.notebookOf(id, hash);
    const { entries } = notebook === undefined ? { entries: [] } : store.notebooks.read(tasting, notebook);
    response.json({
      title: plan.title,
      place: plan.place,
      hostName: plan.hostName,
      startsAt: plan.startsAt ?? null,
      timeZone: plan.timeZone,
      guest: seat.name,
      drink: plan.drink,
      pours: poursOf(session, seat, entries),
      trials: trialsOf(session, seat, entries),
      room: {
        results: session.results,
        // Whoever may be named tonight need not stand in files for ever.
        guesses: roomGuessesOf({ store, tasting }, session).map((each) => ({
          ...each,
          facts: each.facts.map((fact) => ({ ...fact, nearest: [] })),
        })),
      },
      guess: session.guess && { choices: sheetFor(session.guess, seat.id), currency: plan.currency },
    } satisfies Keepsake);
  });

  // Also for somebody who was shown the door: the words are theirs.
  router.delete('/keepsake/:tasting', async (request, response) => {
    const { conductor, seat, hash } = own(request);
    if (!conductor.devices.opens(seat, hash)) throw new Refused('notes-closed');
    if (!(await conductor.forgetNotes(seat))) throw new Refused('not-stored');
    response.status(204).end();
  });
  return router;
}

/**
 * What stood in front of this seat, in the order in which it did, and whatever else it has notes of; a blind pour keeps
 * its code until it is revealed [Q4].
 */
function poursOf(session: UnderWay | Finished, seat: Seat, entries: readonly StoredEntry[]): KeepsakePour[] {
  const { plan } = session;
  const reached = reachedBy(session, seat.id);
  const served = servedTo(session, seat);
  const numbers = numbersServed(session, seat);
  const truths = toldTruths(session);
  const place = (pour: Pour) =>
    served.includes(pour.id) ? served.indexOf(pour.id) : plan.pours.indexOf(pour);
  const numberOf = (pour: Pour) =>
    numbers[served.indexOf(pour.id)] ?? glassNumbers(plan).get(pour.id) ?? place(pour) + 1;
  return plan.pours
    .filter(({ id }) => reached.includes(id) || entries.some((entry) => entry.pour === id))
    .sort((a, b) => place(a) - place(b))
    .map((pour) => {
      const code = plan.codes[pour.id] ?? null;
      const known = !plan.blind || session.revealed.includes(pour.id);
      return {
        position: numberOf(pour),
        pour: pour.id,
        drink: pour.drink,
        facts: known ? namedPour(pour, code) : null,
        code,
        entries: entries.filter((entry) => entry.pour === pour.id).map(ownEntry),
        truth: truths.find((each) => each.pour === pour.id)?.truth ?? null,
      };
    });
}

/** The odd-one-outs that were served; which glass it was is told once their talk has been opened. */
function trialsOf(
  session: UnderWay | Finished,
  seat: Seat,
  entries: readonly StoredEntry[],
): KeepsakeTrial[] {
  return session.plan.trials
    .filter(({ id }) => session.reached.includes(id))
    .map((trial) => {
      const pick = entries.find(({ pour, field }) => pour === trial.id && field === 'odd-one-out');
      return {
        trial: trial.id,
        glasses: trialGlasses(trial, seat).map((glass) => glass.code),
        picked: (pick?.value ?? null) as OddPick | null,
        odd: session.discussions[trial.id] === undefined ? null : oddGlassOf(trial, seat),
      };
    });
}
