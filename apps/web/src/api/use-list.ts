import { useInfiniteQuery, useQueryClient } from '@tanstack/react-query';
import { type GetInit, type GetPath, read, type Read } from './client';
import type { Asked } from './use-ask';
import { useNamedRequests } from './use-named-requests';

interface PageOf<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}

/** Paths that answer page by page. */
export type ListPath = {
  [P in GetPath]: Read<P> extends { items: readonly unknown[]; next: string | null } ? P : never;
}[GetPath];

export type Row<P extends ListPath> = Read<P> extends { items: readonly (infer T)[] } ? T : never;

export interface List<T> {
  readonly rows: readonly T[];
  /** For `Loaded`: state and errors of the list as a whole. */
  readonly query: Asked<readonly T[]>;
  readonly more: (() => void) | undefined;
}

/** A list of the service, page after page. */
export const useList = <P extends ListPath>(
  path: P,
  query: Readonly<Record<string, string | number | undefined>> = {},
  enabled = true,
): List<Row<P>> => {
  const queries = useQueryClient();
  const { workId, sent } = useNamedRequests();
  const queryKey = [path, query];
  const pages = useInfiniteQuery({
    queryKey,
    initialPageParam: undefined as string | undefined,
    queryFn: async ({ pageParam, signal }) => {
      const given = Object.entries({ limit: 100, ...query, after: pageParam }).filter(
        ([, value]) => value !== undefined && value !== '',
      );
      const init = {
        params: { query: Object.fromEntries(given) },
        ...sent(signal),
      };
      return (await read(path, init as unknown as GetInit<P>)) as unknown as PageOf<Row<P>>;
    },
    getNextPageParam: (last) => last.next ?? undefined,
    enabled,
  });
  const rows = pages.data?.pages.flatMap((page) => page.items) ?? [];
  return {
    rows,
    query: {
      ...pages,
      data: pages.data === undefined ? undefined : rows,
      stop: () => void queries.cancelQueries({ queryKey, exact: true }),
      workId,
    } as unknown as Asked<readonly Row<P>[]>,
    more: pages.hasNextPage ? () => void pages.fetchNextPage() : undefined,
  };
};
