import { type ReactElement, useMemo, useRef, useState } from 'react'
import { hazardBox } from '#golf/course/hazard-box.ts'
import type { Hole } from '#golf/course/hole.ts'
import { type HazardMove, NOT_MOVED } from '#golf/course/move-hazards.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { describeHole } from '#paper/draw/describe-hole.ts'
import { drawMarks, drawSurvey } from '#paper/draw/draw-hole.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import { layOutSheet, type Sheet } from '#paper/draw/sheet.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { handlePlaces } from './handle-places.ts'
import { Handles } from './handles.tsx'
import { HazardHandles, type HeldHazard, moveBy } from './hazard-handles.tsx'
import { headingTo } from './heading-to.ts'
import { Picture } from './picture.tsx'
import { Surface } from './surface.tsx'
import { useSize } from './use-size.ts'

interface HoleChartProps {
  /** The hole with its hazards as they are taken to lie. */
  readonly hole: Hole
  /** The same as it was surveyed. */
  readonly surveyed: Hole
  /** What the survey shows; kept by the caller so that it is drawn anew only when it changes. */
  readonly survey: HoleDrawingOptions
  /** The player's marks, new with every drag. */
  readonly marks: HoleDrawingOptions
  /** What the aim says, for screen readers: `4 yd left`. */
  readonly aimWords: string
  /** The hazard that is looked at; `null` = none. */
  readonly hazard: HeldHazard | null
  readonly moves: Readonly<Record<string, HazardMove>>
  /** Metres of one step of a hazard by key. */
  readonly step: number
  /** `drag` is the same for all of one drag. */
  readonly onAim: (headingDegrees: number, drag: number) => void
  /** A step of the aim to the right in the reader's units; `null` = back to the best line. */
  readonly onAimStep: (steps: number | null) => void
  readonly onPin: (pin: Point, drag: number) => void
  readonly onPinStep: (right: number, further: number) => void
  /** Where the ball lies, hole frame. */
  readonly ball: Point
  readonly onBall: (at: Point, drag: number) => void
  readonly onBallStep: (right: number, further: number) => void
  readonly onHazard: (id: string | null) => void
  /** `null` = no drag but a key. */
  readonly onMoveHazard: (id: string, move: HazardMove, drag: number | null) => void
}

/**
 * The hole as a chart one can work on: drag or step the aim, the pin and the hazards, tap the ground to aim, the green
 * to cut the hole, a hazard to take it up.
 */
export function HoleChart(props: HoleChartProps): ReactElement {
  const { hole, surveyed, survey, marks, moves, onHazard, onMoveHazard } = props
  const place = useRef<HTMLDivElement>(null)
  const size = useSize(place)
  const [isHolding, setHolding] = useState(false)
  const sheet = useMemo(() => (size === null ? null : layOutSheet(surveyed, size)), [surveyed, size])
  // While a hazard is held only its outline follows: the ground is engraved anew when it is let go.
  const engraved = useRef({ hole, survey })
  if (!isHolding) engraved.current = { hole, survey }
  const drawn = engraved.current
  const layers = useMemo(
    () => (sheet === null ? null : surveyLayers(drawn.hole, sheet, drawn.survey)),
    [drawn, sheet],
  )
  const marksLayer = useMemo(
    () => (sheet === null ? null : layer(sheet, '', '', [drawMarks(sheet, { ...survey, ...marks })])),
    [sheet, survey, marks],
  )
  const began = useRef({ drag: 0, move: NOT_MOVED })
  if (sheet === null || layers === null || marksLayer === null) return <div ref={place} className="chart" />

  const ground = ([x, y]: Point): Point => {
    const box = place.current?.getBoundingClientRect()
    return sheet.toHole([x - (box?.left ?? 0), y - (box?.top ?? 0)])
  }
  const dragHazard = (id: string, by: Point, drag: number): void => {
    const polygon = surveyed.areas.find((area) => area.id === id)?.polygon
    if (polygon === undefined) return
    if (began.current.drag !== drag) began.current = { drag, move: moves[id] ?? NOT_MOVED }
    onMoveHazard(id, moveBy(began.current.move, 'whole', hazardBox(polygon, surveyed.line), by), drag)
  }
  const places = handlePlaces(hole, marks.aim, sheet)
  const others = [sheet.toSheet(props.ball), places.pin, ...(places.aim === null ? [] : [places.aim])]
  return (
    <div ref={place} className="chart">
      <Picture drawing={layers.ground} className="chart-layer" />
      <Picture drawing={marksLayer} className="chart-layer" isDecoration />
      <Picture drawing={layers.furniture} className="chart-layer" isDecoration />
      <Surface
        hole={hole}
        ground={ground}
        onGreen={props.onPin}
        onGround={(at, drag) => {
          onHazard(null)
          props.onAim(headingTo(marks.aim?.from, at), drag)
        }}
        onHazard={onHazard}
        onDragHazard={dragHazard}
        onHold={setHolding}
      />
      {props.hazard !== null && (
        <HazardHandles
          hazard={props.hazard}
          line={surveyed.line}
          sheet={sheet}
          others={others}
          step={props.step}
          onMove={onMoveHazard}
          onHold={setHolding}
        />
      )}
      <Handles {...props} aim={marks.aim} sheet={sheet} ground={ground} />
    </div>
  )
}

function surveyLayers(
  hole: Hole,
  sheet: Sheet,
  options: HoleDrawingOptions,
): { ground: Drawing; furniture: Drawing } {
  const hasTitle = sheet.width >= DESK_SETTINGS.titleWidth
  const survey = drawSurvey(hole, sheet, { ...options, hasTitle })
  const title = `Hole ${hole.ref}${hole.name === null ? '' : `, ${hole.name}`}`
  return {
    ground: layer(sheet, title, describeHole(hole, options), survey.ground),
    furniture: layer(sheet, '', '', survey.furniture),
  }
}

function layer(sheet: Sheet, title: string, description: string, shapes: Drawing['shapes']): Drawing {
  return { width: sheet.width, height: sheet.height, title, description, shapes }
}
