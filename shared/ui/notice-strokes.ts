/** The strokes of what every page may say, which the first script of a phone carries; all others are in `strokes.ts`. */

export const water = 'M6 3.5H18L16.8 20.5H7.2ZM6.5 10C8.4 8.8 10.1 11 12 10S15.6 8.9 17.5 10';
export const caution = 'M12 3.5L21.5 20H2.5ZM12 10V14M12 16.8V17';
export const info = 'M21 12A9 9 0 1 1 3 12A9 9 0 0 1 21 12M12 11V16.5M12 7.5V7.7';
export const close = 'M5.5 5.5L18.5 18.5M18.5 5.5L5.5 18.5';
