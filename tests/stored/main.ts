import { makeFixture } from './make.ts';

console.log(`Kept in ${await makeFixture(process.argv.includes('--pages'))}.`);
