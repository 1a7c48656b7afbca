import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Section } from '../../shared/kit/page';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { LotLink } from '../../shared/lots/lot-table';
import { batchMessages } from '../../shared/batches/messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

type Draw = components['schemas']['DrawView'];

/** What was weighed in; a wrong one is put back, never crossed out. */
export const BatchDraws = (props: { readonly batch: Batch; readonly mayBook: boolean }) => {
  const { batch, mayBook } = props;
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const book = useBatchBooking(batch);
  const [open, setOpen] = useState<Draw>();
  return (
    <Section title={t('draws')}>
      <DataTable
        caption={t('draws')}
        rows={batch.draws}
        rowKey={({ id }) => id}
        csvName={`draws-${batch.code}`}
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (draw) => (
              <>
                {draw.itemName}
                {draw.reason !== null && <div className="quiet">{draw.reason}</div>}
              </>
            ),
            text: (draw) => draw.itemName,
          },
          {
            key: 'lot',
            title: t('lot'),
            cell: (draw) => <LotLink code={draw.lotCode} />,
            text: (draw) => draw.lotCode,
          },
          {
            key: 'role',
            title: t('role'),
            cell: (draw) => word(draw.role),
            text: (draw) => draw.role,
          },
          {
            key: 'quantity',
            title: t('quantity'),
            numeric: true,
            cell: (draw) => formats.quantity(draw.quantity, draw.unit),
            text: (draw) => draw.quantity,
          },
          {
            key: 'at',
            title: t('since'),
            cell: (draw) => formats.instant(draw.at),
            text: (draw) => draw.at,
          },
          {
            key: 'back',
            title: '',
            cell: (draw) =>
              draw.reversed ? (
                <em>{t('reversed')}</em>
              ) : (
                mayBook &&
                Number(draw.quantity) > 0 && (
                  <Button variant="default" onClick={() => setOpen(draw)}>
                    {t('putBack')}
                  </Button>
                )
              ),
            text: (draw) => (draw.reversed ? 'reversed' : ''),
          },
        ]}
      />
      {open !== undefined && (
        <ReasonDialog
          title={t('putBackTitle', {
            quantity: formats.quantity(open.quantity, open.unit),
            lot: open.lotCode,
          })}
          confirm={t('putBack')}
          onClose={() => setOpen(undefined)}
          onReason={(reason) =>
            book(
              '/api/batches/{id}/draws/{drawId}/reversal',
              { reason },
              t('putBackLabel', { lot: open.lotCode }),
              {
                drawId: open.id,
              },
            )
          }
        />
      )}
    </Section>
  );
};
