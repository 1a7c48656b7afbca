import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useAsk } from '../../api/use-ask';
import { compareExact } from '../../shared/formats/exact';
import { useFormats } from '../../shared/formats/use-formats';
import { RetentionGuide } from '../../shared/infusions/retention-guide';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DecimalField } from '../../shared/kit/decimal-field';
import { EditDialog } from '../../shared/kit/edit-dialog';
import { ChoiceField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Caution, Fact, Facts } from '../../shared/kit/page';
import { useSettled } from '../../shared/kit/use-settled';
import { infusionMessages } from './infusion-messages';
import { useBatchBooking, type Batch } from './use-batch-booking';

type Weights = components['schemas']['InfusionWeightsDto'];
type Weighed = components['schemas']['InfusionView'];
type Loss = components['schemas']['LossDto'];

/** Draws of what is strained out again. */
export const infusedDraws = (batch: Batch): Batch['draws'] =>
  batch.draws.filter(
    ({ role, reversed, quantity }) => role === 'infusion' && !reversed && Number(quantity) > 0,
  );

const isWhole = (weights: Weights): boolean =>
  Object.values(weights).every((grams) => grams !== '');

const useWeighed = (weights: Weights) =>
  useAsk({
    queryKey: ['/api/infusions/weights', weights],
    enabled: isWhole(weights),
    retry: false,
    queryFn: ({ signal }) => must(api.POST('/api/infusions/weights', { body: weights, signal })),
  });

/** One loss for each thing that is gone; nothing is booked that weighs nothing. */
const lossesOf = (weighed: Weighed, weights: Weights, lotCode: string): readonly Loss[] =>
  [
    { kind: 'steam' as const, massGrams: weighed.steamGrams },
    { kind: 'held_back' as const, massGrams: weighed.heldBackGrams },
    { kind: 'held_back' as const, massGrams: weights.solidsGrams, lotCode },
  ].filter(({ massGrams }) => compareExact(massGrams, '0') > 0);

const Result = ({ weighed }: { readonly weighed: Weighed }) => {
  const t = useMessages(infusionMessages);
  const formats = useFormats();
  return (
    <div role="status">
      <Facts>
        <Fact name={t('steam')}>{formats.mass(weighed.steamGrams)}</Fact>
        <Fact name={t('heldBack')}>{formats.mass(weighed.heldBackGrams)}</Fact>
        <Fact name={t('retention')}>{formats.number(weighed.retentionRatio, 2)} g</Fact>
        <Fact name={t('topUp')}>{formats.mass(weighed.topUpGrams)}</Fact>
      </Facts>
      <p>{t('topUpHow')}</p>
      <p>{t('what')}</p>
      <Caution>{weighed.caution}</Caution>
    </div>
  );
};

/** Weighs an infusion back: steam and what is held back become losses, the top-up a draw. */
export const InfusionDialog = (props: { readonly batch: Batch; readonly onClose: () => void }) => {
  const { batch } = props;
  const t = useMessages(infusionMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const book = useBatchBooking(batch);
  const draws = infusedDraws(batch);
  const [drawId, setDrawId] = useState(draws[0]?.id ?? '');
  const draw = draws.find(({ id }) => id === drawId);
  const [typed, setTyped] = useState({ liquidGrams: '', boiledGrams: '', strainedGrams: '' });
  const [asked, setAsked] = useState(false);
  const weights: Weights = { ...typed, solidsGrams: draw?.quantity ?? '' };
  const weighed = useWeighed(useSettled(weights));
  const put = (key: keyof typeof typed) => (grams: string) =>
    setTyped((now) => ({ ...now, [key]: grams }));
  const settled = weighed.data !== undefined && isWhole(weights);
  const bookAll = async (): Promise<void> => {
    for (const loss of lossesOf(weighed.data as Weighed, weights, draw?.lotCode ?? '')) {
      const said = { kind: word(loss.kind), mass: formats.mass(loss.massGrams) };
      await book('/api/batches/{id}/losses', loss, t('label', { batch: batch.code, ...said }));
    }
  };
  return (
    <EditDialog
      title={t('title')}
      confirm={t('book')}
      onClose={props.onClose}
      ready={() => {
        setAsked(true);
        return settled;
      }}
      onSave={bookAll}
    >
      {() => (
        <>
          <p>{t('lead')}</p>
          <ChoiceField
            label={t('solids')}
            value={drawId}
            onChange={setDrawId}
            choices={draws.map((one) => ({
              value: one.id,
              label: `${one.itemName} · ${one.lotCode} · ${formats.quantity(one.quantity, one.unit)}`,
            }))}
          />
          {(['liquid', 'boiled', 'strained'] as const).map((name) => (
            <DecimalField
              key={name}
              label={t(name)}
              unit="g"
              weigh
              required
              value={typed[`${name}Grams`]}
              onChange={put(`${name}Grams`)}
            />
          ))}
          <RetentionGuide />
          {isWhole(weights) && (
            <Loaded query={weighed}>{(data) => <Result weighed={data} />}</Loaded>
          )}
          {asked && !settled && (
            <p role="alert" className="field-error">
              {t('first')}
            </p>
          )}
        </>
      )}
    </EditDialog>
  );
};
