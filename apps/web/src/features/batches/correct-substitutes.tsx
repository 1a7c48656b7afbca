import { ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { useMessages } from '../../shared/language/catalogue';
import { TickField } from '../../shared/kit/fields';
import { Allergens } from './substitution-allergens';
import { substitutionMessages } from './substitution-messages';

type Changes = Pick<components['schemas']['SubstitutionView'], 'allergens'>;

/** What lots that the recipe doesn't name change, by lot, and which of them a person has accepted. */
export interface ForeignLots {
  readonly changes: Readonly<Record<string, Changes>>;
  readonly accepted: readonly string[];
}

export const noForeignLots: ForeignLots = { changes: {}, accepted: [] };

/** The service refused a lot that nobody accepted: its differences are shown, to be accepted. */
export const foreignIn = (cause: unknown): readonly [lotCode: string, Changes] | undefined => {
  if (!(cause instanceof ProblemError)) return undefined;
  const { type, facts } = cause.problem;
  if (!type.endsWith('/substitute-not-accepted')) return undefined;
  const { lotCode, allergens } = (facts ?? {}) as Partial<Changes> & { lotCode?: string };
  return lotCode === undefined || allergens === undefined ? undefined : [lotCode, { allergens }];
};

/** Each lot that the recipe doesn't name, with what it changes and a tick for who has read it. */
export const LotsToAccept = (props: {
  readonly foreign: ForeignLots;
  readonly onAccept: (lotCode: string, yes: boolean) => void;
}) => {
  const t = useMessages(substitutionMessages);
  const { changes, accepted } = props.foreign;
  return Object.entries(changes).map(([lotCode, changed]) => (
    <section key={lotCode} className="stack-tight" aria-label={t('substitution')}>
      <h4>{t('changesOf', { lot: lotCode })}</h4>
      <Allergens changes={changed} />
      <TickField
        label={t('acceptAddition')}
        checked={accepted.includes(lotCode)}
        onChange={(yes) => props.onAccept(lotCode, yes)}
      />
    </section>
  ));
};
