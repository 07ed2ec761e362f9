import { checkCard } from './check-card.ts'
import { checkCourseDocument } from './check-course-document.ts'
import { checkDay } from './check-day.ts'
import { checkNotes } from './check-notes.ts'
import { checkPlan } from './check-plan.ts'
import { checkPlayer } from './check-player.ts'
import { checkRound } from './check-round.ts'
import type { DocumentCheck, DocumentKind } from './document-check.ts'

/** How each kind of document is read before it is kept. */
export const documentChecks: Readonly<Record<DocumentKind, DocumentCheck>> = {
  courses: checkCourseDocument,
  players: checkPlayer,
  days: checkDay,
  plans: checkPlan,
  rounds: checkRound,
  notes: checkNotes,
  cards: checkCard,
}
