/** The few functions of jstat that serve as an oracle; the package brings no types. */
declare module 'jstat' {
  type Distribution1 = {
    cdf(x: number, freedom: number): number;
    inv(probability: number, freedom: number): number;
  };
  type Distribution2 = {
    cdf(x: number, first: number, second: number): number;
    inv(probability: number, first: number, second: number): number;
  };
  const jStat: {
    readonly studentt: Distribution1;
    readonly chisquare: Distribution1;
    readonly normal: Distribution2;
    readonly centralF: Distribution2;
  };
  export default jStat;
}
