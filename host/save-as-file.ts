/** Characters that some device would not take in a file's name. */
const unfit = /[\\/:*?"<>|\p{Cc}]+/gu;

/** Hands a text to the browser to keep as a file. */
export function saveAsFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name.replace(unfit, ' ').trim();
  link.click();
  // The browser has taken hold of the text by the next turn.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
