import { Button } from '@mantine/core';
import { without } from '../../shared/formats/without';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField, TextField } from '../../shared/kit/fields';
import { useAllergenName } from '../../shared/language/allergen-names';
import { ALLERGENS, emptyPart, type Part } from './specification-form';
import { specificationMessages } from './specification-messages';

const CLASSES = [
  'emulsifier',
  'stabiliser',
  'acidity_regulator',
  'acid',
  'preservative',
  'colour',
  'gelling_agent',
  'humectant',
  'thickener',
  'antioxidant',
  'sweetener',
  'raising_agent',
  'glazing_agent',
] as const;
const MOST_LEVELS = 5;

interface Props {
  readonly part: Part;
  readonly level: number;
  readonly disabled: boolean;
  readonly onChange: (part: Part) => void;
  readonly onRemove?: () => void;
}

const Own = ({ part, level, disabled, onChange, onRemove }: Props) => {
  const t = useMessages(specificationMessages);
  const allergenName = useAllergenName();
  const name = (language: string, text: string): void => {
    const others = without(part.names, language);
    onChange({ ...part, names: text === '' ? others : { ...others, [language]: text } });
  };
  const { additive, ...withoutAdditive } = part;
  return (
    <div className="columns columns-end">
      <TextField
        label={`${t('names')} ${t('nameEn')}`}
        value={part.names['en'] ?? ''}
        disabled={disabled}
        onChange={(text) => name('en', text)}
      />
      <TextField
        label={`${t('names')} ${t('nameFr')}`}
        value={part.names['fr'] ?? ''}
        disabled={disabled}
        onChange={(text) => name('fr', text)}
      />
      {level > 0 && (
        <DecimalField
          label={t('percent')}
          unit="%"
          value={part.percent ?? ''}
          disabled={disabled}
          onChange={(percent) => onChange({ ...part, percent: percent === '' ? null : percent })}
        />
      )}
      <ChoiceField
        label={t('comesFrom')}
        value={part.origins[0]?.allergen ?? ''}
        empty="–"
        disabled={disabled}
        onChange={(allergen) =>
          onChange({ ...part, origins: allergen === '' ? [] : [{ allergen }] })
        }
        choices={ALLERGENS.map((code) => ({ value: code, label: allergenName(code) }))}
      />
      {level > 0 && (
        <ChoiceField
          label={t('additive')}
          value={additive?.functionalClass ?? ''}
          empty="–"
          disabled={disabled}
          onChange={(functionalClass) =>
            onChange(
              functionalClass === ''
                ? withoutAdditive
                : { ...part, additive: { eNumber: null, ...additive, functionalClass } },
            )
          }
          choices={CLASSES.map((one) => ({ value: one, label: one.replaceAll('_', ' ') }))}
        />
      )}
      {additive !== undefined && (
        <TextField
          label={t('eNumber')}
          value={additive.eNumber ?? ''}
          disabled={disabled}
          onChange={(eNumber) =>
            onChange({
              ...part,
              additive: { ...additive, eNumber: eNumber === '' ? null : eNumber },
            })
          }
        />
      )}
      {onRemove !== undefined && !disabled && (
        <Button variant="default" onClick={onRemove}>
          {t('remove')}
        </Button>
      )}
    </div>
  );
};

/** An ingredient and what it is made of, as deep as the supplier states it. */
export const PartEditor = (props: Props) => {
  const { part, level, disabled, onChange } = props;
  const t = useMessages(specificationMessages);
  return (
    <div className={level === 0 ? '' : 'part'}>
      <Own {...props} />
      {part.parts.map((child, at) => (
        <PartEditor
          key={String(at)}
          part={child}
          level={level + 1}
          disabled={disabled}
          onChange={(next) =>
            onChange({
              ...part,
              parts: part.parts.map((one, position) => (position === at ? next : one)),
            })
          }
          onRemove={() =>
            onChange({ ...part, parts: part.parts.filter((_, position) => position !== at) })
          }
        />
      ))}
      {!disabled && level < MOST_LEVELS && (
        <button
          type="button"
          className="link"
          onClick={() => onChange({ ...part, parts: [...part.parts, emptyPart] })}
        >
          {t('addPart')}
          {level > 0 && `: ${part.names['en'] ?? part.names['fr'] ?? ''}`}
        </button>
      )}
    </div>
  );
};
