import { Injectable } from '@nestjs/common';
import { paperLanguage, type PaperContext } from '../../documents';
import { Clock } from '../../platform/clock/clock';
import type { Tx } from '../../platform/database/prisma';
import { currentActor } from '../../platform/requests/request-context';
import { loadWorkshop } from '../workshop';
import type { PaperQuery } from './papers.dto';

/** What every paper of the workshop is told: whose it is, its language, who prints it and when. */
@Injectable()
export class PaperContexts {
  constructor(private readonly clock: Clock) {}

  async of(tx: Tx, query: PaperQuery): Promise<PaperContext> {
    const workshop = await loadWorkshop(tx);
    return {
      language: query.language ?? paperLanguage(workshop.languages),
      workshop: {
        name: workshop.name,
        addressLines: workshop.addressLines,
        phone: workshop.phone,
        email: workshop.email,
      },
      timeZone: workshop.timeZone,
      page: query.page ?? 'A4',
      createdAt: this.clock.now(),
      printedBy: currentActor().userName,
    };
  }
}
