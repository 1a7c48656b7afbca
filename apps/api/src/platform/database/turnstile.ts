/**
 * Lets work pass side by side, or alone. Whoever asks to pass alone waits for those inside to leave
 * and keeps newcomers out meanwhile, so that its turn is sure to come. It knows this process only:
 * between processes the retries of the transaction runner remain.
 */
export class Turnstile {
  private inside = 0;
  private closed = false;
  private waiting: (() => void)[] = [];

  async pass<T>(alone: boolean, work: () => Promise<T>): Promise<T> {
    // Nothing is awaited between a condition found true and the step that follows from it.
    while (this.closed) await this.change();
    if (alone) {
      this.closed = true;
      while (this.inside > 0) await this.change();
    }
    this.inside += 1;
    try {
      return await work();
    } finally {
      this.inside -= 1;
      if (alone) this.closed = false;
      this.callWaiting();
    }
  }

  private change(): Promise<void> {
    return new Promise((resolve) => {
      this.waiting.push(resolve);
    });
  }

  private callWaiting(): void {
    const called = this.waiting;
    this.waiting = [];
    for (const call of called) call();
  }
}
