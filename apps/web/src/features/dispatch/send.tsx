import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { fieldErrors, ProblemError, problemCode } from '../../api/problem';
import { useBooking } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { useSearchText } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useDraft } from '../../shared/offline/use-draft';
import { useMessages } from '../../shared/language/catalogue';
import { ChoiceField, DayField, OneOf, TextField } from '../../shared/kit/fields';
import { kitMessages } from '../../shared/kit/messages';
import { Page, Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { CustomerPicker } from '../../shared/pickers/party-pickers';
import { ScanField } from '../../shared/scan/scan-field';
import { dispatchMessages } from './messages';
import { OrderWanted } from './order-wanted';
import type { SendLine } from './send-draft';
import { SendLines } from './send-lines';
import { useScannedLots } from './use-scanned-lots';

interface SendForm {
  readonly to: 'counter' | 'customer';
  readonly customerId: string;
  readonly sentOn: string;
  readonly note: string;
  readonly shortLifeReason: string;
  readonly orderId: string;
  readonly lines: readonly SendLine[];
}

const bodyOf = (form: SendForm) => ({
  customerId: form.to === 'customer' ? form.customerId : null,
  ...(form.sentOn === '' ? {} : { sentOn: form.sentOn }),
  lines: form.lines.map(({ lotCode, quantity }) => ({ lotCode, quantity })),
  ...(form.note === '' ? {} : { note: form.note }),
  ...(form.orderId === '' ? {} : { orderId: form.orderId }),
  ...(form.shortLifeReason === '' ? {} : { shortLifeReason: form.shortLifeReason }),
});

const useSend = (form: SendForm, clear: () => void) => {
  const t = useMessages(dispatchMessages);
  const book = useBooking();
  const navigate = useNavigate();
  const [state, setState] = useState<{ working: boolean; error?: unknown; waits?: boolean }>({
    working: false,
  });
  const go = async (): Promise<void> => {
    setState({ working: true });
    try {
      const label = t('bookLabel', { count: form.lines.length, who: t(form.to) });
      const done = await book({
        path: '/api/dispatches',
        body: bodyOf(form),
        label,
        lane: 'dispatches',
      });
      clear();
      if (done.kind === 'done') await navigate({ to: '/out' });
      else setState({ working: false, waits: true });
    } catch (error) {
      setState({ working: false, error });
    }
  };
  return { ...state, go };
};

/** Books what goes out: to a customer, or over the counter. */
const Send = () => {
  const t = useMessages(dispatchMessages);
  const kit = useMessages(kitMessages);
  const formats = useFormats();
  const orderId = useSearchText('order') ?? '';
  const customerId = useSearchText('customer') ?? '';
  const empty: SendForm = {
    to: customerId === '' ? 'counter' : 'customer',
    customerId,
    sentOn: formats.today(),
    note: '',
    shortLifeReason: '',
    orderId,
    lines: [],
  };
  const {
    value: form,
    change,
    clear,
  } = useDraft(orderId === '' ? 'dispatch' : `dispatch.${orderId}`, empty);
  const put = (part: Partial<SendForm>): void => change((now) => ({ ...now, ...part }));
  const boxes = useList('/api/lots', { kind: 'box', state: 'on_hand' }).rows;
  const pieces = useList('/api/lots', { kind: 'piece', state: 'on_hand' }).rows;
  const sending = useSend(form, clear);
  const { add, scanError } = useScannedLots((withLots) =>
    change((now) => ({ ...now, lines: withLots(now.lines) })),
  );
  const problem = sending.error instanceof ProblemError ? sending.error.problem : undefined;
  const shortLife =
    form.shortLifeReason !== '' || (problem !== undefined && problemCode(problem).includes('life'));
  return (
    <Page title={t('send')}>
      {sending.waits === true && (
        <p className="caution" role="status">
          {kit('waits')}
        </p>
      )}
      {form.orderId !== '' && <OrderWanted id={form.orderId} />}
      <div className="columns section">
        <OneOf
          label={t('toWhom')}
          value={form.to}
          onChange={(to) => put({ to: to as SendForm['to'] })}
          choices={[
            { value: 'counter', label: t('counter') },
            { value: 'customer', label: t('customer') },
          ]}
        />
        {form.to === 'customer' && (
          <CustomerPicker
            value={form.customerId}
            onChange={(chosen) => put({ customerId: chosen })}
            required
          />
        )}
        <DayField label={t('day')} value={form.sentOn} onChange={(sentOn) => put({ sentOn })} />
      </div>
      <Section title={t('what')}>
        <div className="columns columns-end">
          <ScanField id="send-scan" label={t('scanBox')} onText={add} />
          <ChoiceField
            label={t('chooseLot')}
            value=""
            empty="–"
            onChange={(code) => code !== '' && add(code)}
            choices={[...boxes, ...pieces]
              .filter((lot) => !lot.onHold && !lot.expired)
              .map((lot) => ({
                value: lot.code,
                label: `${lot.itemName} · ${lot.code} · ${formats.quantity(lot.onHandQuantity, lot.unit)}`,
              }))}
          />
        </div>
        <ProblemNotice error={scanError} />
        <SendLines
          lines={form.lines}
          errors={problem === undefined ? {} : fieldErrors(problem)}
          onChange={(lines) => put({ lines })}
        />
      </Section>
      <div className="narrow stack section">
        <TextField label={t('note')} value={form.note} onChange={(note) => put({ note })} />
        {shortLife && (
          <TextField
            label={t('shortLife')}
            value={form.shortLifeReason}
            onChange={(shortLifeReason) => put({ shortLifeReason })}
          />
        )}
      </div>
      <ProblemNotice error={sending.error} />
      <Button
        size="lg"
        loading={sending.working}
        disabled={
          form.lines.length === 0 ||
          form.lines.some(({ quantity }) => quantity === '') ||
          (form.to === 'customer' && form.customerId === '')
        }
        onClick={() => void sending.go()}
      >
        {t('book')}
      </Button>
    </Page>
  );
};

export default Send;
