import { once } from 'node:events';
import { createServer } from 'node:http';
import { connect } from 'node:net';
import { Server } from 'socket.io';
import { describe, expect, it } from 'vitest';
import { steadyClock } from '../../server/clock.ts';
import { createLiveServer } from '../../server/live/gateway.ts';
import { type Line, LineGuard } from '../../server/live/line-guard.ts';
import { spoil } from '../attack/spoil/attack.ts';
import { RawDevice } from '../attack/spoil/raw-device.ts';

describe('bad guests of one evening', () => {
  it('hardly slow the tap of another, and shut out no code', async () => {
    const findings = await spoil({ lasts: 1500, flood: 50, guessers: 40, kinds: ['flood', 'guessers'] });
    expect(findings.flatMap(({ name, faults }) => faults.map((fault) => `${name}: ${fault}`))).toEqual([]);
    // The long run asks for a tenth; fifty sockets that were let flood made it hundreds of times slower.
    for (const { name, ratio } of findings) expect(ratio, name).toBeLessThan(10);
  }, 400_000);
});

describe('who knocks too often', () => {
  it('is refused only after a while, and may hang up meanwhile', async () => {
    const http = createServer();
    createLiveServer([], { mayKnock: () => false, clock: steadyClock() }).attach(http);
    await new Promise<void>((listening) => http.listen(0, '127.0.0.1', listening));
    const address = http.address();
    const port = typeof address === 'object' ? (address?.port ?? 0) : 0;
    const knock =
      'GET /socket.io/?EIO=4&transport=websocket HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: Upgrade\r\n' +
      'Upgrade: websocket\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n\r\n';
    const begun = performance.now();
    const [patient, rude] = [connect(port, '127.0.0.1'), connect(port, '127.0.0.1')];
    for (const line of [patient, rude]) line.write(knock);
    setTimeout(() => rude.resetAndDestroy(), 300);
    const [heard] = (await once(patient, 'data')) as [Buffer];
    expect(String(heard)).toMatch(/^HTTP\/1\.1 400 .*too-fast/s);
    expect(performance.now() - begun).toBeGreaterThan(1900);
    http.close();
  });
});

describe('who reads nothing and answers pings', () => {
  it('is let go, and who reads is not', async () => {
    const http = createServer();
    const io = new Server(http, { perMessageDeflate: false });
    const lines = new LineGuard(steadyClock());
    io.engine.on('connection', (line: Line) => lines.watch(line));
    await new Promise<void>((listening) => http.listen(0, '127.0.0.1', listening));
    const address = http.address();
    const origin = `http://127.0.0.1:${typeof address === 'object' ? address?.port : 0}`;
    const [deaf, reader] = [await RawDevice.enter(origin, {}), await RawDevice.enter(origin, {})];
    deaf.goDeaf();
    // The system keeps some megabytes by itself; without a limit of ours all of this would be taken.
    let sent = 0;
    while (io.engine.clientsCount === 2 && sent < 200) {
      io.emit('message', 'x'.repeat(256 * 1024));
      sent += 1;
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    expect(sent).toBeLessThan(200);
    expect(io.engine.clientsCount).toBe(1);
    expect(reader.gone).toBe(false);
    deaf.close();
    reader.close();
    await io.close();
  });
});
