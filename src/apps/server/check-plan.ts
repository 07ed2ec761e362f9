import * as z from 'zod'
import { Failure } from '#faults/failure.ts'
import type { CheckedDocument } from './document-check.ts'

/**
 * Reads a document as a plan (`plan/1`). Only what lists and pages lean on is looked at: the rest was written by
 * Marram and may hold more than this version knows. Throws Failure MAR-SERVER-015.
 */
export function checkPlan(text: string, where: string): CheckedDocument {
  const reading = PLAN.safeParse(JSON.parse(text))
  if (!reading.success) {
    const issue = reading.error.issues[0]
    const place = issue === undefined ? '' : issue.path.join('.')
    throw new Failure(
      'MAR-SERVER-015',
      `This is not a plan (plan/1): ${issue?.message ?? 'unreadable'}.`,
      place === '' ? where : `${where}, ${place}`,
    )
  }
  const { course, hole, player } = reading.data
  return { name: `${course}, hole ${hole.ref}, ${player}`, faults: [] }
}

const PLAN = z.looseObject({
  schema: z.literal('plan/1'),
  course: z.string(),
  hole: z.looseObject({ ref: z.string(), par: z.number(), length_m: z.number() }),
  player: z.string(),
  value: z.looseObject({ strokes: z.number() }),
  verdict: z.enum(['clear', 'close', 'too-close']),
  options: z.array(z.looseObject({ club: z.string(), strokes: z.number(), cost: z.number() })).min(1),
  sentence: z.string(),
})
