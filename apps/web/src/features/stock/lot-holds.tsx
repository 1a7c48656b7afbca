import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Caution, Section, State } from '../../shared/kit/page';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { stockMessages } from '../../shared/lots/messages';

type Lot = components['schemas']['LotView'];
type Hold = components['schemas']['HoldView'];

const HoldLine = (props: { readonly hold: Hold; readonly onRelease: (() => void) | undefined }) => {
  const { hold, onRelease } = props;
  const t = useMessages(stockMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const stands = hold.releasedAt === null;
  return (
    <li className="row line">
      <State tone={stands ? 'caution' : 'plain'}>{stands ? t('standing') : word('closed')}</State>
      <strong>{word(hold.kind)}</strong>
      <span>{hold.reason}</span>
      <span className="quiet">
        {t('placed', { by: hold.placedBy, at: formats.instant(hold.placedAt) })}
      </span>
      {hold.releasedAt !== null && (
        <span className="quiet">
          {t('released', {
            by: hold.releasedBy ?? '',
            at: formats.instant(hold.releasedAt),
            why: hold.releaseReason ?? '',
          })}
        </span>
      )}
      {onRelease !== undefined && (
        <Button variant="default" onClick={onRelease}>
          {t('release')}
        </Button>
      )}
    </li>
  );
};

/** Why the lot is or was on hold, and the owner's way of letting it go. */
export const LotHolds = ({ lot }: { readonly lot: Lot }) => {
  const t = useMessages(stockMessages);
  const owner = useMay();
  const book = useBooking();
  const [open, setOpen] = useState<Hold>();
  const { code } = lot;
  if (lot.holds.length === 0) return null;
  return (
    <Section title={t('holds')}>
      <ul className="plain-list">
        {lot.holds.map((hold) => (
          <HoldLine
            key={hold.id}
            hold={hold}
            onRelease={owner && hold.releasedAt === null ? () => setOpen(hold) : undefined}
          />
        ))}
      </ul>
      {open !== undefined && (
        <ReasonDialog
          title={t('releaseTitle', { code })}
          confirm={t('release')}
          onClose={() => setOpen(undefined)}
          onReason={(reason) =>
            book({
              path: '/api/lots/{code}/holds/{holdId}/release',
              at: { code, holdId: open.id },
              body: { reason },
              label: t('releaseLabel', { code }),
              lane: `lot-${code}`,
            })
          }
        >
          <p>{open.reason}</p>
          <Caution>{t('releaseCaution')}</Caution>
        </ReasonDialog>
      )}
    </Section>
  );
};
