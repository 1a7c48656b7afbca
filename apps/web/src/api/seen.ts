/** The version that was on screen, so that nobody is overwritten unseen. */
export const seen = (version: number) => ({ headers: { 'If-Match': `"${String(version)}"` } });

export const byId = (id: string) => ({ params: { path: { id } } });
