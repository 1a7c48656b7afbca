import { Injectable } from '@nestjs/common';

/** The only source of "now". Tests and the demo history set it. */
@Injectable()
export class Clock {
  private fixed: Date | undefined;

  now(): Date {
    return this.fixed ?? new Date();
  }

  /** Stops the clock at an instant; `undefined` lets it run again. */
  setTo(instant: Date | undefined): void {
    this.fixed = instant;
  }
}
