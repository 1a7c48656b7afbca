import type { Caution } from '../composition';
import { GROWTH_CAUTION } from '../growth-limits';
import { Decimal } from '../units';
import { growthLimit, isTested, type LifeFacts, type LifeLimit } from './limits';
import { say } from '../words/say';

/** Water activity above which a moist filling has been seen to crack shells (Slettengren 2010). */
const CRACKS_FROM = new Decimal('0.86');

/** Cautions that stand beside a life; `cap` is the limit that rules it. */
export const lifeCautions = (facts: LifeFacts, cap: LifeLimit | null): Caution[] => {
  const { stated, waterActivity } = facts;
  const cautions: Caution[] = [{ code: 'growth-limits', level: 'note', text: GROWTH_CAUTION }];
  const caution = (when: boolean, code: string, text: string): void => {
    if (when) cautions.push({ code, level: 'warning', text });
  };
  caution(
    !isTested(stated),
    'life-not-tested',
    say`No storage test or measurement with a document stands behind this life. Bands are common practice. The local authority and a laboratory decide what the label may say.`,
  );
  caution(
    stated.days !== null && cap !== null && cap.kind !== 'stated',
    'life-cut',
    say`The stated life of ${stated.days ?? 0} days is cut to ${cap?.capDays ?? 0}: ${cap?.reason ?? ''}`,
  );
  const tested = longerThanPractice(facts);
  caution(tested !== null, 'longer-than-practice', tested ?? '');
  caution(
    facts.isFilling && waterActivity.worst?.greaterThan(CRACKS_FROM) === true,
    'moisture-migration',
    say`A moist filling dries through a thin shell and can crack it: no thin caps, pinholes or wet rims.`,
  );
  return cautions;
};

/** A tested life that is longer than practice rests wholly on its document. */
const longerThanPractice = ({ stated, waterActivity, isFilling }: LifeFacts): string | null => {
  const { capDays } = growthLimit(waterActivity);
  if (!isFilling || !isTested(stated) || stated.days === null || capDays === null) return null;
  if (stated.days <= capDays) return null;
  return say`${stated.days} days is longer than common practice (${capDays} days). It rests wholly on the document “${stated.document ?? ''}”.`;
};
