/** More than three causes at once explain anything; the search stops there. */
const LARGEST_COVER = 3;
const MOST_COVERS = 20;

/**
 * The smallest sets of causes that together explain every complaint: branches on the causes of the
 * first complaint not yet explained, so that only sets that help are tried. Empty when it would
 * take more than three. A complaint with no known cause can't be covered and makes it empty too.
 */
export const smallestCovers = (
  complaints: readonly ReadonlySet<string>[],
  usable: (cause: string) => boolean,
): string[][] => {
  for (let size = 1; size <= LARGEST_COVER; size += 1) {
    const found = new Map<string, string[]>();
    extend(complaints, usable, [], size, found);
    if (found.size > 0) return [...found.values()].slice(0, MOST_COVERS);
  }
  return [];
};

const extend = (
  complaints: readonly ReadonlySet<string>[],
  usable: (cause: string) => boolean,
  chosen: readonly string[],
  left: number,
  found: Map<string, string[]>,
): void => {
  if (found.size >= MOST_COVERS) return;
  const open = complaints.find((causes) => !chosen.some((cause) => causes.has(cause)));
  if (!open) {
    const cover = [...chosen].sort();
    found.set(cover.join('\u0000'), cover);
    return;
  }
  if (left === 0) return;
  for (const cause of open) {
    if (usable(cause)) extend(complaints, usable, [...chosen, cause], left - 1, found);
  }
};
