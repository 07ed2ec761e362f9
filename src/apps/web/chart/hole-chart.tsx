import { type KeyboardEvent, type PointerEvent, type ReactElement, useMemo, useRef, useState } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { describeHole } from '#paper/draw/describe-hole.ts'
import { drawMarks, drawSurvey } from '#paper/draw/draw-hole.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import { layOutSheet, type Sheet } from '#paper/draw/sheet.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { Picture } from './picture.tsx'
import { useSize } from './use-size.ts'

interface HoleChartProps {
  readonly hole: Hole
  /** What the survey shows; kept by the caller so that it is drawn anew only when it changes. */
  readonly survey: HoleDrawingOptions
  /** The player's marks, new with every drag. */
  readonly marks: HoleDrawingOptions
  /** What the aim says, for screen readers: `4 yd left`. */
  readonly aimWords: string
  /** `drag` is the same for all of one drag. */
  readonly onAim: (headingDegrees: number, drag: number) => void
  /** A step of the aim to the right in the reader's units; `null` = back to the best line. */
  readonly onAimStep: (steps: number | null) => void
  readonly onPin: (pin: Point, drag: number) => void
  readonly onPinStep: (right: number, further: number) => void
}

/** The hole as a chart one can work on: drag or step the aim and the pin, click the ground to aim, the green to cut the hole. */
export function HoleChart(props: HoleChartProps): ReactElement {
  const { hole, survey, marks } = props
  const place = useRef<HTMLDivElement>(null)
  const size = useSize(place)
  const sheet = useMemo(() => (size === null ? null : layOutSheet(hole, size)), [hole, size])
  const layers = useMemo(
    () => (sheet === null ? null : surveyLayers(hole, sheet, survey)),
    [hole, sheet, survey],
  )
  const marksLayer = useMemo(
    () => (sheet === null ? null : layer(sheet, '', '', [drawMarks(sheet, { ...survey, ...marks })])),
    [sheet, survey, marks],
  )
  return (
    <div ref={place} className="chart">
      {sheet !== null && layers !== null && marksLayer !== null && (
        <>
          <Picture drawing={layers.ground} className="chart-layer" />
          <Picture drawing={marksLayer} className="chart-layer" isDecoration />
          <Picture drawing={layers.furniture} className="chart-layer" isDecoration />
          <Handles {...props} sheet={sheet} />
        </>
      )}
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

/** The surface that takes clicks, and the two handles that take drags and keys. */
function Handles(props: HoleChartProps & { readonly sheet: Sheet }): ReactElement {
  const { hole, sheet, marks } = props
  const surface = useRef<HTMLDivElement>(null)
  const [dragged, setDragged] = useState<'aim' | 'pin' | null>(null)
  const drags = useRef(0)
  const aim = marks.aim
  const target =
    aim === undefined
      ? null
      : sheet.toSheet([
          aim.from[0] + aim.atMetres * Math.sin((aim.headingDegrees * Math.PI) / 180),
          aim.from[1] + aim.atMetres * Math.cos((aim.headingDegrees * Math.PI) / 180),
        ])
  const pin = sheet.toSheet(hole.pin)
  const heldLift = useRef(PENNANT_LIFT)
  // The aim of a short hole lies over the pin: the pin is then held higher, so that each has room to be hit.
  if (dragged !== 'pin') heldLift.current = liftClearOf(pin, target)
  const lift = heldLift.current

  const ground = (event: PointerEvent): Point => {
    const box = surface.current?.getBoundingClientRect()
    return sheet.toHole([event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0)])
  }
  const headingTo = ([x, y]: Point): number => {
    const [fromX, fromY] = aim?.from ?? [0, 0]
    return (Math.atan2(x - fromX, y - fromY) * 180) / Math.PI
  }
  const movePinTo = (at: Point): void => {
    if (hole.green !== null && polygonContains(hole.green, at)) props.onPin(at, drags.current)
  }
  const grab = (what: 'aim' | 'pin') => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      event.stopPropagation()
      event.currentTarget.setPointerCapture(event.pointerId)
      drags.current += 1
      setDragged(what)
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      if (dragged !== what) return
      // The pin is held by its pennant, which stands above the hole it marks.
      if (what === 'aim') props.onAim(headingTo(ground(event)), drags.current)
      else movePinTo(below(ground(event), lift / sheet.unitsPerMetre))
    },
    onPointerUp: () => setDragged(null),
    onPointerCancel: () => setDragged(null),
  })

  return (
    <>
      <div
        ref={surface}
        className="chart-surface"
        onPointerUp={(event) => {
          const at = ground(event)
          drags.current += 1
          if (hole.green !== null && polygonContains(hole.green, at)) props.onPin(at, drags.current)
          else if (at[1] > 5) props.onAim(headingTo(at), drags.current)
        }}
      />
      {hole.green !== null && (
        <button
          type="button"
          className="handle handle-pin"
          style={{ left: pin[0] + PENNANT_SIDE, top: pin[1] - lift }}
          aria-label="Pin: arrow keys move it one pace"
          onKeyDown={(event) => onArrows(event, props.onPinStep)}
          {...grab('pin')}
        />
      )}
      {target !== null && aim !== undefined && (
        <div
          className="handle handle-aim"
          style={{ left: target[0], top: target[1] }}
          role="slider"
          tabIndex={0}
          aria-label="Aim"
          aria-orientation="horizontal"
          aria-valuemin={-60}
          aria-valuemax={60}
          aria-valuenow={Math.round(aim.headingDegrees * 10) / 10}
          aria-valuetext={props.aimWords}
          onKeyDown={(event) => {
            if (event.key === 'Home') {
              event.preventDefault()
              props.onAimStep(null)
            } else if (event.key === 'PageUp' || event.key === 'PageDown') {
              event.preventDefault()
              props.onAimStep(event.key === 'PageUp' ? 5 : -5)
            } else onArrows(event, (right, further) => props.onAimStep(right + further))
          }}
          {...grab('aim')}
        />
      )}
    </>
  )
}

/** How far above and beside its hole the pin is held, and the room a handle needs, CSS pixels. */
const PENNANT_LIFT = 30
const PENNANT_SIDE = 4
const HANDLE_ROOM = 50

function liftClearOf(pin: Point, target: Point | null): number {
  let lift = PENNANT_LIFT
  const isTouching = (): boolean =>
    target !== null &&
    Math.abs(pin[0] + PENNANT_SIDE - target[0]) < HANDLE_ROOM &&
    Math.abs(pin[1] - lift - target[1]) < HANDLE_ROOM
  while (isTouching()) lift += 2
  return lift
}

function below([x, y]: Point, metres: number): Point {
  return [x, y - metres]
}

function onArrows(event: KeyboardEvent, step: (right: number, further: number) => void): void {
  const moves: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [-1, 0],
    ArrowRight: [1, 0],
    ArrowUp: [0, 1],
    ArrowDown: [0, -1],
  }
  const move = moves[event.key]
  if (move === undefined) return
  event.preventDefault()
  step(move[0], move[1])
}
