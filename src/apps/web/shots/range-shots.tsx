import { type ReactElement, useCallback, useMemo } from 'react'
import type { Club, Player } from '#golf/player/player.ts'
import { layOutRange } from '#paper/draw/range-sheet.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import type { Reader } from '../desk/desk.ts'
import { drawRangeGround, usualLength } from './range-view.ts'
import type { ShotChoice } from './shot-choices.tsx'
import type { EnteredShot } from './shot-sheet.ts'
import type { Spot } from './shot-words.ts'
import { TapChart } from './tap-chart.tsx'

/** The range of one club, with its shots as they came down or stopped. */
export function RangeShots(props: {
  readonly player: Player
  readonly club: Club
  readonly choice: ShotChoice
  readonly shots: readonly EnteredShot[]
  readonly spot: Spot
  readonly reader: Reader
  readonly onTap: (spot: Spot) => void
  readonly onStep: (right: number, further: number, isFine: boolean) => void
  readonly onPut: () => void
  readonly onUndo: () => void
}): ReactElement {
  const { player, club, choice, shots, spot, reader, onTap } = props
  const middle = usualLength(club, choice)
  const layOut = useCallback(
    (size: { readonly width: number; readonly height: number }) => layOutRange(middle, size),
    [middle],
  )
  const drawGround = useCallback(
    (sheet: Sheet) => drawRangeGround(sheet, player, club, choice, reader),
    [player, club, choice, reader],
  )
  const marks = useMemo(() => {
    const last = shots.at(-1)
    return shots.flatMap((shot) => {
      const along = choice.to === 'carry' ? shot.carryMetres : shot.totalMetres
      if (shot.club !== club.name || along === null) return []
      const at = [shot.offlineMetres ?? 0, along] as const
      return [{ at, isMishit: shot.strike === 'mishit', isLast: shot === last }]
    })
  }, [shots, club, choice.to])
  const cross = useMemo(() => [spot.right, spot.along] as const, [spot])
  return (
    <TapChart
      {...props}
      layOut={layOut}
      drawGround={drawGround}
      marks={marks}
      cross={cross}
      label={`Range: where the ball ${choice.to === 'carry' ? 'came down' : 'stopped'}`}
      onTap={([right, along]) => onTap({ along, right })}
    />
  )
}
