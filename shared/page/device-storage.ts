/** The calls of Web Storage that are used. */
export type DeviceStorage = Pick<Storage, 'getItem' | 'setItem'> & Partial<Pick<Storage, 'removeItem'>>;

/** Reading the property itself throws where a browser refuses storage, so it is asked for only inside a try. */
const thisDevice = (): DeviceStorage => localStorage;

/** What this device keeps under a name; null where it keeps nothing. */
export function keptText(name: string, storage = thisDevice): string | null {
  try {
    return storage().getItem(name);
  } catch {
    return null;
  }
}

/** The same of what was kept as JSON; null too where something else wrote there. */
export function keptJson(name: string, storage = thisDevice): unknown {
  try {
    return JSON.parse(keptText(name, storage) ?? 'null');
  } catch {
    return null;
  }
}

/** Keeps a text, or forgets it. @returns whether it will be so when the page is opened again */
export function keepText(name: string, text: string | null, storage = thisDevice): boolean {
  try {
    if (text === null) storage().removeItem?.(name);
    else storage().setItem(name, text);
    return true;
  } catch {
    return false;
  }
}

export const keepJson = (name: string, value: unknown, storage = thisDevice): boolean =>
  keepText(name, JSON.stringify(value), storage);
