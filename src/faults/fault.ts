import type { FaultCode } from './codes.ts'

/** How much a fault matters: an `error` makes the answer wrong or impossible, a `warning` may, a `note` is for the record. */
export type Severity = 'error' | 'warning' | 'note'

/** One thing wrong with somebody's data: what, where, and what to do about it. Faults are collected, never thrown. */
export interface Fault {
  readonly severity: Severity
  readonly code: FaultCode
  readonly message: string
  /** Where in the source: `hole 7`, `line 12`, `way/1234`, `clubs[3].carry_m`. Empty when it concerns the whole. */
  readonly place: string
  /** What a person should do next. */
  readonly advice: string
}
