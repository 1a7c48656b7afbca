/** A seeded stream of choices (mulberry32): the same seed gives the same history. */
export class Chance {
  constructor(private state: number) {}

  private next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  }

  /** Both ends included. */
  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  one<T>(list: readonly T[]): T {
    const chosen = list[this.whole(0, list.length - 1)];
    if (chosen === undefined) throw new Error('nothing to choose from');
    return chosen;
  }

  often(percent: number): boolean {
    return this.next() * 100 < percent;
  }
}
