import type { ReactNode } from 'react';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';

/** A date, a price, an allergen or a scope that opens into its reasons with one tap. */
export const Why = (props: { readonly what: ReactNode; readonly children: ReactNode }) => {
  const t = useMessages(kitMessages);
  return (
    <details className="why">
      <summary>
        {props.what} <span className="why-mark">{t('why')}</span>
      </summary>
      <div className="why-body">{props.children}</div>
    </details>
  );
};
