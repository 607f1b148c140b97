/** The oldest browsers that our pages serve, as the bundler names them; `missing-methods.ts` adds what they lack. */
export const browserFloor: string[] = ['ios15', 'safari15', 'chrome90', 'firefox91'];

/** Televisions carry browsers of years ago: those sold in 2021 carry Chromium 76 or 79 (from memory). */
export const televisionFloor: string[] = ['chrome76'];

/** What PostCSS hands over of a declaration, as far as it is needed here. */
interface Declaration {
  readonly prop: string;
  readonly value: string;
  cloneBefore(changed: { readonly prop?: string; readonly value: string }): unknown;
  remove(): unknown;
}

/**
 * A plugin of PostCSS that writes older words before newer ones where the bundler lowers nothing: a height of the window
 * for one that follows the browser's bars, a break within a long word, two sides for a pair of them.
 */
export const olderStyle = {
  postcssPlugin: 'older-style',
  Declaration(declaration: Declaration) {
    const { prop, value } = declaration;
    const older = olderValue(prop, value);
    if (older !== undefined) declaration.cloneBefore({ value: older });
    if (!/^(margin|padding|inset)-(inline|block)$/.test(prop)) return;
    const [start = '', end = start] = partsOf(value);
    declaration.cloneBefore({ prop: `${prop}-start`, value: start });
    declaration.cloneBefore({ prop: `${prop}-end`, value: end });
    declaration.remove();
  },
};

function olderValue(prop: string, value: string): string | undefined {
  if (/\ddvh\b/.test(value)) return value.replace(/(\d)dvh\b/g, '$1vh');
  if (prop === 'overflow-wrap' && value === 'anywhere') return 'break-word';
  return undefined;
}

/** The values of a declaration that has several: a space within brackets parts nothing. */
function partsOf(value: string): readonly string[] {
  const parts = [''];
  let depth = 0;
  for (const letter of value.trim()) {
    if (letter === '(') depth += 1;
    if (letter === ')') depth -= 1;
    if (depth === 0 && /\s/.test(letter)) parts.push('');
    else parts.push(`${parts.pop()}${letter}`);
  }
  return parts.filter((part) => part !== '');
}
