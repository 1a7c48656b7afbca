import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useAsk } from '../../api/use-ask';
import { useMessages } from '../language/catalogue';
import { Loaded } from '../kit/loaded';
import { State } from '../kit/page';
import { useSettled } from '../kit/use-settled';
import { temperingMessages } from './tempering-messages';

export type TemperingStep = components['schemas']['TemperingReadingDto']['step'];

interface Props {
  readonly itemId: string;
  readonly step: TemperingStep;
  /** Empty while nothing is read yet. */
  readonly tempC: string;
}

/** What a temperature means for a chocolate at a step, and what to do next. */
export const TemperingVerdict = ({ itemId, step, tempC }: Props) => {
  const t = useMessages(temperingMessages);
  const settled = useSettled(tempC);
  const verdict = useAsk({
    queryKey: ['/api/items/{id}/tempering/verdict', itemId, step, settled],
    enabled: settled !== '' && settled === tempC,
    queryFn: ({ signal }) =>
      must(
        api.POST('/api/items/{id}/tempering/verdict', {
          params: { path: { id: itemId } },
          body: { step, tempC: settled },
          signal,
        }),
      ),
  });
  if (tempC === '') return null;
  return (
    <Loaded query={verdict}>
      {(data) => (
        <p role="status">
          <State tone={data.verdict === 'in' ? 'good' : 'warn'}>{t(data.verdict)}</State>{' '}
          {data.advice} <span className="quiet">{data.source}</span>
        </p>
      )}
    </Loaded>
  );
};
