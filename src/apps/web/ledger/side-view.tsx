import { type ReactElement, useMemo, useRef } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Plan, PlanOption, ShortPart } from '#golf/strategy/plan.ts'
import { drawShortOption } from '#paper/draw/draw-short-option.ts'
import { Picture } from '../chart/picture.tsx'
import { useSize } from '../chart/use-size.ts'
import type { Reader } from '../desk/desk.ts'
import { Section } from './section.tsx'

interface SideViewProps {
  readonly hole: Hole
  readonly plan: Plan
  readonly reader: Reader
}

/** A short shot from the side, carry and roll at true scale; nothing for a full shot. */
export function SideView(props: SideViewProps & { readonly option: PlanOption }): ReactElement | null {
  const { option } = props
  const { short } = option
  const shown = useMemo(() => (short === undefined ? null : { ...option, short }), [option, short])
  if (shown === null) return null
  return (
    <Section title="From the side">
      <SidePicture {...props} option={shown} />
    </Section>
  )
}

function SidePicture(
  props: SideViewProps & { readonly option: PlanOption & { readonly short: ShortPart } },
): ReactElement {
  const { hole, plan, option, reader } = props
  const place = useRef<HTMLDivElement>(null)
  const width = useSize(place)?.width ?? 0
  const drawing = useMemo(
    () => (width === 0 ? null : drawShortOption(hole, plan, option, reader.units, width)),
    [hole, plan, option, reader.units, width],
  )
  return <div ref={place}>{drawing !== null && <Picture drawing={drawing} className="side-view" />}</div>
}
