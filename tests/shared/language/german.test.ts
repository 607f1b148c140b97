import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { beforeWords } from '../../../shared/language/de/before.ts';
import { boardWords } from '../../../shared/language/de/board.ts';
import { cueWords } from '../../../shared/language/de/cues.ts';
import { guestWords } from '../../../shared/language/de/guest.ts';
import { keepsakeWords } from '../../../shared/language/de/keepsake.ts';
import { screenWords } from '../../../shared/language/de/screen.ts';
import { exportsOf, filesOf, homes } from '../../support/languages.ts';
import { leavesOf } from './leaves.ts';

const files = homes.flatMap((home) => filesOf(home, 'de').map((file) => ({ home, file })));
const root = new URL('../../..', import.meta.url).pathname;

describe('German cautions', () => {
  const before = [...guestWords.cautions.list, guestWords.cautions.law].join(' ');

  it.each([
    ['to spit', /Spuck jeden Schluck/],
    ['water', /Wasser/],
    ['to eat', /Iss /],
    [
      'who drives, even after spitting, and the next morning',
      /fahren, der nicht verkostet hat.*morgen früh.*Spucken ändert/,
    ],
    ['those who no longer drink', /nicht mehr trinkst: Schauen, riechen/],
    ['of age, and free to skip', /gesetzlichen Mindestalter.*auslassen/],
    ['pregnancy and breastfeeding', /Schwangerschaft oder Stillzeit/],
    ['medicines and illness', /Medikamenten oder Krankheit/],
    ['the law of the place', /Gesetz an deinem Ort/],
    ['the doctor', /Ärztin oder dein Arzt/],
  ])('speak of %s before the first glass', (_, said) => {
    expect(before).toMatch(said);
  });

  it('let nobody drive at the end', () => {
    expect(guestWords.keepsake.care).toMatch(/Wasser.*fahren, der nicht verkostet hat.*morgen früh/);
    expect(screenWords.goodbye.care).toMatch(/fahren, der nicht verkostet hat.*morgen früh/);
    expect(cueWords.farewell.hint).toMatch(/nicht mehr ans Steuer/);
    expect(beforeWords.care).toMatch(/fährt niemand/);
  });

  it.each(files)('never call anyone fit to drive: $home $file', ({ home, file }) => {
    expect(readFileSync(`${root}${home}/de/${file}`, 'utf8')).not.toMatch(
      /fahrtüchtig|fahrtauglich|fahrbereit|nüchtern|(darfst|kannst|dürft|könnt) (wieder |noch |du |ihr )*fahren/i,
    );
  });
});

describe('German grammar', () => {
  it('counts one, many and thousands', () => {
    expect(guestWords.glass.arc(null, 1)).toBe('Dein Platz: 1 Glas');
    expect(guestWords.glass.arc(null, 6)).toBe('Dein Platz: 6 Gläser');
    expect(guestWords.pour.years(1)).toBe('1 Jahr alt');
    expect(guestWords.saved.tooLong(1234)).toMatch(/^Um 1\.234 Zeichen zu lang/);
    expect(boardWords.words.more(1)).toBe('und 1 weiteres Wort von je einer Person');
    expect(boardWords.words.more(3)).toBe('und 3 weitere Wörter von je einer Person');
    expect(boardWords.speaking.each(120)).toBe('Je etwa 2 Minuten.');
    expect(keepsakeWords.evenings.glasses(1)).toBe('1 Glas mit Notizen');
    expect(keepsakeWords.evenings.glasses(0)).toBe('0 Gläser mit Notizen');
  });

  it('lists as people do', () => {
    expect(guestWords.missed.notice(['Glas 1'])).toMatch(/^Du hast Glas 1 verpasst/);
    expect(guestWords.missed.notice(['Glas 1', 'Glas 2', 'Glas 3'])).toMatch(
      /Glas 1, Glas 2 und Glas 3 verpasst/,
    );
  });

  it('writes a decimal comma', () => {
    expect(guestWords.pour.abv(46.5)).toBe('46,5\u00a0%\u00a0vol');
  });

  it.each(files)('says du and uses German quotation marks: $home $file', async ({ home, file }) => {
    const texts = leavesOf(await exportsOf(home, 'de', file), file).filter(
      ([, leaf]) => typeof leaf === 'string',
    );
    for (const [path, text] of texts) {
      expect(text, path).not.toMatch(/[a-zäöüß,] (Sie|Ihnen|Ihre[nmrs]?|Ihr)\b/);
      expect(text, path).not.toMatch(/["”]|“[^“”„]*”/);
    }
  });

  it.each(files)('admits that nobody who grew up with it has read it: $home $file', ({ home, file }) => {
    const [head] = readFileSync(`${root}${home}/de/${file}`, 'utf8').split('\n');
    expect(head).toMatch(/native speaker/);
  });
});
