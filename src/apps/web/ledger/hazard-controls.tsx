import { type ReactElement, useState } from 'react'
import type { HazardMove } from '#golf/course/move-hazards.ts'
import type { Grip } from '../chart/hazard-handles.tsx'
import type { Reader } from '../desk/desk.ts'
import { moveWords, type NamedHazard } from '../hazard-words.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { length, readerMetres } from '../words.ts'
import { Choice } from './choice.tsx'
import { Section } from './section.tsx'
import { StepSlider } from './step-slider.tsx'

/** The hazards of the hole: take one up and move it or one of its edges, by button and key what the chart does by drag. */
export function HazardControls(props: {
  readonly hazards: readonly NamedHazard[]
  readonly chosen: string | null
  readonly move: HazardMove
  readonly reader: Reader
  readonly onChoose: (id: string | null) => void
  readonly onMove: (move: HazardMove) => void
  readonly onRestore: () => void
}): ReactElement | null {
  const { hazards, chosen, move, reader } = props
  const [grip, setGrip] = useState<Grip>('whole')
  if (hazards.length === 0) return null
  const words = moveWords(move, reader)
  return (
    <Section title="Move the trouble" className="hazard-controls">
      <div className="choices">
        <Choice
          label="Hazard"
          value={chosen ?? ''}
          options={[
            { value: '', name: 'none taken up' },
            ...hazards.map(({ id, place }) => ({ value: id, name: place })),
          ]}
          onChange={(id) => props.onChoose(id === '' ? null : id)}
        />
        {chosen !== null && (
          <Choice
            label="Part"
            value={grip}
            options={GRIPS.map(([value, name]) => ({ value, name }))}
            onChange={(value) => setGrip(GRIPS.find(([each]) => each === value)?.[0] ?? 'whole')}
          />
        )}
      </div>
      {chosen !== null && (
        <>
          {grip !== 'left' && grip !== 'right' && (
            <MoveSlider
              label="On"
              metres={grip === 'far' ? move.far : move.near}
              ends={['back', 'on']}
              reader={reader}
              onChange={(metres) => props.onMove(moved(move, grip, 'on', metres))}
            />
          )}
          {grip !== 'near' && grip !== 'far' && (
            <MoveSlider
              label="Across"
              metres={grip === 'right' ? move.right : move.left}
              ends={['left', 'right']}
              reader={reader}
              onChange={(metres) => props.onMove(moved(move, grip, 'across', metres))}
            />
          )}
          <p className="moved-words" aria-live="polite">
            {words === '' ? 'as surveyed' : words}
            <button type="button" className="quiet" disabled={words === ''} onClick={props.onRestore}>
              As surveyed
            </button>
          </p>
        </>
      )}
    </Section>
  )
}

const GRIPS: readonly (readonly [Grip, string])[] = [
  ['whole', 'the whole'],
  ['near', 'near edge'],
  ['far', 'far edge'],
  ['left', 'left edge'],
  ['right', 'right edge'],
]

/** The move with one direction of a grip set; the sides of a whole keep their distance. */
function moved(move: HazardMove, grip: Grip, direction: 'on' | 'across', metres: number): HazardMove {
  if (grip !== 'whole') return { ...move, [grip]: metres }
  return direction === 'on'
    ? { ...move, near: metres, far: metres + move.far - move.near }
    : { ...move, left: metres, right: metres + move.right - move.left }
}

function MoveSlider(props: {
  readonly label: string
  readonly metres: number
  /** What less and more than nothing mean. */
  readonly ends: readonly [string, string]
  readonly reader: Reader
  readonly onChange: (metres: number) => void
}): ReactElement {
  const { label, metres, ends, reader } = props
  const unit = readerMetres(reader)
  const most = Math.floor(DESK_SETTINGS.furthestHazard / unit)
  const value = Math.round(metres / unit)
  return (
    <StepSlider
      label={label}
      value={value}
      low={-most}
      high={most}
      step={1}
      words={
        value === 0 ? 'as surveyed' : `${length(Math.abs(metres), reader)} ${value < 0 ? ends[0] : ends[1]}`
      }
      ends={ends}
      onChange={(units) => props.onChange(units * unit)}
    />
  )
}
