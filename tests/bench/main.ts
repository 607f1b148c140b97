import { type Figure, line, met } from './figures.ts';
import { measureTap, tapFigures } from './tap.ts';

const sizes = process.argv.includes('--quick') ? [20, 200] : [20, 200, 1000, 5000];
const figures: Figure[] = [];
for (const guests of sizes) {
  const run = await measureTap(guests);
  console.log(run);
  figures.push(...tapFigures(run));
}
for (const figure of figures) console.log(line(figure));
process.exitCode = figures.some((figure) => met(figure) === false) ? 1 : 0;
