import { expect, it } from 'vitest';
import { createStatus } from '../../../shared/ui/status.ts';

it('leaves what was said, and its undo, with the page of which it was said', () => {
  const status = createStatus();
  status.say('Dropped.', { action: { label: 'Undo', onPress: () => undefined } });
  status.turnPage();
  expect(status.message.value).toBeUndefined();
});

it('takes along once what is said of a page that is gone', () => {
  const status = createStatus();
  status.say('Deleted.', { travels: true });
  status.turnPage();
  expect(status.message.value?.text).toBe('Deleted.');
  status.turnPage();
  expect(status.message.value).toBeUndefined();
});
