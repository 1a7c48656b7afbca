/** The part of jstat that tests use; the package ships no types. */
declare module 'jstat' {
  export const jStat: {
    readonly hypgeom: {
      /** P(X <= x) for x marked among `draws` from `size` things of which `marked` are marked. */
      cdf(x: number, size: number, marked: number, draws: number): number;
    };
  };
}
