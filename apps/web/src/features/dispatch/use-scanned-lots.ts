import { useEffect, useEffectEvent, useState } from 'react';
import type { components } from '../../api/schema';
import { useSearchText } from '../../app/use-address';
import { findLot } from '../../shared/lots/find-lot';
import { useScans } from '../../shared/scan/use-scans';
import { type SendLine, withLot } from './send-draft';

type Lot = components['schemas']['LotView'];
type Lines = readonly SendLine[];

/** Lots that are scanned, typed or named by the address come into the lines. */
export const useScannedLots = (change: (withLots: (lines: Lines) => Lines) => void) => {
  const first = useSearchText('lot');
  const [scanError, setScanError] = useState<unknown>();
  const look = (code: string, take: (lot: Lot) => void): void => {
    findLot(code).then((lot) => {
      setScanError(undefined);
      take(lot);
    }, setScanError);
  };
  const add = (code: string): void => look(code, (lot) => change((lines) => withLot(lines, lot)));
  const addOnce = useEffectEvent((code: string) =>
    look(code, (lot) =>
      change((lines) =>
        lines.some(({ lotCode }) => lotCode === lot.code) ? lines : withLot(lines, lot),
      ),
    ),
  );
  useScans(add);
  // A reload brings the same address again: the lot of the address comes in once only.
  useEffect(() => {
    if (first !== undefined) addOnce(first);
  }, [first]);
  return { add, scanError };
};
