import express, { Router } from 'express';
import { z } from 'zod';
import { type PhotoId, photoId, type TastingId } from '../../core/ids.ts';
import type { KeptPhoto } from '../../shared/wire/http.ts';
import { Refused } from './answers.ts';
import { hostedTasting } from './asking.ts';
import { HouseLimits } from './house-limits.ts';
import { labelPhoto } from './label-photo.ts';
import type { HttpParts } from './parts.ts';

/** A phone's photo after its page has made it smaller; what is larger was not sent by our page. */
const largestPhoto = 8 * 1024 * 1024;
/** Front and back of every pour, twice over for those that were taken again. */
const mostPhotos = 64;

const photoSchema = z
  .string()
  .regex(/^[A-Za-z0-9_-]{20,40}$/)
  .transform(photoId);

/** What hosts do with label photos. */
export function photoRoutes({ store, keyring, chance }: HttpParts): Router {
  const router = Router();
  const limits = new HouseLimits(store);
  /** Photos on their way, by tasting: each has its place before anything of it is read. */
  const coming = new Map<TastingId, number>();
  router.post(
    '/tastings/:tasting/photos',
    async (request, response, next) => {
      const tasting = hostedTasting(request, keyring);
      if (store.tastings.find(tasting) === undefined) throw new Refused('no-such-tasting');
      const others = coming.get(tasting) ?? 0;
      coming.set(tasting, others + 1);
      response.once('close', () => {
        const left = (coming.get(tasting) ?? 1) - 1;
        if (left > 0) coming.set(tasting, left);
        else coming.delete(tasting);
      });
      if ((await store.photos.count(tasting)) + others >= mostPhotos) throw new Refused('too-many-photos');
      await limits.mustHaveRoom(tasting);
      next();
    },
    express.raw({ type: () => true, limit: largestPhoto }),
    async (request, response) => {
      const tasting = hostedTasting(request, keyring);
      const jpeg = Buffer.isBuffer(request.body) ? await labelPhoto(request.body) : undefined;
      if (jpeg === undefined) throw new Refused('not-a-photo');
      const photo = photoId(chance.key());
      await store.photos.add(tasting, photo, jpeg);
      response.status(201).json({ photo } satisfies KeptPhoto);
    },
  );
  router.delete('/tastings/:tasting/photos/:photo', async (request, response) => {
    const tasting = hostedTasting(request, keyring);
    const photo = photoIn(request.params.photo);
    if (photo !== undefined) await store.photos.remove(tasting, photo);
    response.status(204).end();
  });
  return router;
}

/** `GET /photos/:photo`: for whoever was given the id; guests are given it with the pour, so not before its reveal [Q4]. */
export function photoPages({ store }: HttpParts): Router {
  const router = Router();
  router.get('/photos/:photo', async (request, response, next) => {
    const photo = photoIn(request.params.photo);
    const jpeg = photo === undefined ? undefined : await store.photos.find(photo);
    if (jpeg === undefined) return next();
    response
      .set('Cache-Control', 'private, max-age=31536000, immutable')
      .set('Content-Security-Policy', "default-src 'none'; sandbox")
      .type('image/jpeg')
      .send(jpeg);
  });
  return router;
}

const photoIn = (asked: unknown): PhotoId | undefined => photoSchema.safeParse(asked).data;
