/** Below this a picture takes the line from the voice. */
const tooLittle = 150_000;
/** Measures in a row, so that one bad moment takes nobody's picture. */
const inARow = 3;

/**
 * Whether the line has become too poor for pictures.
 *
 * @param rooms bits a second that the poorest line could take, latest last; null where nothing is known
 */
export const tooPoorForPictures = (rooms: readonly (number | null)[]): boolean =>
  rooms.length >= inARow && rooms.slice(-inARow).every((room) => room !== null && room < tooLittle);
