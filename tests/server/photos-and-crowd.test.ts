import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { photoId } from '../../core/ids.ts';
import type { CrowdView, Invitation, KeptPhoto } from '../../shared/wire/http.ts';
import { House } from './support/house.ts';
import { aPlan } from './support/plans.ts';

let house: House;
beforeEach(async () => {
  house = await House.open();
});
afterEach(() => house.close());

/** A picture as a camera makes one, with the place where it was taken in its metadata. */
const picture = (format: 'jpeg' | 'png' | 'webp', width = 40, height = 30) =>
  sharp({ create: { width, height, channels: 3, background: '#a8431f' } })
    .withExif({ IFD0: { ImageDescription: 'the-cellar-at-home' } })
    .toFormat(format)
    .toBuffer();

const send = (tasting: string, key: string, body: Buffer | string, type = 'image/jpeg') =>
  fetch(`${house.url}/api/tastings/${tasting}/photos`, {
    method: 'POST',
    headers: { authorization: `Bearer ${key}`, 'content-type': type },
    body: typeof body === 'string' ? body : new Uint8Array(body),
  });

describe('label photos', () => {
  it.each(['jpeg', 'png', 'webp'] as const)(
    'are taken as %s and served as a JPEG made anew',
    async (format) => {
      const { tasting, hostKey } = await house.plan();
      const sent = await send(tasting, hostKey, await picture(format, 2000, 1000));
      expect(sent.status).toBe(201);
      const { photo } = (await sent.json()) as KeptPhoto;
      const served = await fetch(`${house.url}/photos/${photo}`);
      const bytes = Buffer.from(await served.arrayBuffer());
      expect(served.headers.get('content-type')).toBe('image/jpeg');
      expect(served.headers.get('x-content-type-options')).toBe('nosniff');
      expect(served.headers.get('content-security-policy')).toContain("default-src 'none'");
      expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 1600, height: 800 });
      expect(bytes.toString('latin1')).not.toContain('the-cellar-at-home');
    },
  );

  it.each([
    ['a text', Buffer.from('this is no picture at all, whatever its name says')],
    ['a page', Buffer.from('<html><script>alert(1)</script></html>')],
    [
      'a drawing with a script',
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'),
    ],
    ['half a picture', Buffer.from('ffd8ffe000104a46494600010100000100010000', 'hex')],
    ['nothing', Buffer.alloc(0)],
  ])('refuse %s that calls itself a photo', async (_, bytes) => {
    const { tasting, hostKey } = await house.plan();
    const answer = await send(tasting, hostKey, bytes);
    expect(answer.status).toBe(415);
    expect(await answer.json()).toMatchObject({ code: 'not-a-photo' });
  });

  it('refuse 40 MB with a sentence, and the server goes on', async () => {
    const { tasting, hostKey } = await house.plan();
    const answer = await send(tasting, hostKey, Buffer.alloc(40 * 1024 * 1024, 1)).catch(() => undefined);
    // The server may close before all of it was sent; what it answers where it does is the sentence.
    if (answer !== undefined) expect(answer.status).toBe(413);
    expect((await send(tasting, hostKey, await picture('jpeg'))).status).toBe(201);
  });

  it('are sixty-four at most, also when a hundred and twenty come at once', async () => {
    const { tasting, hostKey } = await house.plan();
    const small = await picture('jpeg', 8, 8);
    const answers = await Promise.all(Array.from({ length: 120 }, () => send(tasting, hostKey, small)));
    const taken = answers.filter(({ status }) => status === 201);
    expect(taken.length).toBeGreaterThan(32);
    expect(taken.length).toBeLessThanOrEqual(64);
    for (const answer of answers.filter((each) => !taken.includes(each)))
      expect(await answer.json()).toMatchObject({ code: 'too-many-photos' });
  });

  it('are for hosts to send, and go with the tasting', async () => {
    const { tasting, hostKey } = await house.plan();
    expect((await send(tasting, 'a-key-that-opens-nothing-at-all', await picture('jpeg'))).status).toBe(401);
    const { photo } = (await (await send(tasting, hostKey, await picture('jpeg'))).json()) as KeptPhoto;
    expect((await fetch(`${house.url}/photos/${photo}`)).status).toBe(200);
    await house.ask('DELETE', `/api/tastings/${tasting}`, { key: hostKey });
    expect((await fetch(`${house.url}/photos/${photo}`)).headers.get('content-type')).not.toBe('image/jpeg');
    expect((await fetch(`${house.url}/photos/..%2F..%2Fhouse-key`)).headers.get('content-type')).not.toBe(
      'image/jpeg',
    );
  });
});

describe('who is coming', () => {
  const survey = (code: string, respondent: string, answers: object) =>
    house.ask('PUT', `/api/invitations/${code}/survey`, { body: { respondent, answers } });
  const much = {
    'tastings-sat-through': 3,
    'words-for-a-glass': 3,
    'choosing-a-bottle': 3,
    'quiet-evening': 3,
  };
  const little = { 'tastings-sat-through': 0, 'words-for-a-glass': 0, 'choosing-a-bottle': 1 };

  it('is answered without a name, again in place of before, and seen by the host as a spread', async () => {
    const { tasting, code, hostKey } = await house.plan();
    expect((await survey(code, 'respondent-aaaaaaaaaaaa', much)).status).toBe(204);
    expect((await survey(code, 'respondent-aaaaaaaaaaaa', little)).status).toBe(204);
    expect((await survey(code, 'respondent-bbbbbbbbbbbb', much)).status).toBe(204);
    const crowd = await house.ask<CrowdView>('GET', `/api/tastings/${tasting}/crowd`, { key: hostKey });
    expect(crowd.body).toMatchObject({
      answered: 2,
      advice: { spread: { newcomers: 1, devotees: 1 }, practiceRound: true },
    });
    expect(JSON.stringify(crowd.body)).not.toContain('respondent');
  });

  it('takes no other questions, no other scores, and no wrong code', async () => {
    const { tasting, code, hostKey } = await house.plan();
    for (const answers of [{ weight: 2 }, { 'quiet-evening': 4 }, { 'quiet-evening': '2' }, [], null]) {
      expect((await survey(code, 'respondent-aaaaaaaaaaaa', answers as object)).status).toBe(400);
    }
    expect((await survey(code, 'me', much)).status).toBe(400);
    expect((await survey('ZZZZZZ', 'respondent-aaaaaaaaaaaa', much)).status).toBe(404);
    expect((await house.ask('GET', `/api/tastings/${tasting}/crowd`)).status).toBe(401);
    const crowd = await house.ask<CrowdView>('GET', `/api/tastings/${tasting}/crowd`, { key: hostKey });
    expect(crowd.body.answered).toBe(0);
  });
});

describe('the list that goes round before the evening', () => {
  const pours = aPlan().pours;

  it('[F1] names the pours before the doors open, and nothing after', async () => {
    const made = await house.plan(aPlan({ blind: false, callLink: 'https://call.example/room' }));
    const path = `/api/invitations/${made.code}`;
    const before = await house.ask<Invitation>('GET', path);
    expect(before.body.pours?.map((pour) => pour.name)).toEqual(pours.map((pour) => pour.name));
    expect(before.body.callLink).toBe('https://call.example/room');
    expect(JSON.stringify(before.body)).not.toMatch(/price|hostNote/i);
    await (await house.host(made)).host({ type: 'OpenDoors' });
    expect((await house.ask<Invitation>('GET', path)).body.pours).toBeNull();
  });

  it('shows the label photos of an open list, and says whether some taste along at home', async () => {
    const [first, ...others] = pours;
    if (first === undefined) throw new Error('There are pours.');
    const photos = { front: photoId('a-photo-of-the-front-label') };
    const list = [{ ...first, photos }, ...others];
    for (const blind of [false, true]) {
      const made = await house.plan(aPlan({ blind, pours: list, remoteGuests: blind ? 0 : 2 }));
      const { body } = await house.ask<Invitation>('GET', `/api/invitations/${made.code}`);
      expect(body.atHome).toBe(!blind);
      expect(body.pours?.[0]?.photos ?? null).toEqual(blind ? null : { ...photos, back: null });
      expect(JSON.stringify(body).includes(photos.front)).toBe(!blind);
    }
  });

  it('[Q4] names no pour of a blind tasting', async () => {
    const made = await house.plan(aPlan({ blind: true }));
    const before = await house.ask<Invitation>('GET', `/api/invitations/${made.code}`);
    expect(before.body.pours).toBeNull();
    for (const pour of pours) expect(JSON.stringify(before.body)).not.toContain(pour.name);
  });
});
