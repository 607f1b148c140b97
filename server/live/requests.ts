import { z } from 'zod';
import { callCommandSchema } from '../../shared/wire/call.ts';
import { guestEnvelopeSchema, hostEnvelopeSchema } from '../../shared/wire/commands.ts';
import { deviceAskSchema } from '../../shared/wire/devices.ts';
import { helperEnvelopeSchema } from '../../shared/wire/helper.ts';
import { consentGivingSchema, noteSaveSchema, noteShareSchema } from '../../shared/wire/notebook.ts';
import { pouringEnvelopeSchema } from '../../shared/wire/pouring.ts';
import type {
  CallAnswer,
  ClientToServer,
  CommandAnswer,
  DeviceAck,
  NoteAnswer,
  ProbeReply,
  Refusal,
  RefusalCode,
} from '../../shared/wire/protocol.ts';
import { refusal } from '../refusal.ts';
import type { Conductor } from './conductor.ts';
import type { LiveSocket } from './rooms.ts';

export type Answer = CommandAnswer | NoteAnswer | DeviceAck | CallAnswer | ProbeReply | Refusal;

interface Request {
  readonly socket: LiveSocket;
  readonly conductor: Conductor;
  readonly payload: unknown;
}

const measured = z.number().min(0).max(60_000).nullable();
const probeSchema = z.strictObject({ roundTrip: measured, reach: measured.optional() }).nullable();

/** What each event of a device comes to. Everything that is not in here is unknown. */
const answers: { readonly [Event in keyof ClientToServer]: (request: Request) => Answer | Promise<Answer> } =
  {
    'host:ask': ({ socket, conductor, payload }) => {
      if (socket.data.bearer.role !== 'host') return refusal('wrong-role');
      const asked = hostEnvelopeSchema.safeParse(payload);
      return asked.success ? conductor.askAsHost(asked.data.id, asked.data.ask) : notUnderstood(asked.error);
    },
    'helper:ask': ({ socket, conductor, payload }) => {
      const { bearer, hash } = socket.data;
      if (bearer.role !== 'helper') return refusal('wrong-role');
      const asked = helperEnvelopeSchema.safeParse(payload);
      return asked.success
        ? conductor.askAsHelper(hash, asked.data.id, asked.data.ask)
        : notUnderstood(asked.error);
    },
    'pouring:ask': ({ socket, conductor, payload }) => {
      const { role } = socket.data.bearer;
      if (role !== 'host' && role !== 'helper') return refusal('wrong-role');
      const asked = pouringEnvelopeSchema.safeParse(payload);
      return asked.success
        ? conductor.sendPouringCommand(asked.data.id, asked.data.ask)
        : notUnderstood(asked.error);
    },
    'guest:ask': ({ socket, conductor, payload }) => {
      const { bearer } = socket.data;
      if (bearer.role !== 'guest') return refusal('wrong-role');
      const asked = guestEnvelopeSchema.safeParse(payload);
      return asked.success
        ? conductor.askAsGuest(bearer.seat, asked.data.id, asked.data.ask)
        : notUnderstood(asked.error);
    },
    'note:save': ({ socket, conductor, payload }) => {
      const { bearer } = socket.data;
      if (bearer.role !== 'guest') return refusal('wrong-role');
      const asked = noteSaveSchema.safeParse(payload);
      return asked.success ? conductor.saveNote(bearer.seat, asked.data, socket) : notUnderstood(asked.error);
    },
    'note:consent': ({ socket, conductor, payload }) => {
      const { bearer } = socket.data;
      if (bearer.role !== 'guest') return refusal('wrong-role');
      const asked = consentGivingSchema.safeParse(payload);
      return asked.success
        ? conductor.giveConsents(bearer.seat, asked.data, socket)
        : notUnderstood(asked.error);
    },
    'note:share': ({ socket, conductor, payload }) => {
      const { bearer } = socket.data;
      if (bearer.role !== 'guest') return refusal('wrong-role');
      const asked = noteShareSchema.safeParse(payload);
      return asked.success
        ? conductor.giveConsents(bearer.seat, asked.data, socket)
        : notUnderstood(asked.error);
    },
    'device:ask': ({ socket, conductor, payload }) => {
      const { bearer, hash } = socket.data;
      if (bearer.role !== 'guest') return refusal('wrong-role');
      const asked = deviceAskSchema.safeParse(payload);
      return asked.success
        ? conductor.devices.ask(bearer.seat, hash, asked.data)
        : notUnderstood(asked.error);
    },
    'call:ask': ({ socket, conductor, payload }) => {
      const asked = callCommandSchema.safeParse(payload);
      return asked.success ? conductor.publisher.call.take(socket, asked.data) : notUnderstood(asked.error);
    },
    probe: ({ socket, conductor, payload }) => {
      const { clock } = conductor;
      const received = clock.now();
      const asked = probeSchema.safeParse(payload);
      if (!asked.success) return notUnderstood(asked.error);
      if (asked.data === null) return received;
      conductor.presence.measured(socket.id, asked.data);
      return { received, sent: clock.now() };
    },
  };

export const isKnown = (event: unknown): event is keyof ClientToServer =>
  typeof event === 'string' && Object.hasOwn(answers, event);

export const answerTo = (event: keyof ClientToServer, request: Request): Answer | Promise<Answer> =>
  answers[event](request);

/** Short, and without a word of what was sent. */
function notUnderstood(error: z.ZodError): Refusal {
  const code: RefusalCode = error.issues.some((issue) => issue.code === 'too_big')
    ? 'too-large'
    : 'malformed';
  return refusal(code);
}
