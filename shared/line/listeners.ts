type Run = (...heard: readonly unknown[]) => void;

/** Those who listen to something, by the name of what they listen for. */
export class Listeners {
  readonly #all = new Map<string, readonly Run[]>();

  on(name: string, run: Run): this {
    this.#all.set(name, [...(this.#all.get(name) ?? []), run]);
    return this;
  }

  off(name: string, run: Run): this {
    const left = (this.#all.get(name) ?? []).filter((each) => each !== run);
    this.#all.set(name, left);
    return this;
  }

  /** Whoever stops listening meanwhile still hears this one. */
  protected tell(name: string, ...heard: readonly unknown[]): void {
    for (const run of this.#all.get(name) ?? []) run(...heard);
  }
}
