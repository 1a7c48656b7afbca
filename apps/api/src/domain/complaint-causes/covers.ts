/** More than three causes at once explain anything; the search stops there. */
const LARGEST_COVER = 3;
const MOST_COVERS = 20;

/**
 * The smallest sets of causes that together explain every complaint: branches on the causes of the
 * first complaint not yet explained, so that only sets that help are tried, the rarest causes first,
 * so that what is cut off is what says least. Empty when it would take more than three. A complaint
 * with no known cause can't be covered and makes it empty too.
 */
export const smallestCovers = (
  complaints: readonly (readonly string[])[],
  shareOfUnits: (cause: string) => number,
): string[][] => {
  const rarestFirst = complaints.map((causes) =>
    [...causes].sort((a, b) => shareOfUnits(a) - shareOfUnits(b) || (a < b ? -1 : 1)),
  );
  const shareOfCover = (cover: readonly string[]): number =>
    cover.reduce((total, cause) => total + shareOfUnits(cause), 0);
  for (let size = 1; size <= LARGEST_COVER; size += 1) {
    const found = new Map<string, string[]>();
    extend(rarestFirst, [], size, found);
    if (found.size === 0) continue;
    return [...found.values()].sort((a, b) => shareOfCover(a) - shareOfCover(b));
  }
  return [];
};

const extend = (
  complaints: readonly (readonly string[])[],
  chosen: readonly string[],
  left: number,
  found: Map<string, string[]>,
): void => {
  if (found.size >= MOST_COVERS) return;
  const open = complaints.find((causes) => !chosen.some((cause) => causes.includes(cause)));
  if (!open) {
    const cover = [...chosen].sort();
    found.set(cover.join('\u0000'), cover);
    return;
  }
  if (left === 0) return;
  for (const cause of open) extend(complaints, [...chosen, cause], left - 1, found);
};
