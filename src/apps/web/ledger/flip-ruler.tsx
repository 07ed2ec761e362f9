import { type ReactElement, useMemo, useRef } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { drawFlipScale } from '#paper/draw/draw-flip-scale.ts'
import { Picture } from '../chart/picture.tsx'
import { useSize } from '../chart/use-size.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import { type Quantity, quantityName, type RulerScale, restOf, valueOn } from '../desk/ruler.ts'
import { flipSentence, isFound, silentFlips } from '../flip-words.ts'
import type { NamedHazard } from '../hazard-words.ts'
import { scaleWords } from '../scale-words.ts'
import { unbroken } from '../words.ts'
import { Section } from './section.tsx'
import { StepSlider } from './step-slider.tsx'

interface RulerProps {
  readonly desk: Desk
  readonly surveyed: Hole
  readonly hazards: readonly NamedHazard[]
  readonly reader: Reader
  readonly onMove: (quantity: Quantity, value: number) => void
}

/** The ruler of flips: a scale a quantity, with the clubs along it; dragged, the plan follows. */
export function FlipRuler(
  props: RulerProps & {
    readonly plan: Plan
    readonly isFull: boolean
    readonly scales: readonly RulerScale[]
  },
): ReactElement | null {
  const { plan, isFull, scales, desk, surveyed, reader } = props
  const [first] = plan.options
  const place = useRef<HTMLDivElement>(null)
  const width = useSize(place)?.width ?? 0
  // Near the green nothing is looked for: there is no ruler to draw.
  if (first === undefined || first.short !== undefined) return null
  const silent = silentFlips(plan.flips, surveyed)
  const isBehind = !isFull && scales.some(({ quantity, rest }) => rest !== restOf(desk, surveyed, quantity))
  return (
    <Section title="What flips it" className="flip-ruler">
      {plan.format !== null ? (
        <p className="silent">What flips it is looked for where the fewest strokes are played for.</p>
      ) : scales.length === 0 ? (
        <p className="silent">The ruler comes with the fuller answer.</p>
      ) : (
        <p className="ruler-club">
          Now the <b>{unbroken(clubWords(first))}</b>. A tick stands where another club takes over.
          {isBehind && ' The ticks follow with the fuller answer.'}
        </p>
      )}
      <div ref={place}>
        {scales.map((scale) => (
          <Scale key={quantityName(scale.quantity)} {...props} scale={scale} width={width - STEPS_WIDTH} />
        ))}
      </div>
      {isFull && (
        <>
          <ul className="unseen">
            {plan.flips.filter(isFound).map((flip) => (
              <li key={`${flip.what} ${flip.direction}`}>{flipSentence(flip, surveyed, reader)}</li>
            ))}
          </ul>
          {silent !== null && <p className="silent">{silent}</p>}
        </>
      )}
    </Section>
  )
}

/** The two step buttons beside a scale with their gaps, CSS pixels. */
const STEPS_WIDTH = 2 * (48 + 8)

function Scale(props: RulerProps & { readonly scale: RulerScale; readonly width: number }): ReactElement {
  const { desk, surveyed, hazards, reader, width } = props
  const { quantity, crossings } = props.scale
  const value = valueOn(desk, surveyed, quantity)
  const words = scaleWords(quantity, value, hazards, reader)
  const { label, low, high, rest, unit, ends } = words
  const [lowEnd, highEnd] = ends
  const drawing = useMemo(
    () =>
      width < LEAST_WIDTH
        ? null
        : drawFlipScale({ title: label, low, high, rest, ends: [lowEnd, highEnd], crossings, width }),
    [label, low, high, rest, lowEnd, highEnd, crossings, width],
  )
  return (
    <StepSlider
      label={label}
      value={value / unit}
      low={low / unit}
      high={high / unit}
      step={words.step / unit}
      words={words.value}
      ends={ends}
      picture={drawing === null ? <div /> : <Picture drawing={drawing} isDecoration />}
      onChange={(next) => props.onMove(quantity, next * unit)}
    />
  )
}

/** Narrower than this a scale is not drawn yet. */
const LEAST_WIDTH = 100
