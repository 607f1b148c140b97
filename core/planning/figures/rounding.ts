/**
 * Floor and ceiling that do not fall for the last binary digits: 0.3 / 0.1 is 2.9999999999999996, but a bottle
 * of 0.3 holds 3 pours of 0.1. What lies closer to a whole number than a few roundings can shift it is that number.
 */
const CLOSE = 1e-9;
const CLOSE_BY_SIZE = 1e-13;

function wholeIfClose(value: number): number | undefined {
  const nearest = Math.round(value);
  const close = Math.max(CLOSE, CLOSE_BY_SIZE * Math.abs(value));
  return Math.abs(value - nearest) <= close ? nearest : undefined;
}

export const steadyFloor = (value: number): number => wholeIfClose(value) ?? Math.floor(value);
export const steadyCeiling = (value: number): number => wholeIfClose(value) ?? Math.ceil(value);
