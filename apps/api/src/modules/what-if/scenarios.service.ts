import { Injectable } from '@nestjs/common';
import type { Prisma, Scenario } from '../../generated/prisma/client';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { loadBasis } from '../pricing';
import { readChange } from './read-changes';
import type {
  ChangeDto,
  CompareQuery,
  SaveScenarioDto,
  ScenarioView,
  WhatIfView,
} from './what-if.dto';
import { WhatIfService } from './what-if.service';

const scenarioView = (row: Scenario): ScenarioView => ({
  id: row.id,
  name: row.name,
  changes: row.changes as unknown as ChangeDto[],
  note: row.note,
  version: row.version,
});

const dataOf = (dto: SaveScenarioDto) => ({
  name: dto.name,
  changes: dto.changes.map((change) => ({ ...change })) as unknown as Prisma.InputJsonArray,
  note: dto.note ?? null,
});

/** Scenarios that are kept: only the changes are stored, so each look uses the prices of its day. */
@Injectable()
export class ScenariosService {
  constructor(
    private readonly transactions: Transactions,
    private readonly whatIf: WhatIfService,
  ) {}

  list(): Promise<ScenarioView[]> {
    return this.transactions.read(async (tx) =>
      (await tx.scenario.findMany({ orderBy: { name: 'asc' } })).map(scenarioView),
    );
  }

  save(dto: SaveScenarioDto): Promise<ScenarioView> {
    return this.transactions.book(async (tx, by) => {
      const basis = await loadBasis(tx, by.today.toString());
      dto.changes.forEach((change) => readChange(change, basis));
      const row = await tx.scenario.create({
        data: { id: newId(), ...dataOf(dto), at: by.at, userId: by.userId },
      });
      noteInJournal(by, {
        action: 'scenario.saved',
        subjectKind: 'scenario',
        subjectId: row.name,
      });
      return scenarioView(row);
    });
  }

  change(id: string, seen: number, dto: SaveScenarioDto): Promise<ScenarioView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await tx.scenario.findUnique({ where: { id } }), 'scenario', id);
      refuseIfStale('scenario', seen, before.version);
      const basis = await loadBasis(tx, by.today.toString());
      dto.changes.forEach((change) => readChange(change, basis));
      const row = await tx.scenario.update({
        where: { id },
        data: { ...dataOf(dto), version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'scenario.changed',
        subjectKind: 'scenario',
        subjectId: row.name,
      });
      return scenarioView(row);
    });
  }

  remove(id: string): Promise<ScenarioView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await tx.scenario.findUnique({ where: { id } }), 'scenario', id);
      await tx.scenario.delete({ where: { id } });
      noteInJournal(by, {
        action: 'scenario.removed',
        subjectKind: 'scenario',
        subjectId: before.name,
        detail: { changes: before.changes },
      });
      return scenarioView(before);
    });
  }

  /** Saved scenarios side by side, in the order in which they are named. */
  compare(query: CompareQuery): Promise<WhatIfView> {
    return this.transactions.read(async (tx) => {
      const rows = await tx.scenario.findMany();
      const chosen = query.ids
        .split(',')
        .map((id) => id.trim())
        .map((id) =>
          orNotFound(
            rows.find((row) => row.id === id),
            'scenario',
            id,
          ),
        );
      return this.whatIf.compare(tx, chosen.map(scenarioView), query.list ?? 'counter');
    });
  }
}
