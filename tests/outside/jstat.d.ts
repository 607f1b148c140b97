/** The few functions of the statistics library jstat that serve as an independent oracle for tails. */
declare module 'jstat' {
  export const jStat: {
    readonly normal: {
      cdf(x: number, mean: number, std: number): number;
      inv(p: number, mean: number, std: number): number;
    };
    readonly chisquare: { cdf(x: number, df: number): number };
    readonly centralF: { cdf(x: number, df1: number, df2: number): number };
    readonly studentt: { cdf(x: number, df: number): number; inv(p: number, df: number): number };
    readonly binomial: { pdf(k: number, n: number, p: number): number };
    readonly beta: { cdf(x: number, alpha: number, beta: number): number };
    readonly tukey: { cdf(q: number, k: number, df: number): number };
    gammaln(x: number): number;
    mean(values: readonly number[]): number;
    median(values: readonly number[]): number;
    stdev(values: readonly number[], sample: boolean): number;
  };
}
