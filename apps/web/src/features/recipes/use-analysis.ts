import { api, must } from '../../api/client';
import { useAsk } from '../../api/use-ask';
import { useSettled } from '../../shared/kit/use-settled';
import { bodyOf, isAnalysable } from './version-body';
import type { VersionForm } from './version-form';

/** The analysis of what is being written, once the fingers rest. */
export const useAnalysis = (itemId: string, form: VersionForm) => {
  const settled = useSettled(form);
  const recipe = bodyOf(settled);
  return useAsk({
    queryKey: ['/api/recipes/analysis', itemId, recipe],
    queryFn: ({ signal }) =>
      must(api.POST('/api/recipes/analysis', { body: { itemId, recipe }, signal })),
    enabled: isAnalysable(settled),
    keep: true,
    staleTime: 60_000,
    retry: false,
  });
};
