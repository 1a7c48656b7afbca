/**
 * Which lots may be in a tank. A top-up adds to the set and a draw never takes from it: a real tank
 * isn't well mixed (dead corners, screw, crust on the wall), and neither microbes nor splinters
 * thin out. Only an emptying that is recorded as clean ends the chain, so a lot is never left out
 * for its small share.
 */
export type TankEvent =
  | {
      readonly kind: 'charged';
      /** RFC 3339 in UTC, all with as many digits, so that text order is time order. */
      readonly at: string;
      readonly addedLots: readonly string[];
      /** The tank's lot from this charge on. */
      readonly tankLot: string;
    }
  | { readonly kind: 'emptied'; readonly at: string; readonly clean: boolean };

export interface TankScope {
  /** When the chain began: the first charge after the last clean emptying; absent: no charge. */
  readonly since?: string;
  /** The tank's own lots that stood in it at some moment of the window. */
  readonly tankLots: readonly string[];
  /** Every lot that may have been in it during the window, oldest first. */
  readonly addedLots: readonly string[];
}

interface Chain {
  readonly charges: Extract<TankEvent, { kind: 'charged' }>[];
  endedAt?: string;
}

const inOrder = (events: readonly TankEvent[]): TankEvent[] =>
  [...events].sort((a, b) => (a.at === b.at ? 0 : a.at < b.at ? -1 : 1));

const chains = (events: readonly TankEvent[]): Chain[] => {
  const found: Chain[] = [{ charges: [] }];
  for (const event of inOrder(events)) {
    const open = found.at(-1);
    if (!open) continue;
    if (event.kind === 'charged') open.charges.push(event);
    else if (event.clean) {
      open.endedAt = event.at;
      found.push({ charges: [] });
    }
  }
  return found.filter((chain) => chain.charges.length > 0);
};

/** The lots that may have been in the tank between two instants, both included. */
export const tankScope = (events: readonly TankEvent[], from: string, to: string): TankScope => {
  const overlapping = chains(events).filter(
    (chain) =>
      (chain.charges[0]?.at ?? '') <= to && (chain.endedAt === undefined || chain.endedAt >= from),
  );
  const tankLots: string[] = [];
  const addedLots = new Set<string>();
  for (const { charges } of overlapping) {
    charges.forEach((charge, index) => {
      if (charge.at > to) return;
      for (const lot of charge.addedLots) addedLots.add(lot);
      const replacedAt = charges[index + 1]?.at;
      if (replacedAt === undefined || replacedAt >= from) tankLots.push(charge.tankLot);
    });
  }
  const since = overlapping[0]?.charges[0]?.at;
  return { ...(since === undefined ? {} : { since }), tankLots, addedLots: [...addedLots] };
};

export interface HeelLink {
  readonly from: string;
  readonly to: string;
}

/**
 * Each of the tank's lots to its next one while no clean emptying lies between: the link holds even
 * when the scales showed no heel, because a tank that was not recorded clean is not clean.
 */
export const heelLinks = (events: readonly TankEvent[]): HeelLink[] =>
  chains(events).flatMap(({ charges }) =>
    charges.slice(1).map((charge, index) => ({
      from: charges[index]?.tankLot ?? '',
      to: charge.tankLot,
    })),
  );
