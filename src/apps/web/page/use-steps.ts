import { useCallback } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import * as edits from '../desk/edits.ts'
import { finishOffset } from '../desk/finish-offset.ts'
import type { AimedClub } from '../desk/first-aim.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { readerMetres } from '../words.ts'
import type { Edit } from './use-desk.ts'

/** Everything that is dragged on the chart, by steps: for buttons and keys. */
export function useSteps(of: {
  readonly desk: Desk
  readonly hole: Hole | null
  readonly option: AimedClub | null
  readonly heading: number | null
  /** What the club is aimed by, degrees clockwise from the y axis. */
  readonly line: number
  readonly reader: Reader
  readonly edit: Edit
}): {
  /** Steps of the aim to the right in the reader's units; `null` = back to the best line. */
  readonly stepAim: (steps: number | null) => void
  readonly stepPin: (right: number, further: number) => void
  readonly stepBall: (right: number, further: number) => void
} {
  const { desk, hole, option, heading, line, reader, edit } = of
  const stepAim = useCallback(
    (steps: number | null) => {
      if (option === null || heading === null) return
      if (steps === null) return edit('aim', edits.aimBest)
      const step = steps * DESK_SETTINGS.aimStep * readerMetres(reader)
      const sine = (finishOffset(option, heading - line) + step) / Math.max(1, option.total_m)
      const turn = (Math.asin(Math.max(-0.9, Math.min(0.9, sine))) * 180) / Math.PI
      edit('aim', (now) => edits.aimAt(now, option.club, line + turn))
    },
    [option, heading, line, reader, edit],
  )
  const stepPin = (right: number, further: number): void => {
    if (hole === null) return
    const pace = DESK_SETTINGS.pinStep
    edit('pin', (now) => edits.stepPin(now, hole.pin, right * pace, further * pace))
  }
  const stepBall = (right: number, further: number): void => {
    const [x, y] = desk.ball?.at ?? [0, 0]
    const metres = readerMetres(reader)
    edit('ball', (now) => edits.placeBall(now, [x + right * metres, y + further * metres]))
  }
  return { stepAim, stepPin, stepBall }
}
