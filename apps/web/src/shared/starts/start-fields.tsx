import { useList } from '../../api/use-list';
import { useMessages } from '../language/catalogue';
import { ChoiceField, DayField, OneOf, TextField } from '../kit/fields';
import { ItemPicker } from '../pickers/item-picker';
import { PlacePicker, SupplierPicker } from '../pickers/party-pickers';
import { startMessages } from './messages';
import { hasWindow, isByText, type StartForm, type StartKind } from './start-form';

const OFFERED = ['text', 'mould', 'mould-design', 'supplier', 'item', 'tank', 'place'] as const;

interface Props {
  readonly form: StartForm;
  readonly put: (part: Partial<StartForm>) => void;
}

const TankField = ({ form, put }: Props) => {
  const t = useMessages(startMessages);
  const tanks = useList('/api/tanks').rows;
  return (
    <ChoiceField
      label={t('tankField')}
      value={form.id}
      empty="–"
      onChange={(id) => put({ id })}
      choices={tanks.map(({ id, name }) => ({ value: id, label: name }))}
    />
  );
};

const DesignField = ({ form, put }: Props) => {
  const t = useMessages(startMessages);
  const designs = useList('/api/mould-designs').rows;
  return (
    <ChoiceField
      label={t('designField')}
      value={form.id}
      empty="–"
      onChange={(id) => put({ id })}
      choices={designs.map(({ id, name }) => ({ value: id, label: name }))}
    />
  );
};

const Window = ({ form, put }: Props) => {
  const t = useMessages(startMessages);
  return (
    <>
      <div className="columns">
        <DayField label={t('from')} value={form.from} onChange={(from) => put({ from })} required />
        <DayField label={t('to')} value={form.to} onChange={(to) => put({ to })} required />
      </div>
      <p className="quiet">{t('workshopTime')}</p>
    </>
  );
};

/** What a trace or a recall starts from. A start that another page linked to is offered as well. */
export const StartFields = ({ form, put }: Props) => {
  const t = useMessages(startMessages);
  const offered: readonly StartKind[] = OFFERED.some((kind) => kind === form.kind)
    ? OFFERED
    : [...OFFERED, form.kind];
  return (
    <>
      <OneOf
        label={t('startsFrom')}
        value={form.kind}
        onChange={(kind) =>
          put({ kind: kind as StartKind, id: '', text: isByText(form) ? form.text : '' })
        }
        choices={offered.map((kind) => ({ value: kind, label: t(kind) }))}
      />
      {isByText(form) && (
        <TextField
          label={t('code')}
          value={form.text}
          onChange={(text) => put({ text })}
          required
        />
      )}
      {form.kind === 'supplier' && (
        <SupplierPicker value={form.id} onChange={(id) => put({ id })} />
      )}
      {form.kind === 'item' && <ItemPicker value={form.id} onChange={(id) => put({ id })} />}
      {form.kind === 'place' && <PlacePicker value={form.id} onChange={(id) => put({ id })} />}
      {form.kind === 'tank' && <TankField form={form} put={put} />}
      {form.kind === 'mould-design' && <DesignField form={form} put={put} />}
      {(form.kind === 'mould' || form.kind === 'mould-design') && (
        <DayField label={t('foundOn')} value={form.from} onChange={(from) => put({ from })} />
      )}
      {hasWindow(form) && <Window form={form} put={put} />}
    </>
  );
};
