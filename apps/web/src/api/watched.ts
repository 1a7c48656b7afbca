/** Work that somebody looks on at: it can be stopped, and asked by its id how far it is. */
export interface Watched {
  readonly signal: AbortSignal;
  readonly id: string;
}

/** What goes along with a request that is no booking. */
export interface Sent {
  readonly signal: AbortSignal;
  readonly headers: { readonly 'Work-Id': string };
}

/** The worker between page and service, where there is one, is told when the page hangs up. */
export const sentWith = ({ signal, id }: Watched): Sent => {
  const hangUp = (): void => {
    if ('serviceWorker' in navigator)
      navigator.serviceWorker.controller?.postMessage({ hangUp: id });
  };
  signal.addEventListener('abort', hangUp, { once: true });
  return { signal, headers: { 'Work-Id': id } };
};
