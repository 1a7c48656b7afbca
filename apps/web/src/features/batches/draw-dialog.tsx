import { useState } from 'react';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { OneOf, TextField } from '../../shared/kit/fields';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { useSettled } from '../../shared/kit/use-settled';
import { batchMessages } from '../../shared/batches/messages';
import { type DrawForm, drawBody, restOf, startOf } from './draw-form';
import { type Line, useDrawnLot } from './drawn-lot';
import { ForeignLot } from './foreign-lot';
import { useSubstitution } from './substitution';
import { substitutionMessages } from './substitution-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';
import { useStillMissing } from './use-still-missing';

const LotChoice = (props: {
  readonly line: Line;
  readonly lotCode: string;
  readonly onChange: (code: string) => void;
}) => {
  const t = useMessages(batchMessages);
  const formats = useFormats();
  const { line } = props;
  return (
    <OneOf
      label={t('lot')}
      value={props.lotCode}
      onChange={props.onChange}
      choices={line.proposedLots.map((lot) => ({
        value: lot.lotCode,
        label: [
          lot.lotCode,
          t('lotHere', { quantity: formats.quantity(lot.onHandQuantity, line.unit) }),
          lot.date === null ? '' : t('until', { day: formats.day(lot.date) }),
          lot.tankName === null ? '' : t('inTank', { tank: lot.tankName }),
        ]
          .filter((part) => part !== '')
          .join(' · '),
      }))}
    />
  );
};

interface Props {
  readonly batch: Batch;
  /** The recipe's line, or nothing for a lot that was scanned. */
  readonly line: Line | undefined;
  readonly scannedLot: string | undefined;
  readonly onClose: () => void;
}

/**
 * Weighs in from one lot; the lot that expires first is chosen until a person says otherwise. A lot
 * of another item is compared with what it stands in for, and taken only when that was accepted.
 */
export const DrawDialog = ({ batch, line: opened, scannedLot, onClose }: Props) => {
  const t = useMessages(batchMessages);
  const s = useMessages(substitutionMessages);
  const formats = useFormats();
  const book = useBatchBooking(batch);
  const [form, setForm] = useState<DrawForm>(() => startOf(opened, scannedLot));
  const put = (change: Partial<DrawForm>): void => setForm((now) => ({ ...now, ...change }));
  const drawn = useDrawnLot(batch, opened, form.lotCode);
  const { foreign } = drawn;
  const compared = useSubstitution({
    batchId: batch.id,
    itemId: form.insteadOf,
    lotCode: foreign?.code ?? '',
    quantity: useSettled(form.quantity),
  });
  const missing = useStillMissing(form, drawn, compared.data);
  const instead = batch.lines.find(({ itemId }) => itemId === form.insteadOf);
  const line = foreign === undefined ? drawn.line : instead;
  const unit = foreign?.unit ?? line?.unit ?? 'g';
  const proposed = line?.proposedLots.some(({ lotCode }) => lotCode === form.lotCode) ?? false;
  const rest = restOf(line);
  return (
    <EditDialog
      title={t('drawTitle', { item: drawn.line?.itemName ?? foreign?.itemName ?? form.lotCode })}
      confirm={t('draw')}
      size="lg"
      onClose={onClose}
      ready={missing.check}
      onSave={() =>
        book(
          '/api/batches/{id}/draws',
          drawBody(form, line, foreign === undefined ? undefined : compared.data),
          t('drawLabel', {
            quantity: formats.quantity(form.quantity, unit),
            lot: form.lotCode,
            batch: batch.code,
          }),
        )
      }
    >
      {(errors) => (
        <>
          {opened !== undefined && opened.proposedLots.length > 0 && (
            <LotChoice
              line={opened}
              lotCode={form.lotCode}
              onChange={(lotCode) => put({ lotCode })}
            />
          )}
          {opened?.proposedLots.length === 0 && <p className="caution">{t('noLots')}</p>}
          <TextField
            label={t('otherLot')}
            value={proposed && opened !== undefined ? '' : form.lotCode}
            maxLength={40}
            onChange={(lotCode) => put({ lotCode })}
            error={errors['lotCode'] ?? missing.errors['lotCode']}
          />
          {drawn.looking && (
            <p className="quiet" role="status">
              {s('looking')}
            </p>
          )}
          <ProblemNotice error={drawn.error} />
          {foreign !== undefined && (
            <ForeignLot
              lot={foreign}
              lines={batch.lines}
              opened={opened}
              compared={compared}
              form={form}
              put={put}
              errors={{ ...missing.errors, ...errors }}
            />
          )}
          <DecimalField
            label={t('quantity')}
            unit={unit}
            weigh={unit === 'g'}
            hint={
              rest === ''
                ? undefined
                : `${formats.label(t('planned'))} ${formats.quantity(rest, unit)}`
            }
            value={form.quantity}
            onChange={(quantity) => put({ quantity })}
            error={errors['quantity']}
            required
          />
        </>
      )}
    </EditDialog>
  );
};
