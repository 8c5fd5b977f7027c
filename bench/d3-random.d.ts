declare module 'd3-random' {
  export interface RandomBinomial {
    (n: number, p: number): () => number
    source(uniform: () => number): RandomBinomial
  }
  export const randomBinomial: RandomBinomial
}
