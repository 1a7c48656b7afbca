import { Button } from '@mantine/core';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { ChoiceField } from '../../shared/kit/fields';
import { type Item, ItemPicker } from '../../shared/pickers/item-picker';
import { recipeMessages } from './messages';
import { type LineForm, newLine } from './version-form';

type Kind = 'filling' | 'piece' | 'box';

const ROLES: Readonly<Record<Kind, readonly LineForm['role'][]>> = {
  filling: ['base', 'infusion'],
  piece: ['shell', 'filling', 'cap', 'decoration'],
  box: ['slot', 'packaging'],
};

const COMPONENTS: Readonly<Record<Kind, readonly Item['kind'][]>> = {
  filling: ['ingredient', 'filling'],
  piece: ['ingredient', 'filling', 'packaging'],
  box: ['piece', 'packaging'],
};

interface Props {
  readonly kind: Kind;
  readonly lines: readonly LineForm[];
  readonly errors: Readonly<Record<string, string>>;
  readonly disabled: boolean;
  readonly onChange: (lines: readonly LineForm[]) => void;
}

const Line = (props: Props & { readonly line: LineForm; readonly at: number }) => {
  const { kind, line, lines, at, errors, disabled, onChange } = props;
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const put = (part: Partial<LineForm>): void =>
    onChange(lines.map((one) => (one.key === line.key ? { ...one, ...part } : one)));
  const moveUp = (): void => {
    const before = lines[at - 1];
    if (before === undefined) return;
    onChange(
      lines.map((one, position) => (position === at - 1 ? line : position === at ? before : one)),
    );
  };
  return (
    <li className="recipe-line">
      <ItemPicker
        label={t('component')}
        kinds={COMPONENTS[kind]}
        value={line.itemId}
        disabled={disabled}
        error={errors[`lines.${String(at)}.itemId`]}
        onChange={(itemId, item) =>
          put({ itemId, itemName: item?.name ?? '', unit: item?.unit ?? 'g' })
        }
      />
      <DecimalField
        label={t('quantity')}
        unit={line.unit}
        value={line.quantity}
        disabled={disabled}
        error={errors[`lines.${String(at)}.quantity`]}
        onChange={(quantity) => put({ quantity })}
      />
      <ChoiceField
        label={t('role')}
        value={line.role}
        disabled={disabled}
        onChange={(role) => put({ role: role as LineForm['role'] })}
        choices={ROLES[kind].map((role) => ({ value: role, label: word(role) }))}
      />
      {!disabled && (
        <span className="row line-buttons">
          <Button
            variant="default"
            disabled={at === 0}
            aria-label={t('up', { item: line.itemName })}
            onClick={moveUp}
          >
            ↑
          </Button>
          <Button
            variant="default"
            aria-label={t('removeLine', { item: line.itemName })}
            onClick={() => onChange(lines.filter((one) => one.key !== line.key))}
          >
            ✕
          </Button>
        </span>
      )}
    </li>
  );
};

/** The lines of a recipe: component, quantity, and what it is in there. */
export const LineEditor = (props: Props) => {
  const t = useMessages(recipeMessages);
  const [role = 'base'] = ROLES[props.kind];
  return (
    <>
      <ol className="plain-list">
        {props.lines.map((line, at) => (
          <Line key={line.key} {...props} line={line} at={at} />
        ))}
      </ol>
      {!props.disabled && (
        <Button variant="default" onClick={() => props.onChange([...props.lines, newLine(role)])}>
          {t('addLine')}
        </Button>
      )}
    </>
  );
};
