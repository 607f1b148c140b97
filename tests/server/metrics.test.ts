import { describe, expect, it } from 'vitest';
import { House, houseKey } from './support/house.ts';

async function read(house: House, headers: Record<string, string> = {}) {
  const response = await fetch(`${house.url}/metrics`, { headers });
  return { status: response.status, type: response.headers.get('content-type'), text: await response.text() };
}

/** The text exposition format of Prometheus, version 0.0.4: comments, and samples with escaped label values. */
const line =
  /^(# HELP [a-z_]+ .+|# TYPE [a-z_]+ (counter|gauge)|[a-z_]+(\{([a-z]+="[^"\\\n]*",?)+\})? [0-9.e+-]+)$/;

describe('figures for whoever runs the server', () => {
  it('say how many are here and what was asked, in the format of Prometheus', async () => {
    const house = await House.open();
    const { made, host, noor } = await house.evening();
    await host.host({ type: 'Advance', from: 'gathering' });
    await noor.host({ type: 'Hold' });
    await noor.raw('{"event":"made up"}', {});
    await house.ask('GET', '/api/invitations/000000');
    const { status, type, text } = await read(house);
    expect({ status, type }).toEqual({ status: 200, type: 'text/plain; version=0.0.4; charset=utf-8' });
    for (const each of text.trimEnd().split('\n')) expect(each).toMatch(line);
    expect(text.endsWith('\n')).toBe(true);
    for (const sample of [
      'quietpour_devices{role="host"} 1',
      'quietpour_devices{role="guest"} 2',
      'quietpour_sessions_loaded 1',
      'quietpour_messages_total{event="host:ask",outcome="done"} 2',
      'quietpour_messages_total{event="host:ask",outcome="refused"} 1',
      'quietpour_messages_total{event="unknown",outcome="refused"} 1',
      'quietpour_http_requests_total{place="api",status="4xx"} 1',
    ]) {
      expect(text.split('\n')).toContain(sample);
    }
    for (const secret of [made.tasting, made.code, noor.seat, 'Noor', 'made up'])
      expect(text).not.toContain(secret);
    await house.close();
  });

  it('count nothing that is written, shared, agreed to or kept between the devices of a seat', async () => {
    const house = await House.open();
    const { noor } = await house.evening();
    const before = (await read(house)).text;
    for (const event of ['note:save', 'note:share', 'note:consent', 'note:anything', 'device:ask'])
      await noor.raw(event, {});
    const messages = (text: string) => text.split('\n').filter((each) => /messages_total/.test(each));
    expect(messages((await read(house)).text).filter((each) => !each.includes('"unknown"'))).toEqual(
      messages(before),
    );
    await house.close();
  });

  it('do not grow with what anybody sends', async () => {
    const house = await House.open();
    const { noor } = await house.evening();
    // Reading is counted too.
    await read(house);
    const throwAll = async () => {
      for (let count = 0; count < 40; count += 1) {
        await noor.raw(`event-${count}`, {});
        await house.ask('GET', `/api/nothing/${count}`);
        await fetch(`${house.url}/place/${count}`);
      }
      return (await read(house)).text.split('\n').length;
    };
    expect(await throwAll()).toBe(await throwAll());
    await house.close();
  });

  it('are for this machine, and elsewhere for who holds the house key', async () => {
    const house = await House.open();
    const { made } = await house.evening();
    const elsewhere = { 'x-forwarded-for': '198.51.100.7' };
    expect((await read(house, elsewhere)).status).toBe(401);
    const asHost = { ...elsewhere, authorization: `Bearer ${made.hostKey}` };
    expect((await read(house, asHost)).status).toBe(403);
    expect((await read(house, { ...elsewhere, authorization: `Bearer ${houseKey}` })).status).toBe(200);
    await house.close();
  });
});
