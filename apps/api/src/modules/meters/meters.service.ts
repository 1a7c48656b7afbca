import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { checkSaltTemperatures } from '../../domain/water-activity';
import { Decimal } from '../../domain/units';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orRefuse, refuseImpossible } from '../../platform/problems';
import type { CalibrateDto, CalibrationQuery, CalibrationView } from './meters.dto';
import { calibrationView, createCalibration, listCalibrations } from './meters.repository';

@Injectable()
export class MetersService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: CalibrationQuery): Promise<Page<CalibrationView>> {
    const before = decodeCursor(query.after, 2);
    const limit = limitOf(query);
    const rows = await listCalibrations(this.database.client, limit, query.instrument, before);
    return pageOf(rows, limit, calibrationView, (row) => [row.at.toISOString(), row.id]);
  }

  calibrate(dto: CalibrateDto): Promise<CalibrationView> {
    refuseImpossible(
      dto.checks.map(({ reading: value }, index) => ({
        pointer: `/checks/${index}/reading`,
        measure: 'water_activity',
        value,
      })),
    );
    orRefuse(checkSaltTemperatures(dto.checks.map(({ tempC }) => new Decimal(tempC))));
    return this.transactions.book(async (tx, by) => {
      const calibration = await createCalibration(tx, by, dto);
      noteInJournal(by, {
        action: 'meter.calibrated',
        subjectKind: 'meter',
        subjectId: dto.instrument,
        detail: { passed: calibration.passed },
      });
      return calibrationView(calibration);
    });
  }
}
