import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { request as askOver } from 'node:https';
import { join } from 'node:path';
import { io } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../server/app.ts';
import type { CreatedTasting } from '../../shared/wire/http.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { houseKey, listeningLog } from './support/house.ts';
import { aPlan } from './support/plans.ts';
import { ServerProcess, temporaryFolder } from './support/process.ts';

let folder: ReturnType<typeof temporaryFolder>;
const path = (name: string) => join(folder.path, name);

/** For this machine only and a day. */
function makeCertificate(): void {
  const words =
    'req -x509 -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -days 1 -subj /CN=localhost -addext subjectAltName=DNS:localhost,IP:127.0.0.1';
  const files = ['-keyout', path('key.pem'), '-out', path('cert.pem')];
  execFileSync('openssl', [...words.split(' '), ...files], { stdio: 'ignore' });
}

beforeEach(() => {
  folder = temporaryFolder();
  makeCertificate();
});
afterEach(() => folder.remove());

function ask(
  url: string,
  ca: Buffer,
  body?: object,
): Promise<{ headers: NodeJS.Dict<string | string[]>; body: unknown }> {
  return new Promise((resolve, reject) => {
    const headers = { authorization: `Bearer ${houseKey}`, 'content-type': 'application/json' };
    const request = askOver(url, { ca, headers, method: body === undefined ? 'GET' : 'POST' }, (response) => {
      let text = '';
      response.on('data', (piece) => {
        text += String(piece);
      });
      response.on('end', () => resolve({ headers: response.headers, body: JSON.parse(text) }));
    });
    request.on('error', reject);
    if (body !== undefined) request.write(JSON.stringify(body));
    request.end();
  });
}

describe('https with a given certificate', () => {
  let server: RunningServer;
  const start = (cert: Buffer) =>
    startServer({
      store: memoryStore(),
      host: '127.0.0.1',
      houseKey,
      log: listeningLog(),
      tls: { key: readFileSync(path('key.pem')), cert },
    });

  it('serves pages, requests and sockets, and asks browsers to stay with it', async () => {
    const ca = readFileSync(path('cert.pem'));
    server = await start(ca);
    expect(server.url).toMatch(/^https:/);
    const health = await ask(`${server.url}/healthz`, ca);
    expect(health.body).toMatchObject({ ok: true });
    expect(health.headers['strict-transport-security']).toMatch(/^max-age=31536000/);
    expect(String(health.headers['content-security-policy'])).toContain('wss://127.0.0.1');
    const made = (await ask(`${server.url}/api/tastings`, ca, { plan: aPlan() })).body as CreatedTasting;
    const socket = io(server.url, {
      auth: credentials('host', made.tasting, made.hostKey),
      transports: ['websocket'],
      extraHeaders: { origin: server.url },
      ca: ca.toString(),
      reconnection: false,
    });
    await new Promise<void>((resolve, reject) => {
      socket.once('connect', resolve);
      socket.once('connect_error', reject);
    });
    expect(
      await socket.emitWithAck('host:ask', { id: 'open-the-doors', ask: { type: 'OpenDoors' } }),
    ).toMatchObject({
      ok: true,
    });
    socket.disconnect();
    // Whoever does not know the certificate is not fooled into talking.
    await expect(fetch(`${server.url}/healthz`)).rejects.toThrow();
    await server.stop();
  });

  it('is announced with its own addresses, and a wrong file is said so', async () => {
    const files = { QUIETPOUR_TLS_KEY: path('key.pem'), QUIETPOUR_TLS_CERT: path('cert.pem') };
    const child = new ServerProcess(path('data'), files);
    expect((await child.started()).url).toMatch(/^https:/);
    expect(child.stdout).toMatch(/https:\/\/localhost:\d+\/host#key=/);
    expect(child.stdout).not.toContain('http://');
    expect((await child.signal('SIGTERM')).code).toBe(0);

    const swapped = { QUIETPOUR_TLS_KEY: path('cert.pem'), QUIETPOUR_TLS_CERT: path('key.pem') };
    const { code, stderr } = await new ServerProcess(path('data'), swapped).exited;
    expect({ code, stderr }).toMatchObject({ code: 1, stderr: expect.stringMatching(/QUIETPOUR_TLS_KEY/) });
    expect(stderr.trim().split('\n')).toHaveLength(1);
  });
});
