import { type ReactElement, useMemo, useRef, useState } from 'react'
import type { PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { drawCostBar, fullCost } from '#paper/draw/draw-cost-bars.ts'
import { type LineOf, sideWords } from '../aim-words.ts'
import { Picture } from '../chart/picture.tsx'
import type { Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { cost, figure, unitSign } from '../words.ts'
import { Section } from './section.tsx'
import { useGlide } from './use-glide.ts'

/** The clubs in order of cost: choose one to see its pattern and its price. */
export function ClubTable(props: {
  readonly options: readonly PlanOption[]
  /** What the costs are in: `cost in strokes`. */
  readonly heading: string
  readonly chosen: string
  readonly lineOf: LineOf
  readonly reader: Reader
  readonly onChoose: (club: string) => void
}): ReactElement {
  const { options, chosen, lineOf, reader, onChoose } = props
  const [isWhole, setWhole] = useState(false)
  const shown = options.filter(
    (option, index) => isWhole || index < DESK_SETTINGS.clubRows || option.club === chosen,
  )
  const full = fullCost(shown)
  const rows = useRef<HTMLTableSectionElement>(null)
  useGlide(
    rows,
    shown.map(({ club }) => club),
  )
  return (
    <Section title="The clubs">
      <table className="clubs">
        <thead>
          <tr>
            <th scope="col">club</th>
            <th scope="col" className="aim-column">
              aim
            </th>
            <th scope="col">{props.heading}</th>
            <th scope="col" className="number">
              leaves, {unitSign(reader)}
            </th>
          </tr>
        </thead>
        <tbody ref={rows}>
          {shown.map((option) => (
            <ClubRow
              key={option.club}
              option={option}
              full={full}
              aim={sideWords(option, option.aim.heading_deg, lineOf(option), reader)}
              reader={reader}
              isChosen={option.club === chosen}
              onChoose={() => onChoose(option.club)}
            />
          ))}
        </tbody>
      </table>
      {options.length > DESK_SETTINGS.clubRows && (
        <button type="button" className="quiet" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? 'Fewer clubs' : `All ${options.length} clubs`}
        </button>
      )}
    </Section>
  )
}

function ClubRow(props: {
  readonly option: PlanOption
  readonly full: number
  readonly aim: string
  readonly reader: Reader
  readonly isChosen: boolean
  readonly onChoose: () => void
}): ReactElement {
  const { option, full, aim, reader, isChosen, onChoose } = props
  // Equal after rounding: no draws yet, or the club that the others are measured against.
  const isRangeKnown = cost(option.cost_low) !== cost(option.cost_high)
  const bar = useMemo(() => drawCostBar(option, full, 220, isChosen), [option, full, isChosen])
  return (
    <tr className={isChosen ? 'chosen' : ''} data-row={option.club}>
      <th scope="row">
        <button type="button" aria-pressed={isChosen} onClick={onChoose}>
          {clubWords(option)}
        </button>
      </th>
      <td className="aim-column">{aim}</td>
      <td>
        <Picture drawing={bar} className="bar" isDecoration />
        <span className="unseen">
          {cost(option.cost)}
          {isRangeKnown ? `, likely ${cost(option.cost_low)} to ${cost(option.cost_high)}` : ''}
        </span>
      </td>
      <td className="number">
        {figure(option.leave_m.p50, reader)}
        <small>
          {figure(option.leave_m.p10, reader)}–{figure(option.leave_m.p90, reader)}
        </small>
      </td>
    </tr>
  )
}
