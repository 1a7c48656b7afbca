import { Text } from '../../platform/dto';

export class ChangesView {
  @Text({ empty: true, description: 'Another text whenever anything was booked since' })
  mark: string;
}
