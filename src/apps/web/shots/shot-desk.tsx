import { type ReactElement, useCallback, useEffect, useMemo, useState } from 'react'
import type { Club } from '#golf/player/player.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { Reader } from '../desk/desk.ts'
import { Section } from '../ledger/section.tsx'
import { DESK_SETTINGS } from '../settings.ts'
import { readerMetres } from '../words.ts'
import { CrossSteps } from './cross-steps.tsx'
import { LearnSection } from './learn-section.tsx'
import { RangeShots } from './range-shots.tsx'
import { usualLength } from './range-view.ts'
import { type ShotChoice, ShotChoices } from './shot-choices.tsx'
import { ShotFiles } from './shot-files.tsx'
import { ShotTable } from './shot-table.tsx'
import { LIE_CHOICES, reachable, type Spot, shotWords } from './shot-words.ts'
import { TypedShot } from './typed-shot.tsx'
import type { KeptPlayer } from './use-kept-player.ts'
import { useShots } from './use-shots.ts'

/** Where shots of one player are put down: a chart to tap, the sheet beside it, and what it teaches. */
export function ShotDesk(props: {
  readonly kept: KeptPlayer
  readonly reader: Reader
  readonly onReload: () => void
  readonly onKept: (id: string) => void
}): ReactElement {
  const { kept, reader, onReload, onKept } = props
  const { player } = kept
  const sheet = useShots(kept.id)
  const { shots, put, undo, redo } = sheet
  const [choice, setChoice] = useState<ShotChoice>(() => ({
    club: shots.at(-1)?.club ?? player.clubs[0]?.name ?? '',
    lie: 'mat',
    to: 'carry',
    isMishit: false,
  }))
  const club = player.clubs.find(({ name }) => name === choice.club) ?? player.clubs[0]
  const [told, setTold] = useState('')
  const [spot, setSpot] = useState<Spot>({ along: 0, right: 0 })
  const middle = club === undefined ? 0 : usualLength(club, choice)
  // Another club is another range: the cross begins in the middle of its pattern.
  useEffect(
    () => setSpot(reachable({ along: middle, right: 0 }, choice.to, reader)),
    [middle, choice.to, reader],
  )
  useUndoKeys(undo, redo)

  const putAt = useCallback(
    (asked: Spot): void => {
      const at = reachable(asked, choice.to, reader)
      const record = recordOf(at, choice)
      put([record])
      setSpot(at)
      setChoice((before) => ({ ...before, isMishit: false }))
      setTold(`Put down: ${shotWords(record, reader)}.`)
    },
    [choice, reader, put],
  )
  const onStep = useCallback(
    (right: number, further: number, isFine: boolean): void => {
      const step = (isFine ? DESK_SETTINGS.shotFineStep : DESK_SETTINGS.shotStep) * readerMetres(reader)
      setSpot((from) =>
        reachable(
          { along: from.along + further * step, right: from.right + right * step },
          choice.to,
          reader,
        ),
      )
    },
    [choice.to, reader],
  )
  const onUndo = useCallback(() => {
    undo()
    setTold('Taken back.')
  }, [undo])
  const counts = useMemo(() => countsOf(shots), [shots])
  return (
    <>
      <div className="chart-side shot-chart">
        {club !== undefined && (
          <RangeShots
            player={player}
            club={club}
            choice={choice}
            shots={shots}
            spot={spot}
            reader={reader}
            onTap={putAt}
            onStep={onStep}
            onPut={() => putAt(spot)}
            onUndo={onUndo}
          />
        )}
        <CrossSteps
          spot={spot}
          reader={reader}
          canUndo={sheet.canUndo}
          canRedo={sheet.canRedo}
          onStep={onStep}
          onPut={() => putAt(spot)}
          onUndo={onUndo}
          onRedo={redo}
        />
      </div>
      <div className="ledger shot-ledger">
        <Section title="The next shot">
          <ShotChoices choice={choice} player={player} counts={counts} isOnRange onChoice={setChoice} />
          <TypedShot to={choice.to} reader={reader} onPut={putAt} />
          <p className="unseen" aria-live="polite">
            {told} {shots.length === 1 ? '1 shot.' : `${shots.length} shots.`}
          </p>
        </Section>
        <Section
          title={shots.length === 0 ? 'Shots put down' : `${shots.length} put down, not learned from yet`}
        >
          {!sheet.isKept && (
            <p className="question-fault" role="alert">
              This browser has no room for these shots: they go when the page is closed. Save them as a table
              first.
            </p>
          )}
          <ShotTable shots={shots} reader={reader} onRemove={sheet.remove} />
          <ShotFiles shots={shots} playerId={kept.id} reader={reader} onOpen={put} />
        </Section>
        <LearnSection
          kept={kept}
          shots={shots}
          reader={reader}
          onReload={onReload}
          onKept={(id, lesson) => {
            sheet.clear(lesson.shots)
            onKept(id)
          }}
        />
      </div>
    </>
  )
}

/** Control-Z takes back and with shift, or control-Y, puts back, except in a field, where they are the field's own. */
function useUndoKeys(undo: () => void, redo: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.target instanceof HTMLInputElement) return
      const key = event.key.toLowerCase()
      if (key === 'y' || (key === 'z' && event.shiftKey)) redo()
      else if (key === 'z') undo()
      else return
      event.preventDefault()
    }
    addEventListener('keydown', onKey)
    return () => removeEventListener('keydown', onKey)
  }, [undo, redo])
}

function recordOf({ along, right }: Spot, { club, lie, to, isMishit }: ShotChoice): ShotRecord {
  return {
    date: today(),
    club,
    lie: LIE_CHOICES.find(({ value }) => value === lie)?.lie ?? null,
    carryMetres: to === 'carry' ? along : null,
    totalMetres: to === 'total' ? along : null,
    offlineMetres: right,
    strike: isMishit ? 'mishit' : null,
  }
}

/** The day where the player stands, as ISO. */
function today(): string {
  const now = new Date()
  const two = (value: number): string => String(value).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

function countsOf(shots: readonly { readonly club: Club['name'] }[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { club } of shots) counts.set(club, (counts.get(club) ?? 0) + 1)
  return counts
}
