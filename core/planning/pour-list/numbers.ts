/** Blanks that lists use inside and around numbers, the narrow and the unbroken ones too. */
const blanks = /[\s\u00a0\u2007\u2009\u202f']/g;

/**
 * The number a cell begins with, and what stands after it. A point or a comma may part the decimals; where both stand,
 * the last one does. `grouped`: a lone separator before exactly three digits parts thousands, as in prices and
 * millilitres. Undefined where the cell does not begin with a number.
 */
export function numberAtStart(
  cell: string,
  grouped = false,
): { readonly value: number; readonly rest: string } | undefined {
  // Without the blanks before it, for two runs of blanks that may both be empty are tried in every division.
  const match = /^[~≈]?\s*([+-]?(?:\d[\d\s\u00a0\u2007\u2009\u202f'.,]*\d|\d))(.*)$/su.exec(cell.trimStart());
  if (match === null) return undefined;
  const [, digits = '', rest = ''] = match;
  const value = numberOf(digits.replace(blanks, ''), grouped);
  return value === undefined ? undefined : { value, rest: rest.trim() };
}

function numberOf(digits: string, grouped: boolean): number | undefined {
  const last = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
  if (last < 0) return Number(digits);
  const mark = digits[last];
  const other = mark === '.' ? ',' : '.';
  const marks = [...digits].filter((each) => each === mark).length;
  const head = digits.slice(0, last);
  if (
    marks > 1 ||
    (grouped && !head.includes(other) && /^[+-]?[1-9]\d{0,2}$/.test(head) && digits.length - last === 4)
  ) {
    return inThousands(digits, mark ?? '', other) ? Number(digits.replace(/[.,]/g, '')) : undefined;
  }
  const whole = head.includes(other)
    ? inThousands(head, other, '')
      ? head.replaceAll(other, '')
      : undefined
    : head;
  return whole === undefined ? undefined : Number(`${whole}.${digits.slice(last + 1)}`);
}

/** Whether a mark parts a number into groups of three, and nothing else stands in it. */
function inThousands(digits: string, mark: string, never: string): boolean {
  if (never !== '' && digits.includes(never)) return false;
  const [first = '', ...groups] = digits.split(mark);
  return /^[+-]?\d{1,3}$/.test(first) && groups.length > 0 && groups.every((group) => /^\d{3}$/.test(group));
}

/** Decimals that binary fractions add are cut at nine places, far below what any list writes. */
export const steady = (value: number): number => Number(value.toFixed(9));
