import type { components } from '../../api/schema';
import { useAllergenName } from '../../shared/language/allergen-names';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { State } from '../../shared/kit/page';
import { substitutionMessages } from './substitution-messages';

/** The allergens of the product that change, before and after; what gets worse is marked. */
export const Allergens = (props: {
  readonly changes: Pick<components['schemas']['SubstitutionView'], 'allergens'>;
}) => {
  const t = useMessages(substitutionMessages);
  const word = useServiceWords();
  const allergenName = useAllergenName();
  const { allergens } = props.changes;
  if (allergens.length === 0) {
    return (
      <p>
        <State>{t('sameAllergens')}</State>
      </p>
    );
  }
  return (
    <ul className="plain-list">
      {allergens.map((row) => (
        <li key={row.allergen}>
          <State tone={row.isWorse ? 'warn' : 'plain'}>
            {t('changesTo', { before: word(row.before), after: word(row.after) })}
          </State>{' '}
          <strong>{allergenName(row.allergen)}</strong>{' '}
          {row.isWorse && <span>{t('labelChanges')}</span>}
        </li>
      ))}
    </ul>
  );
};
