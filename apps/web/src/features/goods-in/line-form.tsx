import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { DayField, OneOf, TextField, TickField } from '../../shared/kit/fields';
import { ItemPicker } from '../../shared/pickers/item-picker';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import type { LineDraft } from './line-draft';
import { goodsInMessages } from './messages';

interface Props {
  readonly line: LineDraft;
  readonly missing: readonly (keyof LineDraft)[];
  readonly onChange: (change: Partial<LineDraft>) => void;
}

const DateFields = ({ line, missing, onChange }: Props) => {
  const t = useMessages(goodsInMessages);
  const word = useServiceWords();
  return (
    <>
      <OneOf
        label={t('dateKind')}
        value={line.dateKind}
        onChange={(kind) => onChange({ dateKind: kind as LineDraft['dateKind'] })}
        choices={[
          { value: 'bestBefore', label: word('best_before') },
          { value: 'useBy', label: word('use_by') },
          { value: 'none', label: t('noDate') },
        ]}
      />
      {line.dateKind !== 'none' && (
        <DayField
          label={t('date')}
          value={line.date}
          onChange={(date) => onChange({ date })}
          error={missing.includes('date') ? t('needed') : undefined}
          required
        />
      )}
    </>
  );
};

/** One line of a delivery: under a minute for somebody with one hand free. */
export const LineForm = (props: Props) => {
  const { line, missing, onChange } = props;
  const t = useMessages(goodsInMessages);
  const formats = useFormats();
  const need = (field: keyof LineDraft) => (missing.includes(field) ? t('needed') : undefined);
  return (
    <div className="columns">
      <ItemPicker
        kinds={['ingredient', 'packaging']}
        value={line.itemId}
        error={need('itemId')}
        required
        onChange={(itemId, item) =>
          onChange({
            itemId,
            itemName: item?.name ?? '',
            unit: item?.unit ?? 'g',
            warmestTempC: item?.warmestTempC ?? null,
          })
        }
      />
      <TextField
        label={t('supplierLot')}
        value={line.supplierLotCode}
        maxLength={60}
        onChange={(supplierLotCode) => onChange({ supplierLotCode })}
        error={need('supplierLotCode')}
        required
      />
      <DateFields {...props} />
      <DecimalField
        label={t('quantity')}
        unit={line.unit}
        weigh={line.unit === 'g'}
        value={line.quantity}
        onChange={(quantity) => onChange({ quantity })}
        error={need('quantity')}
        required
      />
      <DecimalField
        label={t('price')}
        unit={formats.currency}
        value={line.price}
        onChange={(price) => onChange({ price })}
        error={need('price')}
        required
      />
      <DecimalField
        label={t('temp')}
        unit="°C"
        value={line.tempC}
        hint={
          line.warmestTempC === null
            ? undefined
            : t('tempNeeded', { limit: formats.number(line.warmestTempC) })
        }
        onChange={(tempC) => onChange({ tempC })}
      />
      <PlacePicker
        label={t('place')}
        value={line.placeId}
        onChange={(placeId) => onChange({ placeId })}
      />
      <div>
        <TickField
          label={t('refuse')}
          checked={line.refused}
          onChange={(refused) => onChange({ refused })}
        />
        {line.refused && (
          <TextField
            label={t('refusalReason')}
            value={line.refusalReason}
            maxLength={300}
            onChange={(refusalReason) => onChange({ refusalReason })}
            error={need('refusalReason')}
            required
          />
        )}
      </div>
    </div>
  );
};
