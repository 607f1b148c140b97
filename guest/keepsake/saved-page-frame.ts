/** What frames a saved page: nothing in here is read by people. */
export const doctype = '<!doctype html>';
export const viewport = 'width=device-width, initial-scale=1';
/** It fetches nothing and runs nothing, wherever it is opened. */
export const pagePolicy = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

/** Linen and ink on a screen, by day and in the dark; on paper black on white, whatever its size. */
export const pageStyle = `
:root { --ground: #fafaf7; --card: #fff; --ink: #211d1a; --soft: #5d554e; --line: #d8d2c8; --accent: #1d6b62; }
@media (prefers-color-scheme: dark) {
  :root { --ground: #16130f; --card: #1f1b16; --ink: #ece5da; --soft: #b3a999; --line: #453d33; --accent: #7cc4b8; }
}
* { box-sizing: border-box; margin: 0; }
body { padding: clamp(1rem, 5vw, 3rem); background: var(--ground); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: anywhere; }
main { display: grid; gap: 1.5rem; max-inline-size: 46rem; margin-inline: auto; }
header { padding-block-end: 0.75rem; border-block-end: 3px double var(--accent); }
h1, h2 { font-family: Georgia, "Times New Roman", serif; font-weight: 400; line-height: 1.15; }
h1 { font-size: 2.25rem; }
h2 { font-size: 1.625rem; }
h3 { margin-block-start: 0.75rem; font-size: 1rem; }
article { padding: 1.25rem; border: 1px solid var(--line); border-radius: 0.75rem; background: var(--card); }
figure { display: flex; flex-wrap: wrap; gap: 0.75rem; margin-block-end: 0.75rem; }
img { max-inline-size: 100%; max-block-size: 16rem; border-radius: 0.375rem; }
.soft, dt { color: var(--soft); font-size: 0.9375rem; }
.story { margin-block: 0.75rem; font: 1.125rem/1.5 Georgia, "Times New Roman", serif; white-space: pre-line; }
dl { display: grid; gap: 0.5rem; margin-block-start: 0.75rem; }
dd { white-space: pre-line; }
ul { padding-inline-start: 1.25em; }
@page { margin: 14mm; }
@media print {
  :root { --ground: #fff; --card: #fff; --ink: #000; --soft: #444; --line: #bbb; --accent: #000; }
  body { padding: 0; font-size: 10.5pt; }
  main { display: block; max-inline-size: none; }
  article { margin-block-start: 6mm; padding: 0 0 4mm; border: 0; border-block-end: 1px solid var(--line); border-radius: 0; break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  li, dl > div, figure { break-inside: avoid; }
  img { max-block-size: 45mm; }
}
`;
