import { findChromium } from '../support/browser.ts';
import { installRelay } from '../support/relay.ts';
import { installEngine } from './installed.ts';

/** Once, before any browser test: two that install at the same time would stand in each other's way. */
export function setup(): void {
  findChromium();
  installEngine('firefox');
  installEngine('webkit');
  installRelay();
}
