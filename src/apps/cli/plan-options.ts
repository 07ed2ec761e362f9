import type { GlobalOptions } from './machine.ts'

/** The options of `marram plan`, as typed. */
export interface PlanOptions extends GlobalOptions {
  /** One file a player. */
  readonly player: readonly string[]
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly pins?: string
  readonly wind?: string
  readonly pin?: string
  readonly from?: string
  readonly lie?: string
  readonly stance?: string
  readonly club?: string
  readonly objective?: string
  readonly opponent?: string
  readonly opponentScore?: string
  readonly strokesReceived?: string
  readonly played?: string
  readonly through?: string
  readonly up?: string
  readonly draws?: string
  readonly quick?: boolean
  readonly picture?: string
  /** False with `--no-flips`. */
  readonly flips: boolean
  readonly workers?: string
  readonly jsonLines?: boolean
}
