/** What carries packets to the server and back: a WebSocket, or where none gets through, requests that wait. */
export interface Carrier {
  send(packet: string): void;
  close(): void;
}

export interface CarrierEvents {
  /** One packet of the Engine.IO protocol, version 4: a digit for its kind, and text. */
  readonly onPacket: (packet: string) => void;
  /** It is over; nothing comes after. */
  readonly onEnd: (why: 'transport close' | 'transport error') => void;
}

/** @param address of the endpoint with its query, but for what tells one carrier from another */
export type OpenCarrier = (address: URL, events: CarrierEvents) => Carrier;

export const overWebSocket: OpenCarrier = (address, { onPacket, onEnd }) => {
  const url = new URL(address);
  url.protocol = url.protocol.replace('http', 'ws');
  url.searchParams.set('transport', 'websocket');
  const socket = new WebSocket(url);
  socket.onmessage = ({ data }) => onPacket(String(data));
  socket.onerror = () => onEnd('transport error');
  socket.onclose = () => onEnd('transport close');
  return {
    send: (packet) => socket.send(packet),
    close() {
      socket.onerror = null;
      socket.close();
    },
  };
};

/** Between packets that come together. */
const separator = '\x1e';
const closing = '1';

/**
 * One request always waits for what the server has to say; what is said to it goes out one after another, so that no
 * request is larger than the largest packet.
 */
export const overRequests: OpenCarrier = (address, { onPacket, onEnd }) => {
  const url = new URL(address);
  url.searchParams.set('transport', 'polling');
  const over = new AbortController();
  let last: Promise<unknown> = Promise.resolve();

  const ask = async (init: RequestInit): Promise<string> => {
    const answer = await fetch(url, { ...init, cache: 'no-store' });
    if (!answer.ok) throw new Error(`The server answered ${answer.status}.`);
    return answer.text();
  };
  const fail = (): void => {
    if (!over.signal.aborted) onEnd('transport error');
  };
  async function wait(): Promise<void> {
    while (!over.signal.aborted) {
      for (const packet of (await ask({ signal: over.signal })).split(separator)) {
        if (packet === closing) return onEnd('transport close');
        // The handshake names the session that all further requests belong to.
        if (packet.startsWith('0')) url.searchParams.set('sid', JSON.parse(packet.slice(1)).sid);
        onPacket(packet);
      }
    }
  }
  wait().catch(fail);
  const send = (packet: string): void => {
    last = last.then(() => ask({ method: 'POST', body: packet, keepalive: packet === closing })).catch(fail);
  };
  return {
    send,
    close() {
      if (url.searchParams.has('sid')) send(closing);
      over.abort();
    },
  };
};
