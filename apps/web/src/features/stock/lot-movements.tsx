import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking, useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Loaded } from '../../shared/kit/loaded';
import { Section } from '../../shared/kit/page';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { stockMessages } from '../../shared/lots/messages';

type Movement = components['schemas']['MovementView'];
const REVERSIBLE = ['wasted', 'counted', 'sampled', 'returned'];

/** The lot's whole ledger; a wrong count is put right by an opposite entry. */
export const LotMovements = (props: { readonly code: string; readonly unit: string }) => {
  const { code, unit } = props;
  const t = useMessages(stockMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const may = useMay('maker', 'seller');
  const book = useBooking();
  const movements = useRead('/api/lots/{code}/movements', { params: { path: { code } } });
  const [open, setOpen] = useState<Movement>();
  const canReverse = (row: Movement): boolean =>
    may && REVERSIBLE.includes(row.kind) && !row.reversed && row.reversesId === null;
  return (
    <Section title={t('movements')}>
      <Loaded query={movements}>
        {(rows) => (
          <DataTable
            caption={t('movements')}
            terse
            rows={rows}
            rowKey={({ id }) => id}
            csvName={`movements-${code}`}
            columns={[
              {
                key: 'at',
                title: t('when'),
                tight: true,
                cell: (row) => formats.instant(row.at),
                text: (row) => row.at,
              },
              {
                key: 'kind',
                title: t('what'),
                cell: (row) => word(row.kind),
                text: (row) => row.kind,
              },
              {
                key: 'quantity',
                title: t('quantity'),
                numeric: true,
                cell: (row) => formats.quantity(row.quantity, unit),
                text: (row) => row.quantity,
              },
              {
                key: 'for',
                title: t('batch'),
                cell: (row) => {
                  const paper = row.batchCode ?? row.dispatchCode;
                  return (
                    paper !== null && (
                      <Link to="/found" search={{ text: paper }}>
                        <code>{paper}</code>
                      </Link>
                    )
                  );
                },
                text: (row) => row.batchCode ?? row.dispatchCode ?? '',
              },
              { key: 'by', title: t('who'), cell: (row) => row.by, text: (row) => row.by },
              {
                key: 'why',
                title: t('why'),
                wide: true,
                cell: (row) => (
                  <>
                    {row.reason}
                    {row.reversed && <em> ({t('wasPutRight')})</em>}
                    {canReverse(row) && (
                      <Button variant="default" onClick={() => setOpen(row)}>
                        {t('putRight')}
                      </Button>
                    )}
                  </>
                ),
                text: (row) => row.reason ?? '',
              },
            ]}
          />
        )}
      </Loaded>
      {open !== undefined && (
        <ReasonDialog
          title={t('putRightTitle')}
          confirm={t('putRight')}
          onClose={() => setOpen(undefined)}
          onReason={(reason) =>
            book({
              path: '/api/lots/{code}/adjustments/{movementId}/reversal',
              at: { code, movementId: open.id },
              body: { reason },
              label: `${t('putRight')} ${code}`,
              lane: `lot-${code}`,
            })
          }
        >
          <p>{t('putRightLead')}</p>
        </ReasonDialog>
      )}
    </Section>
  );
};
