import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { layOutSheet, type Sheet, type SheetView } from '#paper/draw/sheet.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { AT_REST, carried, enlarged, type Gesture, viewAfter } from './chart-view.ts'

/** What is seen of the hole, and how it is changed. */
export interface ChartSight {
  readonly sheet: Sheet
  readonly isEnlarged: boolean
  /** How what is engraved is moved until it is engraved anew, as a style; `undefined` at rest. */
  readonly transform: string | undefined
  /** Enlarges about a place of the chart, CSS pixels; the middle unless given. Engraved anew a moment later. */
  readonly enlarge: (factor: number, at?: Point) => void
  /** Carries the chart along with a finger or the mouse. */
  readonly carry: (by: Point) => void
  /** Engraves anew what was carried or enlarged. */
  readonly rest: () => void
  readonly showWhole: () => void
}

/** Looks at a hole as a whole until a person enlarges it; another hole is seen as a whole again. `null` without a size. */
export function useChartView(
  hole: Hole,
  size: { readonly width: number; readonly height: number } | null,
): ChartSight | null {
  const about = `${hole.ref} ${hole.teeName}`
  const [seen, setSeen] = useState<{ readonly about: string; readonly view: SheetView | null }>({
    about,
    view: null,
  })
  const view = seen.about === about ? seen.view : null
  const [gesture, setGesture] = useState<Gesture>(AT_REST)
  const now = useRef(gesture)
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const whole = useMemo(() => (size === null ? null : layOutSheet(hole, size)), [hole, size])
  const sheet = useMemo(
    () => (size === null || view === null ? whole : layOutSheet(hole, { ...size, view })),
    [hole, size, view, whole],
  )
  useEffect(() => () => clearTimeout(resting.current), [])

  const turn = useCallback((next: Gesture): void => {
    now.current = next
    setGesture(next)
  }, [])
  const rest = useCallback((): void => {
    clearTimeout(resting.current)
    if (whole === null || sheet === null || now.current === AT_REST) return
    const after = viewAfter(whole, sheet, view, now.current)
    setSeen({ about, view: after })
    turn(AT_REST)
  }, [whole, sheet, view, about, turn])
  const latestRest = useRef(rest)
  latestRest.current = rest
  if (sheet === null) return null
  const { left, right, top, bottom } = sheet.frame
  return {
    sheet,
    isEnlarged: view !== null,
    transform:
      gesture === AT_REST ? undefined : `translate(${gesture.x}px, ${gesture.y}px) scale(${gesture.scale})`,
    enlarge: (factor, at = [(left + right) / 2, (top + bottom) / 2]) => {
      turn(enlarged(now.current, factor, at))
      clearTimeout(resting.current)
      resting.current = setTimeout(() => latestRest.current(), DESK_SETTINGS.wheelRestMilliseconds)
    },
    carry: (by) => turn(carried(now.current, by)),
    rest,
    showWhole: () => {
      clearTimeout(resting.current)
      turn(AT_REST)
      setSeen({ about, view: null })
    },
  }
}
