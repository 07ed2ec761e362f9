import type { Lane } from '#outside/workers/lane.ts'
import { taskPool } from '#outside/workers/task-pool.ts'

/** A question under the name by which its answer is looked up: a hole. */
export interface Piece<Question> {
  readonly name: string
  readonly question: Question
}

/** Why a piece has no answer. */
export interface Missing {
  readonly missing: string
}

/** Pieces worked on at the same time at most: a hole takes some 100 MB. Our assumption. */
const MOST_WORKERS = 4

/** Works on pieces in workers of this browser, each told as soon as it is there. Once the signal is set the rest is left. */
export async function workPieces<Question, Answer>(
  pieces: readonly Piece<Question>[],
  spawn: () => Lane<Question, Answer>,
  signal: AbortSignal,
  tell: (name: string, answer: Answer | Missing) => void,
): Promise<void> {
  const size = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency, pieces.length))
  const pool = taskPool<Question, Answer>({ size, spawn, here: noneHere })
  const questions = pieces.map(({ question }) => question)
  try {
    for await (const settled of pool.run(questions, { signal }))
      tell(
        pieces[settled.index]?.name ?? '',
        'error' in settled ? { missing: saidBy(settled.error) } : settled.result,
      )
  } catch (error) {
    if (!signal.aborted) throw error
  } finally {
    await pool.close()
  }
}

function saidBy(error: unknown): string {
  return `Marram itself failed: ${error instanceof Error ? error.message : String(error)}`
}

function noneHere(): never {
  throw new Error('Nothing of this is worked out where the page is painted.')
}
