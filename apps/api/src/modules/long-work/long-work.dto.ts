import { Choice, Whole } from '../../platform/dto';

export class StepView {
  @Whole({ nullable: true, description: 'Null where the work can’t know it, or is not under way' })
  done: number | null;

  @Whole({ nullable: true })
  total: number | null;
}

export class StoppedWorkView {
  @Choice(['stopped', 'booked'], {
    description: 'Stopped: nothing was booked under the key, nor ever will be',
  })
  outcome: 'stopped' | 'booked';
}
