import { type ReactElement, useId, useMemo } from 'react'
import type { Fault } from '#faults/fault.ts'
import { greenSlopes } from '#golf/course/green-slopes.ts'
import { GREEN_SIDES, greenSurvey, greenSurveySentence } from '#golf/course/green-survey.ts'
import type { Hole } from '#golf/course/hole.ts'
import { parseGreenNote, type TypedGreen } from '#outside/formats/green-note.ts'
import type { TableUnit } from '#outside/formats/table-unit.ts'
import { BLANK_ROW } from '#outside/formats/typed-hole-table.ts'
import { drawGreen } from '#paper/draw/draw-green.ts'
import { Picture } from '../chart/picture.tsx'
import type { Reader } from '../desk/desk.ts'
import { Choice } from '../ledger/choice.tsx'
import { FigureField } from './figure-field.tsx'
import { type GreenSize, greenSize } from './green-size.ts'
import { TextField } from './hole-fields.tsx'
import { ListTable } from './list-table.tsx'
import { FaultList } from './row-table.tsx'
import type { SurveyRow } from './survey.ts'

/** The green of the hole: where it lies, how large it is, how it falls, its steps and its heights, with the slopes these come to. */
export function GreenSection(props: {
  /** The hole's first green; `undefined` while it has none. */
  readonly row: SurveyRow | undefined
  readonly faults: readonly Fault[]
  /** The hole as it is surveyed so far; `null` when nothing can be drawn. */
  readonly hole: Hole | null
  readonly unit: TableUnit
  readonly reader: Reader
  /** Something of it is being typed, or no longer. */
  readonly onHold: (isHeld: boolean) => void
  readonly onSize: (part: keyof GreenSize, metres: number) => void
  /** `what` was changed, for the step of undo. */
  readonly onSlope: (what: string, green: TypedGreen) => void
}): ReactElement {
  const { row, hole, unit, onSize, onSlope } = props
  const { green } = parseGreenNote(row?.note ?? '')
  const change = (what: string, part: Partial<TypedGreen>): void => onSlope(what, { ...green, ...part })
  const isSide = green.toward === '' || GREEN_SIDES.some((side) => side === green.toward)
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only looks whether something in it has the focus.
    <div
      onFocus={() => props.onHold(true)}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) props.onHold(false)
      }}
    >
      <div className="hole-fields">
        {row?.outline == null && (
          <SizeFields size={greenSize(row ?? BLANK_ROW, unit)} unit={unit} onSize={onSize} />
        )}
        <TextField label="Falls, %" value={green.fall} onChange={(fall) => change('fall', { fall })} />
        <Choice
          label="Towards its"
          value={green.toward}
          options={[
            { value: '', name: '' },
            ...(isSide ? [] : [{ value: green.toward, name: green.toward }]),
            ...GREEN_SIDES.map((side) => ({ value: side, name: side })),
          ]}
          onChange={(toward) => change('toward', { toward })}
        />
      </div>
      <ListTable
        caption="Tiers: the middle of each step on from the front, what is behind it higher in cm, and from its foot to its head"
        name="Tier"
        titles={[`on, ${unit}`, 'up, cm', `over, ${unit}`]}
        rows={green.tiers.map(({ on, rise, over }) => [on, rise, over])}
        onRows={(what, rows) =>
          change(`tier ${what}`, {
            tiers: rows.map(([on = '', rise = '', over = '']) => ({ on, rise, over })),
          })
        }
      />
      <ListTable
        caption="Heights: on from the front, beside the line of approach with left as a minus, and above any one zero. Three fix a fall, a dozen a green"
        name="Height"
        titles={[`on, ${unit}`, `beside, ${unit}`, 'height, cm']}
        rows={green.heights.map(({ on, beside, height }) => [on, beside, height])}
        onRows={(what, rows) =>
          change(`height ${what}`, {
            heights: rows.map(([on = '', beside = '', height = '']) => ({ on, beside, height })),
          })
        }
      />
      {props.faults.length > 0 && (
        <div className="hole-faults green-faults">
          <FaultList faults={props.faults} />
        </div>
      )}
      {row !== undefined && hole !== null && <Slopes hole={hole} reader={props.reader} />}
    </div>
  )
}

function SizeFields(props: {
  readonly size: GreenSize
  readonly unit: TableUnit
  readonly onSize: (part: keyof GreenSize, metres: number) => void
}): ReactElement {
  const { size, unit, onSize } = props
  const id = useId()
  return (
    <>
      {(['front', 'depth', 'width'] as const).map((part) => (
        <div key={part} className="typed-field short-field">
          <label htmlFor={`${id}${part}`}>{LABELS[part]}</label>
          <FigureField
            id={`${id}${part}`}
            metres={size[part]}
            unit={unit}
            isDisabled={part === 'depth' && size.front === null}
            onMetres={(metres) => onSize(part, metres)}
          />
        </div>
      ))}
    </>
  )
}

const LABELS = { front: 'Front, from the tee', depth: 'Depth', width: 'Width' } as const

/** The slopes as they come out: in words, and drawn as the player comes to the green. */
function Slopes({ hole, reader }: { readonly hole: Hole; readonly reader: Reader }): ReactElement | null {
  const drawing = useMemo(
    () => drawGreen(hole, { width: 420, height: 400, units: reader.units }),
    [hole, reader.units],
  )
  const survey = greenSurvey(hole)
  if (drawing === null || survey === null) return null
  const steepest = Math.max(0, ...greenSlopes(hole, 1).map(({ percent }) => percent))
  return (
    <>
      <p role="status" className="green-words">
        {greenSurveySentence(survey)}
        {survey.source !== 'level' && ` At its steepest it slopes ${steepest.toFixed(1)} per cent.`}
      </p>
      <Picture className="green-picture" drawing={drawing} />
      <p>
        Figures are per cent, arrows point downhill, lines lie 10 cm apart in height. For survey and practice.
      </p>
    </>
  )
}
