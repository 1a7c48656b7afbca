import { Button } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useBooking } from '../../api/use-api';
import { newId } from '../../api/new-id';
import { useSearchText } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { DecimalField } from '../../shared/kit/decimal-field';
import { OneOf, TextField } from '../../shared/kit/fields';
import { Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { type Item, ItemPicker, useItems } from '../../shared/pickers/item-picker';
import { PlacePicker } from '../../shared/pickers/party-pickers';
import { batchMessages } from '../../shared/batches/messages';
import { batchPage } from '../../shared/batches/place-of-batch';

type Made = 'filling' | 'piece' | 'box';
const titles = { filling: 'startCook', piece: 'startCast', box: 'startPack' } as const;

const kindOf = (text: string | undefined): Made =>
  text === 'piece' || text === 'box' ? text : 'filling';

const useStart = (label: string) => {
  const t = useMessages(batchMessages);
  const book = useBooking();
  const navigate = useNavigate();
  const [state, setState] = useState<{ error?: unknown; waits?: boolean; working: boolean }>({
    working: false,
  });
  const start = async (body: Parameters<typeof book<'/api/batches'>>[0]['body']): Promise<void> => {
    setState({ working: true });
    try {
      const done = await book({
        path: '/api/batches',
        body,
        label,
        lane: `open-${newId()}`,
      });
      if (done.kind === 'done')
        await navigate({ to: batchPage(done.answer.kind), params: { id: done.answer.id } });
      else setState({ working: false, waits: true });
    } catch (error) {
      setState({ working: false, error });
    }
  };
  return { ...state, start, note: state.waits === true ? t('offlineStart') : undefined };
};

/** Starts a batch: what, and how much of it by grams, pieces, boxes or whole trays. */
const OpenBatch = () => {
  const t = useMessages(batchMessages);
  const kind = kindOf(useSearchText('kind'));
  const [itemId, setItemId] = useState(useSearchText('item') ?? '');
  const [by, setBy] = useState<'size' | 'trays'>('size');
  const [quantity, setQuantity] = useState(useSearchText('quantity') ?? '');
  const [trays, setTrays] = useState('');
  const [placeId, setPlaceId] = useState('');
  const item: Item | undefined = useItems().rows.find(({ id }) => id === itemId);
  const starting = useStart(t('openLabel', { item: item?.name ?? '' }));
  const size =
    by === 'trays' && kind === 'piece'
      ? { plannedTrays: Number(trays) }
      : { plannedQuantity: quantity };
  return (
    <Page title={t(titles[kind])} lead={t('startLead')}>
      <form
        className="stack narrow"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void starting.start({ itemId, ...size, ...(placeId === '' ? {} : { placeId }) });
        }}
      >
        <ItemPicker label={t('what')} kinds={[kind]} value={itemId} onChange={setItemId} required />
        {kind === 'piece' && (
          <OneOf
            label={t('howMuch')}
            value={by}
            onChange={(next) => setBy(next as 'size' | 'trays')}
            choices={[
              { value: 'size', label: t('bySize') },
              { value: 'trays', label: t('byTrays') },
            ]}
          />
        )}
        {by === 'trays' && kind === 'piece' ? (
          <TextField
            label={t('trays')}
            value={trays}
            onChange={(text) => setTrays(text.replace(/\D/g, ''))}
          />
        ) : (
          <DecimalField
            label={t('howMuch')}
            unit={item?.unit ?? (kind === 'filling' ? 'g' : 'pc')}
            value={quantity}
            onChange={setQuantity}
          />
        )}
        <PlacePicker label={t('where')} value={placeId} onChange={setPlaceId} />
        <ProblemNotice error={starting.error} />
        {starting.note !== undefined && <p className="caution">{starting.note}</p>}
        <div className="row">
          <Button
            type="submit"
            size="lg"
            loading={starting.working}
            disabled={itemId === '' || (by === 'size' ? quantity === '' : trays === '')}
          >
            {t('start')}
          </Button>
        </div>
      </form>
    </Page>
  );
};

export default OpenBatch;
