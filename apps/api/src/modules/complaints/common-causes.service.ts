import { Injectable } from '@nestjs/common';
import {
  commonCauses,
  type CommonCauses,
  type SuspectedCause,
} from '../../domain/complaint-causes';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { loadSubgraph } from '../tracing';
import type { CauseView, CommonCausesView, SuspectView } from './common-causes.dto';
import * as queries from './common-causes.queries';
import { type ComplaintRow, findComplaints } from './complaints.repository';
import { causeOf, causesBehind, exposuresOf } from './exposures';
import { say } from '../../domain/words/say';

const MOST_SUSPECTS = 50;

const CAUTION = say`Few complaints prove nothing, and a unit without a complaint is not proved sound. This page shows where to look first; it clears no lot and replaces no examination.`;

@Injectable()
export class CommonCausesService {
  constructor(private readonly transactions: Transactions) {}

  /** What some complaints point at: set logic first, then figures that rank. */
  find(codes: readonly string[]): Promise<CommonCausesView> {
    return this.transactions.read(async (tx) => {
      const complaints = await findComplaints(tx, codes);
      for (const code of codes) {
        orNotFound(
          complaints.find((row) => row.code === code),
          'complaint',
          code,
        );
      }
      const lotIds = [...new Set(complaints.flatMap((row) => row.lot?.id ?? []))];
      if (lotIds.length === 0) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`None of these complaints has a lot yet. Find the lot by its code first.`,
        });
      }
      const comparable = await queries.comparableLots(tx, lotIds);
      const subgraph = await loadSubgraph(
        tx,
        comparable.map((lot) => lot.id),
        'back',
      );
      orRefuse(subgraph.graph);
      const batchIds = (subgraph.rows.batches ?? []).map((row) => row[0]);
      const moulds = await queries.mouldsOfBatches(tx, batchIds);
      const stays = await queries.placesOfLots(
        tx,
        subgraph.lots.map((row) => row[0]),
      );
      const behind = causesBehind(subgraph, { ...(await queries.allNames(tx)), moulds, stays });
      const exposures = exposuresOf(comparable, countByLot(complaints), behind);
      const found = commonCauses(exposures, (cause) => {
        const { kind, name } = causeOf(cause);
        return (kind === 'lot' ? behind.get(name) : undefined) ?? new Set();
      });
      const itemNames = await queries.itemNamesOf(tx, lotNamesIn(found));
      return causesView(found, itemNames, complaints);
    });
  }
}

const countByLot = (complaints: readonly ComplaintRow[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const { lot } of complaints) {
    if (lot) counts.set(lot.code, (counts.get(lot.code) ?? 0) + 1);
  }
  return counts;
};

const lotNamesIn = (found: CommonCauses): string[] =>
  found.suspects
    .flatMap((suspect) => suspect.causes)
    .map(causeOf)
    .flatMap(({ kind, name }) => (kind === 'lot' ? [name] : []));

const causesView = (
  found: CommonCauses,
  itemNames: ReadonlyMap<string, string>,
  complaints: readonly ComplaintRow[],
): CommonCausesView => {
  const cause = (key: string): CauseView => {
    const { kind, name } = causeOf(key);
    return { kind, name, itemName: kind === 'lot' ? (itemNames.get(name) ?? null) : null };
  };
  return {
    complaints: found.complaints,
    withoutLot: complaints.filter((row) => row.lot === null).map((row) => row.code),
    units: found.units,
    comparedWith: say`boxes or pieces sent out that were made within thirty days of those complained of`,
    caution: CAUTION,
    shared: found.shared.map((one) => ({
      ...cause(one.cause),
      shareOfUnits: one.shareOfUnits.toFixed(4),
    })),
    suspects: found.suspects.slice(0, MOST_SUSPECTS).map((suspect) => suspectView(suspect, cause)),
    smallestCovers: found.smallestCovers.map((cover) => ({ causes: cover.map(cause) })),
  };
};

const suspectView = (suspect: SuspectedCause, cause: (key: string) => CauseView): SuspectView => ({
  causes: suspect.causes.map(cause),
  mostSpecific: suspect.mostSpecific.length,
  nestedIn: suspect.nestedIn.slice(0, 20),
  complaintsWith: suspect.table.casesWith,
  othersWith: suspect.table.othersWith,
  complaintsWithout: suspect.table.casesWithout,
  othersWithout: suspect.table.othersWithout,
  shareOfUnits: suspect.shareOfUnits.toFixed(4),
  inEveryComplaint: suspect.inEveryComplaint,
  notDistinguishable: suspect.notDistinguishable,
  riskRatio: suspect.risk?.ratio.toFixed(2) ?? null,
  riskLow95: suspect.risk?.low95.toFixed(2) ?? null,
  riskHigh95: suspect.risk?.high95.toFixed(2) ?? null,
  halfAdded: suspect.risk?.halfAdded ?? false,
  fisherP: suspect.fisherP.toSignificantDigits(3).toString(),
  holmP: suspect.holmP.toSignificantDigits(3).toString(),
});
