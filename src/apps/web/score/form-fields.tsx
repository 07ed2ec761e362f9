import type { ReactElement } from 'react'
import { COUNTINGS, type Counting, PLAYS, type Play, SIDES } from '#golf/round/competition.ts'
import { BY_WORDS, PLAY_WORDS } from '#golf/round/score-words.ts'
import type { HoleLimit } from '#golf/rules/hole-limit.ts'
import { Chosen } from '../page/chosen.tsx'
import { CountField } from '../page/count-field.tsx'
import type { ScoreChoice } from './score-choice.ts'

const LIMITS: Readonly<Record<HoleLimit['kind'], string>> = {
  'net-double-bogey': 'net double bogey',
  'double-par': 'twice its par',
  'over-par': 'so many over par',
  strokes: 'so many strokes',
}
const HANDICAPS: Readonly<Record<ScoreChoice['handicaps'], string>> = {
  published: 'the published allowance',
  own: 'the Committee’s own allowance',
  gross: 'gross: nobody receives strokes',
}
const MOST_LIMIT = 20
const WHOLE = 100

/** What is played, what counts, and what is received. */
export function FormFields(props: {
  readonly choice: ScoreChoice
  readonly tees: readonly string[]
  readonly onChange: (choice: ScoreChoice) => void
}): ReactElement {
  const { choice, tees, onChange } = props
  const { play, by, limit, handicaps, allowance, tee } = choice
  const set = (change: Partial<ScoreChoice>): void => onChange({ ...choice, ...change })
  return (
    <div className="note-fields">
      <Chosen
        label="Play"
        value={play}
        of={PLAYS.map((id) => ({ id, name: PLAY_WORDS[id] }))}
        onChoose={(id) => set(playing(id as Play, handicaps))}
      />
      <Chosen
        label="What counts"
        value={by}
        of={COUNTINGS.map((id) => ({ id, name: BY_WORDS[id] }))}
        onChoose={(id) => set({ by: id as Counting })}
      />
      {by === 'maximum' && (
        <Chosen
          label="Most that counts on a hole"
          value={limit.kind}
          of={Object.entries(LIMITS).map(([id, name]) => ({ id, name }))}
          onChoose={(id) => set({ limit: limitOf(id as HoleLimit['kind']) })}
        />
      )}
      {by === 'maximum' && 'strokes' in limit && (
        <CountField
          key={limit.kind}
          label={limit.kind === 'strokes' ? 'Strokes' : 'Over par'}
          value={limit.strokes}
          most={MOST_LIMIT}
          onChange={(strokes) => set({ limit: { ...limit, strokes } })}
        />
      )}
      <Chosen
        label="Handicaps"
        value={handicaps}
        of={Object.entries(HANDICAPS)
          .filter(([id]) => id !== 'own' || SIDES[play].hasOwnBalls)
          .map(([id, name]) => ({ id, name }))}
        onChoose={(id) => set({ handicaps: id as ScoreChoice['handicaps'] })}
      />
      {handicaps === 'own' && SIDES[play].hasOwnBalls && (
        <CountField
          label="Of the course handicap, %"
          value={allowance}
          least={0}
          most={WHOLE}
          onChange={(percent) => set({ allowance: percent })}
        />
      )}
      <Chosen
        label="Tees"
        value={tee}
        of={[{ id: '', name: 'as each round says' }, ...tees.map((name) => ({ id: name, name }))]}
        onChoose={(name) => set({ tee: name })}
      />
    </div>
  )
}

/** What partners give to one ball is published part by part: there is no allowance of one's own. */
function playing(play: Play, handicaps: ScoreChoice['handicaps']): Partial<ScoreChoice> {
  const isLost = handicaps === 'own' && !SIDES[play].hasOwnBalls
  return { play, handicaps: isLost ? 'published' : handicaps }
}

/** Four over par and ten strokes are where the numbers begin. */
function limitOf(kind: HoleLimit['kind']): HoleLimit {
  if (kind === 'over-par') return { kind, strokes: 4 }
  return kind === 'strokes' ? { kind, strokes: 10 } : { kind }
}
