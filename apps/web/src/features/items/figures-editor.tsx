import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { useFormats } from '../../shared/formats/use-formats';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField } from '../../shared/kit/fields';
import { Caution } from '../../shared/kit/page';
import { usePartName } from '../../shared/language/part-names';
import { useAllergenName } from '../../shared/language/allergen-names';
import {
  ALLERGENS,
  COCOA_FIGURES,
  FIGURES,
  NUTRIENTS,
  type SpecificationForm,
  sumOf,
} from './specification-form';
import { specificationMessages } from './specification-messages';

const PRESENCES = ['contains', 'may_contain', 'absent', 'unknown'] as const;

interface Props {
  readonly form: SpecificationForm;
  readonly put: (part: Partial<SpecificationForm>) => void;
  readonly disabled: boolean;
}

export const AllergensEditor = ({ form, put, disabled }: Props) => {
  const t = useMessages(specificationMessages);
  const word = useServiceWords();
  const allergenName = useAllergenName();
  const restAbsent = (): void =>
    put({
      allergens: Object.fromEntries(
        ALLERGENS.map((code) => [code, form.allergens[code] ?? 'absent']),
      ),
    });
  return (
    <>
      <Caution>{t('allergenLead')}</Caution>
      <div className="small-columns">
        {ALLERGENS.map((code) => (
          <ChoiceField
            key={code}
            label={allergenName(code)}
            value={form.allergens[code] ?? 'unknown'}
            disabled={disabled}
            onChange={(presence) => put({ allergens: { ...form.allergens, [code]: presence } })}
            choices={PRESENCES.map((one) => ({ value: one, label: word(one) }))}
          />
        ))}
      </div>
      {!disabled && (
        <button type="button" className="link" onClick={restAbsent}>
          {t('restAbsent')}
        </button>
      )}
    </>
  );
};

export const CompositionEditor = ({ form, put, disabled }: Props) => {
  const t = useMessages(specificationMessages);
  const formats = useFormats();
  const partName = usePartName();
  const field = (path: string) => (
    <DecimalField
      key={path}
      label={partName(path.split('.').at(-1) ?? path)}
      unit="g"
      value={form.figures[path] ?? ''}
      disabled={disabled}
      onChange={(value) => put({ figures: { ...form.figures, [path]: value } })}
    />
  );
  return (
    <>
      <div className="small-columns">{FIGURES.map(field)}</div>
      <p aria-live="polite">
        <strong>{t('sums', { grams: formats.number(sumOf(form.figures)) })}</strong>
      </p>
      <details>
        <summary>{partName('cocoaSolids')}</summary>
        <div className="small-columns">{COCOA_FIGURES.map(field)}</div>
      </details>
    </>
  );
};

export const NutritionEditor = ({ form, put, disabled }: Props) => {
  const partName = usePartName();
  return (
    <div className="small-columns">
      {NUTRIENTS.map((nutrient) => (
        <DecimalField
          key={nutrient}
          label={partName(nutrient)}
          unit="g"
          value={form.nutrition[nutrient] ?? ''}
          disabled={disabled}
          onChange={(value) => put({ nutrition: { ...form.nutrition, [nutrient]: value } })}
        />
      ))}
    </div>
  );
};
