import { join } from 'node:path';
import { build } from 'vite';
import { describe, expect, it, vi } from 'vitest';
import { type Floor, newerInScript, newerInStyle } from '../support/browser-floor.ts';

/** Every page as it is shipped, beside the oldest browsers that it serves. */
const root = new URL('../..', import.meta.url).pathname;

const phones: Floor = { safari_ios: 15, chrome: 90, chrome_android: 90, firefox: 91 };
/** Televisions sold in 2021 carry Chromium 76 or 79 (from memory). */
const televisions: Floor = { chrome: 76 };

const added =
  /^(\.at|\.findLast|\.findLastIndex|\.toSorted|\.toReversed|\.replaceAll|Object\.hasOwn|AbortSignal\.timeout)(\(\))?$/;

/** What may be newer, and why nobody misses it. */
const allowed: Readonly<Record<string, RegExp>> = {
  'added by shared/page/missing-methods.ts': added,
  'asked for before it is called, by us or by a library':
    /^(\.moveBefore\(\)|\.requestIdleCallback\(\)|\.showModal\(\)|\.canParse\(\)|URL\.canParse|Intl\.supportedValuesOf|Error\.captureStackTrace|TransformStream|WebTransport|\.share\(\)|\.vibrate\(\))$/,
  'asked of mediaDevices, which has it for long; only navigator, of which nobody asks it, lacks it':
    /^\.getUserMedia\(\)$/,
  'a mark, a space or a size that is plainer without it':
    /^(:has|:focus-visible|:backdrop|:-(moz|webkit)-[\w-]+|accent-color|text-wrap(: \w+)?|field-sizing(: \w+)?|text-underline-offset|color-scheme(: \w+)?|forced-color-adjust(: \w+)?|print-color-adjust(: \w+)?|@media forced-colors|-webkit-[\w-]+|-moz-[\w-]+|text-size-adjust|hyphens|resize(: \w+)?|cursor(: [\w-]+)?|outline|appearance(: \w+)?|user-select|grid-template-(rows|columns): subgrid|inline-size: fit-content)$/,
  'turns off what an engine without it does not do': /^overflow-anchor(: none)?$/,
  'sheets of paper, which are laid out to fit without it': /^(@page|page|size|break-(before|after): avoid)$/,
  'a container of which only what stands in @supports makes use': /^container-type(: [\w-]+)?$/,
  'the shorter sides of grids, as old as grids': /^(align|place)-(content|items): start$/,
};
/** On televisions: the bundler writes the older word beside it; sizes fall back to what the words need. */
const allowedOnTelevisions = /^(:is|min\(\)|max\(\))$/;

async function built(house: 'host' | 'guest', mode: string) {
  vi.stubEnv('NODE_ENV', 'production');
  const result = await build({
    configFile: join(root, house, 'vite.config.ts'),
    mode,
    logLevel: 'silent',
    build: { write: false },
  });
  vi.unstubAllEnvs();
  return [result].flat().flatMap((each) => ('output' in each ? each.output : []));
}

async function newerIn(house: 'host' | 'guest', mode: string, floor: Floor) {
  const found = new Set<string>();
  for (const file of await built(house, mode)) {
    const text = file.type === 'chunk' ? file.code : Buffer.from(file.source).toString('utf8');
    if (file.fileName.endsWith('.js')) for (const each of newerInScript(text, floor)) found.add(each);
    if (file.fileName.endsWith('.css')) for (const each of newerInStyle(text, floor)) found.add(each);
  }
  return [...found].filter((each) => !Object.values(allowed).some((pattern) => pattern.test(each)));
}

describe('the oldest browsers that we serve', () => {
  it.each([
    ['host', 'host.en'],
    ['guest', 'guest.en'],
    ['guest', 'survey.en'],
    ['guest', 'device-check.en'],
    ['guest', 'screen.en'],
  ] as const)('have all that the pages of %s, built as %s, ask for', async (house, mode) => {
    expect(await newerIn(house, mode, phones)).toEqual([]);
  });

  it('have it on televisions too', async () => {
    const newer = await newerIn('guest', 'screen.en', televisions);
    expect(newer.filter((each) => !allowedOnTelevisions.test(each))).toEqual([]);
  });

  it('are told apart from newer ones by what is found in a script and a style', () => {
    const script =
      'x.toSorted(); x.sort(); AbortSignal.timeout(1); new Set([1]).union(y); /(?<!a)b/.test(z);';
    expect([...newerInScript(script, phones)].toSorted()).toEqual(
      ['.toSorted()', '.union()', 'AbortSignal.timeout', 'lookbehind'].toSorted(),
    );
    const style =
      'a:has(b){color:red}@media (width<=30rem){a{block-size:100dvh}}b{block-size:100vh;block-size:100dvh}' +
      '@supports (overflow:clip){c{overflow:clip}}d{margin-block-start:-9cqi;color:color-mix(in srgb,red,blue)}';
    expect([...newerInStyle(style, phones)].toSorted()).toEqual(
      [':has', '@media range', 'block-size: dvh', 'color-mix()', 'margin-block-start: cqi'].toSorted(),
    );
  });
});
