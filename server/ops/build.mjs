// Builds everything into dist/: the server, and every page in every language. One process, because starting the bundler
// takes longer than most of its runs. Plain JavaScript, so that `npm start` needs no loader.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { build, runnerImport } from 'vite';

const root = join(import.meta.dirname, '../..');

// The bundler asks whether the pages are for people or for their makers; `test` and the like are none of its business.
process.env.NODE_ENV = 'production';
const languages = readdirSync(join(root, 'shared/language'), { withFileTypes: true })
  .filter((each) => each.isDirectory())
  .map(({ name }) => name);
const pagesOf = (language) => [
  { house: 'host', mode: `host.${language}` },
  ...['guest', 'survey', 'device-check', 'screen'].map((page) => ({
    house: 'guest',
    mode: `${page}.${language}`,
  })),
];

const { module: assets } = await runnerImport(join(import.meta.dirname, 'built-assets.ts'), {
  configFile: false,
  logLevel: 'error',
});
const served = ['host', 'guest'].map((house) => join(root, 'dist', house));
const begun = Date.now();
for (const folder of served) assets.emptyButAssets(folder);
const builds = [
  { house: 'server', mode: 'production' },
  // The page of parts is for developers.
  { house: 'guest', mode: 'style.en' },
  ...languages.flatMap(pagesOf),
];
try {
  await Promise.all(
    builds.map(({ house, mode }) =>
      build({ configFile: join(root, house, 'vite.config.ts'), mode, logLevel: 'warn' }),
    ),
  );
  for (const folder of served) {
    assets.letGo(folder, begun);
    assets.pack(folder);
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
