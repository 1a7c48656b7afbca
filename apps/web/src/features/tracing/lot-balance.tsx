import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Fact, Facts, Section, State } from '../../shared/kit/page';
import { traceMessages } from './messages';

type Balance = components['schemas']['BalanceView'];

const linesOf = (balance: Balance) => [
  ...balance.sources.map((line) => ({ side: 'source' as const, ...line })),
  ...balance.ends.map((line) => ({ side: 'end' as const, ...line })),
  ...balance.named.map((line) => ({ side: 'named' as const, ...line })),
];

/** Where every gram of the lot is now, and whether the sum holds. */
export const LotBalance = ({ code }: { readonly code: string }) => {
  const t = useMessages(traceMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const nameOf = ({ kind, note }: { kind: string; note: string | null }): string => {
    if (note === null) return word(kind);
    return `${formats.label(word(kind))} ${kind === 'loss' ? word(note) : note}`;
  };
  const balance = useRead('/api/lots/{code}/balance', { params: { path: { code } } });
  return (
    <Section title={t('balance')}>
      <Loaded query={balance}>
        {(data) => (
          <>
            <Facts>
              <Fact name={t('state')}>
                <State
                  tone={
                    data.state === 'balanced'
                      ? 'good'
                      : data.state === 'difference-named'
                        ? 'plain'
                        : 'warn'
                  }
                >
                  {t(data.state)}
                </State>
              </Fact>
              <Fact name={t('accounted')}>{formats.percent(data.accountedPercent, 2)}</Fact>
              <Fact name={t('unexplained')}>
                {formats.quantity(data.unexplainedQuantity, data.unit)}
              </Fact>
            </Facts>
            <DataTable
              caption={t('balance')}
              rows={linesOf(data)}
              rowKey={(row, at) => `${row.side}-${row.kind}-${String(at)}`}
              csvName={`balance-${code}`}
              columns={[
                {
                  key: 'side',
                  title: t('direction'),
                  cell: (row) => t(row.side),
                  text: (row) => row.side,
                },
                {
                  key: 'kind',
                  title: t('kind'),
                  cell: nameOf,
                  text: (row) => row.kind,
                },
                {
                  key: 'quantity',
                  title: t('quantity'),
                  numeric: true,
                  cell: (row) => formats.quantity(row.quantity, data.unit),
                  text: (row) => row.quantity,
                },
                {
                  key: 'percent',
                  title: t('percent'),
                  numeric: true,
                  cell: (row) => formats.percent(row.percent, 2),
                  text: (row) => row.percent,
                },
              ]}
            />
          </>
        )}
      </Loaded>
    </Section>
  );
};
