import { useState } from 'react';
import type { components } from '../../api/schema';
import { useMessages } from '../../shared/language/catalogue';
import { acceptance, type DrawForm } from './draw-form';
import type { DrawnLot } from './drawn-lot';
import { substitutionMessages } from './substitution-messages';

type Missing = Readonly<Record<string, string | undefined>>;

/** What a person still has to see, accept or say before a lot goes in. */
export const useStillMissing = (
  form: DrawForm,
  drawn: DrawnLot,
  compared: components['schemas']['SubstitutionView'] | undefined,
) => {
  const t = useMessages(substitutionMessages);
  const [asked, setAsked] = useState(false);
  const substitutes = drawn.foreign !== undefined && form.insteadOf !== '';
  const notAccepted = (): string | undefined => {
    if (compared === undefined) return t('waitForIt');
    if (compared.notUsable !== null) return t('notUsable');
    return form.accepted === acceptance(form) ? undefined : t('acceptNeeded');
  };
  const errors: Missing = {
    ...(drawn.looking || drawn.error !== undefined ? { lotCode: t('unseen') } : {}),
    ...(drawn.foreign === undefined ? {} : { accepted: notAccepted() }),
    ...(drawn.foreign !== undefined && form.reason.trim().length < 3
      ? { reason: t('reasonNeeded') }
      : {}),
    ...(drawn.foreign !== undefined && !substitutes && form.role === ''
      ? { role: t('roleNeeded') }
      : {}),
  };
  return {
    errors: asked ? errors : {},
    check: (): boolean => {
      setAsked(true);
      return Object.values(errors).every((error) => error === undefined);
    },
  };
};
