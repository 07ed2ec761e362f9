import type { Player } from '#golf/player/player.ts'
import { sheetsOfField } from '#paper/book/printed-kinds.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { type Asked, type LaidOut, layOut } from '../card/lay-out.ts'

/** The cards of a group as they come out of the printer, and what may not be carried of whom. */
export interface LaidField {
  readonly sheets: readonly Drawing[]
  readonly refusals: readonly { readonly name: string; readonly words: string }[]
}

/** Lays out everybody's pages, one player after the other. Rejects where the letters cannot be fetched. */
export async function layOutField(
  round: Omit<Asked, 'player' | 'states' | 'isRunning'>,
  field: readonly { readonly player: Player; readonly states: Asked['states'] }[],
): Promise<LaidField> {
  const sheets: LaidOut['sheets'][] = []
  const refusals: { name: string; words: string }[] = []
  for (const { player, states } of field) {
    const laid = await layOut({ ...round, player, states, isRunning: false })
    sheets.push(laid.sheets)
    const [fault] = laid.faults
    if (fault !== undefined) refusals.push({ name: player.name, words: `${fault.message} ${fault.advice}` })
  }
  return { sheets: sheetsOfField(sheets), refusals }
}
