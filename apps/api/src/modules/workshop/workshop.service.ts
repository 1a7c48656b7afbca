import { Injectable } from '@nestjs/common';
import type { LabourRate, VatRate, Workshop } from '../../generated/prisma/client';
import { checkCodePattern, DEFAULT_LOT_PATTERN } from '../../domain/identification';
import { DatabaseService } from '../../platform/database/database.service';
import { dayFromDb, dayToDb } from '../../platform/database/days';
import { moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orRefuse, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import type {
  ChangeWorkshopDto,
  LabourRateDto,
  LabourRateView,
  VatRateDto,
  VatRateView,
  WorkshopView,
} from './workshop.dto';
import { say } from '../../domain/words/say';

/** What a new database starts with until the owner says otherwise. */
const newWorkshop = {
  name: 'My workshop',
  addressLines: [],
  market: 'EU',
  languages: ['en'],
  currency: 'EUR',
  timeZone: 'Europe/Brussels',
  codePattern: DEFAULT_LOT_PATTERN,
  overheadRule: 'per_hour',
  overheadValue: '0',
};

const workshopView = (workshop: Workshop): WorkshopView => ({
  name: workshop.name,
  addressLines: workshop.addressLines,
  phone: workshop.phone,
  email: workshop.email,
  market: workshop.market,
  languages: workshop.languages,
  currency: workshop.currency,
  timeZone: workshop.timeZone,
  gs1CompanyPrefix: workshop.gs1CompanyPrefix,
  codePattern: workshop.codePattern,
  overheadRule: workshop.overheadRule,
  overheadValue: moneyText(workshop.overheadValue),
  settings: workshop.settings as Record<string, unknown>,
  version: workshop.version,
});

const labourRateView = (rate: LabourRate): LabourRateView => ({
  id: rate.id,
  role: rate.role,
  ratePerHour: moneyText(rate.ratePerHour),
  fromDay: dayFromDb(rate.fromDay),
});

const vatRateView = (rate: VatRate): VatRateView => ({
  id: rate.id,
  productClass: rate.productClass,
  ratePercent: rate.ratePercent.toFixed(3),
  fromDay: dayFromDb(rate.fromDay),
});

const refuseUnknownTimeZone = (timeZone: string | undefined): void => {
  if (timeZone === undefined) return;
  try {
    new Intl.DateTimeFormat('en', { timeZone });
  } catch {
    throw new RefusalError({
      code: 'not-valid',
      detail: say`"${timeZone}" is not a time zone. Use a name as Europe/Brussels or America/New_York.`,
    });
  }
};

/** The one row of the workshop, made when it is missing. */
export const loadWorkshop = async (tx: Tx): Promise<Workshop> =>
  (await tx.workshop.findUnique({ where: { id: 1 } })) ??
  // Two may find it missing at once.
  tx.workshop.upsert({ where: { id: 1 }, create: { id: 1, ...newWorkshop }, update: {} });

@Injectable()
export class WorkshopService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async get(): Promise<WorkshopView> {
    const found = await this.database.client.workshop.findUnique({ where: { id: 1 } });
    return workshopView(found ?? (await this.transactions.inTransaction(loadWorkshop)));
  }

  change(seen: number, dto: ChangeWorkshopDto): Promise<WorkshopView> {
    refuseUnknownTimeZone(dto.timeZone);
    if (dto.codePattern !== undefined) orRefuse(checkCodePattern(dto.codePattern));
    return this.transactions.book(async (tx, by) => {
      const before = await loadWorkshop(tx);
      refuseIfStale('workshop', seen, before.version);
      const data = { ...dto, version: { increment: 1 }, updatedAt: by.at };
      const after = await tx.workshop.update({ where: { id: 1 }, data });
      noteInJournal(by, {
        action: 'workshop.changed',
        subjectKind: 'workshop',
        subjectId: after.name,
        detail: { ...dto },
      });
      return workshopView(after);
    });
  }

  async labourRates(): Promise<LabourRateView[]> {
    const rates = await this.database.client.labourRate.findMany({
      orderBy: [{ role: 'asc' }, { fromDay: 'desc' }],
    });
    return rates.map(labourRateView);
  }

  addLabourRate(dto: LabourRateDto): Promise<LabourRateView> {
    return this.transactions.book(async (tx, by) => {
      const rate = await tx.labourRate.create({
        data: { id: newId(), ...dto, fromDay: dayToDb(dto.fromDay) },
      });
      noteInJournal(by, {
        action: 'labour-rate.added',
        subjectKind: 'labour rate',
        subjectId: dto.role,
        detail: { ...dto },
      });
      return labourRateView(rate);
    });
  }

  async vatRates(): Promise<VatRateView[]> {
    const rates = await this.database.client.vatRate.findMany({
      orderBy: [{ productClass: 'asc' }, { fromDay: 'desc' }],
    });
    return rates.map(vatRateView);
  }

  addVatRate(dto: VatRateDto): Promise<VatRateView> {
    return this.transactions.book(async (tx, by) => {
      const rate = await tx.vatRate.create({
        data: { id: newId(), ...dto, fromDay: dayToDb(dto.fromDay) },
      });
      noteInJournal(by, {
        action: 'vat-rate.added',
        subjectKind: 'VAT rate',
        subjectId: dto.productClass,
        detail: { ...dto },
      });
      return vatRateView(rate);
    });
  }
}
