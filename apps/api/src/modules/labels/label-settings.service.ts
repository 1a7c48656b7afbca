import { Injectable } from '@nestjs/common';
import { readStock } from '../../domain/printing';
import {
  ALLERGENS,
  JsonReader,
  readLocalText,
  saidProblems,
  type Problem,
} from '../../domain/specification';
import type { Prisma } from '../../generated/prisma/client';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, ProblemError, type FieldProblem } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { loadWorkshop } from '../workshop';
import { isSet, itemSettings, SETTINGS_KEY, workshopSettings } from './label-settings';
import type { LabelSettingsDto, LabelSettingsView } from './label-settings.dto';
import type {
  WorkshopLabelSettingsDto,
  WorkshopLabelSettingsView,
} from './workshop-label-settings.dto';
import { say } from '../../domain/words/say';

/** @throws ProblemError that names each text that can't stand on a label */
const refuseWrongTexts = (dto: LabelSettingsDto): void => {
  const problems: Problem[] = [];
  readLocalText(new JsonReader(dto.names, '/names', problems));
  for (const field of ['storage', 'origin', 'primaryOriginText'] as const) {
    const value = dto[field];
    if (value === null || Object.keys(value).length === 0) continue;
    readLocalText(new JsonReader(value, `/${field}`, problems));
  }
  refuseProblems(saidProblems(problems));
};

const refuseProblems = (problems: readonly FieldProblem[]): void => {
  if (problems.length === 0) return;
  throw new ProblemError(
    'fields-not-valid',
    400,
    say`The label settings are not right`,
    say`Put the fields right that are named under "errors". Nothing was saved.`,
    problems,
  );
};

const withLabels = (settings: Prisma.JsonValue, value: object): Prisma.InputJsonObject => ({
  ...(settings as Prisma.InputJsonObject),
  [SETTINGS_KEY]: JSON.parse(JSON.stringify(value)) as Prisma.InputJsonObject,
});

@Injectable()
export class LabelSettingsService {
  constructor(private readonly transactions: Transactions) {}

  ofItem(id: string): Promise<LabelSettingsView> {
    return this.transactions.read(async (tx) => {
      const item = orNotFound(await tx.item.findUnique({ where: { id } }), 'item', id);
      return { ...itemSettings(item), usual: !isSet(item), version: item.version };
    });
  }

  changeItem(id: string, seen: number, dto: LabelSettingsDto): Promise<LabelSettingsView> {
    refuseWrongTexts(dto);
    return this.transactions.book(async (tx, by) => {
      const item = orNotFound(await tx.item.findUnique({ where: { id } }), 'item', id);
      refuseIfStale('item', seen, item.version);
      const settings = withLabels(item.settings, dto);
      const after = await tx.item.update({
        where: { id },
        data: { settings, version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'label-settings.changed',
        subjectKind: 'item',
        subjectId: item.name,
      });
      return { ...itemSettings(after), usual: false, version: after.version };
    });
  }

  ofWorkshop(): Promise<WorkshopLabelSettingsView> {
    return this.transactions.read(async (tx) => {
      const workshop = await loadWorkshop(tx);
      return { ...workshopSettings(workshop), version: workshop.version };
    });
  }

  changeWorkshop(seen: number, dto: WorkshopLabelSettingsDto): Promise<WorkshopLabelSettingsView> {
    if (dto.stock !== null) orRefuse(readStock(dto.stock));
    refuseProblems(
      dto.sharedLines.flatMap(({ allergen }, index) =>
        (ALLERGENS as readonly string[]).includes(allergen)
          ? []
          : [{ pointer: `/sharedLines/${index}/allergen`, message: say`is no known allergen` }],
      ),
    );
    return this.transactions.book(async (tx, by) => {
      const before = await loadWorkshop(tx);
      refuseIfStale('workshop', seen, before.version);
      const after = await tx.workshop.update({
        where: { id: 1 },
        data: { settings: withLabels(before.settings, dto), version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'label-settings.changed',
        subjectKind: 'workshop',
        subjectId: after.name,
      });
      return { ...workshopSettings(after), version: after.version };
    });
  }
}
