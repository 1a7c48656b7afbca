import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { State } from '../../shared/kit/page';
import type { AnalysisView } from './analysis';
import { recipeMessages } from './messages';
import { usePartName } from '../../shared/language/part-names';

/** Balance against common practice, and nutrition, as tables that open. */
export const AnalysisTables = ({ analysis }: { readonly analysis: AnalysisView }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const partName = usePartName();
  return (
    <>
      {analysis.chocolateShare !== null && (
        <p>
          {formats.label(t('chocolate'))}{' '}
          <strong>{formats.percent(analysis.chocolateShare.chocolatePercent)}</strong>{' '}
          <State tone={analysis.chocolateShare.enough ? 'good' : 'caution'}>
            {analysis.chocolateShare.reason}
          </State>
        </p>
      )}
      {analysis.balance.length > 0 && (
        <details>
          <summary>{t('balance')}</summary>
          <DataTable
            caption={t('balance')}
            rows={analysis.balance}
            rowKey={(row) => row.quantity}
            csvName="balance"
            columns={[
              {
                key: 'what',
                title: t('dough'),
                cell: (row) => partName(row.quantity),
                text: (row) => row.quantity,
              },
              {
                key: 'value',
                title: t('percent'),
                numeric: true,
                cell: (row) => formats.number(row.value, 2),
                text: (row) => row.value,
              },
              {
                key: 'range',
                title: t('limit'),
                numeric: true,
                cell: (row) =>
                  t('range', { low: formats.number(row.low), high: formats.number(row.high) }),
                text: (row) => `${row.low}-${row.high}`,
              },
              {
                key: 'verdict',
                title: '',
                cell: (row) => (
                  <State tone={row.verdict === 'in' ? 'good' : 'caution'}>
                    {word(row.verdict)}
                  </State>
                ),
                text: (row) => row.verdict,
              },
              {
                key: 'reason',
                title: t('source'),
                cell: (row) => `${row.reason} (${row.source})`,
                text: (row) => row.reason,
              },
            ]}
          />
        </details>
      )}
      <details>
        <summary>{t('nutrition')}</summary>
        <p>
          {analysis.energy === null
            ? t('energyUnknown')
            : t('energy', {
                kilojoules: formats.number(analysis.energy.kJ, 0),
                kilocalories: formats.number(analysis.energy.kcal, 0),
              })}
        </p>
        <DataTable
          caption={t('nutrition')}
          rows={analysis.nutrition}
          rowKey={(row) => row.nutrient}
          csvName="nutrition"
          columns={[
            {
              key: 'nutrient',
              title: t('nutrition'),
              cell: (row) => partName(row.nutrient),
              text: (row) => row.nutrient,
            },
            {
              key: 'value',
              title: '100 g',
              numeric: true,
              cell: (row) =>
                row.per100g === null ? t('notStated') : formats.number(row.per100g, 2),
              text: (row) => row.per100g ?? '',
            },
          ]}
        />
      </details>
    </>
  );
};
