import { connect, createServer, type Socket } from 'node:net';

/** A line to a server on this machine that can be cut as networks are. */
export interface LossyLine {
  readonly port: number;
  /** The next answer, and with it its connection, is lost after the server has sent it. */
  loseNextAnswer(): void;
  /** Nothing goes through any more, and nothing is told so, until it is mended. */
  silence(): void;
  mend(): void;
  /** Whoever comes from now on is led to another server, as a virtual address is moved. */
  leadTo(port: number): void;
  close(): Promise<void>;
}

export async function lossyLineTo(first: number): Promise<LossyLine> {
  let leadsTo = first;
  let losing = false;
  let silent = false;
  const open = new Set<Socket>();
  const server = createServer((near) => {
    const far = connect(leadsTo, '127.0.0.1');
    for (const each of [near, far]) {
      open.add(each);
      each.on('error', () => undefined);
      each.once('close', () => {
        open.delete(each);
        if (!silent) for (const other of [near, far]) other.destroy();
      });
    }
    near.on('data', (bytes) => void (silent || far.write(bytes)));
    far.on('data', (bytes) => {
      if (silent) return;
      // "C" is CommandComplete: the statement has been carried out.
      if (losing && bytes.includes('C')) {
        losing = false;
        near.destroy();
      } else near.write(bytes);
    });
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  const cut = (): void => {
    for (const each of open) each.destroy();
  };
  return {
    port: typeof address === 'object' && address !== null ? address.port : 0,
    loseNextAnswer() {
      losing = true;
    },
    silence() {
      silent = true;
    },
    mend() {
      silent = false;
      cut();
    },
    leadTo(port) {
      leadsTo = port;
    },
    async close() {
      cut();
      await new Promise((done) => server.close(done));
    },
  };
}
