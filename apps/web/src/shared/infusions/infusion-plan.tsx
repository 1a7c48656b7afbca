import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useAsk } from '../../api/use-ask';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { DecimalField } from '../kit/decimal-field';
import { ChoiceField } from '../kit/fields';
import { Loaded } from '../kit/loaded';
import { Caution, Fact, Facts, Section } from '../kit/page';
import { useSettled } from '../kit/use-settled';
import { infusionPlanMessages } from './messages';
import { RetentionGuide } from './retention-guide';

type Weights = components['schemas']['InfusionPlanDto'];

/** A line of a recipe or batch, with the quantity that is meant to go in. */
export interface InfusedLine {
  readonly itemId: string;
  readonly itemName: string;
  readonly role: string;
  readonly unit: string;
  readonly quantity: string;
}

const isWhole = (weights: Weights): boolean =>
  Object.values(weights).every((figure) => figure !== '');

const Result = ({ planned }: { readonly planned: components['schemas']['InfusionView'] }) => {
  const t = useMessages(infusionPlanMessages);
  const formats = useFormats();
  return (
    <div role="status">
      <Facts>
        <Fact name={t('steamed')}>{formats.mass(planned.steamGrams)}</Fact>
        <Fact name={t('heldBack')}>{formats.mass(planned.heldBackGrams)}</Fact>
        <Fact name={t('discarded')}>{formats.mass(planned.discardedLiquidGrams)}</Fact>
        <Fact name={t('topUp')}>{formats.mass(planned.topUpGrams)}</Fact>
      </Facts>
      <p>{t('ready')}</p>
      <Caution>{planned.caution}</Caution>
    </div>
  );
};

const usePlanned = (weights: Weights) =>
  useAsk({
    queryKey: ['/api/infusions/plan', weights],
    enabled: isWhole(weights),
    retry: false,
    queryFn: ({ signal }) => must(api.POST('/api/infusions/plan', { body: weights, signal })),
  });

const Planner = ({ lines }: { readonly lines: readonly InfusedLine[] }) => {
  const t = useMessages(infusionPlanMessages);
  const formats = useFormats();
  const infused = lines.filter(({ role }) => role === 'infusion');
  const liquids = lines.filter(({ role, unit }) => role !== 'infusion' && unit === 'g');
  const nameOf = (line: InfusedLine): string => `${line.itemName} · ${formats.mass(line.quantity)}`;
  const [solidsAt, setSolidsAt] = useState('0');
  const [liquidAt, setLiquidAt] = useState('');
  const [weights, setWeights] = useState<Weights>({
    liquidGrams: '',
    steamGrams: '0',
    solidsGrams: infused[0]?.quantity ?? '',
    retentionRatio: '',
  });
  const planned = usePlanned(useSettled(weights));
  const put = (part: Partial<Weights>): void => setWeights((now) => ({ ...now, ...part }));
  return (
    <div className="stack">
      <p className="text">{t('lead')}</p>
      <div className="columns">
        {infused.length > 1 && (
          <ChoiceField
            label={t('solidsOf')}
            value={solidsAt}
            onChange={(at) => {
              setSolidsAt(at);
              put({ solidsGrams: infused[Number(at)]?.quantity ?? '' });
            }}
            choices={infused.map((line, at) => ({ value: String(at), label: nameOf(line) }))}
          />
        )}
        <ChoiceField
          label={t('liquidOf')}
          value={liquidAt}
          empty="–"
          onChange={(at) => {
            setLiquidAt(at);
            put({ liquidGrams: at === '' ? '' : (liquids[Number(at)]?.quantity ?? '') });
          }}
          choices={liquids.map((line, at) => ({ value: String(at), label: nameOf(line) }))}
        />
        <DecimalField
          label={t('liquid')}
          unit="g"
          value={weights.liquidGrams}
          onChange={(liquidGrams) => put({ liquidGrams })}
        />
        <DecimalField
          label={t('solids')}
          unit="g"
          value={weights.solidsGrams}
          onChange={(solidsGrams) => put({ solidsGrams })}
        />
        <DecimalField
          label={t('steam')}
          unit="g"
          value={weights.steamGrams}
          onChange={(steamGrams) => put({ steamGrams })}
        />
        <DecimalField
          label={t('retention')}
          unit="g"
          value={weights.retentionRatio}
          onChange={(retentionRatio) => put({ retentionRatio })}
        />
      </div>
      <RetentionGuide />
      {isWhole(weights) && <Loaded query={planned}>{(data) => <Result planned={data} />}</Loaded>}
    </div>
  );
};

/** How an infusion will turn out, before anything is weighed; only where something is infused. */
export const InfusionPlan = ({ lines }: { readonly lines: readonly InfusedLine[] }) => {
  const t = useMessages(infusionPlanMessages);
  if (!lines.some(({ role }) => role === 'infusion')) return null;
  return (
    <Section title={t('title')}>
      <Planner lines={lines} />
    </Section>
  );
};
