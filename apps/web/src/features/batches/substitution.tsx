import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useAsk } from '../../api/use-ask';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { usePartName } from '../../shared/language/part-names';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Fact, Facts } from '../../shared/kit/page';
import { Allergens } from './substitution-allergens';
import { substitutionMessages } from './substitution-messages';

type Compared = components['schemas']['SubstitutionView'];

export interface Asked {
  readonly batchId: string;
  /** The component that the lot stands in for; empty when it comes in addition. */
  readonly itemId: string;
  readonly lotCode: string;
  /** Of an addition, when it is known already. */
  readonly quantity: string;
}

export const useSubstitution = ({ batchId, itemId, lotCode, quantity }: Asked) => {
  const amount = itemId === '' && /^\d+(\.\d+)?$/.test(quantity) ? quantity : '';
  return useAsk({
    queryKey: ['/api/batches/{id}/substitutions', batchId, itemId, lotCode, amount],
    enabled: lotCode !== '',
    queryFn: ({ signal }) =>
      must(
        api.POST('/api/batches/{id}/substitutions', {
          params: { path: { id: batchId } },
          body: {
            itemId: itemId === '' ? null : itemId,
            lotCode,
            ...(amount === '' ? {} : { quantity: amount }),
          },
          signal,
        }),
      ),
  });
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
  const { plannedQuantity: planned } = compared;
  if (planned === null) return null;
  const short = compareExact(compared.onHandQuantity, planned) < 0;
  return (
    <>
      <Facts>
        {compared.originalName !== null && (
          <Fact name={t('costOf', { item: compared.originalName })}>
            {cost(compared.originalCost)}
          </Fact>
        )}
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
              {compared.originalName === null
                ? t('adds', { substitute: compared.substituteName })
                : t('substitutes', {
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
            <Allergens changes={compared} />
            {compared.figures.length > 0 && <Figures compared={compared} />}
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
