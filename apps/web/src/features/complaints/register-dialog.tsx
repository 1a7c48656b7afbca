import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking, useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, DayField, LongField, OneOf, TextField } from '../../shared/kit/fields';
import { useScans } from '../../shared/scan/use-scans';
import { complaintMessages } from './messages';

type Kind = components['schemas']['RegisterComplaintDto']['kind'];
const KINDS: readonly Kind[] = [
  'allergic_reaction',
  'illness',
  'foreign_body',
  'taste',
  'look',
  'packaging',
  'other',
];

const Matches = (props: {
  readonly text: string;
  readonly value: string;
  readonly onChange: (code: string) => void;
}) => {
  const t = useMessages(complaintMessages);
  const formats = useFormats();
  const matches = useRead(
    '/api/complaints/code-search',
    { params: { query: { text: props.text } } },
    { enabled: props.text.trim().length >= 3, keep: true },
  );
  if (matches.data === undefined || matches.data.length === 0) return null;
  return (
    <OneOf
      label={t('match')}
      value={props.value}
      onChange={props.onChange}
      choices={[
        ...matches.data.slice(0, 6).map((match) => ({
          value: match.lotCode,
          label: `${match.lotCode} · ${match.itemName} · ${formats.day(match.madeOn)} · ${Number(match.distance) === 0 ? t('exact') : t('near', { distance: formats.number(match.distance) })}`,
        })),
        { value: '', label: t('matchNone') },
      ]}
    />
  );
};

/** Writes a complaint down while the customer is on the phone. */
export const RegisterDialog = (props: { readonly code: string; readonly onClose: () => void }) => {
  const t = useMessages(complaintMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const book = useBooking();
  const [form, setForm] = useState({
    codeAsRead: props.code,
    lotCode: props.code,
    kind: 'taste' as Kind,
    what: '',
    customer: '',
    receivedOn: formats.today(),
  });
  const put = (part: Partial<typeof form>): void => setForm((now) => ({ ...now, ...part }));
  useScans((codeAsRead) => put({ codeAsRead, lotCode: codeAsRead }));
  return (
    <EditDialog
      title={t('register')}
      size="lg"
      onClose={props.onClose}
      onSave={() =>
        book({
          path: '/api/complaints',
          body: {
            codeAsRead: form.codeAsRead,
            ...(form.lotCode === '' ? {} : { lotCode: form.lotCode }),
            kind: form.kind,
            what: form.what,
            customer: form.customer === '' ? null : form.customer,
            receivedOn: form.receivedOn,
          },
          label: t('bookLabel', { what: form.what.slice(0, 40) }),
          lane: 'complaints',
        })
      }
    >
      {(errors) => (
        <>
          <TextField
            label={t('codeAsRead')}
            hint={t('codeHint')}
            value={form.codeAsRead}
            maxLength={120}
            onChange={(codeAsRead) => put({ codeAsRead, lotCode: '' })}
            error={errors['codeAsRead']}
            required
          />
          <Matches
            text={form.codeAsRead}
            value={form.lotCode}
            onChange={(lotCode) => put({ lotCode })}
          />
          <ChoiceField
            label={t('kind')}
            value={form.kind}
            onChange={(kind) => put({ kind: kind as Kind })}
            choices={KINDS.map((kind) => ({ value: kind, label: word(kind) }))}
          />
          <LongField
            label={t('what')}
            value={form.what}
            onChange={(what) => put({ what })}
            error={errors['what']}
            required
          />
          <TextField
            label={t('customer')}
            value={form.customer}
            maxLength={300}
            onChange={(customer) => put({ customer })}
            error={errors['customer']}
          />
          <DayField
            label={t('day')}
            value={form.receivedOn}
            onChange={(receivedOn) => put({ receivedOn })}
            error={errors['receivedOn']}
          />
        </>
      )}
    </EditDialog>
  );
};
