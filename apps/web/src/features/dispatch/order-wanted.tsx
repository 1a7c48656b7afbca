import { useRead } from '../../api/use-api';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Loaded } from '../../shared/kit/loaded';
import { dispatchMessages } from './messages';

/** What the order asks for that is being sent, and what of it went before. */
export const OrderWanted = ({ id }: { readonly id: string }) => {
  const t = useMessages(dispatchMessages);
  const formats = useFormats();
  const order = useRead('/api/orders/{id}', { params: { path: { id } } });
  return (
    <Loaded query={order}>
      {(data) => (
        <div className="section">
          <p>
            {t('order')} <code>{data.code}</code> · {data.customerName ?? t('counter')} ·{' '}
            {formats.weekday(data.dueOn)}
          </p>
          <ul>
            {data.lines.map((line) => (
              <li key={line.id}>
                {formats.number(line.quantity)} × {line.itemName}{' '}
                <span className="quiet">
                  {t('sentBefore', { sent: formats.number(line.sentQuantity) })}
                </span>
              </li>
            ))}
          </ul>
        </div>
      )}
    </Loaded>
  );
};
