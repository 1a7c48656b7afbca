export interface MouldInspection {
  /** RFC 3339 in UTC, all with as many digits, so that text order is time order. */
  readonly at: string;
  readonly verdict: 'sound' | 'chipped' | 'retired';
}

export interface MouldUse {
  readonly at: string;
  readonly batch: string;
}

export interface MouldScope {
  /** The last sound inspection before the incident; absent: it was never found sound. */
  readonly soundAt?: string;
  /** The next sound inspection after it; absent: uses go on counting. */
  readonly soundAgainAt?: string;
  readonly uses: readonly MouldUse[];
}

/**
 * The castings that a damaged mould may have touched: all since it was last found sound, up to the
 * next time it was. A use in the same instant as an inspection counts, since the record can't tell
 * which came first.
 */
export const mouldScope = (
  inspections: readonly MouldInspection[],
  uses: readonly MouldUse[],
  incidentAt: string,
): MouldScope => {
  const sound = inspections
    .filter((inspection) => inspection.verdict === 'sound')
    .map((inspection) => inspection.at)
    .sort();
  const soundAt = sound.filter((at) => at < incidentAt).at(-1);
  const soundAgainAt = sound.find((at) => at > incidentAt);
  return {
    ...(soundAt === undefined ? {} : { soundAt }),
    ...(soundAgainAt === undefined ? {} : { soundAgainAt }),
    uses: uses.filter(
      (use) =>
        (soundAt === undefined || use.at >= soundAt) &&
        (soundAgainAt === undefined || use.at <= soundAgainAt),
    ),
  };
};
