import type { Nasty } from './nasty.ts';

/** A message as a device of ours might send it, to be spoiled. */
export interface Message {
  readonly event: string;
  readonly payload: unknown;
}

let ids = 0;
const id = (): string => {
  ids += 1;
  return `fuzz-${String(ids).padStart(9, '0')}`;
};

const cues = ['gathering', 'one/first/look', 'two/first/nose', 'welcome'] as const;

const guestAsks = (seats: readonly string[]): readonly [object, ...object[]] => [
  { type: 'ReadCautions' },
  { type: 'AcceptGroundRules' },
  { type: 'GiveSignal', signal: 'ready', cue: cues[1] },
  { type: 'ChangeSeat', name: 'Mallory', leftHanded: true, remote: false },
  { type: 'CatchUp', pour: 'one' },
  { type: 'CheckKit', item: 'water', ready: true },
  { type: 'RemoveSeat', seat: seats[0] },
];

const hostAsks = (seats: readonly string[]): readonly [object, ...object[]] => [
  { type: 'OpenDoors' },
  { type: 'Advance', from: cues[1] },
  { type: 'GoBack', from: cues[1] },
  { type: 'JumpTo', cue: cues[2] },
  { type: 'Hold' },
  { type: 'Resume' },
  { type: 'GiveTime', seconds: 60 },
  { type: 'CallBreak', seconds: 300 },
  { type: 'Remind', kind: 'water' },
  { type: 'ClearReminder' },
  { type: 'OpenDiscussion', pours: ['one'] },
  { type: 'CloseDiscussion', pours: ['one', 'two'] },
  { type: 'Reveal', pours: ['one'] },
  { type: 'Reveal', pours: ['one'], from: cues[1] },
  { type: 'SteerScreen', shows: { is: 'page', page: 'card/one' } },
  { type: 'DropPour', pour: 'two' },
  { type: 'RestorePour', pour: 'two' },
  { type: 'ChoosePacing', pacing: { by: 'host' } },
  { type: 'EditCue', cue: cues[1], seconds: 60, say: 'Look at it.' },
  { type: 'FitTo', endsAt: 1_900_000_000_000 },
  { type: 'UndoFit' },
  { type: 'WaitForRemote', wait: true },
  { type: 'SetDoors', doors: 'ask' },
  { type: 'AdmitSeat', seat: seats[0] },
  { type: 'RemoveSeat', seat: seats[1] },
  { type: 'RestoreSeat', seat: seats[1] },
  { type: 'AnswerSeat', seat: seats[0] },
  { type: 'StopPouring', seat: seats[0] },
  { type: 'ResumePouring', seat: seats[0] },
];

const pouringAsks: readonly [object, ...object[]] = [
  { type: 'TickGlasses', places: [1, 2], pours: ['one'], done: 1 },
  { type: 'UndoTick', tick: 'fuzz-000000001' },
];

const shown = { microphone: true, camera: false, voiceOnly: false };
const callCommands: readonly [object, ...object[]] = [
  { type: 'Watch' },
  { type: 'Join', peer: 'peer-of-mallory', as: 'self', shown },
  { type: 'Join', peer: 'peer-of-mallory', as: 'room', shown },
  { type: 'Show', shown },
  { type: 'Signal', to: 'peer-of-mallory', signal: { is: 'offer', sdp: 'v=0\r\n' } },
  { type: 'Signal', to: 'peer-of-noor', signal: { is: 'hello' } },
  {
    type: 'Signal',
    to: 'peer-of-noor',
    signal: {
      is: 'candidates',
      candidates: [{ candidate: 'candidate:1 1 udp 1 192.0.2.1 9 typ host', sdpMid: '0', sdpMLineIndex: 0 }],
    },
  },
  { type: 'Leave' },
];

const report = {
  id: 'kit-of-mallory-000001',
  told: { name: 'M', tried: { camera: 'works', line: 'voice' } },
};

export function message(nasty: Nasty, seats: readonly string[]): Message {
  const good = nasty.pick<() => Message>([
    () => ({ event: 'guest:ask', payload: { id: id(), ask: nasty.pick(guestAsks(seats)) } }),
    () => ({ event: 'host:ask', payload: { id: id(), ask: nasty.pick(hostAsks(seats)) } }),
    () => ({ event: 'pouring:ask', payload: { id: id(), ask: nasty.pick(pouringAsks) } }),
    () => ({
      event: 'note:save',
      payload: { id: id(), pour: 'one', field: 'nose', value: 'pears', base: 0 },
    }),
    () => ({ event: 'note:share', payload: { id: id(), pour: 'one', shared: true } }),
    () => ({ event: 'call:ask', payload: nasty.pick(callCommands) }),
    () => ({ event: 'probe', payload: { roundTrip: 12 } }),
  ])();
  const event = nasty.chance(0.04)
    ? nasty.pick(['__proto__', 'constructor', 'stage', 'dismissal', 'toString', `${nasty.text()}`])
    : good.event;
  return { event, payload: nasty.chance(0.1) ? nasty.value() : nasty.spoiled(good.payload) };
}

export interface Request {
  readonly method: string;
  readonly path: string;
  readonly headers: Record<string, string>;
  readonly body?: string;
}

export interface Targets {
  /** Tastings and codes that must not be touched. */
  readonly tastings: readonly [string, ...string[]];
  /** Keys that open something, but nothing of what is aimed at. */
  readonly keys: readonly [string, ...string[]];
  readonly plan: object;
}

export function request(nasty: Nasty, { tastings, keys, plan }: Targets): Request {
  const tasting = nasty.chance(0.8) ? nasty.pick(tastings) : encodeURIComponent(wellFormed(nasty.text()));
  const key = nasty.chance(0.7) ? nasty.pick(keys) : headerSafe(nasty.text());
  const [method, path, good] = nasty.pick<readonly [string, string, unknown]>([
    ['POST', '/api/tastings', { plan }],
    ['GET', '/api/tastings', undefined],
    ['GET', `/api/tastings/${tasting}/plan`, undefined],
    ['PUT', `/api/tastings/${tasting}/plan`, { plan, base: 1 }],
    ['DELETE', `/api/tastings/${tasting}`, undefined],
    ['POST', `/api/tastings/${tasting}/keys`, { for: 'seat', seat: 'x' }],
    ['DELETE', `/api/tastings/${tasting}/keys`, { for: 'host' }],
    [
      'POST',
      '/api/seats',
      { id: id(), code: 'WRONG1', key: 'k'.repeat(30), name: 'M', leftHanded: false, remote: false },
    ],
    ['GET', `/api/invitations/${encodeURIComponent(wellFormed(nasty.text()))}`, undefined],
    ['GET', `/api/keepsake/${tasting}`, undefined],
    [
      'GET',
      `/${nasty.pick(['..%2f', '..\\', '%2e%2e/', 'assets/..%2f', 'host/%2e%2e%2f', './'])}house.key`,
      undefined,
    ],
    ['GET', `/host/${encodeURIComponent(wellFormed(nasty.text()))}`, undefined],
    ['GET', '/metrics', undefined],
    [
      'GET',
      `/api/tastings/${tasting}/${nasty.pick(['recap', 'recap.json', 'recap.csv', 'crowd'])}`,
      undefined,
    ],
    ['POST', `/api/tastings/${tasting}/photos`, 'no picture'],
    ['DELETE', `/api/tastings/${tasting}/photos/${'p'.repeat(32)}`, undefined],
    ['GET', `/photos/${encodeURIComponent(wellFormed(nasty.text()))}`, undefined],
    ['POST', '/api/screens', { code: 'WRONG1', key: 'k'.repeat(30) }],
    ['POST', `/api/tastings/${tasting}/screens/1`, { admit: true }],
    ['DELETE', `/api/tastings/${tasting}/screens`, undefined],
    ['PUT', '/api/invitations/WRONG1/survey', { answers: [] }],
    ['PUT', '/api/invitations/WRONG1/kit', report],
    ['PUT', `/api/invitations/${encodeURIComponent(wellFormed(nasty.text()))}/kit`, report],
    ['GET', `/api/tastings/${tasting}/${nasty.pick(['kits', 'call-servers'])}`, undefined],
    [nasty.pick(['POST', 'POST', 'GET', 'DELETE']), '/api/line', 'a line'],
    ['GET', `/kit/${encodeURIComponent(wellFormed(nasty.text()))}`, undefined],
    // Of the joined tasting the attacker may delete what is their own.
    ['DELETE', `/api/keepsake/${tastings[0]}`, undefined],
    [nasty.pick(['PATCH', 'OPTIONS', 'HEAD', 'TRACE', 'PROPFIND']), `/api/tastings/${tasting}`, { plan }],
  ]);
  const headers: Record<string, string> = {
    // Each from an address of its own, so that the brake on guessing is not all that answers.
    'x-forwarded-for': `198.51.${nasty.below(256)}.${nasty.below(256)}`,
    authorization: nasty.pick([`Bearer ${key}`, `Bearer  ${key}`, key, 'Basic Og==', `bearer ${key},${key}`]),
    ...(nasty.chance(0.2)
      ? { origin: nasty.pick(['null', 'https://elsewhere.example', 'file://', 'x']) }
      : {}),
    ...(nasty.chance(0.1) ? { cookie: headerSafe(nasty.text()) } : {}),
  };
  if (good === undefined || method === 'HEAD' || method === 'TRACE') return { method, path, headers };
  headers['content-type'] = nasty.pick([
    'application/json',
    'application/json',
    'application/json',
    'application/json; charset=utf-7',
    'text/plain',
    'application/x-www-form-urlencoded',
    'multipart/form-data; boundary=x',
  ]);
  if (nasty.chance(0.03)) headers['content-encoding'] = nasty.pick(['gzip', 'br', 'x']);
  const body = nasty.chance(0.01) ? `{"plan":"${'x'.repeat(2 ** 20)}"}` : nasty.json(nasty.spoiled(good));
  return { method, path, headers, body };
}

const wellFormed = (text: string): string => Buffer.from(text.slice(0, 300)).toString();
const headerSafe = (text: string): string =>
  text
    .replace(/[^\x20-\x7e]/g, '?')
    .trim()
    .slice(0, 300);
