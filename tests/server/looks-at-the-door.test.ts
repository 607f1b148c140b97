import { expect, it } from 'vitest';
import type { Store } from '../../server/store/store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { credentials } from './support/device.ts';
import { House } from './support/house.ts';

/** A crowd that comes back is a thousand times what one device costs at the door; counted here, for time says nothing. */
it('looks once at the key of a guest who comes in, and never at the plan of the evening', async () => {
  const asked: string[] = [];
  const counted = <Name extends 'keys' | 'tastings'>(name: Name, shelf: Store[Name]): Store[Name] =>
    new Proxy(shelf, {
      get(target, method) {
        asked.push(`${name}.${String(method)}`);
        return Reflect.get(target, method);
      },
    });
  const store = memoryStore();
  const house = await House.open({
    store: { ...store, keys: counted('keys', store.keys), tastings: counted('tastings', store.tastings) },
  });
  try {
    const { made } = await house.evening();
    const guest = await house.guest(made);
    guest.close();
    asked.length = 0;
    const again = await house.enter(credentials('guest', made.tasting, guest.key));
    await again.until('stage');
    expect(asked.filter((each) => each === 'keys.find')).toHaveLength(1);
    expect(asked).toContain('tastings.houseOf');
    expect(asked).not.toContain('tastings.find');
  } finally {
    await house.close();
  }
});
