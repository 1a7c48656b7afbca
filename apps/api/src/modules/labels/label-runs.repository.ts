import { createHash } from 'node:crypto';
import type { Prisma } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import type { AcceptedDto, LabelRunView } from './label-runs.dto';

/** All of a run but its bytes, which are fetched only to be sent. */
const asShown = {
  id: true,
  form: true,
  market: true,
  languages: true,
  copies: true,
  accepted: true,
  pdfSha256: true,
  at: true,
  userId: true,
  lot: { select: { code: true } },
} as const satisfies Prisma.LabelRunSelect;

type RunRow = Prisma.LabelRunGetPayload<{ select: typeof asShown }>;

export const labelRunView = (row: RunRow, printedBy: string): LabelRunView => ({
  id: row.id,
  lotCode: row.lot.code,
  form: row.form,
  market: row.market,
  languages: row.languages,
  copies: row.copies,
  accepted: row.accepted as unknown as AcceptedDto[],
  pdfSha256: row.pdfSha256,
  at: row.at.toISOString(),
  printedBy,
});

export interface RunToKeep {
  readonly lotId: string;
  readonly form: string;
  readonly market: string;
  readonly languages: readonly string[];
  readonly copies: number;
  readonly content: object;
  readonly accepted: readonly object[];
  readonly pdf: Buffer;
}

const plain = (value: object): Prisma.InputJsonValue =>
  JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

export const keepRun = (tx: Tx, by: By, run: RunToKeep): Promise<RunRow> =>
  tx.labelRun.create({
    data: {
      id: newId(),
      lotId: run.lotId,
      form: run.form,
      market: run.market,
      languages: [...run.languages],
      copies: run.copies,
      content: plain(run.content),
      accepted: plain(run.accepted),
      pdf: new Uint8Array(run.pdf),
      pdfSha256: createHash('sha256').update(run.pdf).digest('hex'),
      at: by.at,
      userId: by.userId,
    },
    select: asShown,
  });

export const runsOf = (tx: Tx, lotCode: string): Promise<RunRow[]> =>
  tx.labelRun.findMany({
    where: { lot: { code: lotCode }, form: { not: 'lot_tag' } },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: 200,
    select: asShown,
  });

/** The stored bytes of one run, or of the lot's latest when no run is named. */
export const pdfOfRun = async (tx: Tx, lotCode: string, id?: string): Promise<Buffer | null> => {
  const run = await tx.labelRun.findFirst({
    where: {
      lot: { code: lotCode },
      ...(id === undefined ? { form: { not: 'lot_tag' } } : { id }),
    },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    select: { pdf: true },
  });
  return run === null ? null : Buffer.from(run.pdf);
};
