import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { byId, seen } from '../../api/seen';
import { useChange } from '../../api/use-api';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { OneOf, TextField } from '../../shared/kit/fields';
import { temperingMessages } from '../../shared/readings/tempering-messages';

type Curve = components['schemas']['TemperingView'];
type Body = components['schemas']['TemperingCurveDto'];
type Window = components['schemas']['TempWindowDto'];

const PRODUCTS = ['dark', 'milk', 'white', 'coloured_cocoa_butter'] as const;
const STEPS = ['melt', 'cool', 'work'] as const;
type Windows = Readonly<Record<(typeof STEPS)[number], Window>>;

const windowsOf = (curve: Curve | undefined): Windows => {
  const of = (step: string): Window => {
    const check = curve?.isMakers === true && curve.checks.find((one) => one.step === step);
    return check ? { lowC: check.low, highC: check.high } : { lowC: '', highC: '' };
  };
  return { melt: of('melt'), cool: of('cool'), work: of('work') };
};

const isEmpty = ({ lowC, highC }: Window): boolean => lowC === '' && highC === '';

/** Which table applies, or what the maker of the chocolate says of it. */
export const TemperingDialog = (props: {
  readonly item: components['schemas']['ItemView'];
  readonly curve: Curve | undefined;
  readonly onClose: () => void;
}) => {
  const { item, curve } = props;
  const t = useMessages(temperingMessages);
  const [product, setProduct] = useState<Body['product']>(curve?.product ?? 'dark');
  const [windows, setWindows] = useState(() => windowsOf(curve));
  const [source, setSource] = useState(curve?.isMakers === true ? curve.source : '');
  const change = useChange((body: Body) =>
    must(api.PUT('/api/items/{id}/tempering', { ...byId(item.id), ...seen(item.version), body })),
  );
  const own = (step: (typeof STEPS)[number]): Window | null =>
    isEmpty(windows[step]) ? null : windows[step];
  return (
    <EditDialog
      title={t('title')}
      onClose={props.onClose}
      onSave={() =>
        change.mutateAsync({
          product,
          melt: own('melt'),
          cool: own('cool'),
          work: own('work'),
          ...(source === '' ? {} : { source }),
        })
      }
    >
      {(errors) => (
        <>
          <OneOf
            label={t('product')}
            value={product}
            onChange={(next) => setProduct(next as Body['product'])}
            choices={PRODUCTS.map((one) => ({ value: one, label: t(one) }))}
          />
          <p className="quiet">{t('own')}</p>
          {STEPS.map((step) => (
            <div className="small-columns" key={step}>
              {(['lowC', 'highC'] as const).map((end) => (
                <DecimalField
                  key={end}
                  label={t(end === 'lowC' ? 'lowest' : 'highest', { step: t(step) })}
                  unit="°C"
                  value={windows[step][end]}
                  onChange={(value) =>
                    setWindows((now) => ({ ...now, [step]: { ...now[step], [end]: value } }))
                  }
                  error={errors[`${step}.${end}`]}
                />
              ))}
            </div>
          ))}
          <TextField
            label={t('source')}
            value={source}
            onChange={setSource}
            error={errors['source']}
          />
        </>
      )}
    </EditDialog>
  );
};
