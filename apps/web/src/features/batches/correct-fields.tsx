import { Button } from '@mantine/core';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, TextField, TickField } from '../../shared/kit/fields';
import { LOSS_KINDS } from './batch-losses';
import type { CorrectForm, RightDraw, RightLoss } from './correct-form';
import { correctMessages } from './correct-messages';
import { ROLES } from './draw-form';
import type { Batch } from './use-batch-booking';

export interface PartProps {
  readonly batch: Batch;
  readonly form: CorrectForm;
  readonly put: (change: Partial<CorrectForm>) => void;
  readonly errors: Readonly<Record<string, string | undefined>>;
}

/** The list with one entry in it or without it. */
export const toggled = (all: readonly string[], id: string, on: boolean): readonly string[] =>
  on ? [...all, id] : all.filter((one) => one !== id);

/** Draws and losses that were booked, to be ticked when they were wrong. */
export const WasWrong = ({ batch, form, put }: PartProps) => {
  const t = useMessages(correctMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const draws = batch.draws.filter((draw) => !draw.reversed && Number(draw.quantity) > 0);
  const losses = batch.losses.filter((loss) => !loss.reversed && Number(loss.massGrams) > 0);
  return (
    <>
      <fieldset className="stack-tight plain-group">
        <legend>{t('takeBack')}</legend>
        {draws.map((draw) => (
          <TickField
            key={draw.id}
            label={`${draw.itemName} · ${draw.lotCode} · ${formats.quantity(draw.quantity, draw.unit)}`}
            checked={form.drawsBack.includes(draw.id)}
            onChange={(on) => put({ drawsBack: toggled(form.drawsBack, draw.id, on) })}
          />
        ))}
      </fieldset>
      {losses.length > 0 && (
        <fieldset className="stack-tight plain-group">
          <legend>{t('lossesBack')}</legend>
          {losses.map((loss) => (
            <TickField
              key={loss.id}
              label={`${word(loss.kind)} · ${formats.mass(loss.massGrams)}`}
              checked={form.lossesBack.includes(loss.id)}
              onChange={(on) => put({ lossesBack: toggled(form.lossesBack, loss.id, on) })}
            />
          ))}
        </fieldset>
      )}
    </>
  );
};

/** Weighings as they really were. */
export const RightDraws = ({ form, put, errors }: PartProps) => {
  const t = useMessages(correctMessages);
  const word = useServiceWords();
  const change = (key: string, with_: Partial<RightDraw>): void =>
    put({ draws: form.draws.map((draw) => (draw.key === key ? { ...draw, ...with_ } : draw)) });
  return form.draws.map((draw, position) => (
    <fieldset key={draw.key} className="columns columns-end plain-group">
      <legend className="unseen">{t('addDraw')}</legend>
      <TextField
        label={t('lot')}
        value={draw.lotCode}
        required
        onChange={(lotCode) => change(draw.key, { lotCode })}
        error={errors[`draws.${String(position)}.lotCode`]}
      />
      <DecimalField
        label={t('quantity')}
        unit="g, pc"
        value={draw.quantity}
        required
        onChange={(quantity) => change(draw.key, { quantity })}
        error={errors[`draws.${String(position)}.quantity`]}
      />
      <ChoiceField
        label={t('role')}
        value={draw.role}
        empty={t('roleOfRecipe')}
        onChange={(role) => change(draw.key, { role })}
        choices={ROLES.map((one) => ({ value: one, label: word(one) }))}
      />
      <Button
        variant="default"
        onClick={() => put({ draws: form.draws.filter(({ key }) => key !== draw.key) })}
      >
        {t('remove')}
      </Button>
    </fieldset>
  ));
};

/** Losses as they really were. */
export const RightLosses = ({ form, put, errors }: PartProps) => {
  const t = useMessages(correctMessages);
  const word = useServiceWords();
  const change = (key: string, with_: Partial<RightLoss>): void =>
    put({ losses: form.losses.map((loss) => (loss.key === key ? { ...loss, ...with_ } : loss)) });
  return form.losses.map((loss, position) => (
    <fieldset key={loss.key} className="columns columns-end plain-group">
      <legend className="unseen">{t('addLoss')}</legend>
      <ChoiceField
        label={t('lossKind')}
        value={loss.kind}
        onChange={(kind) => change(loss.key, { kind: kind as RightLoss['kind'] })}
        choices={LOSS_KINDS.map((one) => ({ value: one, label: word(one) }))}
      />
      <DecimalField
        label={t('mass')}
        unit="g"
        value={loss.mass}
        required
        onChange={(mass) => change(loss.key, { mass })}
        error={errors[`losses.${String(position)}.massGrams`]}
      />
      <Button
        variant="default"
        onClick={() => put({ losses: form.losses.filter(({ key }) => key !== loss.key) })}
      >
        {t('remove')}
      </Button>
    </fieldset>
  ));
};
