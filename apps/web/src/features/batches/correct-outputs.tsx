import { Button } from '@mantine/core';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, TickField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { ItemPicker, useItems } from '../../shared/pickers/item-picker';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { toggled, type PartProps } from './correct-fields';
import { rightOutput, type RightOutput } from './correct-form';
import { correctMessages } from './correct-messages';

/** Lots that were made and stand, to be ticked when they never came out as they were counted. */
export const WrongOutputs = ({ batch, form, put }: PartProps) => {
  const t = useMessages(correctMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const standing = batch.outputs.filter(({ takenBackBecause }) => takenBackBecause === null);
  if (standing.length === 0) return null;
  return (
    <fieldset className="stack-tight plain-group">
      <legend>{t('outputsBack')}</legend>
      {standing.map((output) => (
        <TickField
          key={output.id}
          label={[
            output.itemName,
            output.lotCode,
            ...(output.role === 'rework' ? [word('rework')] : []),
            formats.quantity(output.quantity, output.unit),
          ].join(' · ')}
          checked={form.outputsBack.includes(output.id)}
          onChange={(on) =>
            put({
              outputsBack: toggled(form.outputsBack, output.id, on),
              // What takes its place is asked for at once: the service wants both.
              outputs: on
                ? [...form.outputs, rightOutput(output)]
                : form.outputs.filter(({ instead }) => instead !== output.id),
            })
          }
        />
      ))}
      {form.outputsBack.length > 0 && <Caution>{t('newCodeCaution')}</Caution>}
    </fieldset>
  );
};

const OneOutput = (props: {
  readonly part: PartProps;
  readonly output: RightOutput;
  readonly position: number;
}) => {
  const { output } = props;
  const { batch, form, put, errors } = props.part;
  const t = useMessages(correctMessages);
  const word = useServiceWords();
  const items = useItems().rows;
  const change = (with_: Partial<RightOutput>): void =>
    put({
      outputs: form.outputs.map((one) => (one.key === output.key ? { ...one, ...with_ } : one)),
    });
  const error = (field: string) => errors[`outputs.${String(props.position)}.${field}`];
  const rework = output.role === 'rework';
  const unit = (rework ? items.find(({ id }) => id === output.itemId)?.unit : undefined) ?? 'g';
  const ownUnit = rework && output.itemId !== '' ? unit : batch.unit;
  return (
    <fieldset className="columns columns-end plain-group">
      <legend>{t('outputOf', { number: props.position + 1 })}</legend>
      <ChoiceField
        label={t('outputRole')}
        value={output.role}
        onChange={(role) => change({ role: role as RightOutput['role'] })}
        choices={(['product', 'rework'] as const).map((one) => ({ value: one, label: word(one) }))}
      />
      {rework && (
        <ItemPicker
          label={t('reworkItem')}
          kinds={['ingredient', 'filling', 'piece']}
          value={output.itemId}
          onChange={(itemId) => change({ itemId })}
        />
      )}
      <DecimalField
        label={t('cameOut')}
        unit={ownUnit}
        weigh={ownUnit === 'g'}
        value={output.quantity}
        required
        onChange={(quantity) => change({ quantity })}
        error={error('quantity')}
      />
      {ownUnit === 'pc' && (
        <DecimalField
          label={t('cameOutMass')}
          unit="g"
          weigh
          value={output.mass}
          onChange={(mass) => change({ mass })}
          error={error('massGrams')}
        />
      )}
      <PlacePicker
        label={t('putAway')}
        value={output.placeId}
        onChange={(placeId) => change({ placeId })}
      />
      <Button
        variant="default"
        onClick={() => put({ outputs: form.outputs.filter(({ key }) => key !== output.key) })}
      >
        {t('remove')}
      </Button>
    </fieldset>
  );
};

/** What came out indeed, instead of the lots that are taken back. */
export const RightOutputs = (part: PartProps) =>
  part.form.outputs.map((output, position) => (
    <OneOutput key={output.key} part={part} output={output} position={position} />
  ));
