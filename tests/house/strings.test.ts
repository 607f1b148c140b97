import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { trackedSources } from './tree.ts';
import { visibleStrings } from './visible-strings.ts';

const root = new URL('../..', import.meta.url).pathname;

/** What reaches people's eyes and ears, apart from the message files themselves. */
const rooms = trackedSources().filter(
  (file) =>
    /^(host|guest|shared)\//.test(file) &&
    // The words, and those that lists are read by; an example, which is somebody's own evening; what builds; the page of parts for developers;
    // the styles of a saved page, which carries them inside it.
    !/^shared\/(language\/[^/]+|words\/[^/]+|list-words|demo|build)\//.test(file) &&
    !/^guest\/(style\/|keepsake\/saved-page-frame\.ts$)|vite\.config\.ts$/.test(file),
);

/** Texts that are the same in every language, each with its reason. */
const sameEverywhere: Readonly<Record<string, string>> = {
  'host/evening/room-screens.tsx: /screen': 'an address, to be typed as it stands',
  'shared/guess/trade-names.ts: Grüner Veltliner': 'a grape: every language calls it so',
  'shared/guess/trade-names.ts: Hawke’s Bay': 'a place: every language calls it so',
  'shared/guess/trade-names.ts: Ribera del Duero': 'a place: every language calls it so',
  'shared/guess/trade-names.ts: Rías Baixas': 'a place: every language calls it so',
  'shared/wire/notebook.ts: not a word': 'a refusal of the contract: people read the sentence of its code',
  'shared/wire/notebook.ts: too many': 'a refusal of the contract: people read the sentence of its code',
};

const found = rooms.flatMap((file) =>
  visibleStrings(file, readFileSync(join(root, file), 'utf8')).map((each) => ({
    where: `${file}:${each}`,
    entry: `${file}: ${each.replace(/^\d+: /, '')}`,
  })),
);

describe('words that people see', () => {
  it('stand in message files only', () => {
    expect(rooms.length).toBeGreaterThan(200);
    const wrong = found.filter(({ entry }) => sameEverywhere[entry] === undefined);
    expect(wrong.map(({ where }) => where)).toEqual([]);
  });

  it('are let off only where they still stand', () => {
    const standing = found.map(({ entry }) => entry);
    expect(Object.keys(sameEverywhere).filter((entry) => !standing.includes(entry))).toEqual([]);
  });

  it('are found wherever they may hide', () => {
    for (const hidden of [
      '<p>Hello</p>',
      '<p>{late ? "Late" : words.early}</p>',
      '<p>{count > 1 && `Glasses: ` + count}</p>',
      '<p>{"Glass " + count}</p>',
      '<button aria-label="Close" />',
      '<input placeholder={none ? "Name" : words.name} />',
      '<Field label="Name" />',
      '<Choice options={[{ value: "a", label: "Right" }]} />',
      '<b class={() => <i>Inside</i>} />',
      'status.say("Saved")',
      'document.title = "Quiet"',
      'later("Come back later")',
      'later(`Come back at` + time)',
      'send({ message: "It did not work." })',
    ]) {
      expect([hidden, visibleStrings('a.tsx', `x = ${hidden};`).length]).toEqual([hidden, 1]);
    }
    for (const fine of [
      '<p class="soft small">{words.hello} · {count}%</p>',
      '<p>{words.of("key")}</p>',
      '<a rel="noreferrer noopener" href="/">{words.home}</a>',
      'kind === "from memory"; switch (kind) { case "from memory": break }',
      'page.matches("button, a")',
      'new Error("There is no room around this part of the page.")',
      'status.say(words.saved)',
      'key("from-memory")',
    ]) {
      expect([fine, visibleStrings('a.tsx', `x = ${fine};`)]).toEqual([fine, []]);
    }
  });
});
