import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { PaperLink } from '../../shared/kit/paper-link';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { AdjustDialog, MoveDialog } from './lot-dialogs';
import { LotFreezer } from './lot-freezer';
import { stockMessages } from '../../shared/lots/messages';

type Lot = components['schemas']['LotView'];

/** What can be done with the lot now; what is not possible is not offered. */
export const LotActions = ({ lot }: { readonly lot: Lot }) => {
  const t = useMessages(stockMessages);
  const mayBook = useMay('maker', 'seller');
  const maySell = useMay('seller');
  const book = useBooking();
  const [open, setOpen] = useState<'hold' | 'adjust' | 'move'>();
  const { code } = lot;
  const here = Number(lot.onHandQuantity) > 0;
  const sold = lot.itemKind === 'box' || lot.itemKind === 'piece';
  const close = (): void => setOpen(undefined);
  return (
    <nav aria-label={t('nowWhat')} className="actions section no-print">
      <Link to="/trace/lots/$code" params={{ code }} className="button-link button-link-main">
        {t('trace')}
      </Link>
      {sold && (
        <Link to="/packing/labels/$code" params={{ code }} className="button-link">
          {t('label')}
        </Link>
      )}
      {sold && here && maySell && !lot.onHold && (
        <Link to="/out/new" search={{ lot: code }} className="button-link">
          {t('send')}
        </Link>
      )}
      {sold && maySell && (
        <Link to="/trace/complaints" search={{ code }} className="button-link">
          {t('complain')}
        </Link>
      )}
      <PaperLink href={`/api/lots/${encodeURIComponent(code)}/tag.pdf`}>{t('tag')}</PaperLink>
      {mayBook && (
        <>
          {here && (
            <>
              <Button variant="default" onClick={() => setOpen('adjust')}>
                {t('adjust')}
              </Button>
              <Button variant="default" onClick={() => setOpen('move')}>
                {t('move')}
              </Button>
            </>
          )}
          {lot.itemKind !== 'packaging' && <LotFreezer lot={lot} />}
          <Button variant="default" onClick={() => setOpen('hold')}>
            {t('hold')}
          </Button>
        </>
      )}
      {open === 'hold' && (
        <ReasonDialog
          title={t('holdTitle', { code })}
          confirm={t('hold')}
          onClose={close}
          onReason={(reason) =>
            book({
              path: '/api/lots/{code}/holds',
              at: { code },
              body: { reason },
              label: t('holdLabel', { code }),
              lane: `lot-${code}`,
            })
          }
        >
          <p>{t('holdLead')}</p>
        </ReasonDialog>
      )}
      {open === 'adjust' && <AdjustDialog lot={lot} onClose={close} />}
      {open === 'move' && <MoveDialog lot={lot} onClose={close} />}
    </nav>
  );
};
