/** One published value beside what Marram computes for the same question. */
export interface PublishedRow {
  readonly what: string
  /** Of both numbers; empty for a bare number. */
  readonly unit: string
  readonly published: number
  /** Author, title or body, and year. */
  readonly source: string
  /** How sure the published figure is, as the reference file says it: VERIFIED, DERIVED, MEMORY. */
  readonly status: string
  readonly ours: number
  /** Digits behind the point of everything printed of this row. */
  readonly decimals: number
  /** Largest difference, in `unit`, that needs no reason. */
  readonly bound: number
  /** Why the difference is larger than the bound. */
  readonly reason?: string
}

/** The rows of one subject, in the order in which they are printed. */
export interface PublishedSubject {
  readonly title: string
  /** What these rows show, and what they do not: whether we compute, were fitted, or took over. */
  readonly note: string
  readonly rows: readonly PublishedRow[]
}

/** Ours less published, both rounded to the row's digits first, so that the page judges what it prints. */
export function differenceOf(row: PublishedRow): number {
  const scale = 10 ** row.decimals
  return (Math.round(row.ours * scale) - Math.round(row.published * scale)) / scale
}

/** Whether the row needs a reason. */
export function isBeyondBound(row: PublishedRow): boolean {
  return Math.abs(differenceOf(row)) > row.bound + 1e-12
}
