/** What the host says, as text for who is at home. In English. */
export const captionWords = {
  title: 'Your host says',
  hide: 'Hide',
  show: 'Show what your host says',
};
export type CaptionWords = typeof captionWords;
