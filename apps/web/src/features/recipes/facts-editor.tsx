import { useList } from '../../api/use-list';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, LongField, OneOf, TextField } from '../../shared/kit/fields';
import { recipeMessages } from './messages';
import type { VersionForm } from './version-form';

const BASES = ['measured', 'validated', 'chosen', 'estimated'] as const;

interface Props {
  readonly kind: string;
  readonly form: VersionForm;
  readonly put: (part: Partial<VersionForm>) => void;
  readonly errors: Readonly<Record<string, string>>;
  readonly disabled: boolean;
}

const whole = (value: string): string => value.replace(/\D/g, '');

/** What the recipe gives, how long it keeps, and the work in it. */
export const FactsEditor = ({ kind, form, put, errors, disabled }: Props) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const designs = useList('/api/mould-designs', {}, kind === 'piece').rows;
  return (
    <div className="columns">
      {kind === 'filling' ? (
        <DecimalField
          label={t('yieldGrams')}
          unit="g"
          value={form.yieldGrams}
          disabled={disabled}
          onChange={(yieldGrams) => put({ yieldGrams })}
          error={errors['yieldGrams']}
        />
      ) : (
        <TextField
          label={t('yieldPieces')}
          value={form.yieldPieces}
          disabled={disabled}
          onChange={(value) => put({ yieldPieces: whole(value) })}
          error={errors['yieldPieces']}
        />
      )}
      {kind === 'piece' && (
        <ChoiceField
          label={t('mould')}
          value={form.mouldDesignId}
          empty="–"
          disabled={disabled}
          onChange={(mouldDesignId) => put({ mouldDesignId })}
          choices={designs.map(({ id, name }) => ({ value: id, label: name }))}
          error={errors['mouldDesignId']}
        />
      )}
      <TextField
        label={`${t('life')} (${t('lifeDays')})`}
        value={form.shelfLifeDays}
        disabled={disabled}
        onChange={(value) => put({ shelfLifeDays: whole(value) })}
        error={errors['shelfLifeDays']}
      />
      <ChoiceField
        label={t('basis')}
        value={form.shelfLifeBasis}
        empty="–"
        disabled={disabled}
        onChange={(shelfLifeBasis) => put({ shelfLifeBasis })}
        choices={BASES.map((one) => ({ value: one, label: word(one) }))}
        error={errors['shelfLifeBasis']}
      />
      <TextField
        label={t('document')}
        value={form.shelfLifeDocument}
        maxLength={300}
        disabled={disabled}
        onChange={(shelfLifeDocument) => put({ shelfLifeDocument })}
        error={errors['shelfLifeDocument']}
      />
      <OneOf
        label={t('dateKind')}
        value={form.dateKind}
        onChange={(dateKind) => put({ dateKind })}
        choices={['best_before', 'use_by'].map((one) => ({ value: one, label: word(one) }))}
      />
      <TextField
        label={t('afterThaw')}
        value={form.lifeAfterThawDays}
        disabled={disabled}
        onChange={(value) => put({ lifeAfterThawDays: whole(value) })}
        error={errors['lifeAfterThawDays']}
      />
      <DecimalField
        label={t('minutes')}
        unit="min"
        value={form.labourMinutes}
        disabled={disabled}
        onChange={(labourMinutes) => put({ labourMinutes })}
        error={errors['labourMinutes']}
      />
      <TextField
        label={t('labourRole')}
        value={form.labourRole}
        maxLength={60}
        disabled={disabled}
        onChange={(labourRole) => put({ labourRole })}
        error={errors['labourRole']}
      />
      <LongField
        label={t('note')}
        value={form.note}
        disabled={disabled}
        onChange={(note) => put({ note })}
        error={errors['note']}
      />
    </div>
  );
};
