import { useEffect, useRef } from 'preact/hooks';
import { type StoryWords, storyWords } from '../../../shared/language/en/host-story.ts';
import { previewFragment } from '../../../shared/page/screen-preview.ts';
import type { EveningContext } from '../../evening/evening-context.ts';

const words: StoryWords['screen'] = storyWords.screen;

/**
 * What the room sees, small: the screen's own page, which follows the evening as any screen does. It is a picture: nothing
 * in it can be touched, reached with the keyboard or read out.
 */
export function ScreenPicture({ evening: { stored, app } }: { readonly evening: EveningContext }) {
  const frame = useRef<HTMLIFrameElement>(null);
  const { tasting, code, linkCode, guestOrigins } = stored;
  const key = app.keys.keyFor(tasting);
  useEffect(() => {
    if (key === undefined) return;
    // Not as an attribute, where whoever copies the page would copy the key with it.
    const fragment = previewFragment({ tasting, key, code, linkCode, guestOrigins });
    frame.current?.contentWindow?.location.replace(`/screen${fragment}`);
  }, [tasting, key, code, linkCode, guestOrigins]);
  return (
    <div class="screen-picture" dir="ltr">
      <iframe ref={frame} title={words.picture} tabIndex={-1} aria-hidden="true" inert />
    </div>
  );
}
