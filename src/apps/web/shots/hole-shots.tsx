import { type ReactElement, useCallback, useMemo } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Club, Lie, Player } from '#golf/player/player.ts'
import { clubPattern } from '#golf/strategy/bag-patterns.ts'
import { describeHole } from '#paper/draw/describe-hole.ts'
import { drawAskedLine } from '#paper/draw/draw-asked-line.ts'
import { drawSurvey } from '#paper/draw/draw-hole.ts'
import { layOutSheet, type Sheet } from '#paper/draw/sheet.ts'
import type { Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { type AskedLine, placeOf, spotOf } from './asked-line.ts'
import type { EnteredShot } from './shot-sheet.ts'
import type { Spot } from './shot-words.ts'
import { TapChart, type TapGround } from './tap-chart.tsx'
import type { PlayedHole } from './use-played-hole.ts'

/** A hole with the shots of one club from where the ball lies, where they stopped, about the line they were asked for. */
export function HoleShots(props: {
  readonly player: Player
  readonly club: Club
  readonly played: PlayedHole
  readonly hole: Hole
  readonly shots: readonly EnteredShot[]
  readonly spot: Spot
  readonly reader: Reader
  readonly onTap: (spot: Spot) => void
  readonly onStep: (right: number, further: number, isFine: boolean) => void
  readonly onPut: () => void
  readonly onUndo: () => void
}): ReactElement {
  const { player, club, played, hole, shots, spot, reader, onTap } = props
  const { line, lie, courseId } = played
  const courseName = played.course?.name ?? ''
  const layOut = useCallback(
    (size: { readonly width: number; readonly height: number }) => layOutSheet(hole, size),
    [hole],
  )
  const survey = useMemo(
    () => ({ units: reader.units, courseName, measures: measureHole(hole) }),
    [reader.units, courseName, hole],
  )
  const engrave = useMemo(
    () =>
      onceFor((sheet: Sheet) =>
        drawSurvey(hole, sheet, {
          ...survey,
          hasTitle: sheet.width >= DESK_SETTINGS.titleWidth,
        }),
      ),
    [hole, survey],
  )
  const pattern = useMemo(() => aboutLine(player, club, lie, line), [player, club, lie, line])
  const drawGround = useCallback(
    (sheet: Sheet): TapGround => {
      const { ground, furniture } = engrave(sheet)
      const aim = { from: line.from, headingDegrees: line.heading, atMetres: club.totalMetres }
      return {
        title: `Hole ${hole.ref}${hole.name === null ? '' : `, ${hole.name}`}`,
        description: describeHole(hole, survey),
        below: [...ground, drawAskedLine(aim, pattern, sheet)],
        above: furniture,
      }
    },
    [engrave, line, club, hole, survey, pattern],
  )
  const marks = useMemo(() => {
    const last = shots.at(-1)
    return shots.flatMap((shot) => {
      const { finish } = shot
      if (shot.club !== club.name || finish?.courseId !== courseId || finish.holeRef !== hole.ref) return []
      return [{ at: finish.at, isMishit: shot.strike === 'mishit', isLast: shot === last }]
    })
  }, [shots, club, courseId, hole])
  const cross = useMemo(() => placeOf(spot, line), [spot, line])
  return (
    <TapChart
      {...props}
      layOut={layOut}
      drawGround={drawGround}
      marks={marks}
      cross={cross}
      label="Hole: where the ball stopped"
      onTap={(at) => onTap(spotOf(at, line))}
    />
  )
}

/** The club's totals from the lie on level ground without wind, laid along the line. */
function aboutLine(player: Player, club: Club, lie: Lie, line: AskedLine) {
  const pattern = clubPattern(player, club.name, lie, true)
  if (pattern === null) return null
  const places = Array.from(pattern.x, (right, k) => placeOf({ right, along: pattern.y[k] as number }, line))
  return {
    club: club.name,
    x: Float64Array.from(places, ([x]) => x),
    y: Float64Array.from(places, ([, y]) => y),
    weight: pattern.weight,
  }
}

/** The last answer again while the question is the same: a turned line does not engrave the ground anew. */
function onceFor<Question, Answer>(answer: (question: Question) => Answer): (question: Question) => Answer {
  let last: { readonly question: Question; readonly answer: Answer } | null = null
  return (question) => {
    if (last === null || last.question !== question) last = { question, answer: answer(question) }
    return last.answer
  }
}
