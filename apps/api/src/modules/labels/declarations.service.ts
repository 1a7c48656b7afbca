import { Injectable } from '@nestjs/common';
import { Transactions } from '../../platform/database/transactions';
import { ProblemError } from '../../platform/problems';
import { LANGUAGES } from '../workshop';
import { composeForLot } from './compose-for-lot';
import { declarationView } from './declarations.view';
import type { DeclarationQuery, DeclarationView } from './declarations.dto';
import { say } from '../../domain/words/say';

const readLanguages = (text: string | undefined): string[] | undefined => {
  if (text === undefined) return undefined;
  const codes = text.split(',').map((code) => code.trim());
  if (codes.every((code) => (LANGUAGES as readonly string[]).includes(code))) return codes;
  throw new ProblemError(
    'malformed',
    400,
    say`Not a language of labels`,
    say`Labels speak ${LANGUAGES.join(', ')}.`,
  );
};

@Injectable()
export class DeclarationsService {
  constructor(private readonly transactions: Transactions) {}

  /** What a label of this lot would say, and what keeps it from saying it. */
  get(lotCode: string, query: DeclarationQuery): Promise<DeclarationView> {
    const languages = readLanguages(query.languages);
    return this.transactions.read(async (tx) => {
      const today = this.transactions.today();
      const wanted = { market: query.market, languages };
      return declarationView(await composeForLot(tx, lotCode, today, wanted));
    });
  }
}
