/** A table that is ready to be read: every figure is rounded and in words. */
export interface WordTable {
  readonly columns: readonly { readonly heading: string; readonly isFigure?: boolean }[]
  readonly rows: readonly (readonly string[])[]
}
