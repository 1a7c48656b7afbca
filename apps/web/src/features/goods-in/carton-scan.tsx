import { useEffect, useEffectEvent, useState } from 'react';
import { read } from '../../api/client';
import type { components } from '../../api/schema';
import { useSearchText } from '../../app/use-address';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { type Item, useItems } from '../../shared/pickers/item-picker';
import { ScanField } from '../../shared/scan/scan-field';
import { useScans } from '../../shared/scan/use-scans';
import type { LineDraft } from './line-draft';
import { goodsInMessages } from './messages';

type GoodsIn = components['schemas']['GoodsInView'];

/** What the carton's code states; what it doesn't state stays as it was typed. */
const partOf = (goods: GoodsIn, unit: string): Partial<LineDraft> => {
  const quantity = unit === 'g' ? goods.netMassGrams : (goods.count?.toString() ?? null);
  return {
    ...(goods.supplierLotCode === null ? {} : { supplierLotCode: goods.supplierLotCode }),
    ...(goods.useBy !== null ? { dateKind: 'useBy' as const, date: goods.useBy } : {}),
    ...(goods.useBy === null && goods.bestBefore !== null
      ? { dateKind: 'bestBefore' as const, date: goods.bestBefore }
      : {}),
    ...(quantity === null ? {} : { quantity }),
  };
};

const knownOf = (item: Item | undefined): Partial<LineDraft> =>
  item === undefined
    ? {}
    : {
        itemId: item.id,
        itemName: item.name,
        unit: item.unit,
        warmestTempC: item.warmestTempC,
      };

const readCarton = async (text: string): Promise<GoodsIn | null> =>
  (await read('/api/scan', { params: { query: { text } } })).goodsIn;

/** Scans a carton and fills in what its code states. */
export const CartonScan = ({
  onFound,
}: {
  readonly onFound: (part: Partial<LineDraft>) => void;
}) => {
  const t = useMessages(goodsInMessages);
  const formats = useFormats();
  const items = useItems().rows;
  const first = useSearchText('scan');
  const [said, setSaid] = useState<string>();
  const [error, setError] = useState<unknown>();
  const fillIn = (goodsIn: GoodsIn | null): void => {
    setError(undefined);
    if (goodsIn === null) {
      setSaid(t('unknownCode'));
      return;
    }
    const item = items.find(({ id }) => id === goodsIn.itemId);
    onFound({ ...knownOf(item), ...partOf(goodsIn, item?.unit ?? 'g') });
    const day = goodsIn.useBy ?? goodsIn.bestBefore;
    const what = [
      goodsIn.itemName,
      goodsIn.supplierLotCode,
      day === null ? null : formats.day(day),
    ];
    setSaid(t('scanTook', { what: what.filter((part) => part !== null).join(', ') }));
  };
  const take = (text: string): void => {
    readCarton(text).then(fillIn, setError);
  };
  useScans(take);
  const takeFirst = useEffectEvent(take);
  const itemsAreThere = items.length > 0;
  // Only the code that the address brought along, once the items are there to name it.
  useEffect(() => {
    if (first !== undefined && itemsAreThere) takeFirst(first);
  }, [first, itemsAreThere]);
  return (
    <div>
      <ScanField id="carton-scan" label={t('scanCarton')} onText={take} />
      <p role="status" className="quiet">
        {said}
      </p>
      <ProblemNotice error={error} />
    </div>
  );
};
