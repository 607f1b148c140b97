/**
 * Icons as strokes on a grid of 24, one name each so that an app carries only what it shows. Every one is a picture
 * beside a word, never instead of it.
 */

// The steps of a pass.
export const swirl =
  'M8.5 2.5C7 5 6.6 7 7 9C7.6 11.6 9.6 13 12 13S16.4 11.6 17 9C17.4 7 17 5 15.5 2.5ZM12 13V19M7.5 16C4.6 16.6 3 17.7 3 18.9C3 20.7 7 21.8 12 21.8S21 20.7 21 18.9C21 17.9 19.8 17 17.8 16.4M18.4 19.4L17.4 16.3L20.5 15.2';
export const look =
  'M2.5 12C5 7.6 8.3 5.5 12 5.5S19 7.6 21.5 12C19 16.4 15.7 18.5 12 18.5S5 16.4 2.5 12ZM15 12A3 3 0 1 1 9 12A3 3 0 0 1 15 12';
export const nose =
  'M14 2.5C14 6.4 11 9.4 8.6 12.4C6.4 15.2 7.4 18 10.6 18C12.2 18 13.2 17 14.8 17.2C18 17.6 19.4 14.6 17 12.6M4 21.5C2.6 19.8 5.2 18.4 4 16.5M13 22.5C11.8 21.6 13.6 21 13 20.2M8.5 23C7.5 22.3 9 21.6 8.5 20.8';
export const sip =
  'M3 12C6 9 8.4 7.5 10 7.5C11 7.5 11.5 7.9 12 8.3C12.5 7.9 13 7.5 14 7.5C15.6 7.5 18 9 21 12C18.2 15.4 15 17 12 17S5.8 15.4 3 12ZM3 12C6.8 12.6 9 11.7 12 12.3C15 11.7 17.2 12.6 21 12';
export const spit =
  'M12 2.5C10.6 4.5 10 5.6 10 6.6A2 2 0 0 0 14 6.6C14 5.6 13.4 4.5 12 2.5ZM3.5 12H20.5M5 12C5.2 16.6 7 20.5 9 21.5H15C17 20.5 18.8 16.6 19 12';
export const write = 'M4 20L5 15.5L16.5 4L20 7.5L8.5 19ZM14 6.5L17.5 10';
export const review = 'M4 6H20M4 11.5H14M4 17H10M13.5 16.5L16 19L20.5 13.5';
export const reflect =
  'M13 12A1 1 0 1 1 11 12A1 1 0 0 1 13 12M17 12A5 5 0 1 1 7 12A5 5 0 0 1 17 12M21.5 12A9.5 9.5 0 1 1 2.5 12A9.5 9.5 0 0 1 21.5 12';

// The rest of the evening.
export const breadBreak =
  'M12 4.5C6.6 4.5 3.5 6 3.5 8.7C3.5 10.2 4.6 11.2 5.7 11.6V19.5H18.3V11.6C19.4 11.2 20.5 10.2 20.5 8.7C20.5 6 17.4 4.5 12 4.5ZM9.5 11.5L10.5 10.5M13 14.5L14 13.5';
export const quiet = 'M20 9V15.5H12.5L8.5 19.5V15.5H4V5H15M3.5 21.5L21 3';
export const talk = 'M3 4H15.5V12H9.5L6 15V12H3ZM18.5 8.5H21V17H18.5V20L15 17H10.5V14.8';
export const bottle =
  'M10 2.5H14V8C14 9.8 16.2 10.6 16.2 13.4V21.5H7.8V13.4C7.8 10.6 10 9.8 10 8ZM7.8 14.5H16.2V18.5H7.8';
export const glass =
  'M8 2.5C6.4 5.2 5.9 7.3 6.3 9.4C6.9 12.4 9.2 14 12 14S17.1 12.4 17.7 9.4C18.1 7.3 17.6 5.2 16 2.5ZM12 14V21.5M8 21.5H16M6.3 8.5H17.7';

// What a host or a guest does.
export const hold = 'M8 5V19M16 5V19';
export const resume = 'M7.5 4.5L19 12L7.5 19.5Z';
export const next = 'M4 12H20M14 6L20 12L14 18';
export const back = 'M20 12H4M10 6L4 12L10 18';
export const undo = 'M4 9H14.5A5.5 5.5 0 0 1 14.5 20H8M8 5L4 9L8 13';
export const hand =
  'M7 12.5V6.5A1.5 1.5 0 0 1 10 6.5V11.5V4.5A1.5 1.5 0 0 1 13 4.5V11.5V5.5A1.5 1.5 0 0 1 16 5.5V12V8.5A1.5 1.5 0 0 1 19 8.5V14.5C19 18.8 16.6 21.5 13 21.5C9.8 21.5 8 20 6.6 17.6L4.2 13.8A1.6 1.6 0 0 1 7 12.5';
export const ready = 'M4.5 12.5L10 18L20 6';
export const share = 'M12 15V3.5M7.5 8L12 3.5L16.5 8M7 11.5H4.5V20.5H19.5V11.5H17';
export const copy = 'M8.5 8.5H20V20.5H8.5ZM8.5 16H4V3.5H15.5V8.5';
export const download = 'M12 3.5V15M7.5 10.5L12 15L16.5 10.5M4.5 15.5V20.5H19.5V15.5';
export const print = 'M7 8V3.5H17V8M7 17H3.5V8H20.5V17H17M7 14H17V20.5H7Z';
export const plus = 'M12 4.5V19.5M4.5 12H19.5';
export const minus = 'M4.5 12H19.5';
/** Two columns of three: here a row is taken hold of. */
export const grip = 'M9 6V6.2M9 12V12.2M9 18V18.2M15 6V6.2M15 12V12.2M15 18V18.2';
export const up = 'M12 20V4M6 10L12 4L18 10';
export const down = 'M12 4V20M6 14L12 20L18 14';
export const bin = 'M4.5 7H19.5M9.5 7V4H14.5V7M6.5 7L7.7 20.5H16.3L17.5 7M10.5 11V16.5M13.5 11V16.5';

// What is so.
export const clock = 'M21 12A9 9 0 1 1 3 12A9 9 0 0 1 21 12M12 7V12L15.5 14.5';
export const remote = 'M3 11.5L12 4L21 11.5M5.5 9.5V20.5H18.5V9.5M10 20.5V14.5H14V20.5';
export const people =
  'M12 8A3.3 3.3 0 1 1 5.4 8A3.3 3.3 0 0 1 12 8M2.5 20C2.8 16 5.2 14 8.7 14S14.6 16 14.9 20M15 4.9A3.3 3.3 0 0 1 15 11.1M17 14.3C19.7 14.9 21.3 16.8 21.5 20';
export const screen = 'M3 4.5H21V16H3ZM8 20.5H16M12 16V20.5';
export const lock = 'M5.5 11H18.5V20.5H5.5ZM8 11V7.5A4 4 0 0 1 16 7.5V11M12 14.5V17';
export const unlock = 'M5.5 11H18.5V20.5H5.5ZM8 11V7.5A4 4 0 0 1 15.7 6M12 14.5V17';
export const question =
  'M21 12A9 9 0 1 1 3 12A9 9 0 0 1 21 12M9.3 9.6C9.3 7.9 10.5 7 12 7S14.7 8 14.7 9.5C14.7 11.6 12 11.7 12 13.8M12 16.8V17';
export const sound =
  'M4 9.5H7.5L12 5.5V18.5L7.5 14.5H4ZM15.3 9C16.8 10.8 16.8 13.2 15.3 15M18 6.3C21 9.7 21 14.3 18 17.7';
export const linen =
  'M16.2 12A4.2 4.2 0 1 1 7.8 12A4.2 4.2 0 0 1 16.2 12M12 2.5V4.5M12 19.5V21.5M2.5 12H4.5M19.5 12H21.5M5.3 5.3L6.7 6.7M17.3 17.3L18.7 18.7M5.3 18.7L6.7 17.3M17.3 6.7L18.7 5.3';
export const cellar =
  'M3.5 20.5V12A8.5 8.5 0 0 1 20.5 12V20.5ZM8 20.5V13A4 4 0 0 1 16 13V20.5M3.5 15.5H8M16 15.5H20.5';

// The evening's call.
export const microphone =
  'M9 5.5A3 3 0 0 1 15 5.5V11.5A3 3 0 0 1 9 11.5ZM5.5 11.5A6.5 6.5 0 0 0 18.5 11.5M12 18V21.5M8.5 21.5H15.5';
export const camera = 'M3 7H15.5V17H3ZM15.5 10.5L21 7.5V16.5L15.5 13.5';
