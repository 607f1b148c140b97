import { createSocket, type RemoteInfo, type Socket } from 'node:dgram';

/** A line of datagrams to a port of this machine that loses some and holds up all, as a poor network does. */
export interface PoorLine {
  readonly port: number;
  /** Of all datagrams that came, how many went on. */
  readonly passed: { all: number; on: number };
  /** @param loses from 0 to 1, of what goes either way; @param ms by which each is late */
  become(loses: number, ms: number): void;
  close(): void;
}

/** @param chance from 0 to 1, one for each datagram */
export async function poorLineTo(port: number, chance: () => number): Promise<PoorLine> {
  const local = '127.0.0.1';
  const near = createSocket('udp4');
  /** For each sender a socket of its own, by which the other end tells them apart. */
  const far = new Map<string, Socket>();
  const passed = { all: 0, on: 0 };
  let [share, late, closed] = [0, 0, false];
  const carry = (send: () => void): void => {
    passed.all += 1;
    if (chance() < share) return;
    passed.on += 1;
    setTimeout(() => {
      if (!closed) send();
    }, late);
  };
  // A browser speaks from the addresses of this machine's networks, and not from that of the loopback.
  const opened = ({ address, port: from }: RemoteInfo): Socket => {
    const sender = `${address} ${from}`;
    const known = far.get(sender);
    if (known !== undefined) return known;
    const socket = createSocket('udp4').on('message', (bytes) =>
      carry(() => near.send(bytes, from, address)),
    );
    far.set(sender, socket);
    return socket;
  };
  near.on('message', (bytes, sender) => {
    const socket = opened(sender);
    carry(() => socket.send(bytes, port, local));
  });
  await new Promise<void>((done) => near.bind(0, local, done));
  return {
    port: near.address().port,
    passed,
    become(loses, ms) {
      [share, late] = [loses, ms];
    },
    close() {
      closed = true;
      for (const socket of [near, ...far.values()]) socket.close();
    },
  };
}
