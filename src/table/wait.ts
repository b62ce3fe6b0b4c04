/** Calls back once nobody has asked it to for a while. One timer is set and let run on, for a hand asks a hundred times a second. */
export class Wait {
  readonly #while: number;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #asked: { readonly at: number; readonly then: () => void } | null = null;

  /** @param ms How long nobody may have asked. */
  constructor(ms: number) {
    this.#while = ms;
  }

  /** Calls back after the while; asked again before, from then on, and what was asked last. */
  ask(then: () => void): void {
    this.#asked = { at: performance.now(), then };
    this.#timer ??= setTimeout(() => this.#look(), this.#while);
  }

  /** Calls nobody back. */
  drop(): void {
    this.#asked = null;
  }

  #look(): void {
    this.#timer = undefined;
    if (this.#asked === null) return;
    const { at, then } = this.#asked;
    const left = at + this.#while - performance.now();
    if (left > 0) this.#timer = setTimeout(() => this.#look(), left);
    else {
      this.#asked = null;
      then();
    }
  }
}
