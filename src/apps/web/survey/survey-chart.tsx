import { type ReactElement, useDeferredValue, useMemo, useRef, useState } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import { fromStart, type LineStart, toStart } from '#outside/formats/line-start.ts'
import { describeHole } from '#paper/draw/describe-hole.ts'
import { drawSurvey } from '#paper/draw/draw-hole.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import { ChartLayer } from '../chart/picture.tsx'
import { useChartView } from '../chart/use-chart-view.ts'
import { useSize } from '../chart/use-size.ts'
import { useWheel } from '../chart/use-wheel.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { MapCredit, MapLayer, type ServedMap } from './map-layer.tsx'
import { MapPlacer } from './map-placer.tsx'
import { type OpenPicture, PicturePlacer } from './picture-placer.tsx'
import { pictureTransform } from './place-picture.ts'
import { snap } from './snap.ts'
import { TraceLayer } from './trace-layer.tsx'
import { TraceSurface } from './trace-surface.tsx'

/** The server's map, where the hole begins on it, or near where its tee is to be found. */
export interface UnderMap {
  readonly served: ServedMap
  readonly start: LineStart | null
  readonly finding: { readonly near: LonLat; onStart(start: LineStart): void; onLeave(): void } | null
}

/** The hole as it is typed and traced so far, and the ground that is traced on it. */
export function SurveyChart(props: {
  /** In the plane of the survey. */
  readonly hole: Hole
  readonly units: 'yards' | 'metres'
  /** Metres of one of the reader's units. */
  readonly step: number
  readonly courseName: string
  /** What a tap puts down; `null` = it chooses traced ground. */
  readonly tracing: string | null
  readonly draft: readonly Point[]
  /** Corners of the chosen outline, and the id of its area, to which it does not snap. */
  readonly chosen: { readonly areaId: string; readonly corners: readonly Point[] } | null
  readonly picture: OpenPicture | null
  readonly onPicture: (picture: OpenPicture) => void
  /** A map to lie under the chart of a hole that has a start, or to find one on; `null` = neither. */
  readonly map: UnderMap | null
  readonly onCorner: (at: Point) => void
  readonly onMoveCorner: (index: number, at: Point, drag: number) => void
  readonly onChoose: (areaId: string | null) => void
  readonly onClose: () => void
  readonly onUndo: () => void
  readonly onDrop: () => void
}): ReactElement {
  const { tracing, draft, chosen, picture, map } = props
  const hole = useDeferredValue(props.hole)
  const place = useRef<HTMLDivElement>(null)
  const size = useSize(place)
  // While ground is traced the chart lies still, whatever the hole's length comes to.
  const held = useRef(hole)
  if (tracing === null && chosen === null) held.current = hole
  const sight = useChartView(held.current, size)
  useWheel(place, sight)
  const [cross, setCross] = useState<Point>([0, CROSS_AHEAD_METRES])
  const [isSnapping, setSnapping] = useState(true)
  const [isMapMissing, setMapMissing] = useState(false)
  const sheet = sight?.sheet ?? null
  const { units, courseName } = props
  const layers = useMemo(
    () => (sheet === null ? null : engrave(hole, sheet, { units, courseName })),
    [hole, sheet, units, courseName],
  )
  if (sight === null || sheet === null || layers === null) return <div ref={place} className="chart" />

  const snapped = (at: Point): Point => {
    if (!isSnapping) return at
    const others = hole.areas.filter(({ id }) => id !== chosen?.areaId).map(({ polygon }) => polygon)
    return snap(at, others, draft, SNAP_PIXELS / sheet.unitsPerMetre)
  }
  const put = (at: Point): void => {
    const near = (corner: Point | undefined): boolean =>
      corner !== undefined && distance(corner, at) * sheet.unitsPerMetre <= SNAP_PIXELS
    // A second tap in one place, or one on the first corner, closes the outline.
    if (draft.length >= 3 && (near(draft.at(-1)) || near(draft[0]))) props.onClose()
    else if (!near(draft.at(-1))) props.onCorner(snapped(at))
  }
  const { frame } = sheet
  const window = `inset(${frame.top}px ${sheet.width - frame.right}px ${sheet.height - frame.bottom}px ${frame.left}px)`
  const isPlacing = picture !== null && picture.place === null
  return (
    <>
      <div ref={place} className="chart survey-chart">
        {map?.finding != null && size !== null ? (
          <MapPlacer
            key={map.finding.near.join()}
            {...map.finding}
            map={map.served}
            size={size}
            onMissing={setMapMissing}
          />
        ) : isPlacing && size !== null ? (
          <PicturePlacer picture={picture} size={size} onPicture={props.onPicture} />
        ) : (
          <>
            <div
              className="chart-window"
              style={sight.isEnlarged || picture !== null || map !== null ? { clipPath: window } : undefined}
            >
              <div className="chart-carried" style={{ transform: sight.transform }}>
                {map?.start != null && (
                  <MapUnderChart sheet={sheet} map={map.served} start={map.start} onMissing={setMapMissing} />
                )}
                {picture?.place != null && (
                  <img
                    className="under-picture"
                    src={picture.url}
                    alt=""
                    style={{ transform: pictureTransform(picture.place, sheet.toSheet) }}
                  />
                )}
                <ChartLayer drawing={layers.ground} />
                <TraceLayer
                  sheet={sheet}
                  draft={draft}
                  chosen={chosen?.corners ?? []}
                  cross={tracing === null ? null : cross}
                />
              </div>
            </div>
            <ChartLayer drawing={layers.furniture} isDecoration />
            <TraceSurface
              label={tracing === null ? 'The hole: choose traced ground' : `The hole: trace ${tracing}`}
              corners={(chosen?.corners ?? []).map(sheet.toSheet)}
              isEnlarged={sight.isEnlarged}
              takesDrags={chosen !== null}
              onTap={(at) => {
                const ground = sheet.toHole(at)
                if (tracing !== null) return put(ground)
                props.onChoose(
                  hole.areas.findLast(({ polygon }) => polygonContains(polygon, ground))?.id ?? null,
                )
              }}
              onDragCorner={(index, at, drag) => props.onMoveCorner(index, snapped(sheet.toHole(at)), drag)}
              onCarry={sight.carry}
              onRest={sight.rest}
              onStep={(right, further, isFine) => {
                const by = props.step * (isFine ? DESK_SETTINGS.shotFineStep : DESK_SETTINGS.shotStep)
                setCross(([x, y]) => [x + right * by, y + further * by])
              }}
              onPut={() => tracing !== null && put(cross)}
              onClose={props.onClose}
              onBack={props.onUndo}
              onDrop={props.onDrop}
            />
          </>
        )}
      </div>
      {map !== null && (map.start !== null || map.finding !== null) && (
        <MapCredit map={map.served} isMissing={isMapMissing} />
      )}
      <div className="chart-tools" role="toolbar" aria-label="The chart" hidden={map?.finding != null}>
        <button type="button" onClick={() => sight.enlarge(DESK_SETTINGS.enlargeStep)}>
          Nearer
        </button>
        <button
          type="button"
          disabled={!sight.isEnlarged}
          onClick={() => sight.enlarge(1 / DESK_SETTINGS.enlargeStep)}
        >
          Further
        </button>
        <button type="button" disabled={!sight.isEnlarged} onClick={sight.showWhole}>
          Whole hole
        </button>
        <button type="button" aria-pressed={isSnapping} onClick={() => setSnapping(!isSnapping)}>
          Snap
        </button>
        {tracing !== null && (
          <p className="cross-words" aria-live="polite">
            cross {Math.round(cross[1] / props.step)} along, {Math.round(Math.abs(cross[0]) / props.step)}{' '}
            {cross[0] < 0 ? 'left' : 'right'}
          </p>
        )}
      </div>
    </>
  )
}

/** The tiles of what the frame shows, turned with the hole. */
function MapUnderChart(props: {
  readonly sheet: Sheet
  readonly map: ServedMap
  readonly start: LineStart
  readonly onMissing: (isMissing: boolean) => void
}): ReactElement {
  const { sheet, map, start, onMissing } = props
  const [toEarth, toPlane] = [fromStart(start), toStart(start)]
  return (
    <MapLayer
      map={map}
      toSheet={(place) => sheet.toSheet(toPlane(place))}
      toEarth={(at) => toEarth(sheet.toHole(at))}
      frame={sheet.frame}
      pixelsPerMetre={sheet.unitsPerMetre}
      onMissing={onMissing}
    />
  )
}

/** A tap this near to a corner or an edge takes it, CSS pixels. */
const SNAP_PIXELS = 10

/** Where the cross stands at first, metres up the first leg. */
const CROSS_AHEAD_METRES = 100

function engrave(hole: Hole, sheet: Sheet, plain: HoleDrawingOptions) {
  const hasTitle = sheet.width >= DESK_SETTINGS.titleWidth && !sheet.isEnlarged
  const options = { ...plain, measures: measureHole(hole), hasTitle }
  const survey = drawSurvey(hole, sheet, options)
  const { width, height } = sheet
  return {
    ground: {
      width,
      height,
      title: `Hole ${hole.ref}`,
      description: describeHole(hole, options),
      shapes: survey.ground,
    },
    furniture: { width, height, title: '', description: '', shapes: survey.furniture },
  }
}
