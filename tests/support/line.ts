import { createServer, connect as dial, type Server, type Socket } from 'node:net';

/** A stretch of network between browsers and the server that can be cut and mended, on this machine only. */
export interface Line {
  /** Where browsers reach the server through this line. */
  readonly origin: string;
  /** Where it leads; nowhere until it is set. */
  leadTo(port: number): void;
  /** Everything under way breaks off, and nothing gets through until it is mended. */
  cut(): void;
  mend(): void;
  close(): Promise<void>;
}

export async function layLine(): Promise<Line> {
  const open = new Set<Socket>();
  let target: number | undefined;
  let whole = true;
  const server = createServer((near) => {
    if (!whole || target === undefined) {
      near.destroy();
      return;
    }
    const far = dial(target, '127.0.0.1');
    for (const [from, to] of [
      [near, far],
      [far, near],
    ] as const) {
      open.add(from);
      from.pipe(to);
      from.on('error', () => to.destroy());
      from.on('close', () => {
        open.delete(from);
        to.destroy();
      });
    }
  });
  const breakOff = () => {
    for (const socket of open) socket.destroy();
  };
  return {
    origin: `http://127.0.0.1:${await listening(server)}`,
    leadTo(port) {
      target = port;
    },
    cut() {
      whole = false;
      breakOff();
    },
    mend() {
      whole = true;
    },
    close: () =>
      new Promise((resolve) => {
        breakOff();
        server.close(() => resolve());
      }),
  };
}

function listening(server: Server): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : 0);
    });
  });
}
