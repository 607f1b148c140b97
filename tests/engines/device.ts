/** One device with a browser of its own, as a test of any engine holds it. */
export interface Device {
  readonly engine: Engine;
  open(address: string): Promise<void>;
  /** The value of a JavaScript expression in the page, as JSON carries it. */
  read<Value>(expression: string): Promise<Value>;
  /** A press of the pointer at a point of the viewport, in CSS pixels. */
  press(x: number, y: number): Promise<void>;
  /** Keys, one after the other, into what has the focus. */
  type(text: string): Promise<void>;
  /** What the screen shows, as PNG. */
  picture(): Promise<Buffer>;
  /** As the print window makes it: PDF. Lengths in mm, without margins of the browser's own. */
  print(paper: { readonly widthMm: number; readonly heightMm: number }): Promise<Buffer>;
  close(): Promise<void>;
}

export type Engine = 'firefox' | 'webkit';

/** The viewport in CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}
