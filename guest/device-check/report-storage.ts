import { type DeviceStorage, keepJson, keptJson } from '../../shared/page/device-storage.ts';

/** What this device remembers of having told a host, so that telling again takes the place of the word before. */
export interface KeptReport {
  readonly id: string;
  readonly name: string;
  readonly told: boolean;
}

const shelf = (code: string): string => `quietpour.kit.${code}`;

/** Undefined where nothing is kept, or something that is none of this. */
export function readReport(code: string, storage?: () => DeviceStorage): KeptReport | undefined {
  const kept = keptJson(shelf(code), storage);
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { id, name, told } = kept as Record<string, unknown>;
  if (typeof id !== 'string' || !/^[A-Za-z0-9_-]{20,40}$/.test(id) || typeof name !== 'string')
    return undefined;
  return { id, name, told: told === true };
}

export const keepReport = (code: string, report: KeptReport, storage?: () => DeviceStorage): boolean =>
  keepJson(shelf(code), report, storage);
