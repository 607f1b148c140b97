import { createHash, createHmac } from 'node:crypto';
import { durationMs, type EpochMs, later } from '../../core/units.ts';
import type { CallServer } from '../../shared/wire/call.ts';
import type { CallReach } from '../../shared/wire/call-servers.ts';

/** Servers that devices of a call ask for their own address (STUN, RFC 8489), and that pass media on (TURN, RFC 8656). */
export interface CallSettings {
  /** URIs of RFC 7064, such as `stun:call.example:3478`. */
  readonly stun: readonly string[];
  /** URIs of RFC 7065, such as `turn:call.example:3478?transport=udp`. */
  readonly turn: readonly string[];
  /** Shared with the relay; where there is no relay, undefined. */
  readonly secret: string | undefined;
}

export const noCallServers: CallSettings = { stun: [], turn: [], secret: undefined };

/** One evening with its lobby and its late goodbye: who has learnt a word of passage cannot use the relay tomorrow. */
const goodFor = durationMs(12 * 3600 * 1000);

/** Shorter ones are guessed by whoever holds one word of passage and tries at home. */
const shortestSecret = 16;

/**
 * Name and password for a relay that shares a secret: the name is the Unix time in seconds at which it ends, a colon and
 * an id; the password is Base64 of HMAC-SHA-1 of the name. As coturn's `use-auth-secret` has it, after "A REST API For Access
 * To TURN Services" (draft-uberti-behave-turn-rest-00, section 2.2).
 */
export function turnCredential(
  secret: string,
  id: string,
  expiresAt: EpochMs,
): { readonly username: string; readonly credential: string } {
  const username = `${Math.floor(expiresAt / 1000)}:${id}`;
  return { username, credential: createHmac('sha1', secret).update(username).digest('base64') };
}

/** How far a call reaches: across one network, to devices that learn their own address, or through a relay from anywhere. */
export const callReach = ({ stun, turn }: CallSettings): CallReach =>
  turn.length > 0 ? 'relay' : stun.length > 0 ? 'public' : 'network';

/**
 * What one device gives to its browser. `keyHash` tells devices apart, so that the relay can hold each to its share; what
 * the relay sees of it leads back to no key and no seat.
 */
export function callServersFor(settings: CallSettings, keyHash: string, now: EpochMs): CallServer[] {
  const { stun, turn, secret } = settings;
  const id = createHash('sha256').update(`call ${keyHash}`).digest('hex').slice(0, 16);
  return [
    ...(stun.length === 0 ? [] : [{ urls: stun }]),
    ...(turn.length === 0 || secret === undefined
      ? []
      : [{ urls: turn, ...turnCredential(secret, id, later(now, goodFor)) }]),
  ];
}

const host = '(?:\\[[0-9A-Fa-f:.]+\\]|[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?)';
const stunUri = new RegExp(`^stuns?:${host}(?::(\\d{1,5}))?$`);
const turnUri = new RegExp(`^turns?:${host}(?::(\\d{1,5}))?(?:\\?transport=(?:udp|tcp))?$`);

/** Throws an error with a sentence that says which setting to mend and how. */
export function callSettingsFrom(environment: NodeJS.ProcessEnv): CallSettings {
  const { QUIETPOUR_STUN = '', QUIETPOUR_TURN = '', QUIETPOUR_TURN_SECRET = '' } = environment;
  const stun = listed(QUIETPOUR_STUN, stunUri);
  if (stun === undefined)
    throw new Error('QUIETPOUR_STUN must list servers such as stun:call.example:3478, parted by commas.');
  const turn = listed(QUIETPOUR_TURN, turnUri);
  if (turn === undefined)
    throw new Error(
      'QUIETPOUR_TURN must list relays such as turn:call.example:3478?transport=udp, parted by commas.',
    );
  if (turn.length > 0 && QUIETPOUR_TURN_SECRET === '')
    throw new Error(
      'QUIETPOUR_TURN needs QUIETPOUR_TURN_SECRET: the same words as static-auth-secret of the relay.',
    );
  if (turn.length === 0 && QUIETPOUR_TURN_SECRET !== '')
    throw new Error(
      'QUIETPOUR_TURN_SECRET is for a relay: name the relay in QUIETPOUR_TURN, or leave the secret out.',
    );
  if (QUIETPOUR_TURN_SECRET !== '' && QUIETPOUR_TURN_SECRET.length < shortestSecret)
    throw new Error(
      `QUIETPOUR_TURN_SECRET must have at least ${shortestSecret} characters: "openssl rand -hex 24" makes one.`,
    );
  return { stun, turn, secret: QUIETPOUR_TURN_SECRET || undefined };
}

/** Undefined where one of them is no such address. */
function listed(text: string, uri: RegExp): string[] | undefined {
  const all = text.split(/[\s,]+/).filter((each) => each !== '');
  return all.every((each) => {
    const [whole, port] = uri.exec(each) ?? [];
    return whole !== undefined && Number(port ?? 1) >= 1 && Number(port ?? 1) <= 65_535;
  })
    ? all
    : undefined;
}
