/**
 * Where scanned texts go. A screen in which a scan means something (a draw, a tray, a delivery line)
 * takes scans while it is open; without one, the scan opens the thing itself.
 */
export type ScanTaker = (text: string) => void;

const takers: ScanTaker[] = [];
let opener: ScanTaker = () => undefined;

export const openScansWith = (open: ScanTaker): void => {
  opener = open;
};

export const takeScans = (taker: ScanTaker): (() => void) => {
  takers.push(taker);
  return () => {
    const at = takers.lastIndexOf(taker);
    if (at >= 0) takers.splice(at, 1);
  };
};

export const scanned = (text: string): void => {
  (takers.at(-1) ?? opener)(text.trim());
};

/** What the person typed into the field that always opens things, whoever takes scans. */
export const openThing = (text: string): void => opener(text.trim());
