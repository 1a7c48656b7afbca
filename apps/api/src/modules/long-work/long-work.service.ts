import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import { takeKeyAway } from '../../platform/idempotency/replay';
import { stepOfWork, stopWork } from '../../platform/long-work/long-work';
import { currentActor } from '../../platform/requests/request-context';
import type { StepView, StoppedWorkView } from './long-work.dto';

@Injectable()
export class LongWorkService {
  constructor(private readonly database: DatabaseService) {}

  step(id: string): StepView {
    return stepOfWork(id) ?? { done: null, total: null };
  }

  /** First for good, in the record; then whatever is still being prepared for it ends early. */
  async stop(key: string): Promise<StoppedWorkView> {
    const stopped = await takeKeyAway(this.database.client, key, currentActor().userId);
    if (stopped) stopWork(key);
    return { outcome: stopped ? 'stopped' : 'booked' };
  }
}
