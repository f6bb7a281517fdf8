/** The shape of one language's words, which every other language fills: literals become `string`, parameters stay. */
export type Widen<T> = T extends string
  ? string
  : T extends (...parameters: infer P) => infer R
    ? (...parameters: P) => Widen<R>
    : T extends readonly (infer E)[]
      ? readonly Widen<E>[]
      : T extends object
        ? { readonly [K in keyof T]: Widen<T[K]> }
        : T;
