import { Choice } from '../../platform/dto';
import { MARKETS } from '../workshop';

export class MatrixQuery {
  @Choice(MARKETS, { optional: true })
  market?: string;

  @Choice(['en', 'fr'], { optional: true })
  language?: string;

  @Choice(['A4', 'LETTER'], { optional: true })
  page?: string;
}
