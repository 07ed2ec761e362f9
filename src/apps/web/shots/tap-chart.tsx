import { type KeyboardEvent, type MouseEvent, type ReactElement, useId, useMemo, useRef } from 'react'
import type { Point } from '#numbers/geometry/point.ts'
import { drawCross, drawTapped, type TappedMark } from '#paper/draw/draw-tapped.ts'
import type { Drawing, Shape } from '#paper/draw/drawing.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import { ChartLayer } from '../chart/picture.tsx'
import { useSize } from '../chart/use-size.ts'
import { onKeys } from '../commands/on-keys.ts'

/** What lies under and over the shots on a chart, and what it is in words. */
export interface TapGround {
  readonly title: string
  readonly description: string
  readonly below: readonly Shape[]
  readonly above: readonly Shape[]
}

/** A chart on which shots are put down: by a tap where the ball came to, or by keys that move a cross. */
export function TapChart(props: {
  /** Lays the chart out and draws it; kept by the caller, so that it is done anew only when it changes. */
  readonly layOut: (size: { readonly width: number; readonly height: number }) => Sheet
  readonly drawGround: (sheet: Sheet) => TapGround
  readonly marks: readonly TappedMark[]
  readonly cross: Point
  readonly label: string
  readonly onTap: (at: Point) => void
  /** Steps to the right and further; fine ones with the shift key. */
  readonly onStep: (right: number, further: number, isFine: boolean) => void
  readonly onPut: () => void
  readonly onUndo: () => void
}): ReactElement {
  const { layOut, drawGround, marks, cross, label } = props
  const place = useRef<HTMLDivElement>(null)
  const size = useSize(place)
  const help = useId()
  const sheet = useMemo(() => (size === null ? null : layOut(size)), [layOut, size])
  const ground = useMemo(() => (sheet === null ? null : drawGround(sheet)), [drawGround, sheet])
  const layers = useMemo(() => {
    if (sheet === null || ground === null) return null
    return {
      ground: layer(sheet, ground.below, ground.title, ground.description),
      above: layer(sheet, ground.above),
    }
  }, [sheet, ground])
  const tapped = useMemo(
    () => (sheet === null ? null : layer(sheet, [drawTapped(marks, sheet)])),
    [sheet, marks],
  )
  const crossed = useMemo(
    () => (sheet === null ? null : layer(sheet, [drawCross(cross, sheet)])),
    [sheet, cross],
  )

  const onKey = (event: KeyboardEvent): void => {
    const step = (right: number, further: number) => () => props.onStep(right, further, event.shiftKey)
    onKeys(event, 'shots', {
      left: step(-1, 0),
      right: step(1, 0),
      further: step(0, 1),
      back: step(0, -1),
      put: props.onPut,
      takeBack: props.onUndo,
    })
  }
  const onClick = (event: MouseEvent<HTMLElement>): void => {
    const box = event.currentTarget.getBoundingClientRect()
    if (sheet !== null) props.onTap(sheet.toHole([event.clientX - box.left, event.clientY - box.top]))
  }
  return (
    <div className="chart" ref={place}>
      {layers !== null && tapped !== null && crossed !== null && (
        <>
          <ChartLayer drawing={layers.ground} />
          <ChartLayer drawing={layers.above} isDecoration />
          <ChartLayer drawing={tapped} isDecoration />
          <ChartLayer drawing={crossed} className="cross-layer" isDecoration />
        </>
      )}
      <div
        className="chart-surface"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes its own keys.
        tabIndex={0}
        aria-label={label}
        aria-describedby={help}
        onKeyDown={onKey}
        onClick={onClick}
      />
      <p id={help} className="unseen">
        Arrow keys move the cross, with shift in fine steps. Enter puts a shot down, backspace takes the last
        step back.
      </p>
    </div>
  )
}

function layer(sheet: Sheet, shapes: readonly Shape[], title = '', description = ''): Drawing {
  return { width: sheet.width, height: sheet.height, title, description, shapes }
}
