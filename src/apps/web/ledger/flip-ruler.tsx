import { type ReactElement, useMemo, useRef } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { drawFlips } from '#paper/draw/draw-flips.ts'
import { Picture } from '../chart/picture.tsx'
import { useSize } from '../chart/use-size.ts'
import type { Reader } from '../desk/desk.ts'
import { flipLabel, flipSentence, flipShare, isFound, silentFlips } from '../flip-words.ts'
import { Section } from './section.tsx'

/** The ruler of flips with the same in sentences below it. */
export function FlipRuler(props: {
  readonly plan: Plan
  readonly isFull: boolean
  readonly hole: Hole | null
  readonly firmness: number
  readonly reader: Reader
}): ReactElement | null {
  const { plan, isFull, hole, firmness, reader } = props
  const club = plan.options[0]?.club ?? ''
  const place = useRef<HTMLDivElement>(null)
  const width = useSize(place)?.width ?? 0
  const drawing = useMemo(() => {
    if (hole === null || width === 0) return null
    const marks = plan.flips.filter(isFound).map((flip) => ({
      label: flipLabel(flip, hole, reader),
      club: flip.club,
      share: flipShare(flip, { firmness }),
    }))
    return drawFlips(marks, { width, club })
  }, [plan, hole, firmness, reader, club, width])
  // Near the green nothing is looked for: there is no ruler to draw.
  if (hole === null || plan.options[0]?.short !== undefined) return null
  const silent = silentFlips(plan.flips, hole)
  return (
    <Section title="What flips it">
      <div ref={place} />
      {isFull ? (
        <>
          {drawing !== null && <Picture drawing={drawing} className="flip-ruler" isDecoration />}
          <ul className="unseen">
            {plan.flips.filter(isFound).map((flip) => (
              <li key={`${flip.what} ${flip.direction}`}>{flipSentence(flip, hole, reader)}</li>
            ))}
          </ul>
          {silent !== null && <p className="silent">{silent}</p>}
        </>
      ) : (
        <p className="silent">The ruler comes with the fuller answer.</p>
      )}
    </Section>
  )
}
