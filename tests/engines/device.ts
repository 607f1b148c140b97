/** One device with a browser of its own, as a test of any engine holds it. */
export interface Device {
  readonly engine: Engine;
  open(address: string): Promise<void>;
  /** The value of a JavaScript expression in the page, as JSON carries it; a promise is waited for. */
  read<Value>(expression: string): Promise<Value>;
  /** A press of the pointer at a point of the viewport, in CSS pixels. */
  press(x: number, y: number): Promise<void>;
  /** The pointer goes down at the first of these points of the viewport, over all the others, and up at the last. */
  drag(points: readonly Point[]): Promise<void>;
  /** Keys, one after the other, into what has the focus. */
  type(text: string): Promise<void>;
  /** Of these those that the engine itself tells assistive technology otherwise or not at all, each as a sentence. */
  toldOtherwise(reckoned: readonly Reckoned[]): Promise<string[]>;
  resize(size: Size): Promise<void>;
  key(name: Key): Promise<void>;
  /** What the screen shows, as PNG. */
  picture(): Promise<Buffer>;
  close(): Promise<void>;
}

export const engines = ['chromium', 'firefox', 'webkit'] as const;
export type Engine = (typeof engines)[number];

export type Key = 'Enter' | 'Tab';

/** A sheet as somebody puts it into a printer. */
export interface Sheet {
  readonly paper: 'A4' | 'Letter';
  readonly lying: boolean;
}

/** The viewport in CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Something on a page, as WAI-ARIA and the computation of accessible names call it. */
export interface Exposed {
  readonly role: string;
  readonly name: string;
}

/** The same with where it is in the page. */
export interface Reckoned extends Exposed {
  readonly selector: string;
}
