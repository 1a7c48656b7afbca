import { useQuery } from '@tanstack/react-query';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useAllergenName } from '../../shared/language/allergen-names';
import { useMessages } from '../../shared/language/catalogue';
import { usePartName } from '../../shared/language/part-names';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Fact, Facts, State } from '../../shared/kit/page';
import { substitutionMessages } from './substitution-messages';

type Compared = components['schemas']['SubstitutionView'];

export const useSubstitution = (batchId: string, itemId: string, lotCode: string) =>
  useQuery({
    queryKey: ['/api/batches/{id}/substitutions', batchId, itemId, lotCode],
    enabled: itemId !== '' && lotCode !== '',
    queryFn: ({ signal }) =>
      must(
        api.POST('/api/batches/{id}/substitutions', {
          params: { path: { id: batchId } },
          body: { itemId, lotCode },
          signal,
        }),
      ),
  });

const Allergens = ({ compared }: { readonly compared: Compared }) => {
  const t = useMessages(substitutionMessages);
  const word = useServiceWords();
  const allergenName = useAllergenName();
  if (compared.allergens.length === 0) {
    return (
      <p>
        <State>{t('sameAllergens')}</State>
      </p>
    );
  }
  return (
    <ul className="plain-list">
      {compared.allergens.map((row) => (
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

const Figures = ({ compared }: { readonly compared: Compared }) => {
  const t = useMessages(substitutionMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const partName = usePartName();
  const inPercent = (figure: string): boolean =>
    figure !== 'waterActivity' && figure !== 'sweetness';
  const shown = (figure: string, value: string | null): string => {
    if (value === null) return word('unknown');
    return inPercent(figure) ? formats.percent(value, 2) : formats.number(value, 2);
  };
  const name = (figure: string): string => {
    if (figure === 'waterActivity') return t('waterEstimate');
    return figure === 'sweetness' ? t('sweetness') : partName(figure);
  };
  return (
    <DataTable
      caption={t('figures')}
      rows={compared.figures}
      rowKey={({ figure }) => figure}
      small
      columns={[
        {
          key: 'figure',
          title: t('figures'),
          cell: (row) => name(row.figure),
          text: (row) => name(row.figure),
        },
        {
          key: 'before',
          title: t('asWritten'),
          numeric: true,
          cell: (row) => shown(row.figure, row.before),
          text: (row) => row.before ?? '',
        },
        {
          key: 'after',
          title: t('withThisLot'),
          numeric: true,
          cell: (row) =>
            row.before === row.after ? (
              shown(row.figure, row.after)
            ) : (
              <strong>{shown(row.figure, row.after)}</strong>
            ),
          text: (row) => row.after ?? '',
        },
      ]}
    />
  );
};

const Costs = ({ compared }: { readonly compared: Compared }) => {
  const t = useMessages(substitutionMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const cost = (amount: string | null): string =>
    amount === null ? word('unknown') : formats.money(amount);
  const short = compareExact(compared.onHandQuantity, compared.plannedQuantity) < 0;
  return (
    <>
      <Facts>
        <Fact name={t('costOf', { item: compared.originalName })}>
          {cost(compared.originalCost)}
        </Fact>
        <Fact name={t('costOf', { item: compared.substituteName })}>
          {cost(compared.substituteCost)}
        </Fact>
      </Facts>
      {short && <Caution>{t('notEnough')}</Caution>}
    </>
  );
};

/** What changes in the product when this lot stands in for a component of the recipe. */
export const Substitution = (props: { readonly query: ReturnType<typeof useSubstitution> }) => {
  const t = useMessages(substitutionMessages);
  return (
    <section aria-label={t('substitution')} className="stack" aria-live="polite">
      <Loaded query={props.query}>
        {(compared) => (
          <>
            <h3>
              {t('substitutes', {
                substitute: compared.substituteName,
                original: compared.originalName,
              })}
            </h3>
            {compared.notUsable !== null && (
              <div className="problem" role="alert">
                <p className="problem-title">{t('notUsable')}</p>
                <p>{compared.notUsable}</p>
              </div>
            )}
            <Allergens compared={compared} />
            <Figures compared={compared} />
            <Costs compared={compared} />
            {compared.cautions.map((caution) => (
              <Caution key={caution.code + caution.text}>{caution.text}</Caution>
            ))}
            <Caution>{t('caution')}</Caution>
          </>
        )}
      </Loaded>
    </section>
  );
};
