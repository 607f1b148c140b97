import type { Exposed, Reckoned } from './device.ts';

/** What engines call the roles of WAI-ARIA among themselves. */
const roles: Readonly<Record<string, string>> = {
  // WebKit has no word for it.
  '': 'summary',
  'check button': 'checkbox',
  checkbutton: 'checkbox',
  DisclosureTriangle: 'summary',
  entry: 'textbox',
  graphic: 'img',
  image: 'img',
  pushbutton: 'button',
  radiobutton: 'radio',
  'toggle button': 'button',
};

/**
 * Where a block stands in a name, engines and axe-core agree about everything but the space around it; and between one
 * look and the next a clock goes on.
 */
const asOne = ({ role, name }: Exposed): string =>
  `${roles[role] ?? role} ${name.replaceAll(/\s|\d{1,2}[:.]\d\d/gu, '')}`;

export const sameTold = (one: Exposed, other: Exposed): boolean => asOne(one) === asOne(other);

/** Those that are not in the tree that an engine gives to assistive technology, or less often. */
export function missingIn(tree: readonly Exposed[], reckoned: readonly Reckoned[]): string[] {
  const left = tree.map(asOne);
  return reckoned.flatMap((each) => {
    const at = left.indexOf(asOne(each));
    if (at !== -1) left.splice(at, 1);
    return at === -1 ? [`“${each.name}”, a ${each.role}, is not in the tree`] : [];
  });
}
