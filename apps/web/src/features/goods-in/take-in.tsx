import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useBooking } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { newId } from '../../api/new-id';
import { useDraft } from '../../shared/offline/use-draft';
import { useMessages } from '../../shared/language/catalogue';
import { TextField } from '../../shared/kit/fields';
import { kitMessages } from '../../shared/kit/messages';
import { Page, Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { SupplierPicker } from '../../shared/pickers/party-pickers';
import { CartonScan } from './carton-scan';
import {
  emptyDelivery,
  emptyLine,
  lineBody,
  missingOf,
  type DeliveryDraft,
  type LineDraft,
} from './line-draft';
import { LineForm } from './line-form';
import { LinesSoFar } from './lines-so-far';
import { goodsInMessages } from './messages';

const useBookDelivery = (draft: DeliveryDraft, clear: () => void) => {
  const t = useMessages(goodsInMessages);
  const book = useBooking();
  const navigate = useNavigate();
  const [state, setState] = useState<{ working: boolean; error?: unknown; waits?: boolean }>({
    working: false,
  });
  const go = async (): Promise<void> => {
    setState({ working: true });
    try {
      const label = t('bookLabel', { supplier: draft.supplierName, count: draft.lines.length });
      const done = await book({
        path: '/api/deliveries',
        body: {
          supplierId: draft.supplierId,
          reference: draft.reference === '' ? null : draft.reference,
          lines: draft.lines.map(lineBody),
        },
        label,
        lane: `delivery-${newId()}`,
      });
      clear();
      if (done.kind === 'done')
        await navigate({ to: '/goods-in/$id', params: { id: done.answer.id } });
      else setState({ working: false, waits: true });
    } catch (error) {
      setState({ working: false, error });
    }
  };
  return { ...state, go };
};

/** Takes a delivery in, line by line. The draft survives a reload. */
const TakeIn = () => {
  const t = useMessages(goodsInMessages);
  const kit = useMessages(kitMessages);
  const suppliers = useList('/api/suppliers').rows;
  const { value: draft, change, clear, restored } = useDraft('delivery', emptyDelivery);
  const [missing, setMissing] = useState<readonly (keyof LineDraft)[]>([]);
  const booking = useBookDelivery(draft, clear);
  const putLine = (part: Partial<LineDraft>): void =>
    change((now) => ({ ...now, line: { ...now.line, ...part } }));
  const addLine = (): void => {
    const lacking = missingOf(draft.line);
    setMissing(lacking);
    if (lacking.length > 0) return;
    const placeId = draft.line.placeId;
    change((now) => ({ ...now, lines: [...now.lines, now.line], line: { ...emptyLine, placeId } }));
  };
  const supplierName = (id: string): string => suppliers.find((one) => one.id === id)?.name ?? '';
  return (
    <Page title={t('takeIn')}>
      {restored && draft.lines.length > 0 && (
        <p className="quiet" role="status">
          {kit('draftKept')}{' '}
          <button type="button" className="link" onClick={clear}>
            {kit('dropDraft')}
          </button>
        </p>
      )}
      {booking.waits === true && (
        <p className="caution" role="status">
          {kit('waits')}
        </p>
      )}
      <div className="columns section">
        <SupplierPicker
          value={draft.supplierId}
          required
          onChange={(id) =>
            change((now) => ({ ...now, supplierId: id, supplierName: supplierName(id) }))
          }
        />
        <TextField
          label={t('reference')}
          value={draft.reference}
          maxLength={80}
          onChange={(reference) => change((now) => ({ ...now, reference }))}
        />
      </div>
      <Section title={t('line')}>
        <CartonScan onFound={putLine} />
        <form
          noValidate
          className="stack"
          onSubmit={(event) => {
            event.preventDefault();
            addLine();
          }}
        >
          <LineForm line={draft.line} missing={missing} onChange={putLine} />
          <div className="row">
            <Button type="submit" variant={draft.lines.length === 0 ? 'filled' : 'default'}>
              {t('addLine')}
            </Button>
          </div>
        </form>
      </Section>
      <LinesSoFar
        lines={draft.lines}
        onRemove={(at) =>
          change((now) => ({ ...now, lines: now.lines.filter((_, position) => position !== at) }))
        }
        onEdit={(at) =>
          change((now) => ({
            ...now,
            line: now.lines[at] ?? now.line,
            lines: now.lines.filter((_, position) => position !== at),
          }))
        }
      />
      <ProblemNotice error={booking.error} />
      <Button
        size="lg"
        loading={booking.working}
        disabled={draft.lines.length === 0 || draft.supplierId === ''}
        onClick={() => void booking.go()}
      >
        {t('book')}
      </Button>
      {draft.lines.length === 0 && <p className="quiet">{t('needLine')}</p>}
    </Page>
  );
};

export default TakeIn;
