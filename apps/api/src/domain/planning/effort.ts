/**
 * How far planning still goes. It is counted in looks and not in seconds, so that the same orders give
 * the same plan on every machine: a look is a need that is placed, or a day tried for a making.
 */
export class Effort {
  /** Of all tries at one plan, or at all ways out of it. Enough to tell what is short of 200 orders. */
  static readonly USUAL_LOOKS = 300_000;

  private count = 0;

  constructor(private readonly looks = Effort.USUAL_LOOKS) {}

  /** @returns false once there is none left */
  look(): boolean {
    this.count += 1;
    return this.count <= this.looks;
  }

  get taken(): number {
    return this.count;
  }

  get left(): number {
    return Math.max(0, this.looks - this.count);
  }
}
