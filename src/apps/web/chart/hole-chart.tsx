import { type ReactElement, useMemo, useRef, useState } from 'react'
import { hazardBox } from '#golf/course/hazard-box.ts'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { type HazardMove, NOT_MOVED } from '#golf/course/move-hazards.ts'
import type { NearbyStart } from '#golf/strategy/nearby-start.ts'
import type { ReliefRow } from '#golf/strategy/relief.ts'
import { type ScoreField, scoreField } from '#golf/strategy/score-field.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { describeHole } from '#paper/draw/describe-hole.ts'
import { drawMarks, drawSurvey } from '#paper/draw/draw-hole.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { ChartTools } from './chart-tools.tsx'
import { handlePlaces } from './handle-places.ts'
import { Handles } from './handles.tsx'
import { HazardHandles, type HeldHazard, moveBy } from './hazard-handles.tsx'
import { headingTo } from './heading-to.ts'
import { type Measured, MeasureHandles } from './measure-handles.tsx'
import { nearestSpot } from './nearest-spot.ts'
import { ChartLayer } from './picture.tsx'
import { Surface } from './surface.tsx'
import { useChartView } from './use-chart-view.ts'
import { useSize } from './use-size.ts'
import { useWheel } from './use-wheel.ts'

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
  /** The hole as it was solved, for the expected score from everywhere; `null` while no plan knows it. */
  readonly solved: NearbyStart | null
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
  /** Takes relief on a spot that is tapped; `null` while none is shown. */
  readonly onRelief: ((row: ReliefRow) => void) | null
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
  const sight = useChartView(surveyed, size)
  useWheel(place, sight)
  const sheet = sight?.sheet ?? null
  const [measured, setMeasured] = useState<Measured | null>(null)
  const [hasScores, setScores] = useState(false)
  const { solved } = props
  const values = useMemo(
    () => (hasScores && solved !== null ? scoreField(solved) : null),
    [hasScores, solved],
  )
  const drawn = useHeld(hole, survey, values, isHolding)
  const layers = useMemo(() => (sheet === null ? null : surveyLayers(sheet, drawn)), [drawn, sheet])
  const marksLayer = useMemo(() => {
    if (sheet === null) return null
    const ruled = measured === null ? {} : { measured }
    return layer(sheet, '', '', [drawMarks(sheet, { ...survey, ...marks, ...ruled })])
  }, [sheet, survey, marks, measured])
  const began = useRef({ drag: 0, move: NOT_MOVED })
  if (sight === null || sheet === null || layers === null || marksLayer === null)
    return <div ref={place} className="chart" />

  const onChart = ([x, y]: Point): Point => {
    const box = place.current?.getBoundingClientRect()
    return [x - (box?.left ?? 0), y - (box?.top ?? 0)]
  }
  const ground = (at: Point): Point => sheet.toHole(onChart(at))
  const measure = (at: Point): void => setMeasured((before) => (before === null ? null : [before[1], at]))
  const dragHazard = (id: string, by: Point, drag: number): void => {
    const polygon = surveyed.areas.find((area) => area.id === id)?.polygon
    if (polygon === undefined) return
    if (began.current.drag !== drag) began.current = { drag, move: moves[id] ?? NOT_MOVED }
    onMoveHazard(id, moveBy(began.current.move, 'whole', hazardBox(polygon, surveyed.line), by), drag)
  }
  const { onRelief } = props
  const takeSpot =
    onRelief &&
    ((at: Point): void => {
      const row = nearestSpot(marks.relief?.of.options ?? [], at, SPOT_PIXELS / sheet.unitsPerMetre)
      if (row !== null) onRelief(row)
    })
  const places = handlePlaces(hole, marks.aim, sheet)
  const others = [sheet.toSheet(props.ball), places.pin, ...(places.aim === null ? [] : [places.aim])]
  const { frame } = sheet
  const window = `inset(${frame.top}px ${sheet.width - frame.right}px ${sheet.height - frame.bottom}px ${frame.left}px)`
  const isMeasuring = measured !== null
  return (
    <>
      <div ref={place} className="chart">
        <div className="chart-window" style={sight.isEnlarged ? { clipPath: window } : undefined}>
          <div
            className={`chart-carried${sight.isEnlarged ? ' enlarged' : ''}`}
            style={{ transform: sight.transform }}
          >
            <ChartLayer drawing={layers.ground} />
            <ChartLayer drawing={marksLayer} className="chart-marks" isDecoration />
          </div>
        </div>
        <ChartLayer drawing={layers.furniture} isDecoration />
        <Surface
          hole={hole}
          isEnlarged={sight.isEnlarged}
          ground={ground}
          onTap={isMeasuring ? measure : takeSpot}
          onGreen={props.onPin}
          onGround={(at, drag) => {
            onHazard(null)
            props.onAim(headingTo(marks.aim?.from, at), drag)
          }}
          onHazard={(id) => onHazard(id)}
          onDragHazard={dragHazard}
          onHold={setHolding}
          onCarry={sight.carry}
          onSpread={(factor, at) => sight.enlarge(factor, onChart(at))}
          onRest={sight.rest}
        />
        {sight.transform === undefined && (
          <>
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
            {isMeasuring && (
              <MeasureHandles
                measured={measured}
                sheet={sheet}
                step={props.step}
                ground={ground}
                onMeasured={setMeasured}
              />
            )}
          </>
        )}
      </div>
      <ChartTools
        sight={sight}
        isMeasuring={isMeasuring}
        onMeasure={(isOn) => setMeasured(isOn ? [props.ball, hole.pin] : null)}
        hasScores={solved === null ? null : hasScores}
        onScores={setScores}
      />
    </>
  )
}

/** A tap this near to a spot means it, CSS pixels: half of what a finger needs. */
const SPOT_PIXELS = 24

/** What is engraved; while a hazard is held it stays as it was when the hazard was taken. */
function useHeld(
  hole: Hole,
  survey: HoleDrawingOptions,
  values: ScoreField | null,
  isHeld: boolean,
): { readonly hole: Hole; readonly options: HoleDrawingOptions } {
  const latest = useMemo(
    () => ({ hole, options: values === null ? survey : { ...survey, values } }),
    [hole, survey, values],
  )
  const engraved = useRef(latest)
  if (!isHeld) engraved.current = latest
  return engraved.current
}

function surveyLayers(
  sheet: Sheet,
  { hole, options }: { readonly hole: Hole; readonly options: HoleDrawingOptions },
): { ground: Drawing; furniture: Drawing } {
  const hasTitle = sheet.width >= DESK_SETTINGS.titleWidth && !sheet.isEnlarged
  const survey = drawSurvey(hole, sheet, { ...options, measures: measureHole(hole), hasTitle })
  const title = `Hole ${hole.ref}${hole.name === null ? '' : `, ${hole.name}`}`
  return {
    ground: layer(sheet, title, describeHole(hole, options), survey.ground),
    furniture: layer(sheet, '', '', survey.furniture),
  }
}

function layer(sheet: Sheet, title: string, description: string, shapes: Drawing['shapes']): Drawing {
  return { width: sheet.width, height: sheet.height, title, description, shapes }
}
