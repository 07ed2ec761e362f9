import { type KeyboardEvent, type ReactElement, useId, useRef, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import type { TableUnit } from '#outside/formats/table-unit.ts'
import { isBlankRow } from '#outside/formats/typed-hole-table.ts'
import { onKeys } from '../commands/on-keys.ts'
import type { CellName } from './edits.ts'
import { cellHint, kindWords, noteHint, ROW_KINDS, SIDES } from './row-kinds.ts'
import { type SurveyRow, withoutId } from './survey.ts'

const DISTANCES = ['from', 'to', 'near', 'far'] as const

/** The rows of a hole, typed by keys alone: tab to the next cell, enter to the next row, faults below their row. */
export function RowTable(props: {
  readonly rows: readonly SurveyRow[]
  readonly unit: TableUnit
  readonly faults: ReadonlyMap<number, readonly Fault[]>
  /** The traced row whose corners are shown; `null` = none. */
  readonly chosen: number | null
  readonly onCell: (id: number, cell: CellName, text: string) => void
  readonly onRemove: (id: number) => void
  readonly onChoose: (id: number | null) => void
}): ReactElement {
  const { rows, unit, faults } = props
  const body = useRef<HTMLTableSectionElement>(null)
  // What is still being typed is not wrong yet.
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set())
  const [held, setHeld] = useState<number | null>(null)
  const go = (event: KeyboardEvent, index: number, cell: CellName): void => {
    // The arrows of a list choose in it.
    if (event.key !== 'Enter' && event.target instanceof HTMLSelectElement) return
    const goTo = (row: number, to: string) => () =>
      body.current?.querySelector<HTMLElement>(`[data-cell="${row} ${to}"]`)?.focus()
    onKeys(event, 'rows', {
      nextRow: goTo(index + 1, 'what'),
      rowBefore: goTo(index - 1, 'what'),
      below: goTo(index + 1, cell),
      above: goTo(index - 1, cell),
    })
  }
  return (
    <table className="row-table">
      <caption className="unseen">
        Rows of the hole. Enter goes to the next row, arrows up and down to the same cell of another.
      </caption>
      <thead>
        <tr>
          {['what', 'side', ...DISTANCES.map((name) => `${name}, ${unit}`), 'note'].map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
          <th scope="col">
            <span className="unseen">Take away</span>
          </th>
        </tr>
      </thead>
      <tbody ref={body}>
        {rows.map((row, index) => (
          <Row
            key={row.id}
            row={row}
            number={index + 1}
            faults={held === row.id && !left.has(row.id) ? NONE : (faults.get(row.id) ?? NONE)}
            isChosen={props.chosen === row.id}
            onKey={(event, cell) => go(event, index, cell)}
            onFocus={() => setHeld(row.id)}
            onLeave={() => {
              setHeld(null)
              setLeft((before) => (before.has(row.id) ? before : new Set([...before, row.id])))
            }}
            onCell={(cell, text) => props.onCell(row.id, cell, text)}
            onRemove={() => props.onRemove(row.id)}
            onChoose={() => props.onChoose(props.chosen === row.id ? null : row.id)}
          />
        ))}
      </tbody>
    </table>
  )
}

const NONE: readonly Fault[] = []

function Row(props: {
  readonly row: SurveyRow
  readonly number: number
  readonly faults: readonly Fault[]
  readonly isChosen: boolean
  readonly onKey: (event: KeyboardEvent, cell: CellName) => void
  readonly onFocus: () => void
  readonly onLeave: () => void
  readonly onCell: (cell: CellName, text: string) => void
  readonly onRemove: () => void
  readonly onChoose: () => void
}): ReactElement {
  const { row, number, faults } = props
  const id = useId()
  const isWrong = faults.some(({ severity }) => severity === 'error')
  const common = (cell: CellName, hint = '') => ({
    'data-cell': `${number - 1} ${cell}`,
    'aria-label': `Row ${number}, ${cell}${hint === '' || hint === '0' ? '' : ` (${hint})`}`,
    'aria-invalid': isWrong || undefined,
    'aria-describedby': faults.length > 0 ? id : undefined,
    value: row[cell],
    onKeyDown: (event: KeyboardEvent) => props.onKey(event, cell),
    onChange: (event: { target: { value: string } }) => props.onCell(cell, event.target.value),
  })
  const text = (cell: CellName, hint: string): ReactElement => (
    <input type="text" autoComplete="off" placeholder={hint} {...common(cell, hint)} />
  )
  return (
    <>
      <tr
        className="typed-row"
        onFocus={props.onFocus}
        onBlur={(event) => {
          if (!event.currentTarget.contains(event.relatedTarget)) props.onLeave()
        }}
      >
        <td className="what" data-title="what">
          <select {...common('what')}>
            <option value="" />
            {ROW_KINDS.every(({ value }) => value !== row.what) && row.what !== '' && (
              <option value={row.what}>{row.what}</option>
            )}
            {ROW_KINDS.map(({ value, name }) => (
              <option key={value} value={value}>
                {name}
              </option>
            ))}
          </select>
        </td>
        {row.outline !== null ? (
          <td colSpan={5} className="traced">
            <button type="button" className="quiet" aria-pressed={props.isChosen} onClick={props.onChoose}>
              traced, {row.outline.length} corners
            </button>
          </td>
        ) : isNoteAlone(row) ? null : (
          <>
            <td className="side" data-title="side">
              <select {...common('side')}>
                {SIDES.every(({ value }) => value !== row.side) && (
                  <option value={row.side}>{row.side}</option>
                )}
                {SIDES.map(({ value, name }) => (
                  <option key={value} value={value}>
                    {name}
                  </option>
                ))}
              </select>
            </td>
            {DISTANCES.map((cell) => (
              <td key={cell} className="distance" data-title={cell}>
                {text(cell, cellHint(row, cell))}
              </td>
            ))}
          </>
        )}
        <td className="note" data-title="note" colSpan={isNoteAlone(row) ? 6 : undefined}>
          {text('note', noteHint(row))}
        </td>
        <td className="away">
          {!isBlankRow(withoutId(row)) && (
            <button
              type="button"
              className="quiet"
              aria-label={`Remove row ${number}${row.what === '' ? '' : `: ${kindWords(row.what)}`}`}
              onClick={props.onRemove}
            >
              ×
            </button>
          )}
        </td>
      </tr>
      {faults.length > 0 && (
        <tr className="row-faults">
          <td colSpan={8} id={id}>
            <FaultList faults={faults} />
          </td>
        </tr>
      )}
    </>
  )
}

/** A start is said by its note alone, which is long: it has the room of the cells that stay blank. */
function isNoteAlone({ what, side, outline, ...cells }: SurveyRow): boolean {
  return what === 'start' && outline === null && side === '' && DISTANCES.every((name) => cells[name] === '')
}

/** Faults in words with their codes and what to do. */
export function FaultList({ faults }: { readonly faults: readonly Fault[] }): ReactElement {
  return (
    <ul>
      {faults.map(({ severity, code, message, advice }) => (
        <li key={`${code} ${message}`} className={severity === 'note' ? 'noted' : 'wrong'}>
          {message.replace(/^line \d+/, 'The row')} {advice} <small>{code}</small>
        </li>
      ))}
    </ul>
  )
}
