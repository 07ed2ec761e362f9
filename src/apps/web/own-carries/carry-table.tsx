import { type KeyboardEvent, type ReactElement, useId, useRef, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import { clubWords } from '#golf/player/club-words.ts'
import { isCarryFault, type OwnCarries, readOwnCarries } from '#golf/player/own-carries.ts'
import type { Club } from '#golf/player/player.ts'
import { onKeys } from '../commands/on-keys.ts'
import type { Reader } from '../desk/desk.ts'
import { figure, unbroken, unitSign } from '../words.ts'

/** What stands in a field that is being typed in, or was refused. */
interface Draft {
  readonly text: string
  readonly fault: Pick<Fault, 'code' | 'message' | 'advice'> | null
}

/** A field a club: what is typed counts once the field is left; enter goes to the next. */
export function CarryTable(props: {
  readonly clubs: readonly Club[]
  readonly carries: OwnCarries
  readonly reader: Reader
  readonly isAsked: boolean
  readonly onCarries: (carries: OwnCarries) => void
}): ReactElement {
  const { clubs, carries, reader, onCarries } = props
  const body = useRef<HTMLTableSectionElement>(null)
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({})
  const texts = Object.fromEntries(
    Object.entries(carries).map(([club, metres]) => [club, figure(metres, reader)]),
  )
  const write = (club: string, draft: Draft | null): void =>
    setDrafts(({ [club]: _, ...others }) => (draft === null ? others : { ...others, [club]: draft }))
  const take = (club: string): void => {
    const draft = drafts[club]
    if (draft === undefined) return
    const read = readOwnCarries({ ...texts, [club]: draft.text }, reader.units)
    if (isCarryFault(read)) {
      write(club, { ...draft, fault: read })
      return
    }
    write(club, null)
    if (draft.text.trim() === (texts[club] ?? '')) return
    // A figure that was rounded to be shown stays the carry it was typed as.
    onCarries({ ...read, ...withoutClub(carries, club) })
  }
  const go = (event: KeyboardEvent, index: number, club: string): void => {
    const goTo = (row: number) => () => {
      const next = body.current?.querySelectorAll('input')[row]
      if (next === undefined) take(club)
      else next.focus()
    }
    onKeys(event, 'carries', { next: goTo(index + 1), before: goTo(index - 1) })
  }
  return (
    <table className="carry-table">
      <caption className="unseen">Carries by club. Enter goes to the next club.</caption>
      <thead>
        <tr>
          <th scope="col">club</th>
          <th scope="col">carry, {unitSign(reader)}</th>
          <th scope="col">
            <span className="unseen">how it is known</span>
          </th>
        </tr>
      </thead>
      <tbody ref={body}>
        {clubs.map((club, index) => (
          <CarryRow
            key={club.name}
            club={club}
            carry={figure(club.carryMetres, reader)}
            own={texts[club.name] ?? ''}
            draft={drafts[club.name] ?? null}
            reader={reader}
            isFirst={props.isAsked && index === 0}
            onText={(text) => write(club.name, { text, fault: null })}
            onLeave={() => take(club.name)}
            onKey={(event) => go(event, index, club.name)}
          />
        ))}
      </tbody>
    </table>
  )
}

function withoutClub(carries: OwnCarries, club: string): OwnCarries {
  const { [club]: _, ...others } = carries
  return others
}

function CarryRow(props: {
  readonly club: Club
  /** Its carry as it is taken now. */
  readonly carry: string
  /** As it was typed; empty when it was not. */
  readonly own: string
  readonly draft: Draft | null
  readonly reader: Reader
  readonly isFirst: boolean
  readonly onText: (text: string) => void
  readonly onLeave: () => void
  readonly onKey: (event: KeyboardEvent) => void
}): ReactElement {
  const { club, carry, own, draft, reader } = props
  const id = useId()
  const fault = draft?.fault ?? null
  return (
    <tr className={own === '' ? '' : 'chosen'}>
      <th scope="row">{unbroken(clubWords(club.name))}</th>
      <td>
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          // biome-ignore lint/a11y/noAutofocus: the person has just asked to type here.
          autoFocus={props.isFirst}
          aria-label={`Carry of the ${clubWords(club.name)}, ${reader.units}`}
          aria-describedby={id}
          aria-invalid={fault !== null}
          placeholder={carry}
          value={draft?.text ?? own}
          onChange={(event) => props.onText(event.target.value)}
          onBlur={props.onLeave}
          onKeyDown={props.onKey}
        />
      </td>
      <td id={id} aria-live="polite">
        {fault === null ? (
          <span className="carry-state">
            {own === '' && <span className="unseen">{carry}, </span>}
            {own !== '' ? 'own' : club.isGuess ? 'a guess' : 'as known'}
          </span>
        ) : (
          <p className="question-fault">
            {fault.message} {fault.advice} <small>{fault.code}</small>
          </p>
        )}
      </td>
    </tr>
  )
}
