import { expect, it } from 'vitest';
import { askToLast } from '../../../shared/page/lasting-storage.ts';

const browser = (userAgent: string, storage?: object) => ({ userAgent, storage }) as unknown as Navigator;

it('asks a browser to remember, and no browser that would ask the person', () => {
  let asked = 0;
  const persist = async () => {
    asked += 1;
    return true;
  };
  askToLast(browser('Safari', { persist }));
  expect(asked).toBe(1);
  askToLast(browser('Firefox/140', { persist }));
  expect(asked).toBe(1);
});

it('does without where there is nobody to ask, or the browser refuses', async () => {
  askToLast(browser('Safari'));
  askToLast(browser('Safari', {}));
  let refused = 0;
  const persist = () => {
    refused += 1;
    return Promise.reject(new Error('no'));
  };
  // A rejection that nobody takes would fail this run.
  askToLast(browser('Safari', { persist }));
  await Promise.resolve();
  expect(refused).toBe(1);
});
