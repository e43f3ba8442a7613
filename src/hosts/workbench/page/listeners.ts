type Listener = () => void;

/** Those who want to be told when something happens. */
export class Listeners {
  readonly #all = new Set<Listener>();

  /** Returns the way to stop. */
  add(listener: Listener): Listener {
    this.#all.add(listener);
    return () => this.#all.delete(listener);
  }

  tell(): void {
    for (const listener of [...this.#all]) listener();
  }

  /** Resolves when they are told next. */
  next(): Promise<void> {
    return new Promise((resolve) => {
      const stop = this.add(() => {
        stop();
        resolve();
      });
    });
  }
}
