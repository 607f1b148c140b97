/**
 * Whether this browser is new enough for our layout: `aspect-ratio` came with iOS 15, Chrome 88 and Firefox 89. Where it
 * is not, the page leaves the sentence standing that its HTML begins with.
 */
export const newEnough = (): boolean => CSS.supports('aspect-ratio: 1');
