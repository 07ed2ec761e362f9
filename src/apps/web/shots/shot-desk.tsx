import { type ReactElement, useMemo, useState } from 'react'
import { useCommands } from '../commands/use-commands.ts'
import type { Reader } from '../desk/desk.ts'
import type { Library } from '../documents/use-library.ts'
import { Section } from '../ledger/section.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { CrossSteps } from './cross-steps.tsx'
import { HoleChoices } from './hole-choices.tsx'
import { HoleShots } from './hole-shots.tsx'
import { LearnSection } from './learn-section.tsx'
import { RangeShots } from './range-shots.tsx'
import { RoundChoices } from './round-choices.tsx'
import { ShotChoices } from './shot-choices.tsx'
import { ShotFiles } from './shot-files.tsx'
import { ShotTable } from './shot-table.tsx'
import { TypedShot } from './typed-shot.tsx'
import type { KeptPlayer } from './use-kept-player.ts'
import { useNextShot } from './use-next-shot.ts'
import { usePlayedHole } from './use-played-hole.ts'
import { useRoundsToLearn } from './use-rounds-to-learn.ts'
import { useShots } from './use-shots.ts'

/** Where shots of one player are put down: a chart to tap, the sheet beside it, and what it teaches. */
export function ShotDesk(props: {
  readonly kept: KeptPlayer
  readonly library: Library
  readonly reader: Reader
  readonly onReload: () => void
  readonly onKept: (id: string) => void
}): ReactElement {
  const { kept, library, reader, onReload, onKept } = props
  const { player } = kept
  const sheet = useShots(kept.id)
  const { shots, put, undo, redo } = sheet
  const [isOnHole, setIsOnHole] = useState(false)
  const played = usePlayedHole(library, isOnHole)
  const { hole, courseId } = played
  const line = isOnHole && hole !== null ? { courseId, hole, line: played.line, lie: played.lie } : null
  const next = useNextShot(player, shots.at(-1)?.club ?? player.clubs[0]?.name, line, reader, put)
  const { choice, club, spot, putAt } = next
  useCommands({ undo, redo }, true)
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set())
  const logged = useRoundsToLearn(kept, library)
  const rounds = useMemo(() => logged.rounds.filter(({ id }) => chosen.has(id)), [logged, chosen])
  const counts = useMemo(() => countsOf(shots), [shots])
  const chart = {
    player,
    shots,
    spot,
    reader,
    onTap: putAt,
    onStep: next.step,
    onPut: () => putAt(spot),
    onUndo: undo,
  }
  const place = (onHole: boolean, words: string): ReactElement => (
    <button type="button" aria-pressed={isOnHole === onHole} onClick={() => setIsOnHole(onHole)}>
      {words}
    </button>
  )
  return (
    <>
      <div className="chart-side shot-chart">
        {played.trouble !== null && isOnHole && <TroubleNote trouble={played.trouble} />}
        {club !== undefined && !isOnHole && <RangeShots {...chart} club={club} choice={choice} />}
        {club !== undefined && line !== null && (
          <HoleShots {...chart} club={club} played={played} hole={line.hole} />
        )}
        <CrossSteps
          spot={spot}
          reader={reader}
          canUndo={sheet.canUndo}
          canRedo={sheet.canRedo}
          onStep={next.step}
          onPut={() => putAt(spot)}
          onUndo={undo}
          onRedo={redo}
        />
      </div>
      <div className="ledger shot-ledger">
        <Section title="The next shot">
          {/* biome-ignore lint/a11y/useSemanticElements: two buttons, no form. */}
          <div role="group" aria-label="Where it is hit" className="measured-to">
            {place(false, 'on a range')}
            {place(true, 'on a hole')}
          </div>
          {isOnHole && (
            <HoleChoices
              library={library}
              played={played}
              atMetres={club?.totalMetres ?? 0}
              reader={reader}
            />
          )}
          <ShotChoices
            choice={choice}
            player={player}
            counts={counts}
            isOnRange={!isOnHole}
            onChoice={next.choose}
          />
          <TypedShot to={choice.to} reader={reader} onPut={putAt} />
          <p className="unseen" aria-live="polite">
            {next.told} {shots.length === 1 ? '1 shot.' : `${shots.length} shots.`}
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
        <RoundChoices
          playerName={player.name}
          rounds={logged.rounds}
          learned={player.learnedRounds ?? []}
          chosen={chosen}
          notes={logged.notes}
          onChoose={(id, isChosen) =>
            setChosen(
              (before) => new Set(isChosen ? [...before, id] : [...before].filter((each) => each !== id)),
            )
          }
        />
        <LearnSection
          kept={kept}
          shots={shots}
          rounds={rounds}
          reader={reader}
          onReload={onReload}
          onKept={(id, lesson) => {
            sheet.clear(lesson.shots)
            setChosen(new Set())
            onKept(id)
          }}
        />
      </div>
    </>
  )
}

function countsOf(shots: readonly { readonly club: string }[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { club } of shots) counts.set(club, (counts.get(club) ?? 0) + 1)
  return counts
}
