import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { smudgedCodeMatches } from '../../domain/smudged-code';
import { DatabaseService } from '../../platform/database/database.service';
import { dayFromDb, dayToDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, ProblemError, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { nextCode } from '../codes';
import type {
  ChangeComplaintDto,
  CodeMatchView,
  ComplaintQuery,
  ComplaintView,
  RegisterComplaintDto,
} from './complaints.dto';
import * as repository from './complaints.repository';
import { photoKind, tidyName } from './photo-kind';
import { say } from '../../domain/words/say';

const MOST_PHOTOS = 20;

@Injectable()
export class ComplaintsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: ComplaintQuery): Promise<Page<ComplaintView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const filter = { after, closed: query.closed };
    const rows = await repository.listComplaints(this.database.client, limit, filter);
    return pageOf(rows, limit, repository.complaintView, (row) => [row.id]);
  }

  get(code: string): Promise<ComplaintView> {
    return this.view(this.database.client, code);
  }

  /** The lot is the one chosen, or the one whose code was read without a fault; else it stays open. */
  register(dto: RegisterComplaintDto): Promise<ComplaintView> {
    return this.transactions.book(async (tx, by) => {
      const chosen = dto.lotCode === undefined ? undefined : await this.lot(tx, dto.lotCode);
      const lot = chosen ?? (await repository.lotByCode(tx, dto.codeAsRead));
      const code = await nextCode(tx, by, 'complaint');
      await tx.complaint.create({
        data: {
          id: newId(),
          code,
          codeAsRead: dto.codeAsRead,
          lotId: lot?.id ?? null,
          kind: dto.kind,
          what: dto.what,
          customer: dto.customer ?? null,
          receivedOn: dayToDb(dto.receivedOn),
          at: by.at,
          userId: by.userId,
        },
      });
      noteInJournal(by, {
        action: 'complaint.registered',
        subjectKind: 'complaint',
        subjectId: code,
        detail: { ...dto },
      });
      return this.view(tx, code);
    });
  }

  change(code: string, seen: number, dto: ChangeComplaintDto): Promise<ComplaintView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findComplaint(tx, code), 'complaint', code);
      refuseIfStale('complaint', seen, before.version);
      const outcome = dto.outcome === undefined ? before.outcome : dto.outcome;
      if (dto.closed === true && outcome === null) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`Write down the outcome first: a complaint is closed with what came of it.`,
        });
      }
      const lot = dto.lotCode ? await this.lot(tx, dto.lotCode) : null;
      await tx.complaint.update({
        where: { code },
        data: {
          outcome,
          ...(dto.lotCode === undefined ? {} : { lotId: lot?.id ?? null }),
          ...(dto.closed === undefined ? {} : { closedAt: dto.closed ? by.at : null }),
          version: { increment: 1 },
        },
      });
      noteInJournal(by, {
        action: dto.closed === true ? 'complaint.closed' : 'complaint.changed',
        subjectKind: 'complaint',
        subjectId: code,
        detail: { ...dto, lotBefore: before.lot?.code ?? null, outcomeBefore: before.outcome },
      });
      return this.view(tx, code);
    });
  }

  /** Keeps a photograph. The same photograph sent again is kept once. */
  addPhoto(code: string, bytes: Buffer, name: string): Promise<ComplaintView> {
    const mediaType = photoKind(bytes);
    if (mediaType === undefined) {
      throw new ProblemError(
        'not-a-photo',
        415,
        say`Not a photograph`,
        say`Send a JPEG, PNG or WebP photograph. Its first bytes say what it is, not its name.`,
      );
    }
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    return this.transactions.book(async (tx, by) => {
      const complaint = orNotFound(await repository.findComplaint(tx, code), 'complaint', code);
      if ((await repository.samePhoto(tx, complaint.id, sha256)) !== null)
        return this.view(tx, code);
      if (complaint.photos.length >= MOST_PHOTOS) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`A complaint keeps at most ${MOST_PHOTOS} photographs.`,
        });
      }
      await tx.complaintPhoto.create({
        data: {
          id: newId(),
          complaintId: complaint.id,
          name: tidyName(name),
          mediaType,
          sha256,
          bytes: new Uint8Array(bytes),
          at: by.at,
          userId: by.userId,
        },
        select: { id: true },
      });
      noteInJournal(by, {
        action: 'complaint.photo-added',
        subjectKind: 'complaint',
        subjectId: code,
        detail: { sha256, mediaType },
      });
      return this.view(tx, code);
    });
  }

  async photo(
    code: string,
    id: string,
  ): Promise<{ name: string; mediaType: string; bytes: Buffer }> {
    const photo = await repository.photoOf(this.database.client, code, id);
    const { name, mediaType, bytes } = orNotFound(photo, 'photograph', id);
    return { name, mediaType, bytes: Buffer.from(bytes) };
  }

  /** Lots whose code a smudged one may be, nearest first: a person chooses. */
  async searchCode(text: string): Promise<CodeMatchView[]> {
    const lots = await repository.codesSentOut(this.database.client);
    const byCode = new Map(lots.map((lot) => [lot.code, lot]));
    return smudgedCodeMatches(text, byCode.keys(), { most: 12 }).flatMap(({ code, distance }) => {
      const lot = byCode.get(code);
      if (!lot) return [];
      const { item, madeOn } = lot;
      return [
        {
          lotCode: code,
          itemName: item.name,
          madeOn: dayFromDb(madeOn),
          distance: distance.toFixed(2),
        },
      ];
    });
  }

  private async view(tx: Tx, code: string): Promise<ComplaintView> {
    const found = await repository.findComplaint(tx, code);
    return repository.complaintView(orNotFound(found, 'complaint', code));
  }

  private async lot(tx: Tx, code: string) {
    return orNotFound(await repository.lotByCode(tx, code), 'lot', code);
  }
}
