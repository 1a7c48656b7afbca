import { useState } from 'react';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { compareExact, subtractExact } from '../../shared/formats/exact';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField, OneOf, TextField } from '../../shared/kit/fields';
import { batchMessages } from '../../shared/batches/messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

type Line = components['schemas']['BatchLineView'];
type Role = NonNullable<components['schemas']['DrawDto']['role']>;

const ROLES: readonly Role[] = [
  'base',
  'infusion',
  'shell',
  'filling',
  'cap',
  'decoration',
  'slot',
  'packaging',
  'rework',
];

const restOf = (line: Line | undefined): string => {
  if (line === undefined) return '';
  const rest = subtractExact(line.plannedQuantity, line.drawnQuantity);
  return compareExact(rest, '0') > 0 ? rest : '';
};

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
  /** The recipe's line, or nothing for something outside the recipe. */
  readonly line: Line | undefined;
  /** A lot that was scanned. */
  readonly scannedLot: string | undefined;
  readonly onClose: () => void;
}

/** Weighs in from one lot; the lot that expires first is chosen until a person says otherwise. */
export const DrawDialog = ({ batch, line, scannedLot, onClose }: Props) => {
  const t = useMessages(batchMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const book = useBatchBooking(batch);
  const [lotCode, setLotCode] = useState(scannedLot ?? line?.proposedLots[0]?.lotCode ?? '');
  const [quantity, setQuantity] = useState(
    scannedLot === undefined && line?.unit === 'pc' ? restOf(line) : '',
  );
  const [role, setRole] = useState<string>(line?.role ?? '');
  const [reason, setReason] = useState('');
  const unit = line?.unit ?? 'g';
  const proposed = line?.proposedLots.some((lot) => lot.lotCode === lotCode) ?? false;
  const rest = restOf(line);
  return (
    <EditDialog
      title={t('drawTitle', { item: line?.itemName ?? lotCode })}
      confirm={t('draw')}
      size="lg"
      onClose={onClose}
      onSave={() =>
        book(
          '/api/batches/{id}/draws',
          {
            lotCode,
            quantity,
            ...(role === '' ? {} : { role: role as Role }),
            ...(reason === '' ? {} : { reason }),
          },
          t('drawLabel', {
            quantity: formats.quantity(quantity, unit),
            lot: lotCode,
            batch: batch.code,
          }),
        )
      }
    >
      {(errors) => (
        <>
          {line !== undefined && line.proposedLots.length > 0 && (
            <LotChoice line={line} lotCode={lotCode} onChange={setLotCode} />
          )}
          {line?.proposedLots.length === 0 && <p className="caution">{t('noLots')}</p>}
          <TextField
            label={t('otherLot')}
            value={proposed ? '' : lotCode}
            maxLength={40}
            onChange={setLotCode}
            error={errors['lotCode']}
          />
          <DecimalField
            label={t('quantity')}
            unit={unit}
            weigh={unit === 'g'}
            hint={rest === '' ? undefined : `${t('planned')}: ${formats.quantity(rest, unit)}`}
            value={quantity}
            onChange={setQuantity}
            error={errors['quantity']}
            required
          />
          {line === undefined && (
            <>
              <p className="quiet">{t('outsideLead')}</p>
              <ChoiceField
                label={t('role')}
                value={role}
                empty="–"
                onChange={setRole}
                error={errors['role']}
                choices={ROLES.map((one) => ({ value: one, label: word(one) }))}
              />
              <TextField
                label={t('outsideRecipe')}
                value={reason}
                onChange={setReason}
                error={errors['reason']}
              />
            </>
          )}
        </>
      )}
    </EditDialog>
  );
};
