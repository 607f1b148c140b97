/** Runs in the page: words of verbs, of the big button and of the code that are broken in two. */
export function brokenWords(): string[] {
  const range = document.createRange();
  return [...document.querySelectorAll('h1, .now-verb, .big-main, .code')].flatMap((element) => {
    const broken: string[] = [];
    const texts = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    while (texts.nextNode()) {
      const { currentNode: text } = texts;
      for (const { index, 0: word } of (text.textContent ?? '').matchAll(/[^\s\-–—/\u00ad]+/gu)) {
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        const lines = [...range.getClientRects()].filter(({ width }) => width > 0);
        if (new Set(lines.map(({ top }) => Math.round(top))).size > 1)
          broken.push(`“${word}” is broken within the word`);
      }
    }
    return broken;
  });
}

/** Runs in the page: what of the code would lie under the square, or beside the screen, if it were all of this letter. */
export function widestCode(letter: string): string[] {
  const square = document.querySelector('.invitation [role=img]')?.getBoundingClientRect();
  const range = document.createRange();
  return [...document.querySelectorAll('.code > *')].flatMap((group) => {
    group.textContent = letter.repeat(group.textContent?.length ?? 0);
    range.selectNodeContents(group);
    const { left, right, top, bottom } = range.getBoundingClientRect();
    const covered =
      square === undefined ||
      (right > square.left && left < square.right && bottom > square.top && top < square.bottom);
    return covered || left < 0 || right > innerWidth ? [`${group.textContent} of the code is not whole`] : [];
  });
}
