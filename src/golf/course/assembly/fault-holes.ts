import type { ReportedHole } from '../import-report.ts'
import { CARD_LENGTH_TOLERANCE_SHARE } from './settings.ts'
import type { Tally } from './tally.ts'

/**
 * Tells what a hole lacks. Of our own course file only what the check of a course does not find: it is always checked
 * after it is read, and nothing should be said twice.
 */
export function faultHole(hole: ReportedHole, isCourseFile: boolean, tally: Tally): void {
  const warn = warner(hole, tally)
  const length = `${hole.lengthMetres.toFixed(0)} m`
  if (hole.parFrom === 'asked') {
    warn(
      'MAR-IMPORT-010',
      `Hole ${hole.ref} has no par in its tags or its name.`,
      `Write par on the hole line; for ${length} it is usually ${hole.parSuggested}.`,
    )
  }
  if (hole.parFrom === 'guess') {
    warn(
      'MAR-IMPORT-010',
      `The par of hole ${hole.ref} is not given; ${hole.par} was guessed from its ${length}.`,
      'Write it in the note of any row of the hole: par 4.',
    )
  }
  if (hole.fairways.length === 0 && (hole.par ?? hole.parSuggested ?? 3) > 3) {
    warn(
      'MAR-IMPORT-029',
      `The line of hole ${hole.ref} crosses no fairway.`,
      'Draw the fairway; without it all ground is rough.',
    )
  }
  if (!isCourseFile) faultForeignHole(hole, length, warn)
}

type Warn = (code: Parameters<Tally['fault']>[1], message: string, advice: string) => void

function warner(hole: ReportedHole, tally: Tally): Warn {
  return (code, message, advice) => tally.fault('warning', code, `hole ${hole.ref}`, message, advice)
}

function faultForeignHole(hole: ReportedHole, length: string, warn: Warn): void {
  if (hole.green === null) {
    warn(
      'MAR-IMPORT-021',
      `There is no green where the line of hole ${hole.ref} ends.`,
      'Draw the outline of the green.',
    )
  }
  if (hole.tees.length === 0) {
    warn(
      'MAR-IMPORT-028',
      `No tee markers stand by the start of hole ${hole.ref}; the start of its line is taken.`,
      'Draw the tees, or leave it if the line starts at the markers.',
    )
  }
  const card = hole.cardLengthMetres
  if (card !== null && Math.abs(card - hole.lengthMetres) > CARD_LENGTH_TOLERANCE_SHARE * hole.lengthMetres) {
    warn(
      'MAR-IMPORT-026',
      `The card says ${card.toFixed(0)} m for hole ${hole.ref}, the line measures ${length}.`,
      'Check that the line starts at the markers of the card, and whether the card is in yards: then write “yd”.',
    )
  }
}
