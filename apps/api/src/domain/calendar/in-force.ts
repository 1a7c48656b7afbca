/** A setting that holds from a day on, until a later row of the same thing replaces it. */
export interface FromDay {
  /** YYYY-MM-DD in the workshop's time zone. */
  readonly fromDay: string;
}

/**
 * The row that holds on a day: the latest that began on or before it; none when the day lies before
 * the first row, because a rate that wasn't set yet must be asked for and never guessed. ISO days
 * sort as text. Of two rows with one day the later in the list wins (a correction).
 */
export const inForce = <T extends FromDay>(rows: readonly T[], day: string): T | undefined => {
  let held: T | undefined;
  for (const row of rows) {
    if (row.fromDay <= day && (held === undefined || row.fromDay >= held.fromDay)) held = row;
  }
  return held;
};
